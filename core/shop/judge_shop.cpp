#include "shop/judge_shop.h"

#include "shop/judges.h"

#include <algorithm>
#include <array>
#include <exception>
#include <functional>
#include <future>
#include <tuple>

namespace hammerline::shop {

namespace {

using instrument::InstrumentId;
using logbook::Logbook;
using logbook::PassOf;
using tolerance::Status;

/// One instrument to judge, and what came of it.
struct Job {
    const logbook::Keyboard *keyboard = nullptr;
    const logbook::PassTolerance *set = nullptr; ///< null: none
    std::vector<PassOf> passes{};                ///< newest first
    JudgedTwice judged{};
};

bool isAsked(const Asked &asked, const PassOf &pass)
{
    if (asked.which == Which::AsFound && pass.purpose != readings::Purpose::AsFound)
        return false;
    if (asked.which == Which::AsLeft && pass.purpose != readings::Purpose::AsLeft)
        return false;
    const YearMonth month = monthOf(pass.began);
    return (!asked.filter.from || *asked.filter.from <= month) && (!asked.filter.to || month <= *asked.filter.to);
}

/// Where one thread breaks, the others need not go on.
class StopWhereBroken {
public:
    explicit StopWhereBroken(Course &course) : m_course(course) {}
    StopWhereBroken(const StopWhereBroken &) = delete;
    StopWhereBroken &operator=(const StopWhereBroken &) = delete;
    ~StopWhereBroken()
    {
        if (std::uncaught_exceptions() > m_before)
            m_course.stop = true;
    }

private:
    Course &m_course;
    int m_before = std::uncaught_exceptions();
};

/// Everything but the readings themselves, read before the threads begin and only looked at by them.
class Work {
public:
    Work(const Logbook &book, const Asked &asked) : m_asked(asked), m_judge(asked.set)
    {
        m_keyboards = book.keyboards();
        m_sets = book.setsInUse();
        std::map<InstrumentId, Job> jobs;
        addInstruments(book, jobs);
        for (const PassOf &pass : book.passesOfAll())
            if (const auto job = jobs.find(pass.instrument); job != jobs.end() && isAsked(asked, pass))
                job->second.passes.push_back(pass);
        for (auto &[id, job] : jobs)
            if (!job.passes.empty())
                m_jobs.push_back(std::move(job));
    }

    [[nodiscard]] std::size_t size() const { return m_jobs.size(); }

    /// One after the other until none is left; the others do the same with connections of their own.
    void doJobs(const Logbook &book, Course &course)
    {
        const StopWhereBroken stopping(course);
        Judges judges;
        for (std::size_t next = m_next++; next < m_jobs.size() && !course.stop; next = m_next++) {
            Job &job = m_jobs[next];
            judge(book, job, job.set == nullptr ? nullptr : judges.judgeFor(job.set->text, job.set->id));
            ++course.done;
        }
    }

    [[nodiscard]] ShopJudged result() const
    {
        ShopJudged result;
        for (const Job &job : m_jobs)
            if (job.judged.passes > 0)
                result.emplace_hint(result.end(), job.keyboard->instrument, job.judged);
        return result;
    }

private:
    void addInstruments(const Logbook &book, std::map<InstrumentId, Job> &jobs) const
    {
        for (const logbook::Keyboard &keyboard : m_keyboards) {
            if (keyboard.action != m_asked.set.action || (m_asked.only && !m_asked.only->contains(keyboard.instrument)))
                continue;
            const auto set = m_sets.of.find(keyboard.instrument);
            jobs.emplace(keyboard.instrument,
                         Job{&keyboard, set == m_sets.of.end() ? nullptr : &m_sets.sets[set->second], {}, {}});
        }
        const auto &states = m_asked.filter.states;
        for (const logbook::InstrumentLine &line : book.instrumentLines())
            if (!states.empty() && !states.contains(line.state))
                jobs.erase(line.id);
    }

    void judge(const Logbook &book, Job &job, const tolerance::Judge *now) const
    {
        std::ranges::sort(job.passes, std::greater{},
                          [](const PassOf &pass) { return std::pair(pass.began, pass.pass); });
        for (const PassOf &pass : job.passes) {
            const auto values = book.values(pass.pass);
            if (values.empty())
                continue;
            add(job, values, now);
            if (m_asked.which == Which::Newest)
                return;
        }
    }

