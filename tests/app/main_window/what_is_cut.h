#pragma once
// What a person cannot read whole now: words that are cut, or elided with nothing that tells the rest, and pages that
// must be scrolled sideways. A table of figures may be wider than the window and is scrolled then (WCAG 2.1, 1.4.10
// names tables as what need not reflow); its words are to be whole all the same, and so are those of drawings.

#include "charts/bars.h"
#include "charts/chart_pane.h"
#include "charts/study_pane.h"
#include "support/drawn_words.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QFontInfo>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyleOptionComboBox>
#include <QStyleOptionFrame>
#include <QTabBar>
#include <QTableView>
#include <QTextBrowser>
#include <QTreeView>

namespace hammerline::main_window {

inline QString named(const QWidget &widget)
{
    return QStringLiteral("%1 \"%2\"").arg(widget.metaObject()->className(), widget.objectName());
}

/// What ends in an ellipsis and says all of it by its tooltip.
inline bool isToldElsewhere(const QString &shown, const QString &tooltip)
{
    return shown.contains(QChar(0x2026)) && tooltip.size() + 1 >= shown.size();
}

inline void addCutLabel(const QLabel &label, QStringList &cut)
{
    if (label.text().isEmpty() || !label.pixmap(Qt::ReturnByValue).isNull())
        return;
    const bool tooLow = label.wordWrap() && label.heightForWidth(label.width()) > label.height() + 1;
    const bool tooNarrow = !label.wordWrap() && label.sizeHint().width() > label.width() + 1;
    const bool elided = label.text().endsWith(QChar(0x2026)) && label.text().size() > 1 &&
                        !isToldElsewhere(label.text(), label.toolTip());
    if (tooLow || tooNarrow || elided)
        cut << named(label) + " is cut: " + label.text().left(60);
}

inline void addCutButton(const QAbstractButton &button, QStringList &cut)
{
    if (!button.text().isEmpty() && button.sizeHint().width() > button.width() + 1 &&
        !isToldElsewhere(button.text(), button.toolTip()))
        cut << named(button) + " is cut: " + button.text();
}

inline void addCutChoice(const QComboBox &box, QStringList &cut)
{
    QStyleOptionComboBox option;
    option.initFrom(&box);
    option.editable = box.isEditable();
    const QRect field = box.style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, &box);
    if (box.fontMetrics().horizontalAdvance(box.currentText()) > field.width() + 1 && box.toolTip().isEmpty())
        cut << named(box) + " is cut: " + box.currentText();
}

/// What a person types may be longer than its field; what the program says in it may not.
inline void addCutHint(const QLineEdit &line, QStringList &cut)
{
    QStyleOptionFrame option;
    option.initFrom(&line);
    const int room = line.style()->subElementRect(QStyle::SE_LineEditContents, &option, &line).width();
    if (line.text().isEmpty() && line.fontMetrics().horizontalAdvance(line.placeholderText()) > room)
        cut << named(line) + " cuts its hint: " + line.placeholderText();
}

/// Whether a text stands in a room, gone on in further lines where it may.
inline bool stands(const QString &text, const QFontMetrics &metrics, const QSize &room, bool wraps)
{
    if (!wraps)
        return metrics.size(0, text).width() <= room.width() + 1;
    const QRect needed = metrics.boundingRect({0, 0, room.width(), 1 << 16}, Qt::TextWordWrap, text);
    return needed.width() <= room.width() + 1 && needed.height() <= room.height() + 1;
}

inline void addCutHeads(const QTableView &table, QStringList &cut)
{
    const QHeaderView &heads = *table.horizontalHeader();
    for (int column = 0; column < heads.count() && heads.isVisible(); ++column) {
        const QString head = heads.model()->headerData(column, Qt::Horizontal).toString();
        const QVariant own = heads.model()->headerData(column, Qt::Horizontal, Qt::FontRole);
        const QFontMetrics metrics(own.isValid() ? own.value<QFont>() : heads.font());
        const bool wraps = (static_cast<int>(heads.defaultAlignment()) & Qt::TextWordWrap) != 0;
        const bool tooNarrow =
            !wraps && !heads.isSortIndicatorShown() && heads.sectionSizeHint(column) > heads.sectionSize(column) + 1;
        if (!heads.isSectionHidden(column) &&
            (tooNarrow || !stands(head, metrics, {heads.sectionSize(column), heads.height()}, wraps)))
            cut << named(table) + " cuts its head: " + head;
    }
}

