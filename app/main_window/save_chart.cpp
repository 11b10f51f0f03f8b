#include "main_window/save_chart.h"

#include "main_window/logbook_files.h"
#include "wording/wording.h"

#include <QObject>
#include <QWidget>

namespace hammerline::main_window {

namespace {

/// What of the quantity, as a part of the name of the file.
QString partOf(charts::Question question)
{
    switch (question) {
    case charts::Question::WhereAlongTheKeyboard:
        break;
    case charts::Question::HowSpread:
        return QObject::tr("-spread");
    case charts::Question::WhichNotesMoved:
        return QObject::tr("-moved");
    case charts::Question::HasItDrifted:
        return QObject::tr("-drift");
    case charts::Question::DoTheyAgree:
        return QObject::tr("-agreement");
    }
    return {};
}

} // namespace

void saveChart(QWidget *window, prompts::Prompts &prompts, const charts::ChartData &chart,
               const instrument::Instrument &instrument)
{
    const QString name = proposedName(instrument, wording::nameOf(chart.quantity).toLower()) + partOf(chart.question);
    const QString filter = QObject::tr("Drawings (*.svg);;Pictures (*.png);;Pages (*.pdf);;Figures (*.csv)");
    const auto path = prompts.chooseFile(
        window, {prompts::FileWish::Use::Save, QObject::tr("Save the chart"), filter, name + ".svg", "svg"});
    if (!path)
        return;
    const auto written = charts::exportChart(chart, *path, wording::paletteFor(*window));
    if (!written)
        prompts.tell(window, {QObject::tr("The chart was not saved"), QObject::tr("The chart was not saved."),
                              wording::faultsText(written.faults())});
}

} // namespace hammerline::main_window
