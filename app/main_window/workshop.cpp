#include "main_window/workshop.h"

#include "exchange/tolerance_json.h"
#include "logbook/to_review.h"
#include "tolerance/doubt.h"
#include "wording/wording.h"

#include <algorithm>

namespace hammerline::main_window {

namespace {

tolerance::Judgement judgementOf(const instrument::Instrument &instrument, const readings::ValueTable &values,
                                 const std::optional<tolerance::ToleranceSet> &set)
{
    tolerance::ToleranceSet none;
    none.action = instrument.action;
    return tolerance::judge(values, set ? *set : none, instrument.compass, instrument.sections);
}

void dropUnasked(tolerance::Judgement &judgement, const decisions::SpotCheck &check)
{
    std::erase_if(judgement.verdicts, [&check](const tolerance::Verdict &verdict) {
        const bool asked = std::ranges::binary_search(check.notes, verdict.note) &&
                           std::ranges::find(check.quantities, verdict.quantity) != check.quantities.end();
        return verdict.status == tolerance::Status::Missing && !asked;
    });
}

/// Values of the sample that the checked pass has and the check has not.
int unreadOf(const decisions::SpotCheck &check, const readings::ValueTable &before, const readings::ValueTable &again)
{
    int unread = 0;
    for (const catalogue::Quantity quantity : check.quantities)
        for (const keyboard::Note note : check.notes)
            unread += before.value(quantity, note) && !again.value(quantity, note) ? 1 : 0;
    return unread;
}

using MaybeDeed = std::optional<logbook::Deed>;

MaybeDeed newerOf(const MaybeDeed &a, const MaybeDeed &b)
{
    if (!a || !b)
        return a ? a : b;
    return a->id > b->id ? a : b;
}

/// In no order yet.
void lay(const review::JudgedPass &pass, Workshop::Queue &into)
{
    std::ranges::move(review::itemsOf(pass), std::back_inserter(into.items));
    std::ranges::move(review::concededOf(pass), std::back_inserter(into.conceded));
    std::ranges::move(review::mendedOf(pass), std::back_inserter(into.mended));
    std::ranges::move(review::inDoubtOf(pass), std::back_inserter(into.inDoubt));
    into.judged = true;
}

/// The first that stands in the workshop, else the first; null: there is none.
const logbook::InstrumentLine *firstOf(const std::vector<logbook::InstrumentLine> &lines)
{
    const auto here =
        std::ranges::find_if(lines, [](const auto &line) { return line.state != instrument::State::Delivered; });
    if (here != lines.end())
        return &*here;
    return lines.empty() ? nullptr : &lines.front();
}

} // namespace

QString nameOf(const PassInView &pass)
{
    return pass.check ? Workshop::tr("Spot check") : wording::nameOf(pass.pass.purpose);
}

std::optional<tolerance::ToleranceSet> setOf(const instrument::Instrument &instrument)
{
    if (instrument.toleranceText.empty())
        return std::nullopt;
    auto set = exchange::readToleranceSet(instrument.toleranceText, instrument.toleranceId);
    return set ? std::optional(std::move(set).value()) : std::nullopt;
}

Workshop::Workshop(Clock clock, QObject *parent) : QObject(parent), m_clock(std::move(clock)) {}

void Workshop::use(logbook::Logbook book)
{
    close();
    m_book.emplace(std::move(book));
    readInstruments();
    emit instrumentsChanged();
    if (const auto *first = firstOf(m_instruments))
        chooseInstrument(first->id);
}

void Workshop::close()
{
    m_instruments.clear();
    m_instrument = 0;
    m_chosen.reset();
    m_pass.reset();
    m_before.reset();
    m_set.reset();
    m_judged.clear();
    m_judgedUpTo = 0;
    emit passChosen(); // whoever works on the logbook lets go of it before it is closed
    m_book.reset();
    emit instrumentsChanged();
}

bool Workshop::poll()
{
    if (!m_book || m_book->newestDeed() == m_seen)
        return false;
    instrumentsTouched();
    return true;
}

void Workshop::passTouched()
{
    const logbook::DeedId newest = m_book->newestDeed();
    if (newest != m_seen + 1)
        return instrumentsTouched(); // somebody else's deed came in between
    m_seen = newest;
    readPass(Before::AsItWas);
    emit readingsChanged();
}

void Workshop::instrumentsTouched()
{
    const auto before = instrument() ? std::optional(*instrument()) : std::nullopt;
    readInstruments();
    readSet();
    emit instrumentsChanged();
    readPass();
    if (before && instrument() && *before == *instrument())
        emit readingsChanged();
    else
        emit passChosen();
}

std::vector<readings::Pass> Workshop::passesOf(instrument::InstrumentId id) const
{
    return m_book ? m_book->passes(id) : std::vector<readings::Pass>{};
}

analysis::Summaries Workshop::summaries() const
{
    if (!m_pass)
        return {};
    return analysis::summarise(m_pass->judgement, m_set ? &*m_set : nullptr);
}

std::optional<logbook::Deed> Workshop::undoable() const
{
    if (!m_book || m_instrument == 0)
        return std::nullopt;
    return newerOf(m_pass ? m_book->undoable(m_pass->pass.id) : std::nullopt,
                   m_book->undoableOfInstrument(m_instrument));
}

std::optional<logbook::Deed> Workshop::redoable() const
{
    if (!m_book || m_instrument == 0)
        return std::nullopt;
    return newerOf(m_pass ? m_book->redoable(m_pass->pass.id) : std::nullopt,
                   m_book->redoableOfInstrument(m_instrument));
}

void Workshop::chooseInstrument(instrument::InstrumentId id)
{
    m_planned.clear();
    m_instrument = id;
    m_pass.reset();
    readSet();
    const auto passes = passesOf(id);
    m_pass = openCheck(id, passes);
    if (!m_pass && !passes.empty())
        m_pass = view(passes.back());
    readPass();
    emit passChosen();
}

std::optional<PassInView> Workshop::openCheck(instrument::InstrumentId id,
                                              const std::vector<readings::Pass> &passes) const
{
    const auto checks = m_book->spotChecks(id);
    if (checks.empty() || (!passes.empty() && passes.back().id > checks.back().id))
        return std::nullopt;
    auto check = view(checks.back());
    return check.unread > 0 ? std::optional(std::move(check)) : std::nullopt;
}

void Workshop::choosePass(readings::PassId id)
{
    m_planned.clear();
    const auto pass = m_book->pass(id);
    if (!pass)
        return;
    m_instrument = pass->instrument;
    readSet();
    m_pass = view(*pass);
    readPass();
    emit passChosen();
}

void Workshop::select(const Selection &selection)
{
    if (selection == m_selection)
        return;
    m_selection = selection;
    emit selected();
}

Workshop::Queue Workshop::queue()
{
    forgetTouched();
    Queue whole;
    Judges judges;
    for (const logbook::InstrumentLine &each : m_instruments) {
        if (each.state == instrument::State::Delivered || (readsBlind() && each.id == m_instrument))
            continue;
        auto known = m_judged.find(each.id);
        if (known == m_judged.end())
            known = m_judged.emplace(each.id, queueOf(each.id, judges)).first;
        const Queue &own = known->second;
        whole.items.insert(whole.items.end(), own.items.begin(), own.items.end());
        whole.conceded.insert(whole.conceded.end(), own.conceded.begin(), own.conceded.end());
        whole.mended.insert(whole.mended.end(), own.mended.begin(), own.mended.end());
        whole.inDoubt.insert(whole.inDoubt.end(), own.inDoubt.begin(), own.inDoubt.end());
        whole.judged = whole.judged || own.judged;
    }
    review::putWorstFirst(whole.items);
    review::putLeastSureFirst(whole.inDoubt);
    return whole;
}

/// Its passes are let go again: what is held of a workshop is what waits in it.
Workshop::Queue Workshop::queueOf(instrument::InstrumentId id, Judges &judges) const
{
    const auto of = m_book->instrument(id);
    if (!of)
        return {};
    auto known = judges.find(of->toleranceText);
    if (known == judges.end()) {
        known = judges.emplace(of->toleranceText, std::nullopt).first;
        if (const auto set = setOf(*of))
            known->second.emplace(*set);
    }
    Queue queue;
    if (known->second)
        for (const review::JudgedPass &pass : logbook::passesToReview(*m_book, *of, *known->second))
            lay(pass, queue);
    return queue;
}

void Workshop::forgetTouched()
{
    constexpr int most = 1'000;
    const auto deeds = m_book ? m_book->deeds(m_judgedUpTo, most) : std::vector<logbook::Deed>{};
    if (m_judged.empty() || deeds.size() == most)
        m_judged.clear();
    for (const logbook::Deed &deed : deeds)
        m_judged.erase(deed.instrument);
    // What was done after the instruments were read counts as new again next time.
    m_judgedUpTo = m_seen;
}

Workshop::Queue Workshop::queueOfPass() const
{
    if (!m_pass || !m_set || m_pass->values.empty())
        return {};
    review::JudgedPass judged{.instrument = m_instrument, .pass = m_pass->pass.id, .judgement = m_pass->judgement};
    judged.decided = m_book->decisions(m_pass->pass.id);
    judged.readings = m_pass->readings;
    Queue queue;
    lay(judged, queue);
    review::putWorstFirst(queue.items);
    review::putLeastSureFirst(queue.inDoubt);
    return queue;
}

PassInView Workshop::view(const readings::Pass &pass) const
{
    PassInView made{pass, m_book->readings(pass.id), {}, {}, m_book->spotCheck(pass.id)};
    made.values = readings::meansOf(made.readings);
    if (const auto *of = instrument())
        made.judgement = judgementOf(*of, made.values, m_set);
    if (made.check) {
        dropUnasked(made.judgement, *made.check);
        made.unread = unreadOf(*made.check, m_book->values(made.check->checked), made.values);
    }
    tolerance::weighDoubt(made.judgement, made.readings, pass.gauge);
    return made;
}

void Workshop::readInstruments()
{
    m_seen = m_book->newestDeed();
    m_instruments = m_book->instrumentLines();
}

void Workshop::readSet()
{
    m_chosen = m_instrument != 0 ? m_book->instrument(m_instrument) : std::nullopt;
    m_set = m_chosen ? setOf(*m_chosen) : std::nullopt;
}

void Workshop::readPass(Before before)
{
    std::optional<PassInView> known = before == Before::AsItWas ? std::move(m_before) : std::nullopt;
    m_before.reset();
    if (!m_pass)
        return;
    if (const auto pass = m_book->pass(m_pass->pass.id))
        m_pass = view(*pass);
    if (m_pass->check)
        return;
    for (const readings::Pass &each : passesOf(m_instrument)) {
        if (each.purpose != readings::Purpose::AsFound || !m_book->hasReadings(each.id))
            continue;
        if (each.id != m_pass->pass.id)
            m_before = known && known->pass == each ? std::move(known) : view(each);
        return;
    }
}

void Workshop::setPlanned(Planned planned)
{
    if (planned == m_planned)
        return;
    m_planned = std::move(planned);
    emit plannedChanged();
}

} // namespace hammerline::main_window
