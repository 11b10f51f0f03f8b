#include "main_window/guarded_application.h"

#include "main_window/main_window.h"

namespace hammerline::main_window {

namespace {

MainWindow *windowOf(const QObject *source)
{
    for (const QObject *each = source; each != nullptr; each = each->parent())
        if (auto *window = qobject_cast<MainWindow *>(const_cast<QObject *>(each)))
            return window;
    if (auto *window = qobject_cast<MainWindow *>(QApplication::activeWindow()))
        return window;
    for (QWidget *widget : QApplication::topLevelWidgets())
        if (auto *window = qobject_cast<MainWindow *>(widget))
            return window;
    return nullptr;
}

} // namespace

bool guarded(const QObject *source, const std::function<void()> &work)
{
    try {
        work();
        return true;
    } catch (const outcome::BrokenWorld &broken) {
        MainWindow *window = windowOf(source);
        if (window == nullptr)
            throw;
        window->tellTrouble(QString::fromUtf8(broken.what()));
        return false;
    }
}

bool GuardedApplication::notify(QObject *receiver, QEvent *event)
{
    bool handled = true;
    guarded(receiver, [&] { handled = QApplication::notify(receiver, event); });
    return handled;
}

} // namespace hammerline::main_window
