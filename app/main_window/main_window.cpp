#include "main_window/main_window.h"

#include "main_window/bench_menu.h"
#include "main_window/bench_tools.h"
#include "main_window/logbook_page.h"
#include "main_window/seal_menu.h"
#include "main_window/spot_check_menu.h"
#include "main_window/start_page.h"
#include "study_desk/study_desk.h"
#include "wording/deed_text.h"
#include "wording/dressed_window.h"
#include "wording/wording.h"

#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QScreen>
#include <QStackedWidget>

#include <algorithm>

namespace hammerline::main_window {

namespace {

constexpr QSize usualSize{1366, 768};

/// As usual, but with its title bar no taller than a small screen.
QSize firstSize(const QScreen &screen)
{
    constexpr int titleBar = 40;
    const QSize room = screen.availableSize() - QSize(0, titleBar);
    return room.width() < usualSize.width() ? usualSize : usualSize.boundedTo(room);
}

/// Where a pass goes on: the quantity read last, else the first that is judged.
catalogue::Quantity quantityToBegin(const Workshop &workshop)
{
    const auto &readings = workshop.pass()->readings;
    const auto newest = std::ranges::max_element(readings, {}, &readings::Reading::at);
    if (newest != readings.end())
        return newest->place.quantity;
    if (workshop.set() && !workshop.set()->entries.empty())
        return workshop.set()->entries.begin()->first;
    return catalogue::Quantity::Blow;
}

/// Passes that are there and not shown, since the file is damaged: nobody is to begin another because of that.
bool hasUnreadablePasses(const Workshop &workshop)
{
    if (!workshop.instrument() || workshop.pass())
        return false;
    try {
        return !workshop.passesOf(workshop.instrument()->id).empty();
    } catch (const outcome::BrokenWorld &) {
        return true;
    }
}

} // namespace

MainWindow::MainWindow(const Surroundings &surroundings, QWidget *parent)
    : QMainWindow(parent),
      m_prompts(surroundings.prompts),
      m_settings(surroundings.settings),
      m_clock(surroundings.clock),
      m_keyFile(surroundings.keyFile),
      m_sounder(surroundings.sounder),
      m_workshop(std::make_unique<Workshop>(surroundings.clock)),
      m_actions(makeActions(this)),
      m_pages(new QStackedWidget),
      m_start(new StartPage)
{
    setObjectName("mainWindow");
    m_pages->addWidget(m_start);
    setCentralWidget(m_pages);
    resize(firstSize(*screen()));
    restoreGeometry(m_settings.geometry());
    connectStart();
    connectActions();
    new SealMenu({this, m_actions.checkRecord, m_actions.trustedKeys, m_prompts, m_clock, m_keyFile});
    m_workshop->setPerson(m_settings.person().toStdString());
    tick(m_actions, m_settings);
    m_timer.setInterval(pollMilliseconds);
    m_timer.start();
    showState();
    wording::dress(*this);
}

MainWindow::~MainWindow()
{
    m_timer.stop();
    m_workshop->disconnect();
    if (m_work)
        views().bench()->work(nullptr, {});
    m_workshop->close();
}

LogbookPage &MainWindow::work()
{
    if (!m_work) {
        m_work = new LogbookPage(*m_workshop);
        connectParts();
        addMenus();
        tellFirstStep();
        m_pages->addWidget(m_work); // when it is whole: it is styled here
    }
    return *m_work;
}

Views &MainWindow::views()
{
    return work().views();
}

void MainWindow::addMenus()
{
    bench::BenchView *bench = views().bench();
    new BenchMenu({this, m_actions.bench, bench, *m_workshop, m_prompts, m_settings.store()});
    auto *tools =
        new BenchTools({this, m_actions.bench, bench, m_prompts, m_settings.store(), m_sounder, views().studies()});
    connect(tools, &BenchTools::benchWanted, this, [this] { views().go(View::Bench); });
    auto *checks = new SpotCheckMenu({this, m_actions.spotChecks, *m_workshop, views(), m_prompts});
    connect(checks, &SpotCheckMenu::readBy, this, [this](const QString &person) { m_settings.setPerson(person); });
    connect(&m_work->panel(), &WorkshopPanel::leaveCheckWanted, checks, &SpotCheckMenu::leaveFor);
}

void MainWindow::connectStart()
{
    connect(m_start, &StartPage::newWanted, this, &MainWindow::askNewLogbook);
    connect(m_start, &StartPage::openWanted, this, &MainWindow::askOpenLogbook);
    connect(m_start, &StartPage::recentWanted, this, &MainWindow::openLogbook);
    connect(&m_timer, &QTimer::timeout, this, &MainWindow::poll);
}

void MainWindow::connectParts()
{
    const Views *views = &m_work->views();
    const WorkshopPanel *panel = &m_work->panel();
    connect(panel, &WorkshopPanel::takeInWanted, this, &MainWindow::takeIn);
    connect(panel, &WorkshopPanel::beginPassWanted, this, &MainWindow::beginPass);
    connect(panel, &WorkshopPanel::toleranceWanted, this, &MainWindow::chooseSet);
    connect(m_workshop.get(), &Workshop::passChosen, this, &MainWindow::followPass);
    connect(m_workshop.get(), &Workshop::instrumentsChanged, this, &MainWindow::showState);
    connect(m_workshop.get(), &Workshop::readingsChanged, this, &MainWindow::nameUndo);
    const bench::BenchView *bench = views->bench();
    connect(bench, &bench::BenchView::firstStepWanted, this, &MainWindow::firstStep);
    connect(bench, &bench::BenchView::stored, m_workshop.get(), &Workshop::passTouched);
    connect(bench, &bench::BenchView::askedFor, this, [this](catalogue::Quantity quantity, keyboard::Note note) {
        m_workshop->select({quantity, note});
    });
    connect(&m_work->foot(), &StripArea::noteChosen, this,
            [this](keyboard::Note note) { goTo(m_workshop->selection().quantity, note); });
    connect(views, &Views::pairChosen, this, &MainWindow::goTo);
    connect(views, &Views::itemChosen, this, &MainWindow::goToItem);
    connect(views, &Views::acceptWanted, this, &MainWindow::acceptItems);
    connect(views, &Views::sendBackWanted, this, &MainWindow::sendItemsBack);
    connect(views, &Views::shown, this, [this](View view) {
        if (view == View::Bench)
            this->views().bench()->focusField();
    });
    views->plan()->setPrompts(&m_prompts);
    views->file()->setPrompts(&m_prompts);
    views->studies()->setPrompts(&m_prompts);
    views->shop()->setPrompts(&m_prompts);
    views->plan()->setSettings(&m_settings.store());
    connect(views->plan(), &PlanView::setWanted, this, &MainWindow::judgeBy);
    connect(views->chart(), &ChartView::saveWanted, this, &MainWindow::saveChart);
    connect(views->trouble(), &TroubleBar::tryAgain, this, &MainWindow::poll);
    m_work->foot().strip().installEventFilter(this);
}

void MainWindow::connectActions()
{
    const auto on = [this](QAction *action, void (MainWindow::*deed)()) {
        connect(action, &QAction::triggered, this, deed);
    };
    on(m_actions.newLogbook, &MainWindow::askNewLogbook);
    on(m_actions.openLogbook, &MainWindow::askOpenLogbook);
    connect(m_actions.newWindow, &QAction::triggered, this, &MainWindow::openAnotherWindow);
    on(m_actions.importReadings, &MainWindow::importReadings);
    on(m_actions.exportReadings, &MainWindow::exportReadings);
    on(m_actions.makeRecord, &MainWindow::makeRecord);
    on(m_actions.saveChart, &MainWindow::saveChart);
    on(m_actions.handOver, &MainWindow::handOver);
    on(m_actions.takeOver, &MainWindow::takeOver);
    on(m_actions.backUp, &MainWindow::backUp);
    on(m_actions.undo, &MainWindow::undo);
    on(m_actions.redo, &MainWindow::redo);
    connect(m_actions.person, &QAction::triggered, this, &MainWindow::askPerson);
    on(m_actions.takeIn, &MainWindow::takeIn);
    on(m_actions.changeInstrument, &MainWindow::changeInstrument);
    on(m_actions.chooseSet, &MainWindow::chooseSet);
    on(m_actions.beginPass, &MainWindow::beginPass);
    on(m_actions.changePass, &MainWindow::changePass);
    on(m_actions.acceptItem, &MainWindow::acceptItem);
    on(m_actions.sendItemBack, &MainWindow::sendItemBack);
    on(m_actions.changeState, &MainWindow::changeState);
    on(m_actions.signPass, &MainWindow::signPass);
    on(m_actions.reopenPass, &MainWindow::reopenPass);
    connect(m_actions.quit, &QAction::triggered, this, &QWidget::close);
    connect(m_actions.recent, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
    for (std::size_t i = 0; i < m_actions.views.size(); ++i)
        connect(m_actions.views[i], &QAction::triggered, this, [this, i] { views().go(static_cast<View>(i)); });
    const std::array units{std::pair{m_actions.unitOfPass, std::optional<units::Unit>{}},
                           std::pair{m_actions.unitMillimetre, std::optional{units::Unit::Millimetre}},
                           std::pair{m_actions.unitInch, std::optional{units::Unit::Inch}}};
    for (const auto &[action, unit] : units)
        connect(action, &QAction::triggered, this, [this, chosen = unit] { setUnit(chosen); });
    for (std::size_t i = 0; i < textPercents.size(); ++i)
        connect(m_actions.textSizes[i], &QAction::triggered, this, [this, i] { setTextPercent(textPercents[i]); });
    const std::array themes{std::pair{m_actions.themeSystem, ThemeChoice::System},
                            std::pair{m_actions.themeLight, ThemeChoice::Light},
                            std::pair{m_actions.themeDark, ThemeChoice::Dark}};
    for (const auto &[action, choice] : themes)
        connect(action, &QAction::triggered, this, [this, chosen = choice] { setTheme(chosen); });
}

void MainWindow::showState()
{
    const bool open = m_workshop->isOpen();
    m_pages->setCurrentWidget(open ? static_cast<QWidget *>(m_work) : m_start);
    m_start->setRecent(m_settings.recent());
    const auto *instrument = m_workshop->instrument();
    const PassInView *pass = m_workshop->pass();
    for (QAction *action : {m_actions.newWindow, m_actions.takeIn, m_actions.takeOver, m_actions.backUp,
                            m_actions.acceptItem, m_actions.sendItemBack})
        action->setEnabled(open);
    for (QAction *action : {m_actions.changeInstrument, m_actions.changeState, m_actions.chooseSet, m_actions.beginPass,
                            m_actions.importReadings, m_actions.makeRecord, m_actions.handOver})
        action->setEnabled(instrument != nullptr);
    for (QAction *action : {m_actions.changePass, m_actions.exportReadings, m_actions.saveChart, m_actions.signPass,
                            m_actions.reopenPass})
        action->setEnabled(pass != nullptr);
    QStringList title;
    if (instrument)
        title << QString::fromStdString(instrument->name);
    if (pass)
        title << nameOf(*pass);
    if (open)
        title << QFileInfo(QString::fromStdString(m_workshop->book().path())).completeBaseName();
    title << tr("Hammerline");
    setWindowTitle(title.join(QStringLiteral(" · ")));
    if (m_work)
        tellFirstStep();
    nameUndo();
}

void MainWindow::tellFirstStep()
{
    if (!m_workshop->instrument())
        views().bench()->sayFirst(tr("No instrument yet."),
                                  tr("Take in the first one: a name and the kind of action suffice to begin."),
                                  tr("Take in an instrument"));
    else if (hasUnreadablePasses(*m_workshop))
        views().bench()->sayFirst(tr("Its passes cannot be read."), tr("Nothing was changed by looking."), {});
    else
        views().bench()->sayFirst(tr("No pass yet."),
                                  tr("Begin one as found, before anything is turned; then read key by key."),
                                  tr("Begin a pass"));
}

void MainWindow::nameUndo()
{
    const auto name = [](QAction *action, const QString &verb, const std::optional<logbook::Deed> &deed) {
        action->setEnabled(deed.has_value());
        action->setText(deed ? verb + ' ' + wording::deedText(*deed).replace('&', "&&") : verb);
    };
    name(m_actions.undo, tr("&Undo"), m_workshop->undoable());
    name(m_actions.redo, tr("Do a&gain"), m_workshop->redoable());
}

void MainWindow::followPass()
{
    const PassInView *pass = m_workshop->pass();
    const auto *instrument = m_workshop->instrument();
    if (!pass || !instrument) {
        views().bench()->work(nullptr, {});
    } else {
        followForm();
        auto stamper = [this] { return m_workshop->stamp(); };
        views().bench()->work(std::make_unique<bench::EntrySession>(m_workshop->book(), *instrument, pass->pass,
                                                                    m_workshop->set(), stamper),
                              quantityToBegin(*m_workshop));
    }
    showState();
}

void MainWindow::followForm()
{
    const PassInView *pass = m_workshop->pass();
    const readings::Pass said = pass ? pass->pass : readings::Pass{};
    const auto form = wording::formOf(m_settings.shownUnit().value_or(said.unit), said.gauge.resolution);
    work().setForm(form);
}

void MainWindow::goTo(catalogue::Quantity quantity, keyboard::Note note)
{
    m_workshop->select({quantity, note});
    views().bench()->ask(quantity, note);
}

void MainWindow::goToItem(const review::Item &item)
{
    if (!m_workshop->pass() || m_workshop->pass()->pass.id != item.pass)
        m_workshop->choosePass(item.pass);
    goTo(item.verdict.quantity, item.verdict.note);
    views().go(View::Bench);
}

void MainWindow::poll()
{
    try {
        if (m_workshop->poll())
            views().bench()->refresh();
        if (sender() != &m_timer) {
            views().trouble()->hide();
            if (hasUnreadablePasses(*m_workshop))
                m_workshop->chooseInstrument(m_workshop->instrument()->id);
            m_backups.tryAgain();
        }
        m_timer.start();
        if (!m_workshop->isOpen())
            return;
        if (const auto trouble = m_backups.look(m_workshop->book(), m_clock()))
            tellTrouble(QString::fromStdString(*trouble));
    } catch (const outcome::BrokenWorld &broken) {
        m_timer.stop(); // told once; "Try again" starts it anew
        tellTrouble(QString::fromUtf8(broken.what()));
    }
}

void MainWindow::goToPair(readings::PassId pass, const Selection &selection)
{
    m_workshop->choosePass(pass);
    goTo(selection.quantity, selection.note);
}

void MainWindow::closeEvent(QCloseEvent *event)
{
    m_settings.setGeometry(saveGeometry());
    QMainWindow::closeEvent(event);
}

} // namespace hammerline::main_window
