// What a screen reader finds: every control of the window and of its dialogs has a name and a role, and takes the focus
// by keyboard.
#include "app/main_window/window_desk.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QTabBar>

namespace hammerline::main_window {
namespace {

/// Part of another control, which speaks for it: the line of a box, the parts of a table, Qt's own bars.
bool speaksThroughItsOwner(const QWidget &widget)
{
    for (const QWidget *owner = widget.parentWidget(); owner; owner = owner->parentWidget())
        if (qobject_cast<const QComboBox *>(owner) || qobject_cast<const QAbstractSpinBox *>(owner) ||
            qobject_cast<const QAbstractItemView *>(owner))
            return true;
    const auto *area = qobject_cast<const QAbstractScrollArea *>(widget.parentWidget());
    return (area && area->viewport() == &widget) || widget.objectName().startsWith("qt_");
}

bool isControl(const QWidget &widget)
{
    return widget.focusPolicy() != Qt::NoFocus && !widget.isHidden() && !speaksThroughItsOwner(widget) &&
           !qobject_cast<const QMenu *>(&widget) && !qobject_cast<const QMenuBar *>(&widget) &&
           !qobject_cast<const QTabBar *>(&widget) && !qobject_cast<const QTabWidget *>(&widget) && !widget.isWindow();
}

std::string described(const QWidget &widget)
{
    return widget.metaObject()->className() + std::string(" \"") + widget.objectName().toStdString() + "\" in " +
           (widget.parentWidget() ? widget.parentWidget()->metaObject()->className() : "nothing");
}

/// Every control in `window`; how many there were.
int expectEveryControlSpeaks(const QWidget &window)
{
    int controls = 0;
    for (QWidget *widget : window.findChildren<QWidget *>()) {
        if (!isControl(*widget))
            continue;
        ++controls;
        QAccessibleInterface *access = QAccessible::queryAccessibleInterface(widget);
        if (access == nullptr) {
            ADD_FAILURE() << "is not to be found: " << described(*widget);
            continue;
        }
        EXPECT_FALSE(access->text(QAccessible::Name).isEmpty()) << "has no name: " << described(*widget);
        EXPECT_NE(access->role(), QAccessible::NoRole) << "has no role: " << described(*widget);
        EXPECT_TRUE(access->role() != QAccessible::Client || qobject_cast<QScrollArea *>(widget))
            << "has no role: " << described(*widget);
        EXPECT_TRUE((widget->focusPolicy() & Qt::TabFocus) || qobject_cast<QAbstractButton *>(widget))
            << "is not reached by Tab: " << described(*widget);
    }
    return controls;
}

using AccessibleDesk = WindowDesk;

TEST_F(AccessibleDesk, EveryControlOfEveryViewHasANameAndARole)
{
    const auto window = openWindow();
    type(*window, "3.1");
    for (const char *view :
         {"viewBench", "viewCharts", "viewReadings", "viewWorst", "viewPlan", "viewReview", "viewShop"}) {
        trigger(*window, view);
        QCoreApplication::processEvents();
        SCOPED_TRACE(view);
        EXPECT_GT(expectEveryControlSpeaks(*window), 4);
    }
}

/// Whether the focus changes how the control is painted, in its window's picture.
bool showsFocus(MainWindow &window, QWidget &control, QWidget &elsewhere)
{
    const QRect place = QRect(control.mapTo(&window, QPoint()), control.size()).adjusted(-4, -4, 4, 4);
    elsewhere.setFocus();
    QCoreApplication::processEvents();
    const QImage without = window.grab(place).toImage();
    control.setFocus(Qt::TabFocusReason);
    QCoreApplication::processEvents();
    return window.grab(place).toImage() != without;
}

TEST_F(AccessibleDesk, TheFocusIsSeenWhereverItIs)
{
    wording::applyTheme(*qApp, wording::Theme::Light);
    const auto window = openWindow();
    window->resize(1366, 768);
    QApplication::setActiveWindow(window.get());
    auto *field = part<QLineEdit>(*window, "entryField");
    auto *strip = part<QWidget>(*window, "strip");
    int seen = 0;
    for (QWidget *control : window->findChildren<QWidget *>()) {
        if (!isControl(*control) || !control->isVisible() || !control->isEnabled())
            continue;
        EXPECT_TRUE(showsFocus(*window, *control, control == field ? *strip : *field)) << described(*control);
        ++seen;
    }
    EXPECT_GT(seen, 6);
}

TEST_F(AccessibleDesk, EveryActionHasWords)
{
    const auto window = openWindow();
    for (const QMenu *menu : window->menuBar()->findChildren<QMenu *>())
        for (const QAction *action : menu->actions())
            EXPECT_FALSE(action->text().isEmpty() && !action->isSeparator()) << menu->title().toStdString();
}

TEST_F(AccessibleDesk, EveryControlOfTheDialogsHasANameAndARole)
{
    const auto window = openWindow();
    const std::pair<const char *, const char *> dialogs[] = {
        {"takeIn", "instrumentForm"},      {"changeInstrument", "instrumentForm"},
        {"chooseSet", "toleranceChooser"}, {"beginPass", "passForm"},
        {"changePass", "passForm"},        {"benchKeys", "keysDialog"}};
    for (const auto &[action, name] : dialogs) {
        SCOPED_TRACE(action);
        trigger(*window, action);
        auto *dialog = part<QDialog>(*window, name);
        ASSERT_NE(dialog, nullptr);
        EXPECT_GT(expectEveryControlSpeaks(*dialog), 2);
        EXPECT_FALSE(dialog->windowTitle().isEmpty());
        delete dialog;
    }
    QTest::keyClick(part<QWidget>(*window, "way"), Qt::Key_Space);
    EXPECT_GT(expectEveryControlSpeaks(*part<QDialog>(*window, "wayDialog")), 2);
}

TEST_F(AccessibleDesk, TheStartPageSpeaksToo)
{
    MainWindow window(surroundings());
    window.show();
    EXPECT_GT(expectEveryControlSpeaks(window), 1);
}

} // namespace
} // namespace hammerline::main_window
