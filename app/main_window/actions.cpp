#include "main_window/actions.h"

#include <QActionGroup>
#include <QCoreApplication>
#include <QMenuBar>

namespace hammerline::main_window {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Actions", text);
}

QAction *add(QMenu *menu, const char *text, const char *name, const QKeySequence &key = {})
{
    QAction *action = menu->addAction(tr(text));
    action->setObjectName(name);
    action->setShortcut(key);
    return action;
}

/// One of several that exclude each other.
QAction *addChoice(QActionGroup *group, QMenu *menu, const char *text, const char *name)
{
    QAction *action = add(menu, text, name);
    action->setCheckable(true);
    group->addAction(action);
    return action;
}

void addLogbookMenu(Actions &made, QMenu *menu)
{
    made.newLogbook = add(menu, "&New logbook…", "newLogbook", QKeySequence::New);
    made.openLogbook = add(menu, "&Open a logbook…", "openLogbook", QKeySequence::Open);
    made.recent = menu->addMenu(tr("Last &used"));
    made.newWindow = add(menu, "New &window", "newWindow", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N));
    menu->addSeparator();
    made.importReadings = add(menu, "&Import readings as a pass…", "importReadings");
    made.exportReadings = add(menu, "&Export the readings…", "exportReadings", QKeySequence(Qt::CTRL | Qt::Key_E));
    made.saveChart = add(menu, "S&ave the chart…", "saveChart");
    made.makeRecord = add(menu, "Make the &record…", "makeRecord", QKeySequence(Qt::CTRL | Qt::Key_R));
    menu->addSeparator();
    made.handOver = add(menu, "&Hand the instrument over…", "handOver");
    made.takeOver = add(menu, "&Take an instrument over…", "takeOver");
    made.backUp = add(menu, "&Back the logbook up…", "backUp");
    menu->addSeparator();
    made.checkRecord = add(menu, "Chec&k a record…", "checkRecord");
    made.trustedKeys = add(menu, "Trusted ke&ys…", "trustedKeys");
    menu->addSeparator();
    made.quit = add(menu, "&Close the window", "closeWindow", QKeySequence::Quit);
}

void addEditMenu(Actions &made, QMenu *menu)
{
    made.undo = add(menu, "&Undo", "undo", QKeySequence::Undo);
    made.redo = add(menu, "Do a&gain", "redo", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z));
    menu->addSeparator();
    made.person = add(menu, "&Who is measuring…", "person");
}

void addInstrumentMenu(Actions &made, QMenu *menu)
{
    made.takeIn = add(menu, "&Take in an instrument…", "takeIn", QKeySequence(Qt::CTRL | Qt::Key_I));
    made.changeInstrument = add(menu, "&Change the instrument…", "changeInstrument");
    made.changeState = add(menu, "&Where it stands…", "changeState");
    made.chooseSet = add(menu, "What it is &judged by…", "chooseSet", QKeySequence(Qt::CTRL | Qt::Key_J));
    menu->addSeparator();
    made.beginPass = add(menu, "&Begin a pass…", "beginPass", QKeySequence(Qt::CTRL | Qt::Key_B));
    made.changePass = add(menu, "Change the &pass…", "changePass");
    menu->addSeparator();
    made.acceptItem = add(menu, "&Accept the note as it is…", "acceptItem", QKeySequence(Qt::ALT | Qt::Key_A));
    made.sendItemBack = add(menu, "Send the note bac&k…", "sendItemBack", QKeySequence(Qt::ALT | Qt::Key_K));
    made.signPass = add(menu, "&Sign the pass…", "signPass");
    made.spotChecks = menu->addMenu(tr("Spot ch&ecks"));
    made.reopenPass = add(menu, "&Open a signed pass again…", "reopenPass");
}

void addViewMenu(Actions &made, QMainWindow *window, QMenu *menu)
{
    static constexpr std::array texts{"&Bench", "&Charts",  "&Readings", "&Out of tolerance", "&Plan", "Re&view",
                                      "&File",  "&Studies", "S&hop"};
    static constexpr std::array names{"viewBench",  "viewCharts", "viewReadings", "viewWorst", "viewPlan",
                                      "viewReview", "viewFile",   "viewStudies",  "viewShop"};
    for (std::size_t i = 0; i < made.views.size(); ++i)
        made.views[i] =
            add(menu, texts[i], names[i], QKeySequence(Qt::CTRL | Qt::Key(Qt::Key_1 + static_cast<int>(i))));
    menu->addSeparator();
    auto *units = new QActionGroup(window);
    QMenu *unitMenu = menu->addMenu(tr("&Unit shown"));
    made.unitOfPass = addChoice(units, unitMenu, "As the &pass says", "unitOfPass");
    made.unitMillimetre = addChoice(units, unitMenu, "&Millimetres", "unitMillimetre");
    made.unitInch = addChoice(units, unitMenu, "&Inches", "unitInch");
    auto *sizes = new QActionGroup(window);
    QMenu *sizeMenu = menu->addMenu(tr("&Text size"));
    for (std::size_t i = 0; i < textPercents.size(); ++i) {
        made.textSizes[i] = addChoice(sizes, sizeMenu, "", "textSize");
        made.textSizes[i]->setText(QString("%1 %").arg(textPercents[i]));
    }
    auto *themes = new QActionGroup(window);
    QMenu *themeMenu = menu->addMenu(tr("&Light or dark"));
    made.themeSystem = addChoice(themes, themeMenu, "As the &system", "themeSystem");
    made.themeLight = addChoice(themes, themeMenu, "&Light", "themeLight");
    made.themeDark = addChoice(themes, themeMenu, "&Dark", "themeDark");
}

} // namespace

Actions makeActions(QMainWindow *window)
{
    Actions made{};
    addLogbookMenu(made, window->menuBar()->addMenu(tr("&Logbook")));
    addEditMenu(made, window->menuBar()->addMenu(tr("&Deeds")));
    addInstrumentMenu(made, window->menuBar()->addMenu(tr("&Instrument")));
    made.bench = window->menuBar()->addMenu(tr("&Bench"));
    addViewMenu(made, window, window->menuBar()->addMenu(tr("&View")));
    return made;
}

void tick(const Actions &actions, const Settings &settings)
{
    const auto unit = settings.shownUnit();
    (!unit                        ? actions.unitOfPass
     : *unit == units::Unit::Inch ? actions.unitInch
                                  : actions.unitMillimetre)
        ->setChecked(true);
    for (std::size_t i = 0; i < textPercents.size(); ++i)
        actions.textSizes[i]->setChecked(textPercents[i] == settings.textPercent());
    switch (settings.theme()) {
    case ThemeChoice::System:
        return actions.themeSystem->setChecked(true);
    case ThemeChoice::Light:
        return actions.themeLight->setChecked(true);
    case ThemeChoice::Dark:
        return actions.themeDark->setChecked(true);
    }
}

} // namespace hammerline::main_window
