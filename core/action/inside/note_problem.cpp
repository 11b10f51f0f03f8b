#include "action/inside/note_problem.h"

#include "action/inside/note_search.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <optional>

namespace hammerline::action {

using catalogue::Quantity;

namespace {

void setAcceptance(Term &term, const tolerance::Limits &limits)
{
    const bool guarded = limits.rule == tolerance::Rule::Guarded;
    const double margin = guarded ? static_cast<double>(limits.expandedUncertainty.baseCount()) : 0;
    if (limits.low)
        term.low = static_cast<double>(limits.low->baseCount()) + margin;
    if (limits.high)
        term.high = static_cast<double>(limits.high->baseCount()) - margin;
    if (term.low > term.high)
        term.low = term.high = static_cast<double>(limits.low->baseCount() + limits.high->baseCount()) / 2;
    term.low -= onTheLimit;
    term.high += onTheLimit;
    term.target = static_cast<double>(limits.target.baseCount());
    if (limits.low && limits.high && *limits.low < *limits.high)
        term.slope = 2 / static_cast<double>((*limits.high - *limits.low).baseCount());
}

double baseUnits(units::Dimension dimension)
{
    return dimension == units::Dimension::Length ? 1e6 : 1e3;
}

Term termOf(const PlanTask &task, Quantity quantity, keyboard::Note note, double ratio)
{
    Term term;
    if (!catalogue::has(task.setup.action, quantity))
        return term;
    if (const auto read = task.values.value(quantity, note)) {
        term.present = true;
        term.value = static_cast<double>(read->baseCount());
        term.guarded = quantity != Quantity::KeyHeight && quantity != Quantity::Aftertouch;
    } else if (quantity == Quantity::Aftertouch) {
        const auto predicted = predictedAftertouch(task.values, note, ratio);
        term.present = term.predicted = predicted.has_value();
        term.value = predicted.value_or(0) * baseUnits(units::Dimension::Length);
    }
    const auto limits = term.present ? tolerance::limitsAt(task.set, quantity, note) : std::nullopt;
    term.judged = limits.has_value();
    if (limits)
        setAcceptance(term, *limits);
    return term;
}

bool isForbidden(const Forbidden &forbidden, Quantity quantity, keyboard::Note note)
{
    return forbidden.everywhere.contains(quantity) || forbidden.single.contains({quantity, note});
}

Screw screwOf(const PlanTask &task, Quantity quantity, keyboard::Note note)
{
    const auto found = task.setup.adjustments.find(quantity);
    if (found == task.setup.adjustments.end() || isForbidden(task.forbidden, quantity, note))
        return {};
    const Adjustment &adjustment = found->second;
    return {.most = wholeSteps(adjustment.most, adjustment.step),
            .step = static_cast<double>(adjustment.step.baseCount()),
            .minutes = adjustment.minutes};
}

NoteProblem problemOf(const PlanTask &task, keyboard::Note note, double ratio)
{
    NoteProblem problem{.note = note, .grand = task.setup.action == catalogue::ActionKind::Grand, .ratio = ratio};
    for (const catalogue::QuantityInfo &info : catalogue::all()) {
        Term &term = problem.terms[at(info.quantity)];
        term = termOf(task, info.quantity, note, ratio);
        if (term.present && info.quantity != Quantity::Aftertouch)
            problem.screws[at(info.quantity)] = screwOf(task, info.quantity, note);
    }
    return problem;
}

/// Notes on which the same quantities were read have the same choices.
void shareRounds(std::vector<NoteProblem> &problems)
{
    std::map<std::array<bool, catalogue::quantityCount>, std::shared_ptr<const std::vector<Round>>> known;
    for (NoteProblem &problem : problems) {
        std::array<bool, catalogue::quantityCount> has{};
        for (std::size_t i = 0; i < has.size(); ++i)
            has[i] = problem.screws[i].most > 0;
        auto &rounds = known[has];
        if (!rounds)
            rounds = std::make_shared<const std::vector<Round>>(roundsFor(problem));
        problem.rounds = rounds;
    }
}

} // namespace

int wholeSteps(units::Amount most, units::Amount step)
{
    return static_cast<int>(std::min<std::int64_t>(most.baseCount() / step.baseCount(), 1'000'000'000));
}

std::vector<NoteProblem> noteProblems(const PlanTask &task)
{
    const OwnRatios ratios = ownRatios(task.values, task.compass);
    std::vector<NoteProblem> problems;
    for (int number = task.compass.first.number(); number <= task.compass.last.number(); ++number) {
        const keyboard::Note note(number);
        const double ratio = ratioOf(ratios, note, task.sections, task.setup.leverRatio).ratio;
        NoteProblem problem = problemOf(task, note, ratio);
        bool anything = false;
        for (const Term &term : problem.terms)
            anything = anything || term.present;
        if (anything)
            problems.push_back(problem);
    }
    shareRounds(problems);
    return problems;
}

} // namespace hammerline::action
