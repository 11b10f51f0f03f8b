#include "shop/shop_reader.h"

#include "action/plan.h"
#include "exchange/plan_inputs_json.h"
#include "shop/touched.h"

#include <algorithm>

namespace hammerline::shop {

namespace {

using catalogue::Quantity;
using instrument::Instrument;
using keyboard::Note;
using Kind = WorkPiece::Kind;

/// For one kept plan: some tenths of a second at the very most, many times what a plan takes.
constexpr std::int64_t mostTries = 300'000;

/// Pieces of one pass, by person and quantity.
class Pieces {
public:
    explicit Pieces(const logbook::ReadBy &read) : m_read(read)
    {
        for (const auto &take : read.takes) {
            ++at(take.reader, take.value.quantity).readings;
            m_readers[{take.value.quantity, take.value.note}] = take.reader;
        }
    }

    void judge(const tolerance::Judgement &judgement)
    {
        for (const tolerance::Verdict &verdict : judgement.verdicts) {
            if (!verdict.value || !verdict.limits)
                continue;
            ReadPiece &piece = at(m_readers.at({verdict.quantity, verdict.note}), verdict.quantity);
            ++piece.judged;
            piece.out += verdict.status == tolerance::Status::Out ? 1 : 0;
        }
    }

    [[nodiscard]] std::vector<ReadPiece> take() { return std::move(m_pieces); }

private:
    ReadPiece &at(std::size_t reader, Quantity quantity)
    {
        const std::string &person = m_read.people[reader];
        const auto known = std::ranges::find_if(
            m_pieces, [&](const ReadPiece &piece) { return piece.quantity == quantity && piece.person == person; });
        if (known != m_pieces.end())
            return *known;
        m_pieces.push_back({.person = person, .quantity = quantity});
        return m_pieces.back();
    }

    const logbook::ReadBy &m_read;
    std::map<std::pair<Quantity, Note>, std::size_t> m_readers{};
    std::vector<ReadPiece> m_pieces{};
};

std::vector<ReadPiece> piecesOf(const logbook::ReadBy &read, const Instrument &instrument,
                                const tolerance::Judge *judge)
{
    Pieces pieces(read);
    if (judge != nullptr) {
        std::vector<readings::TakenValue> values;
        values.reserve(read.takes.size());
        for (const auto &take : read.takes)
            values.push_back(take.value);
        pieces.judge(judge->judge(readings::meansOfValues(std::move(values)), instrument.compass, instrument.sections));
    }
    return pieces.take();
}

/// "let_off 40 by -0.6 mm": the quantity of a screw; absent for a rail.
std::optional<Quantity> quantityOfItem(const std::string &item)
{
    return catalogue::findQuantity(item.substr(0, item.find(' ')));
}

std::vector<WorkPiece> takenWork(const std::vector<logbook::WorkDone> &work)
{
    std::vector<WorkPiece> pieces;
    for (const logbook::WorkDone &done : work)
        pieces.push_back({Kind::Taken, done.person, monthOf(done.at), quantityOfItem(done.item),
                          std::chrono::duration<double, std::ratio<60>>(done.took).count(), done.took.count() == 0});
    return pieces;
}

std::vector<WorkPiece> otherWork(const std::vector<dossier::WorkEntry> &work)
{
    std::vector<WorkPiece> pieces;
    for (const dossier::WorkEntry &entry : work)
        if (entry.took)
            pieces.push_back({.kind = Kind::Other,
                              .person = entry.person,
                              .month = entry.day ? std::optional(monthOf(*entry.day)) : std::nullopt,
                              .minutes = static_cast<double>(entry.took->count())});
    return pieces;
}

/// By quantity; rails with the quantity they move.
std::map<Quantity, double> minutesOf(const action::Plan &plan)
{
    std::map<Quantity, double> minutes;
    for (const action::RailMove &rail : plan.rails)
        minutes[rail.quantity] += rail.minutes;
    for (const action::Move &move : plan.moves)
        minutes[move.adjust] += move.minutes;
    return minutes;
}

} // namespace

void ShopReader::forget()
{
    *this = ShopReader();
}

void ShopReader::begin(const logbook::Logbook &book)
{
    const logbook::DeedId newest = book.newestDeed();
    const auto touched = m_tallies.empty() ? std::nullopt : touchedSince(book, m_seen);
    if (touched)
        std::erase_if(m_tallies, [&](const auto &tally) { return touched->contains(tally.first); });
    else
        m_tallies.clear();
    std::erase_if(m_plans, [this](const KeptPlan &plan) { return !m_tallies.contains(plan.instrument); });
    m_seen = newest;
    m_done = 0;
    m_waiting.clear();
    for (const logbook::InstrumentLine &instrument : book.instrumentLines())
        if (!m_tallies.contains(instrument.id))
            m_waiting.push_back(instrument.id);
    std::ranges::reverse(m_waiting);
}

bool ShopReader::readNext(const logbook::Logbook &book)
{
    if (!m_waiting.empty()) {
        if (const auto instrument = book.instrument(m_waiting.back()))
            readInstrument(book, *instrument);
        m_waiting.pop_back();
    } else if (!m_plans.empty()) {
        readPlan(m_plans.back());
        m_plans.pop_back();
    } else {
        return false;
    }
    ++m_done;
    return true;
}

void ShopReader::readInstrument(const logbook::Logbook &book, const Instrument &instrument)
{
    const tolerance::Judge *judge = m_judges.judgeFor(instrument.toleranceText, instrument.toleranceId);
    InstrumentTally tally{.state = instrument.state, .other = otherWork(book.dossier(instrument.id).work)};
    for (const readings::Pass &pass : book.passes(instrument.id)) {
        const auto read = book.readBy(pass.id);
        tally.passes.push_back({pass.id, pass.purpose, monthOf(pass.began), piecesOf(read, instrument, judge),
                                takenWork(book.workDone(pass.id))});
        if (auto inputs = book.keptPlan(pass.id)) {
            tally.passes.back().work.push_back(
                {.kind = Kind::Planned, .person = pass.person, .month = monthOf(pass.began)});
            m_plans.push_back({instrument.id, tally.passes.size() - 1, *std::move(inputs)});
        }
    }
    m_tallies.insert_or_assign(instrument.id, std::move(tally));
}

/// The one planned piece that stands for the plan is replaced by one a quantity; where the plan can no longer be read
/// or takes too long to be worked out anew, it stays, and says so.
void ShopReader::readPlan(const KeptPlan &plan)
{
    const auto task = exchange::readPlanInputs(plan.inputs);
    const auto made = task ? action::bestPlanWithin(task.value(), mostTries) : std::nullopt;
    auto &work = m_tallies.at(plan.instrument).passes[plan.pass].work;
    const auto stands = std::ranges::find(work, Kind::Planned, &WorkPiece::kind);
    if (!made) {
        stands->untimed = 1;
        return;
    }
    const WorkPiece pattern = *stands;
    work.erase(stands);
    for (const auto &[quantity, minutes] : minutesOf(*made)) {
        work.push_back(pattern);
        work.back().quantity = quantity;
        work.back().minutes = minutes;
    }
}

} // namespace hammerline::shop
