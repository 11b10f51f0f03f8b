#pragma once
// One line of a gauge, to a reading.

#include "outcome/outcome.h"
#include "units/parse_amount.h"

#include <QByteArray>
#include <QString>

namespace hammerline::gauge_input {

/// How the lines of one gauge are read: a regular expression (Perl syntax) that must match somewhere in the line, with
/// a group named `value` and, where the gauge says its unit, one named `unit`.
struct LinePattern {
    QString expression = defaultExpression();
    units::Unit bareUnit = units::Unit::Millimetre; ///< where the line names no unit

    /// The first number of the line with the unit right behind it, if there is one.
    [[nodiscard]] static QString defaultExpression();
    bool operator==(const LinePattern &) const = default;
};

/// Why an expression can't be used (its syntax, no group `value`); empty where it can.
[[nodiscard]] QString faultOf(const LinePattern &pattern);

struct GaugeReading {
    QString raw;   ///< the line as it came, control characters shown as dots
    QString typed; ///< what a person would have typed, always with a unit: "3.175mm"
    units::ParsedAmount parsed{};
};

/// A fault where the pattern does not match or the number is none: the reading then waits for a person.
/// Leading zeros and a plus sign, which gauges like to send, are dropped; a minus stays and is refused where `form`
/// says so. A unit of another dimension than `form` asks for is a fault, said by the line or taken for it.
[[nodiscard]] outcome::Outcome<GaugeReading> readGaugeLine(const QByteArray &line, const LinePattern &pattern,
                                                           const units::TypedForm &form);

/// For the preview: printable ASCII as it is, everything else as a middle dot.
[[nodiscard]] QString visibleText(const QByteArray &line);

} // namespace hammerline::gauge_input
