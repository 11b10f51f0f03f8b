// An instrument handed over and taken over, the logbook backed up.
#include "exchange/exchange.h"
#include "exchange/tolerance_json.h"
#include "logbook/hand_over.h"
#include "main_window/logbook_files.h"
#include "main_window/main_window.h"
#include "seal/key_store.h"

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

QString grouped(const std::string &digest)
{
    return QString::fromStdString(seal::groupedFingerprint(digest));
}

/// Absent: the user thought better of it.
std::optional<logbook::HandedSale> askSale(prompts::Prompts &prompts, QWidget *parent)
{
    enum Choice { Without, With, Cancel };
    const int chosen = prompts.ask(
        parent, {MainWindow::tr("Hand the instrument over"),
                 MainWindow::tr("Do buyer and price go along?"),
                 MainWindow::tr("Left out, the file tells neither whether the instrument is sold nor that it was "
                                "delivered. The owner's name goes along. A whole file brings the rest later."),
                 {MainWindow::tr("Leave out"), MainWindow::tr("Hand over too"), MainWindow::tr("Cancel")}});
    if (chosen == Cancel)
        return std::nullopt;
    return chosen == With ? logbook::HandedSale::GoesAlong : logbook::HandedSale::StaysHere;
}

void tellTaken(prompts::Prompts &prompts, QWidget *parent, const logbook::TakenOver &taken)
{
    const bool nothing = taken.added == 0;
    const QString vouched =
        taken.digest.empty()
            ? MainWindow::tr("Nothing vouches for this file: it is of version 1, which has no digests. Whether it was "
                             "altered since it was handed over cannot be told.")
            : MainWindow::tr("Compare this digest with the one told where it was handed over:\n%1")
                  .arg(grouped(taken.digest));
    const QString sale =
        taken.saleLeftOut ? MainWindow::tr("Buyer and price were left out of the file.") + "\n\n" : QString();
    prompts.tell(parent,
                 {nothing ? MainWindow::tr("Nothing to take over") : MainWindow::tr("The instrument is taken over"),
                  nothing ? MainWindow::tr("All of it was here already.")
                          : MainWindow::tr("Entries of its history added: %1").arg(taken.added),
                  sale + vouched, taken.digest.empty() ? prompts::Weight::Warning : prompts::Weight::Question});
}

} // namespace

void MainWindow::handOver()
{
    const instrument::Instrument instrument = *m_workshop->instrument();
    const auto sale = askSale(m_prompts, this);
    if (!sale)
        return;
    const auto path = askSave(tr("Hand the instrument over"), tr("Instruments (*.json)"), "json",
                              proposedName(instrument, tr("file")));
    if (!path)
        return;
    const auto document = m_workshop->book().handOver(instrument.id, *sale);
    if (!document)
        return tellFaults(tr("Nothing was handed over"), document.faults());
    const auto written = exchange::writeFile(path->toStdString(), document.value(), exchange::Overwrite::Yes);
    if (!written)
        return tellFaults(tr("Nothing was handed over"), written.faults());
    const QString inside = *sale == logbook::HandedSale::GoesAlong
                               ? tr("Its whole history and its photographs are in the file; buyer and price too.")
                           : logbook::tellsOfDelivery(document.value())
                               ? tr("Its history and its photographs are in the file, without buyer and price. That "
                                    "it was delivered is told all the same: more was written of the instrument "
                                    "since, which builds on that.")
                               : tr("Its history and its photographs are in the file, without buyer and price.");
    m_prompts.tell(this, {tr("The instrument is handed over"), QFileInfo(*path).fileName(),
                          inside + "\n\n" +
                              tr("Tell this digest to whoever takes it over, by another way than the file:\n%1")
                                  .arg(grouped(logbook::digestIn(document.value()))),
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
    const auto taken = m_workshop->book().takeOver(document.value(), path->toStdString(), m_workshop->stamp(),
                                                   exchange::toleranceSetFaults);
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
    tellTaken(m_prompts, this, taken.value());
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
