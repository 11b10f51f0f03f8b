// Invented actions regulated by plans, round after round, beside a worker who goes by the textbook: the table.
// Usage: closed_loop_table [ACTIONS OF EACH KIND], 24 if not given.

#include "support/regulation.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <iterator>
#include <string>

namespace {

using namespace hammerline;
using support::PlanStyle;
using support::RegulationOutcome;

void print(const char *name, const RegulationOutcome &sum, const RegulationOutcome &textbook, int count)
{
    std::printf("%-34s %8.1f %6.2f %8.1f %7.2f %9.0f %8.2f %9.2f%%\n", name, sum.minutes / count,
                sum.minutes / textbook.minutes, static_cast<double>(sum.adjustments) / count,
                static_cast<double>(sum.rounds) / count, static_cast<double>(sum.readings) / count,
                static_cast<double>(sum.trulyOut) / count, 100.0 * sum.trulyOut / sum.pairs);
}

void printKind(catalogue::ActionKind kind, int count)
{
    struct Style {
        const char *name;
        PlanStyle style;
    };
    const Style styles[] = {{"plans", {}},
                            {"plans, 3 takes where marginal", {.marginalTakes = 3}},
                            {"plans that learn", {.learns = true, .marginalTakes = 3}},
                            {"guarded plans", {.guarded = true, .marginalTakes = 3}},
                            {"guarded plans that learn", {.guarded = true, .learns = true, .marginalTakes = 3}}};
    RegulationOutcome textbook, threeRounds, sums[std::size(styles)];
    for (int seed = 1; seed <= count; ++seed) {
        const support::SimulatedAction action(static_cast<std::uint64_t>(seed), kind);
        textbook += support::regulateByTextbook(action);
        threeRounds += support::regulateByTextbook(action, 3);
        for (std::size_t i = 0; i < std::size(styles); ++i)
            sums[i] += support::regulateByPlans(action, styles[i].style);
    }
    std::printf("\n%s, %d actions, means of one action\n%-34s %8s %6s %8s %7s %9s %8s %10s\n",
                std::string(catalogue::idOf(kind)).c_str(), count, "", "minutes", "ratio", "turned", "rounds",
                "readings", "out", "of pairs");
    print("textbook", textbook, textbook, count);
    print("textbook, given up after 3 rounds", threeRounds, textbook, count);
    for (std::size_t i = 0; i < std::size(styles); ++i)
        print(styles[i].name, sums[i], textbook, count);
}

} // namespace

int main(int argc, char **argv)
{
    const int count = argc > 1 ? std::max(1, std::atoi(argv[1])) : 24;
    printKind(catalogue::ActionKind::Vertical, count);
    printKind(catalogue::ActionKind::Grand, count);
    return 0;
}
