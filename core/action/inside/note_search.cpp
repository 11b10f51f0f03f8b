#include "action/inside/note_search.h"

#include "action/inside/one_screw.h"
#include "action/inside/tied_search.h"

#include <algorithm>

namespace hammerline::action {

using catalogue::Quantity;

Standing standingOf(const NoteProblem &problem, const Shift &shift)
{
    Standing standing;
    for (std::size_t i = 0; i < standing.value.size(); ++i)
        standing.value[i] = problem.terms[i].value;
    const auto move = [&standing](Quantity quantity, double change, double slack) {
        standing.value[at(quantity)] += change;
        standing.slack[at(quantity)] += slack;
    };
    const double r = problem.ratio;
    move(Quantity::Blow, shift.blow, shift.blowSlack);
    move(Quantity::LostMotion, -shift.blow / r, shift.blowSlack / r); // only verticals have a rail for blow
    move(Quantity::LetOff, shift.letOff, shift.letOffSlack);
    move(Quantity::Aftertouch, shift.letOff / r, shift.letOffSlack / r);
    move(Quantity::Drop, -shift.letOff, shift.letOffSlack);
    move(Quantity::Checking, shift.checking, shift.checkingSlack);
    return standing;
}

std::vector<Round> roundsFor(const NoteProblem &problem)
{
    unsigned available = 0;
    for (std::size_t i = 0; i < tiedScrews.size(); ++i)
        available |= problem.screws[at(tiedScrews[i])].most > 0 ? 1U << i : 0U;
    std::vector<Round> rounds;
    for (unsigned screws = 0; screws <= available; ++screws) {
        if ((screws & ~available) != 0)
            continue;
        Round round{.screws = screws};
        for (std::size_t i = 0; i < tiedScrews.size(); ++i)
            round.minutes += (screws >> i & 1U) != 0 ? problem.screws[at(tiedScrews[i])].minutes : 0;
        rounds.push_back(round);
    }
    // Stable: of equal cost the smaller choice comes first, and the last holds every screw.
    std::stable_sort(rounds.begin(), rounds.end(),
                     [](const Round &one, const Round &other) { return one.minutes < other.minutes; });
    return rounds;
}

NoteAnswer bestTied(const NoteProblem &problem, const Shift &shift, Aim aim)
{
    return TiedSearch(problem, shift, aim).run();
}

Score boundTied(const NoteProblem &problem, const Shift &shift, Aim aim)
{
    return TiedSearch(problem, shift, aim).bound();
}

NoteAnswer bestAlone(const NoteProblem &problem, Quantity quantity, const Shift &shift, Aim aim)
{
    const Standing standing = standingOf(problem, shift);
    const Screw &screw = problem.screws[at(quantity)];
    const std::array<Line, 1> lines{Line{.term = &problem.terms[at(quantity)],
                                         .start = standing.value[at(quantity)],
                                         .perStep = screw.step,
                                         .slack = standing.slack[at(quantity)]}};
    const Turn turn = bestTurn(screw, lines, aim);
    NoteAnswer answer{.feasible = turn.feasible, .score = turn.score};
    answer.steps[at(quantity)] = turn.steps;
    return answer;
}

} // namespace hammerline::action
