#pragma once
// What the two pages of the shop's view are put together from.

#include <QString>

class QComboBox;
class QTableView;

namespace hammerline::wording {
class WrapRow;
}

namespace hammerline::main_window {

/// A box with its label before it, at the end of the row; no line ends between the two.
[[nodiscard]] QComboBox *addBox(wording::WrapRow *row, const QString &label, const char *name);
/// Rows of figures: small type, whole rows chosen, nothing drawn around them.
void dressFigures(QTableView *table);
/// The names of the first column no wider than they are read with ease; all of one is in its tooltip.
void fitNames(QTableView *table);
/// For a tooltip: a long text in several lines.
[[nodiscard]] QString wrapped(const QString &text);
/// No higher than its rows, so that the chart has the rest, and no lower than a few of them.
void fitHeight(QTableView *table);

} // namespace hammerline::main_window
