#pragma once
// What the pages of an instrument's file share: tables of texts, and rows of buttons that act on the row chosen.

#include <QString>
#include <QStringList>

#include <vector>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QTableWidget;
class QVBoxLayout;
class QWidget;

namespace hammerline::instrument_file {

[[nodiscard]] QTableWidget *makeTable(const char *name, const QString &accessibleName, const QStringList &heads);
/// Columns as wide as their contents; where the table is too narrow for that, their texts go on in a further line. The
/// table does so itself when its width changes.
void fitColumns(QTableWidget *table);
/// One row of texts; `key` is what `keyOfCurrent` gives back.
void addRow(QTableWidget *table, const QStringList &texts, const QString &key);
/// The key of the row that is current; empty: none.
[[nodiscard]] QString keyOfCurrent(const QTableWidget *table);
/// The row with the key becomes current again, else the first.
void makeCurrent(QTableWidget *table, const QString &key);

[[nodiscard]] QPushButton *addButton(QHBoxLayout *row, const QString &text, const char *name);
/// A line of second rank: what a page is for, what to do first.
[[nodiscard]] QLabel *makeHint(const QString &text);
/// No wider than a line is read in, however wide the screen is.
inline constexpr int widestLetters = 90;
[[nodiscard]] int widestLine(const QWidget &field);
/// The margins of a page.
[[nodiscard]] QVBoxLayout *columnOf(QWidget *page);

} // namespace hammerline::instrument_file