    void add(Job &job, const readings::ValueTable &values, const tolerance::Judge *now) const
    {
        const auto &[compass, sections] = std::tie(job.keyboard->compass, job.keyboard->sections);
        const auto then = m_judge.tally(values, compass, sections);
        const auto stands = now == nullptr ? tolerance::QuantityTallies{} : now->tally(values, compass, sections);
        for (std::size_t quantity = 0; quantity < then.size(); ++quantity)
            job.judged.by[quantity] += {stands[quantity], then[quantity]};
        ++job.judged.passes;
    }

    const Asked &m_asked;
    tolerance::Judge m_judge;
    std::vector<logbook::Keyboard> m_keyboards{};
    logbook::SetsInUse m_sets{};
    std::vector<Job> m_jobs{}; ///< by instrument; each is touched by the one thread that took it
    std::atomic<std::size_t> m_next{0};
};

bool judges(const tolerance::Tally &tally)
{
    return tally.of(Status::In) + tally.of(Status::Marginal) + tally.of(Status::Out) > 0;
}

int outOf(const tolerance::Tally &tally)
{
    return tally.of(Status::Out);
}

} // namespace

std::string_view idOf(Which which)
{
    static constexpr std::array<std::string_view, 4> ids{"all", "newest", "as-found", "as-left"};
    return ids[static_cast<std::size_t>(which)];
}

std::optional<Which> findWhich(std::string_view id)
{
    for (const Which which : {Which::All, Which::Newest, Which::AsFound, Which::AsLeft})
        if (idOf(which) == id)
            return which;
    return std::nullopt;
}

int TwoSets::moreOut() const
{
    return outOf(then) - outOf(now);
}

bool TwoSets::anything() const
{
    return judges(now) || judges(then);
}

bool TwoSets::bothJudge() const
{
    return judges(now) && judges(then);
}

TwoSets &TwoSets::operator+=(const TwoSets &other)
{
    now += other.now;
    then += other.then;
    return *this;
}

TwoSets JudgedTwice::sum() const
{
    TwoSets sum;
    for (const TwoSets &each : by)
        sum += each;
    return sum;
}

std::optional<ShopJudged> judgeShop(const std::string &path, const Asked &asked, unsigned atOnce, Course &course)
{
    const auto book = Logbook::open(path, logbook::Access::ReadOnly);
    Work work(book, asked);
    course.all = work.size();
    std::vector<std::future<void>> others; // the last to be made: whoever leaves here waits for them first
    for (unsigned thread = 1; thread < atOnce; ++thread)
        others.push_back(std::async(std::launch::async, [&] {
            const StopWhereBroken stopping(course); // where it cannot even be opened
            work.doJobs(Logbook::open(path, logbook::Access::ReadOnly), course);
        }));
    work.doJobs(book, course);
    for (auto &other : others)
        other.get();
    return course.stop ? std::nullopt : std::optional(work.result());
}

int passesIn(const ShopJudged &judged)
{
    int passes = 0;
    for (const auto &[id, each] : judged)
        passes += each.passes;
    return passes;
}

TwoSets sumOf(const ShopJudged &judged)
{
    TwoSets sum;
    for (const auto &[id, each] : judged)
        sum += each.sum();
    return sum;
}

std::vector<JudgedRow<catalogue::Quantity>> rowsByQuantity(const ShopJudged &judged)
{
    std::array<TwoSets, catalogue::quantityCount> sums{};
    for (const auto &[id, each] : judged)
        for (std::size_t quantity = 0; quantity < sums.size(); ++quantity)
            sums[quantity] += each.by[quantity];
    std::vector<JudgedRow<catalogue::Quantity>> rows;
    for (const auto &info : catalogue::all())
        if (const TwoSets &sum = sums[static_cast<std::size_t>(info.quantity)]; sum.anything())
            rows.push_back({info.quantity, sum});
    return rows;
}

std::vector<JudgedRow<InstrumentId>> rowsByInstrument(const ShopJudged &judged)
{
    std::vector<JudgedRow<InstrumentId>> rows;
    for (const auto &[id, each] : judged)
        if (const TwoSets sum = each.sum(); sum.anything())
            rows.push_back({id, sum});
    const auto change = [](const JudgedRow<InstrumentId> &row) {
        const TwoSets &counts = row.counts;
        return std::pair(counts.moreOut(), counts.then.of(Status::Marginal) - counts.now.of(Status::Marginal));
    };
    std::ranges::stable_sort(rows, std::greater{}, change);
    return rows;
}

} // namespace hammerline::shop
