#pragma once
// One note as the search sees it: numbers in base units (nm, mg) as doubles, which hold every whole number of them
// exactly; what is carried through the lever ratio is not rounded.

#include "action/inside/score.h"
#include "action/lever_model.h"
#include "action/plan.h"

#include <array>
#include <cstdint>
#include <limits>
#include <memory>
#include <vector>

namespace hammerline::action {

inline constexpr double unlimited = std::numeric_limits<double>::infinity();
/// What counts as on a limit, in base units (0.1 nm).
inline constexpr double onTheLimit = 0.1;

[[nodiscard]] constexpr std::size_t at(catalogue::Quantity quantity)
{
    return static_cast<std::size_t>(quantity);
}

/// A value on the note and what is asked of it.
struct Term {
    bool present = false; ///< read or predicted
    bool predicted = false;
    bool judged = false;
    bool guarded = false;    ///< must not come out below 0
    double value = 0;        ///< before
    double low = -unlimited; ///< acceptance interval, widened by onTheLimit
    double high = unlimited;
    double target = 0;
    double slope = 0; ///< closeness per base unit away from the target; 0 where closeness doesn't count

    [[nodiscard]] bool inside(double x) const { return low <= x && x <= high; }
};

/// An adjustment on this note. `most` 0: not available.
struct Screw {
    int most = 0;
    double step = 0;
    double minutes = 0;
};

/// A choice of tied screws that may be turned (bits as note_search has them) and what turning all of them costs.
struct Round {
    unsigned screws = 0;
    double minutes = 0;
};

/// How much may still be tried for one plan: turns of a screw and boxes of rail positions, one by one. Counted, not
/// timed, so that the same call gives up at the same point on every machine.
struct Effort {
    std::int64_t left = 0;
    [[nodiscard]] bool isSpent() const { return left <= 0; }
};

struct NoteProblem {
    keyboard::Note note{};
    bool grand = false;
    double ratio = 5;
    std::array<Term, catalogue::quantityCount> terms{};
    std::array<Screw, catalogue::quantityCount> screws{};
    std::shared_ptr<const std::vector<Round>> rounds{}; ///< every choice, cheapest first
    Effort *effort = nullptr;                           ///< of the whole plan; null: whatever it takes

    [[nodiscard]] bool givenUp() const { return effort != nullptr && effort->isSpent(); }
    /// Before each thing that is tried. False: not that one any more.
    [[nodiscard]] bool mayTry() const { return effort == nullptr || effort->left-- > 0; }
};

/// How many steps fit into `most`; a setup of kilometres in nanometre steps is cut where an int still holds.
[[nodiscard]] int wholeSteps(units::Amount most, units::Amount step);

/// One problem for every note of the compass on which something was read.
[[nodiscard]] std::vector<NoteProblem> noteProblems(const PlanTask &task);

/// Where the rails stand on one note. In a box of positions each is known only to within its slack.
struct Shift {
    double blow = 0, blowSlack = 0;
    double letOff = 0, letOffSlack = 0;
    double checking = 0, checkingSlack = 0;
};

/// How many steps each screw is turned.
using Steps = std::array<int, catalogue::quantityCount>;
struct NoteAnswer {
    bool feasible = false; ///< false: something comes out below 0 whatever is turned
    Score score{};
    Steps steps{};
};

} // namespace hammerline::action
