// What the menus of the window do.
#include "instrument_file/instrument_file.h"
#include "instrument_file/pass_form.h"
#include "instrument_file/tolerance_chooser.h"
#include "main_window/logbook_files.h"
#include "main_window/main_window.h"
#include "main_window/save_chart.h"
#include "study_desk/study_findings.h"
#include "wording/counted.h"
#include "wording/spoken.h"
#include "wording/wording.h"

#include <QFileInfo>

#include <algorithm>

namespace hammerline::main_window {

namespace {

constexpr const char *logbookSuffix = "hammerline";

bool isBuiltIn(const std::string &set)
{
    return std::ranges::count(exchange::builtInToleranceSets(), set, &exchange::BuiltIn::id) > 0;
}

/// What a set may count with: the newest study of each quantity with each gauge.
std::vector<tolerance::FoundUncertainty> uncertaintiesFound(logbook::Logbook &book)
{
    std::vector<tolerance::FoundUncertainty> found;
    for (const study_desk::Findings &findings : study_desk::newestOfEachQuantity(book))
        if (const units::Amount expanded = study_desk::uncertaintyOf(findings); expanded.baseCount() > 0)
            found.push_back({findings.study.quantity, expanded, findings.study.gauge.name,
                             study_desk::dayOf(findings.study).toStdString()});
    return found;
}

QString historyLost()
{
    return MainWindow::tr("The record that it takes the place of was made from a history that this logbook does not "
                          "hold. Either the instrument came here out of another logbook, or this history was written "
                          "anew or cut off since. The new record names the earlier one all the same.");
}

} // namespace

void MainWindow::askNewLogbook()
{
    if (const auto path = askSave(tr("New logbook"), tr("Logbooks (*.hammerline)"), logbookSuffix, tr("workshop")))
        createLogbook(*path);
}

void MainWindow::askOpenLogbook()
{
    const auto path = m_prompts.chooseFile(
        this,
        {prompts::FileWish::Use::Open, tr("Open a logbook"), tr("Logbooks (*.hammerline);;All files (*)"), {}, {}});
    if (path)
        openLogbook(*path);
}

MainWindow *MainWindow::openAnotherWindow()
{
    auto *another = new MainWindow({m_prompts, m_settings.store(), m_clock, m_keyFile, m_sounder});
    another->setAttribute(Qt::WA_DeleteOnClose);
    if (m_workshop->isOpen())
        another->openLogbook(QString::fromStdString(m_workshop->book().path()));
    another->show();
    return another;
}

void MainWindow::firstStep()
{
    if (m_workshop->instrument())
        beginPass();
    else
        takeIn();
}

void MainWindow::takeIn()
{
    auto *form = new instrument_file::InstrumentForm({}, this);
    connect(form, &instrument_file::InstrumentForm::ready, this, [this](const instrument::Instrument &instrument) {
        const auto stored = m_workshop->book().addInstrument(instrument, m_workshop->stamp());
        if (!stored)
            return tellFaults(tr("The instrument was not stored"), stored.faults());
        m_workshop->instrumentsTouched();
        m_workshop->chooseInstrument(stored.value().id);
        chooseSet();
    });
    form->open();
}

void MainWindow::changeInstrument()
{
    auto *form = new instrument_file::InstrumentForm(*m_workshop->instrument(), this);
    connect(form, &instrument_file::InstrumentForm::ready, this, &MainWindow::storeInstrument);
    form->open();
}

void MainWindow::storeInstrument(const instrument::Instrument &instrument)
{
    const auto stored = m_workshop->book().changeInstrument(instrument, m_workshop->stamp(), {});
    if (!stored)
        return tellFaults(tr("The instrument was not stored"), stored.faults());
    m_workshop->instrumentsTouched();
}

void MainWindow::chooseSet()
{
    const instrument::Instrument &instrument = *m_workshop->instrument();
    const auto form = wording::formOf(m_settings.shownUnit().value_or(units::Unit::Millimetre), {});
    auto *chooser =
        new instrument_file::ToleranceChooser(instrument.action, instrument.toleranceId, form, m_prompts, this);
    if (auto own = setOf(instrument); own && !isBuiltIn(instrument.toleranceId))
        chooser->offer({instrument.toleranceId, instrument.toleranceText, *std::move(own)});
    chooser->offerStudies(uncertaintiesFound(m_workshop->book()));
    connect(chooser, &instrument_file::ToleranceChooser::chosen, this, &MainWindow::judgeBy);
    chooser->open();
}

void MainWindow::judgeBy(const exchange::NamedSet &set)
{
    instrument::Instrument judged = *m_workshop->instrument();
    judged.toleranceId = set.id;
    judged.toleranceText = set.text;
    storeInstrument(judged);
}

readings::Pass MainWindow::proposedPass() const
{
    const auto passes = m_workshop->passesOf(m_workshop->instrument()->id);
    readings::Pass proposed;
    if (!passes.empty()) {
        proposed = passes.back();
        proposed.id = 0;
        proposed.uid.clear();
        proposed.remark.clear();
        proposed.climate = {};
        proposed.purpose = passes.back().purpose == readings::Purpose::AsFound ? readings::Purpose::AsLeft
                                                                               : readings::Purpose::Recheck;
    }
    if (!m_settings.person().isEmpty())
        proposed.person = m_settings.person().toStdString();
    proposed.instrument = m_workshop->instrument()->id;
    proposed.began = m_clock();
    return proposed;
}

instrument_file::PassForm *MainWindow::formFor(const readings::Pass &pass)
{
    auto *form = new instrument_file::PassForm(pass, m_workshop->instrument()->action, this);
    std::vector<instrument_file::StudiedGauge> gauges;
    for (const study_desk::Findings &findings : study_desk::newestOfEachGauge(m_workshop->book()))
        gauges.push_back({findings.study.gauge.name, study_desk::stepOf(findings),
                          study_desk::expandedUncertaintyOf(findings), study_desk::dayOf(findings.study)});
    form->offer(std::move(gauges));
    return form;
}

void MainWindow::beginPass()
{
    auto *form = formFor(proposedPass());
    connect(form, &instrument_file::PassForm::ready, this, [this](const readings::Pass &pass) { beginWith(pass, {}); });
    form->open();
}

void MainWindow::beginWith(const readings::Pass &pass, const std::vector<readings::Reading> &imported)
{
    if (!pass.person.empty()) {
        m_settings.setPerson(QString::fromStdString(pass.person));
        m_workshop->setPerson(pass.person);
    }
    logbook::Logbook &book = m_workshop->book();
    const readings::Pass begun = imported.empty() ? book.beginPass(pass, m_workshop->stamp())
                                                  : book.importPass(pass, imported, m_workshop->stamp());
    m_workshop->instrumentsTouched();
    m_workshop->choosePass(begun.id);
    views().go(View::Bench);
    views().bench()->focusField();
}

void MainWindow::changePass()
{
    auto *form = formFor(m_workshop->pass()->pass);
    connect(form, &instrument_file::PassForm::ready, this, [this](const readings::Pass &pass) {
        m_workshop->book().changePass(pass, m_workshop->stamp(), {});
        m_workshop->instrumentsTouched();
        m_workshop->choosePass(pass.id);
    });
    form->open();
}

void MainWindow::importReadings()
{
    const auto path = m_prompts.chooseFile(
        this, {prompts::FileWish::Use::Open, tr("Readings to import"), tr("Readings (*.csv);;All files (*)"), {}, {}});
    if (!path)
        return;
    const auto unit = m_settings.shownUnit().value_or(units::Unit::Millimetre);
    const auto readings = readingsFromFile(path->toStdString(), *m_workshop->instrument(), unit);
    if (!readings)
        return tellFaults(tr("Nothing was imported"), readings.faults());
    auto *form = formFor(proposedPass());
    form->setWindowTitle(wording::counted(std::ssize(readings.value()), tr("A pass of 1 reading from a file"),
                                          tr("A pass of %1 readings from a file")));
    connect(form, &instrument_file::PassForm::ready, this,
            [this, imported = readings.value()](const readings::Pass &pass) { beginWith(pass, imported); });
    form->open();
}

void MainWindow::exportReadings()
{
    const readings::Pass &pass = m_workshop->pass()->pass;
    const QString name =
        proposedName(*m_workshop->instrument(), QString::fromUtf8(readings::idOf(pass.purpose).data()));
    const auto path = askSave(tr("Export the readings"), tr("Readings (*.csv)"), "csv", name);
    if (!path)
        return;
    const auto written = exportPass(m_workshop->book(), pass.id, path->toStdString());
    if (!written)
        tellFaults(tr("Nothing was exported"), written.faults());
}

void MainWindow::saveChart()
{
    const auto chart = views().chart()->data();
    if (!chart)
        return m_prompts.tell(this, {tr("No chart"), tr("There are no readings to draw yet."), {}});
    main_window::saveChart(this, m_prompts, *chart, *m_workshop->instrument());
}

void MainWindow::makeRecord()
{
    const instrument::Instrument instrument = *m_workshop->instrument();
    const auto record = recordOf(m_workshop->book(), instrument, m_workshop->stamp());
    if (!record)
        return tellFaults(tr("No record was made"), record.faults());
    const auto wishes = askRecordWishes(this, m_prompts, m_settings, m_keyFile);
    if (!wishes)
        return;
    const QString name = proposedName(instrument, tr("record"));
    const auto path = askSave(tr("Make the record"), tr("Records (*.pdf)"), "pdf", name);
    if (!path)
        return;
    const auto told = recordOf(m_workshop->book(), instrument, m_workshop->stamp(), wishes->tellSale);
    if (!told)
        return tellFaults(tr("No record was made"), told.faults());
    const auto written = writeRecord(told.value(), *wishes, path->toStdString(), m_keyFile);
    if (!written)
        return tellFaults(tr("No record was made"), written.faults());
    const QString inside = tr("%1 of %2 judged readings lie inside their limits.")
                               .arg(record.value().pairsInside())
                               .arg(record.value().judgedPairs());
    const auto &replaced = written.value();
    const bool held = !replaced || record_pdf::holdsHistoryOf(m_workshop->book(), *replaced);
    m_prompts.tell(this, {tr("The record is made"), QFileInfo(*path).fileName(),
                          held ? inside : inside + "\n\n" + historyLost(),
                          held ? prompts::Weight::Question : prompts::Weight::Warning});
}

void MainWindow::undo()
{
    retrace(m_workshop->undoable(), true);
}

void MainWindow::redo()
{
    retrace(m_workshop->redoable(), false);
}

void MainWindow::retrace(const std::optional<logbook::Deed> &deed, bool back)
{
    if (!deed)
        return;
    const bool atTheBench = deed->pass != 0 && views().bench()->session();
    if (atTheBench)
        return back ? views().bench()->undo() : views().bench()->redo();
    if (back)
        m_workshop->book().undo(*deed, m_workshop->stamp());
    else
        m_workshop->book().redo(*deed, m_workshop->stamp());
    m_workshop->instrumentsTouched();
}

bool MainWindow::askPerson()
{
    const auto person = m_prompts.askText(this, {tr("Who is measuring"), tr("Name or initials"), m_settings.person()});
    if (!person)
        return false;
    m_settings.setPerson(person->trimmed());
    m_workshop->setPerson(person->trimmed().toStdString());
    if (m_workshop->isOpen())
        m_workshop->instrumentsTouched(); // whatever shows the name
    return true;
}

void MainWindow::tellFaults(const QString &title, const std::vector<outcome::Fault> &faults)
{
    m_prompts.tell(this, {title, title + '.', wording::spoken(wording::faultsText(faults))});
}

std::optional<QString> MainWindow::askSave(const QString &title, const QString &filter, const QString &suffix,
                                           const QString &name)
{
    return m_prompts.chooseFile(this, {prompts::FileWish::Use::Save, title, filter, name + '.' + suffix, suffix});
}

} // namespace hammerline::main_window