inline void addCutCells(const QTableView &table, QStringList &cut)
{
    for (int row = 0; row < table.model()->rowCount(); ++row)
        for (int column = 0; column < table.model()->columnCount(); ++column) {
            const QModelIndex at = table.model()->index(row, column);
            const QString text = at.data().toString();
            const bool spans = table.columnSpan(row, column) > 1;
            const QVariant own = at.data(Qt::FontRole);
            const QFontMetrics metrics(own.isValid() ? own.value<QFont>() : table.font());
            if (!table.isColumnHidden(column) && !spans && table.indexWidget(at) == nullptr &&
                at.data(Qt::ToolTipRole).toString().isEmpty() &&
                !stands(text, metrics, {table.columnWidth(column), table.rowHeight(row)}, table.wordWrap()))
                cut << named(table) + " cuts a cell that no tooltip tells: " + text.left(60);
        }
}

inline void addCutRows(const QTreeView &tree, QStringList &cut)
{
    for (QModelIndex at = tree.indexAt({1, 1}); at.isValid(); at = tree.indexBelow(at)) {
        const QString text = at.data().toString();
        const QVariant own = at.data(Qt::FontRole);
        const QFontMetrics metrics(own.isValid() ? own.value<QFont>() : tree.font());
        if (!stands(text, metrics, tree.visualRect(at).size(), tree.wordWrap()) &&
            !at.data(Qt::ToolTipRole).toString().contains(text))
            cut << named(tree) + " cuts a row that no tooltip tells: " + text;
    }
}

inline void addCutNames(const QTabBar &tabs, QStringList &cut)
{
    for (int tab = 0; tab < tabs.count(); ++tab)
        if (tabs.tabRect(tab).left() < 0 || tabs.tabRect(tab).right() > tabs.width() ||
            tabs.fontMetrics().horizontalAdvance(tabs.tabText(tab)) > tabs.tabRect(tab).width())
            cut << named(tabs) + " does not show all of: " + tabs.tabText(tab);
}

inline void addSideways(const QAbstractScrollArea &area, QStringList &cut)
{
    const bool isPage = qobject_cast<const QScrollArea *>(&area) || qobject_cast<const QTextBrowser *>(&area) ||
                        qobject_cast<const QPlainTextEdit *>(&area) || qobject_cast<const QTreeView *>(&area);
    if (isPage && area.horizontalScrollBar()->maximum() > 0)
        cut << QStringLiteral("%1 is scrolled sideways by %2")
                   .arg(named(area))
                   .arg(area.horizontalScrollBar()->maximum());
}

/// Of a chart, painted once more as it is shown.
inline void addCutDrawing(const QWidget &chart, QStringList &cut)
{
    const wording::Palette &ink = wording::paletteFor(chart);
    const int small = QFontInfo(wording::font(wording::TextSize::Small)).pixelSize();
    const auto paint = [&](QPainter &painter, const QRectF &rect) {
        if (const auto *pane = qobject_cast<const charts::ChartPane *>(&chart))
            charts::renderChart(painter, rect, pane->data(), ink, small);
        if (const auto *pane = qobject_cast<const charts::BarsPane *>(&chart))
            charts::renderBars(painter, rect, pane->data(), ink, small);
        if (const auto *pane = qobject_cast<const charts::StudyPane *>(&chart); pane && !pane->data().trials.empty())
            charts::renderChart(painter, rect, pane->data(), ink, small);
    };
    for (const support::DrawnWords &run : support::drawnWords(chart.size(), paint))
        if (run.cut || run.text.contains(QStringLiteral("...")))
            cut << named(chart) + " cuts in its drawing: " + run.text.left(60);
}

inline void addCutWords(const QWidget &widget, QStringList &cut)
{
    addCutDrawing(widget, cut);
    if (const auto *label = qobject_cast<const QLabel *>(&widget))
        addCutLabel(*label, cut);
    if (const auto *button = qobject_cast<const QAbstractButton *>(&widget))
        addCutButton(*button, cut);
    if (const auto *box = qobject_cast<const QComboBox *>(&widget))
        addCutChoice(*box, cut);
    if (const auto *line = qobject_cast<const QLineEdit *>(&widget))
        addCutHint(*line, cut);
    if (const auto *table = qobject_cast<const QTableView *>(&widget); table && table->model() != nullptr) {
        addCutHeads(*table, cut);
        addCutCells(*table, cut);
    }
    if (const auto *tree = qobject_cast<const QTreeView *>(&widget))
        addCutRows(*tree, cut);
    if (const auto *tabs = qobject_cast<const QTabBar *>(&widget))
        addCutNames(*tabs, cut);
    if (const auto *area = qobject_cast<const QAbstractScrollArea *>(&widget))
        addSideways(*area, cut);
}

/// A sentence for each.
[[nodiscard]] inline QStringList whatIsCut(const QWidget &window)
{
    QStringList cut;
    for (const QWidget *widget : window.findChildren<QWidget *>())
        if (widget->isVisible())
            addCutWords(*widget, cut);
    cut.removeDuplicates();
    return cut;
}

} // namespace hammerline::main_window
