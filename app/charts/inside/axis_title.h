#pragma once
// The title of an axis in as many lines as its axis is long for: broken at words, the unit whole in the last line.
// Names that people gave may be of any length and are elided where three lines do not hold them; no other word is.

#include <QString>
#include <QStringList>

class QFontMetricsF;

namespace hammerline::charts {

struct AxisTitle {
    QString text{};      ///< with %1, %2 where the names stand, and at its end the unit in brackets: "%1 less %2 (mm)"
    QStringList names{}; ///< of people or passes, in the order of their numbers

    /// With the names as they are.
    [[nodiscard]] QString whole() const;
};

/// `length`: of the axis. A single word that is longer stands in a line of its own.
[[nodiscard]] QStringList axisLines(const AxisTitle &title, const QFontMetricsF &metrics, double length);

/// A text in lines no wider than `width`, broken at words; a word that is wider has a line to itself.
[[nodiscard]] QStringList wordLines(const QStringList &words, const QFontMetricsF &metrics, double width);

/// Letters that are shown of a name; where there is little room for other words beside it, fewer.
constexpr int nameLetters = 28, fewNameLetters = 12;
/// A name with room for other words beside it: of more letters the first, and an ellipsis.
[[nodiscard]] QString shortName(const QString &name, int most = nameLetters);

} // namespace hammerline::charts
