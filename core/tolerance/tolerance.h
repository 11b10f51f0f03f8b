#pragma once
// A tolerance set: what a shop promises for each quantity along the keyboard, and the judging of readings by it.
//
// Targets and limits are given at points and interpolated linearly by note number between them (rounded to the base
// unit, half away from zero); beyond the ends they stay. A set is a value that was checked when it was made: see
// faultsOf. Side doors: judge.h (a whole table), doubt.h (what a verdict is worth), found_uncertainty.h, takes_apart.h.

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "units/units.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace hammerline::tolerance {

struct Point {
    keyboard::Note note{}; ///< may lie outside the instrument
    std::optional<units::Amount> low{};
    units::Amount target{};
    std::optional<units::Amount> high{};
    std::string source{};
    std::string remark{};
    bool operator==(const Point &) const = default;
};

/// Rising by note, no note twice, at least one; low at all points or at none, high likewise; low <= target <= high.
using Points = std::vector<Point>;

enum class Rule {
    Simple,  ///< acceptance interval = tolerance interval
    Guarded, ///< in only where the value is at least the expanded uncertainty W inside the limits (ISO 14253-1)
};

struct Entry {
    /// Either `both` alone, or `naturals` and/or `sharps`; a colour that is not given is not judged.
    Points both{};
    Points naturals{};
    Points sharps{};
    std::optional<units::Amount> step{}; ///< largest difference from the neighbour below that still counts as even
    units::Amount expandedUncertainty{}; ///< W >= 0, of the entry's dimension
    double coverageFactor = 2;           ///< > 0
    Rule rule = Rule::Simple;
    std::string source{};
    std::string remark{};

    [[nodiscard]] const Points *pointsFor(keyboard::Colour colour) const; ///< null: not judged
    [[nodiscard]] bool byColour() const { return both.empty(); }
    bool operator==(const Entry &) const = default;
};

struct ToleranceSet {
    std::string name{};
    catalogue::ActionKind action = catalogue::ActionKind::Vertical;
    std::string source{};
    std::string remark{};
    std::map<catalogue::Quantity, Entry> entries{};
    bool operator==(const ToleranceSet &) const = default;
};

/// What is wrong with a set's content (limits that cross, a note twice, limits at some points only, a quantity the
/// action does not have, a negative step or uncertainty, a coverage factor of 0…), one Fault each, without file and
/// line. Empty: nothing.
[[nodiscard]] std::vector<outcome::Fault> faultsOf(const ToleranceSet &set);

/// Target and limits of one quantity on one note. Both limits, one, or (a bare target) none may be there.
struct Limits {
    std::optional<units::Amount> low{};
    units::Amount target{};
    std::optional<units::Amount> high{};
    units::Amount expandedUncertainty{};
    double coverageFactor = 2;
    Rule rule = Rule::Simple;
    bool operator==(const Limits &) const = default;

    /// (high - low) / 2 in mm or g; absent for a one-sided pair or where low = high.
    [[nodiscard]] std::optional<double> halfWidth() const;
};

/// Absent where the set does not judge the quantity on that note's colour.
[[nodiscard]] std::optional<Limits> limitsAt(const ToleranceSet &set, catalogue::Quantity quantity,
                                             keyboard::Note note);

enum class Status { In, Marginal, Out, Missing, Unjudged };
/// "in", "marginal", "out", "missing", "unjudged".
[[nodiscard]] std::string_view idOf(Status status);

/// Out beyond a limit; in a guarded entry marginal where nearer than W to one inside; else in. `value` in mm or g, so
/// that predicted values can be judged without rounding: within 1e-7 of a limit (0.1 nm, 0.1 µg) it counts as on it.
[[nodiscard]] Status judgeValue(double value, const Limits &limits);
[[nodiscard]] Status judgeValue(units::Amount value, const Limits &limits);

/// Probability that the true value conforms, JCGM 106:2012 clause 7: normal, mean = value, standard uncertainty =
/// expandedUncertainty / coverageFactor; 1 or 0 where that is 0.
[[nodiscard]] double conformanceProbability(units::Amount value, const Limits &limits);
/// The same with another standard uncertainty, in mm or g.
[[nodiscard]] double conformanceProbability(units::Amount value, const Limits &limits, double standardUncertainty);

} // namespace hammerline::tolerance
