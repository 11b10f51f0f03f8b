#pragma once
// What a person cannot read whole now: words that are cut or elided, and areas that must be scrolled sideways.

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyleOptionViewItem>
#include <QTabBar>
#include <QTableView>

#include <algorithm>

namespace hammerline::main_window {

inline QString named(const QWidget &widget)
{
    return QStringLiteral("%1 \"%2\"").arg(widget.metaObject()->className(), widget.objectName());
}

inline void addCutLabel(const QLabel &label, QStringList &cut)
{
    if (label.text().isEmpty() || !label.pixmap(Qt::ReturnByValue).isNull())
        return;
    // What is elided on purpose says all of it by its tooltip.
    const bool elided = label.text().endsWith(QChar(0x2026)) && label.toolTip().size() >= label.text().size();
    const bool tooLow = label.wordWrap() && label.heightForWidth(label.width()) > label.height() + 1;
    const bool tooNarrow = !label.wordWrap() && label.sizeHint().width() > label.width() + 1;
    if (!elided && (tooLow || tooNarrow))
        cut << named(label) + " is cut: " + label.text().left(60);
}

inline QString longestWord(const QString &text)
{
    const QStringList words = text.split(' ');
    return *std::ranges::max_element(words, {}, [](const QString &word) { return word.size(); });
}

inline void addCutHeads(const QTableView &table, QStringList &cut)
{
    const QHeaderView &heads = *table.horizontalHeader();
    for (int column = 0; column < heads.count() && heads.isVisible(); ++column)
        if (!heads.isSectionHidden(column) &&
            heads.fontMetrics().horizontalAdvance(
                longestWord(heads.model()->headerData(column, Qt::Horizontal).toString())) > heads.sectionSize(column))
            cut << named(table) + " cuts its head: " + heads.model()->headerData(column, Qt::Horizontal).toString();
}

inline void addCutCells(const QTableView &table, QStringList &cut)
{
    for (int row = 0; row < table.model()->rowCount(); ++row)
        for (int column = 0; column < table.model()->columnCount(); ++column) {
            const QModelIndex at = table.model()->index(row, column);
            const QString text = at.data().toString();
            const int needed = table.fontMetrics().horizontalAdvance(text);
            const bool wraps = table.wordWrap() && table.rowHeight(row) > 2 * table.fontMetrics().height();
            const bool spans = table.columnSpan(row, column) > 1;
            if (!table.isColumnHidden(column) && !wraps && !spans && needed > table.columnWidth(column) &&
                at.data(Qt::ToolTipRole).toString().isEmpty())
                cut << named(table) + " cuts a cell that no tooltip tells: " + text.left(60);
        }
}

inline void addCutWords(const QWidget &widget, QStringList &cut)
{
    if (const auto *label = qobject_cast<const QLabel *>(&widget))
        addCutLabel(*label, cut);
    if (const auto *button = qobject_cast<const QAbstractButton *>(&widget))
        if (!button->text().isEmpty() && button->minimumSizeHint().width() > button->width() + 1)
            cut << named(widget) + " is cut: " + button->text();
    if (const auto *table = qobject_cast<const QTableView *>(&widget))
        if (table->model() != nullptr) {
            addCutHeads(*table, cut);
            addCutCells(*table, cut);
        }
    if (const auto *area = qobject_cast<const QAbstractScrollArea *>(&widget))
        if (area->horizontalScrollBar()->maximum() > 0)
            cut << QStringLiteral("%1 is scrolled sideways by %2")
                       .arg(named(widget))
                       .arg(area->horizontalScrollBar()->maximum());
    if (const auto *tabs = qobject_cast<const QTabBar *>(&widget))
        if (tabs->count() > 0 && tabs->tabRect(tabs->count() - 1).right() > tabs->width())
            cut << named(widget) + " does not show all its tabs";
}

[[nodiscard]] inline QStringList whatIsCut(const QWidget &window)
{
    QStringList cut;
    for (const QWidget *widget : window.findChildren<QWidget *>())
        if (widget->isVisible())
            addCutWords(*widget, cut);
    return cut;
}

} // namespace hammerline::main_window
