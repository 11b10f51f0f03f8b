#include "main_window/main_window.h"

#include <QApplication>
#include <QIcon>

#include <chrono>

namespace hammerline::main_window {

namespace {

readings::Instant now()
{
    return std::chrono::time_point_cast<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

} // namespace

int runDesktop(QApplication &application, const std::optional<QString> &logbook)
{
    QSettings settings(QSettings::IniFormat, QSettings::UserScope, "hammerline", "hammerline");
    wording::applyTheme(application, themeFor(Settings(settings).theme()));
    QApplication::setWindowIcon(QIcon(":/icons/hammerline.svg"));
    prompts::DialogPrompts prompts;
    MainWindow window({prompts, settings, now});
    if (logbook)
        window.openLogbook(*logbook);
    window.show();
    return QApplication::exec();
}

} // namespace hammerline::main_window
