#include "main_window/bench_menu.h"

#include "bench/keys_dialog.h"
#include "exchange/exchange.h"
#include "main_window/logbook_files.h"
#include "wording/wording.h"

#include <QDateTime>
#include <QFileInfo>
#include <QLocale>

namespace hammerline::main_window {

namespace {

paper::Size usualPaper()
{
    const bool american = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
    return american ? paper::Size::Letter : paper::Size::A4;
}

QString headingOf(const readings::Pass &pass)
{
    const QDateTime began = QDateTime::fromMSecsSinceEpoch(pass.began.time_since_epoch().count());
    return BenchMenu::tr("%1, %2").arg(wording::nameOf(pass.purpose),
                                       QLocale().toString(began.date(), QLocale::LongFormat));
}

} // namespace

bench_sheet::BenchSheetInput benchSheetOf(const Workshop &workshop, const bench::EntrySession &session,
                                          const route::Choice &choice)
{
    bench_sheet::BenchSheetInput input;
    input.instrument = QString::fromStdString(session.instrument().name);
    input.pass = headingOf(session.pass());
    input.details = session.pass();
    input.choice = choice;
    for (const readings::Place &place : session.route())
        input.stops.push_back({place.quantity, place.note});
    input.sections = session.instrument().sections;
    input.set = workshop.set();
    input.form = wording::formOf(session.pass());
    return input;
}

BenchMenu::BenchMenu(const BenchPlace &place) : QObject(place.window), m_place(place)
{
    QAction *sheet = add(tr("&Print the bench sheet…"), "benchSheet", &BenchMenu::printSheet);
    add(tr("&Keys and felt faults…"), "benchKeys", &BenchMenu::changeKeys);
    connect(m_place.menu, &QMenu::aboutToShow, this,
            [this, sheet] { sheet->setEnabled(m_place.bench->session() != nullptr); });
    m_place.bench->setFaultWords(bench::faultWordsFrom(m_place.settings));
    m_place.bench->setKeys(bench::BenchKeys::from(m_place.settings));
}

QAction *BenchMenu::add(const QString &text, const char *name, void (BenchMenu::*deed)())
{
    QAction *action = m_place.menu->addAction(text);
    action->setObjectName(name);
    connect(action, &QAction::triggered, this, deed);
    return action;
}

void BenchMenu::changeKeys()
{
    auto *dialog = new bench::KeysDialog(bench::BenchKeys::from(m_place.settings),
                                         bench::faultWordsFrom(m_place.settings), m_place.window);
    connect(dialog, &bench::KeysDialog::ready, this,
            [this](const bench::BenchKeys &keys, const std::vector<bench::FaultWord> &faults) {
                keys.store(m_place.settings);
                bench::storeFaultWords(m_place.settings, faults);
                m_place.bench->setKeys(keys);
                m_place.bench->setFaultWords(faults);
            });
    connect(dialog, &QDialog::finished, m_place.bench, &bench::BenchView::focusField);
    dialog->open();
}

void BenchMenu::printSheet()
{
    const bench::EntrySession *session = m_place.bench->session();
    if (!session)
        return m_place.prompts.tell(m_place.window, {tr("No bench sheet"), tr("Begin a pass first."), {}});
    const route::Choice choice = m_place.bench->keepChoice();
    const QString name = proposedName(session->instrument(), tr("bench-sheet"));
    const auto path =
        m_place.prompts.chooseFile(m_place.window, {prompts::FileWish::Use::Save, tr("Print the bench sheet"),
                                                    tr("Pages (*.pdf)"), name + ".pdf", "pdf"});
    if (!path)
        return;
    const QByteArray pages =
        bench_sheet::makeBenchSheet(benchSheetOf(m_place.workshop, *session, choice), {usualPaper()});
    const auto written = exchange::writeFile(
        path->toStdString(), {pages.constData(), static_cast<std::size_t>(pages.size())}, exchange::Overwrite::Yes);
    if (!written)
        return m_place.prompts.tell(m_place.window, {tr("No bench sheet was made"), tr("The file was not written."),
                                                     wording::faultsText(written.faults())});
    m_place.prompts.tell(m_place.window, {tr("The bench sheet is made"), QFileInfo(*path).fileName(),
                                          tr("The pass keeps its order: typed in, the readings follow the boxes."),
                                          prompts::Weight::Question});
}

} // namespace hammerline::main_window
