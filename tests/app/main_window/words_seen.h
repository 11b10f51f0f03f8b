#pragma once
// Every word that a window can show a person or tell a screen reader now: texts, tooltips and accessible names of what
// is visible, the cells of tables and trees, the stories of the strip's keys, the notes of a chart.

#include "charts/chart_pane.h"
#include "keyboard_strip/keyboard_strip.h"
#include "main_window/main_window.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTextEdit>

namespace hammerline::main_window {

inline void addCells(const QAbstractItemModel &model, const QModelIndex &parent, QStringList &words)
{
    for (int row = 0; row < model.rowCount(parent); ++row)
        for (int column = 0; column < model.columnCount(parent); ++column) {
            const QModelIndex at = model.index(row, column, parent);
            for (const int role : {int(Qt::DisplayRole), int(Qt::ToolTipRole), int(Qt::AccessibleTextRole)})
                words << at.data(role).toString();
            if (column == 0)
                addCells(model, at, words);
        }
}

inline void addValues(const tolerance::Judgement &judgement, QStringList &words)
{
    for (const tolerance::Verdict &verdict : judgement.verdicts)
        if (verdict.value)
            words << QString::number(verdict.value->inDisplay());
}

inline void addOwnWords(const QWidget &widget, QStringList &words)
{
    words << widget.toolTip() << widget.statusTip() << widget.accessibleName() << widget.accessibleDescription();
    if (const auto *label = qobject_cast<const QLabel *>(&widget))
        words << label->text();
    if (const auto *button = qobject_cast<const QAbstractButton *>(&widget))
        words << button->text();
    if (const auto *line = qobject_cast<const QLineEdit *>(&widget))
        words << line->text() << line->placeholderText();
    if (const auto *text = qobject_cast<const QTextEdit *>(&widget))
        words << text->toPlainText();
    if (const auto *box = qobject_cast<const QComboBox *>(&widget))
        for (int i = 0; i < box->count(); ++i)
            words << box->itemText(i);
    if (const auto *view = qobject_cast<const QAbstractItemView *>(&widget))
        if (view->model() != nullptr)
            addCells(*view->model(), {}, words);
    if (const auto *strip = qobject_cast<const keyboard_strip::KeyboardStrip *>(&widget))
        for (const auto &key : strip->model().keys)
            words << key.story;
}

/// All of it, a line each.
[[nodiscard]] inline QString wordsSeen(MainWindow &window)
{
    QStringList words{window.windowTitle()};
    for (const QWidget *widget : window.findChildren<QWidget *>())
        if (widget->isVisible())
            addOwnWords(*widget, words);
    for (const QAction *action : window.findChildren<QAction *>())
        words << action->text() << action->toolTip();
    if (window.views().current() == View::Charts)
        if (const auto chart = window.views().chart()->data()) {
            addValues(chart->now, words);
            if (chart->before)
                addValues(*chart->before, words);
            for (const analysis::Trend &trend : chart->trends)
                for (const auto &point : trend.points)
                    words << QString::number(point.mean);
        }
    words.removeAll(QString());
    return words.join('\n');
}

} // namespace hammerline::main_window
