// An instrument handed over and taken over, the logbook backed up.
#include "exchange/exchange.h"
#include "logbook/hand_over.h"
#include "main_window/logbook_files.h"
#include "main_window/main_window.h"

#include <QFileInfo>

namespace hammerline::main_window {

namespace {

QString conflictsText(const logbook::TakenOver &taken)
{
    QStringList lines;
    for (const logbook::Conflict &conflict : taken.conflicts)
        lines << QString::fromStdString(conflict.text());
    return lines.join('\n');
}

} // namespace

void MainWindow::handOver()
{
    const instrument::Instrument instrument = *m_workshop->instrument();
    const auto path = askSave(tr("Hand the instrument over"), tr("Instruments (*.json)"), "json",
                              proposedName(instrument, tr("file")));
    if (!path)
        return;
    const auto document = m_workshop->book().handOver(instrument.id);
    if (!document)
        return tellFaults(tr("Nothing was handed over"), document.faults());
    const auto written = exchange::writeFile(path->toStdString(), document.value(), exchange::Overwrite::Yes);
    if (!written)
        return tellFaults(tr("Nothing was handed over"), written.faults());
    m_prompts.tell(this, {tr("The instrument is handed over"), QFileInfo(*path).fileName(),
                          tr("Its whole history and its photographs are in the file; buyer and price too."),
                          prompts::Weight::Question});
}

void MainWindow::takeOver()
{
    const auto path = m_prompts.chooseFile(this, {prompts::FileWish::Use::Open,
                                                  tr("An instrument to take over"),
                                                  tr("Instruments (*.json);;All files (*)"),
                                                  {},
                                                  {}});
    if (!path)
        return;
    const auto document = exchange::readFile(path->toStdString(), logbook::mostHandOverBytes);
    if (!document)
        return tellFaults(tr("Nothing was taken over"), document.faults());
    const auto taken = m_workshop->book().takeOver(document.value(), path->toStdString(), m_workshop->stamp());
    if (!taken)
        return tellFaults(tr("Nothing was taken over"), taken.faults());
    if (!taken.value().conflicts.empty())
        return m_prompts.tell(this,
                              {tr("Nothing was taken over"),
                               tr("Both logbooks went on with these. Undo on one side what should not stand, then "
                                  "hand over from there again."),
                               conflictsText(taken.value())});
    m_workshop->instrumentsTouched();
    m_workshop->chooseInstrument(taken.value().instrument);
    if (taken.value().added == 0)
        m_prompts.tell(this,
                       {tr("Nothing to take over"), tr("All of it was here already."), {}, prompts::Weight::Question});
}

void MainWindow::backUp()
{
    const auto path =
        askSave(tr("Back the logbook up"), tr("Logbooks (*.hammerline)"), "hammerline", tr("workshop-copy"));
    if (!path)
        return;
    const auto copied = m_workshop->book().copyTo(path->toStdString());
    if (!copied)
        tellFaults(tr("No backup was made"), copied.faults());
}

} // namespace hammerline::main_window
