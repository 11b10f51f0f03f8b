// Keys that the main window takes where no part of it does.
#include "main_window/logbook_page.h"
#include "main_window/main_window.h"

#include <QKeyEvent>
#include <QPushButton>

namespace hammerline::main_window {

namespace {

bool beginsNumber(const QKeyEvent &key)
{
    const QString text = key.text();
    return key.modifiers().testFlag(Qt::ControlModifier) || text.isEmpty()
               ? false
               : text.at(0).isDigit() || text == "." || text == ",";
}

} // namespace

/// Enter presses the button that has the focus, as Space does.
void MainWindow::keyPressEvent(QKeyEvent *event)
{
    auto *button = qobject_cast<QPushButton *>(focusWidget());
    if (button && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter))
        button->click();
    else
        QMainWindow::keyPressEvent(event);
}

bool MainWindow::eventFilter(QObject *watched, QEvent *event)
{
    // A number typed while the strip has the focus is meant for the bench.
    if (watched == &m_work->foot().strip() && event->type() == QEvent::KeyPress) {
        auto &key = *static_cast<QKeyEvent *>(event);
        if (beginsNumber(key) && views().bench()->session()) {
            views().go(View::Bench);
            views().bench()->takeKey(key);
            return true;
        }
    }
    return QMainWindow::eventFilter(watched, event);
}

} // namespace hammerline::main_window
