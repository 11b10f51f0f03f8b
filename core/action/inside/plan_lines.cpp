#include "action/inside/plan_lines.h"

#include "action/inside/note_search.h"
#include "action/punchings.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace hammerline::action {

using catalogue::Quantity;

namespace {

/// No move disturbs an earlier one: what is carried goes forward in this list.
constexpr std::array<Quantity, 10> workOrder{
    Quantity::KeyHeight, Quantity::Blow,     Quantity::LostMotion,  Quantity::LetOff,     Quantity::Drop,
    Quantity::Dip,       Quantity::Checking, Quantity::DamperStart, Quantity::DownWeight, Quantity::UpWeight};

using PunchingLists = std::map<units::Length, std::vector<units::Length>>;

const std::vector<units::Length> &punchingsFor(units::Length thickness, const Adjustment &adjustment,
                                               PunchingLists &known)
{
    auto &list = known[thickness];
    if (list.empty())
        list = fewestPunchings(adjustment.punchings, thickness);
    return list;
}

double displayUnits(Quantity quantity)
{
    return catalogue::infoOf(quantity).dimension == units::Dimension::Length ? 1e6 : 1e3;
}

/// What was changed on purpose on one note, in mm or g.
Changes changesOn(const Solved &solved, std::size_t note)
{
    const Shift &shift = solved.shifts[note];
    Changes changes{};
    changes[at(Quantity::Blow)] = shift.blow;
    changes[at(Quantity::LetOff)] = shift.letOff;
    changes[at(Quantity::Checking)] = shift.checking;
    for (const Quantity quantity : workOrder) {
        double &change = changes[at(quantity)];
        change += solved.answers[note].steps[at(quantity)] * solved.notes[note].screws[at(quantity)].step;
        change /= displayUnits(quantity);
    }
    return changes;
}

Pair pairOf(const Solved &solved, std::size_t note, Quantity quantity, const Changes &changes)
{
    const NoteProblem &problem = solved.notes[note];
    const Term &term = problem.terms[at(quantity)];
    const double unit = displayUnits(quantity),
                 change = changeOf(quantity, changes, solved.task->setup.action, problem.ratio);
    Pair pair{.note = problem.note, .quantity = quantity, .before = term.value / unit, .predicted = term.predicted};
    pair.after = pair.before + change;
    pair.insideBefore = term.inside(term.value);
    pair.insideAfter = term.inside(term.value + change * unit);
    if (const auto limits = tolerance::limitsAt(solved.task->set, quantity, problem.note))
        pair.status = tolerance::judgeValue(pair.after, *limits);
    return pair;
}

} // namespace

std::vector<RailMove> railMoves(const Solved &solved)
{
    std::vector<RailMove> moves;
    for (std::size_t i = 0; i < solved.rails.size(); ++i) {
        const Rail &rail = solved.task->setup.rails[i];
        const RailPosition &position = solved.rails[i];
        if (position == RailPosition{})
            continue;
        const auto steps = [&rail](int count) {
            return units::Amount(rail.step.dimension(), rail.step.baseCount() * count);
        };
        moves.push_back({.rail = rail.id,
                         .quantity = rail.quantity,
                         .bass = steps(position.bass),
                         .treble = steps(position.treble),
                         .minutes = rail.minutes,
                         .notes = rail.notes});
    }
    return moves;
}

std::vector<Move> movesOf(const Solved &solved)
{
    std::vector<Move> moves;
    PunchingLists punchings;
    for (const Quantity quantity : workOrder)
        for (std::size_t note = 0; note < solved.notes.size(); ++note) {
            const int steps = solved.answers[note].steps[at(quantity)];
            if (steps == 0)
                continue;
            const Adjustment &adjustment = solved.task->setup.adjustments.at(quantity);
            Move move{.order = static_cast<int>(moves.size()) + 1,
                      .note = solved.notes[note].note,
                      .adjust = quantity,
                      .by = {adjustment.step.dimension(), adjustment.step.baseCount() * steps},
                      .minutes = adjustment.minutes};
            if (adjustment.perTurn)
                move.turns =
                    static_cast<double>(move.by.baseCount()) / static_cast<double>(adjustment.perTurn->baseCount());
            if (quantity == Quantity::Dip && !adjustment.punchings.empty())
                move.punchings = punchingsFor(move.by.magnitude().asLength(), adjustment, punchings);
            moves.push_back(std::move(move));
        }
    return moves;
}

std::vector<Pair> pairsOf(const Solved &solved)
{
    std::vector<Changes> changes;
    for (std::size_t note = 0; note < solved.notes.size(); ++note)
        changes.push_back(changesOn(solved, note));
    std::vector<Pair> pairs;
    for (const catalogue::QuantityInfo &info : catalogue::all())
        for (std::size_t note = 0; note < solved.notes.size(); ++note)
            if (solved.notes[note].terms[at(info.quantity)].judged)
                pairs.push_back(pairOf(solved, note, info.quantity, changes[note]));
    return pairs;
}

} // namespace hammerline::action
