#pragma once
// What the two pages of the shop's view are put together from.

#include <QString>

class QComboBox;
class QHBoxLayout;
class QTableView;

namespace hammerline::main_window {

/// A box with its label before it, at the end of the row.
[[nodiscard]] QComboBox *addBox(QHBoxLayout *row, const QString &label, const char *name);
/// Rows of figures: small type, whole rows chosen, nothing drawn around them.
void dressFigures(QTableView *table);
/// No higher than its rows, so that the chart has the rest.
[[nodiscard]] int heightOfRows(const QTableView &table);

} // namespace hammerline::main_window
