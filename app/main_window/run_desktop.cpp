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

int runDesktop(QApplication &application, const std::optional<QString> &logbook, const std::string &keyFile)
{
    QSettings settings(QSettings::IniFormat, QSettings::UserScope, "hammerline", "hammerline");
    wording::setTextScale(Settings(settings).textPercent() / 100.0);
    wording::applyTheme(application, themeFor(Settings(settings).theme()));
    QApplication::setWindowIcon(QIcon(":/icons/hammerline.svg"));
    prompts::DialogPrompts prompts;
    const auto sounder = sounding::makeSounder();
    auto *window = new MainWindow({prompts, settings, now, keyFile, sounder.get()});
    window->setAttribute(Qt::WA_DeleteOnClose);
    if (logbook)
        window->openOncePainted(*logbook);
    window->show();
    const int status = QApplication::exec();
    // Whatever is still open uses prompts and settings.
    for (QWidget *widget : QApplication::topLevelWidgets())
        if (qobject_cast<MainWindow *>(widget))
            delete widget;
    return status;
}

} // namespace hammerline::main_window
