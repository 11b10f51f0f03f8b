// How a logbook comes into the window.

#include "main_window/logbook_page.h"
#include "main_window/main_window.h"
#include "wording/palette.h"

#include <QFileInfo>
#include <QLabel>
#include <QStackedWidget>

#include <utility>

namespace hammerline::main_window {

void MainWindow::paintEvent(QPaintEvent *event)
{
    QMainWindow::paintEvent(event);
    if (!m_work) // what costs no time is seen at once; the page of work is ready before a hand finds the mouse
        QTimer::singleShot(0, this, &MainWindow::afterFirstPaint);
}

void MainWindow::afterFirstPaint()
{
    work();
    if (const auto awaited = std::exchange(m_awaited, {}); awaited && !openLogbook(*awaited))
        showState();
}

void MainWindow::openOncePainted(const QString &path)
{
    m_awaited = path;
    auto *told = new QLabel(tr("Opening %1…").arg(QFileInfo(path).completeBaseName()));
    told->setFont(wording::font(wording::TextSize::Large));
    told->setAlignment(Qt::AlignCenter);
    m_pages->setCurrentIndex(m_pages->addWidget(told));
}

bool MainWindow::openLogbook(const QString &path)
{
    work();
    try {
        m_workshop->use(logbook::Logbook::open(path.toStdString()));
    } catch (const outcome::BrokenWorld &broken) {
        tellTrouble(QString::fromUtf8(broken.what()));
        return false;
    }
    m_settings.remember(path);
    views().trouble()->hide();
    showState();
    views().bench()->focusField();
    return true;
}

bool MainWindow::createLogbook(const QString &path)
{
    auto created = logbook::Logbook::create(path.toStdString(), m_workshop->stamp());
    if (!created) {
        tellFaults(tr("No logbook was made"), created.faults());
        return false;
    }
    work();
    m_workshop->use(std::move(created).value());
    m_settings.remember(path);
    showState();
    return true;
}

void MainWindow::tellTrouble(const QString &what)
{
    if (!m_workshop->isOpen())
        return m_prompts.tell(this, {tr("The logbook was not opened"), what, tr("The file was left as it is.")});
    views().trouble()->tell(what, true);
    tellFirstStep();
}

} // namespace hammerline::main_window
