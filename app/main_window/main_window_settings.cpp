// What the window remembers for the person: files used last, theme, unit, size of the text.
#include "main_window/main_window.h"
#include "wording/wording.h"

#include <QApplication>
#include <QMenu>

namespace hammerline::main_window {

void MainWindow::fillRecent()
{
    m_actions.recent->clear();
    for (const QString &path : m_settings.recent())
        m_actions.recent->addAction(path, this, [this, path] { openLogbook(path); });
    m_actions.recent->setEnabled(!m_actions.recent->isEmpty());
}

void MainWindow::setTheme(ThemeChoice choice)
{
    m_settings.setTheme(choice);
    wording::applyTheme(*qApp, themeFor(choice));
}

void MainWindow::setUnit(std::optional<units::Unit> unit)
{
    m_settings.setShownUnit(unit);
    followForm();
}

void MainWindow::setTextPercent(int percent)
{
    if (percent == m_settings.textPercent())
        return;
    // Fonts are chosen when a window is built: another one takes this one's place, at the same note.
    m_settings.setTextPercent(percent);
    wording::setTextScale(percent / 100.0);
    wording::applyTheme(*qApp, themeFor(m_settings.theme()));
    m_settings.setGeometry(saveGeometry());
    MainWindow *another = openAnotherWindow();
    if (m_workshop->pass())
        another->goToPair(m_workshop->pass()->pass.id, m_workshop->selection());
    close();
}

} // namespace hammerline::main_window
