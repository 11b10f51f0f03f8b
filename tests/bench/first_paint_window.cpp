// usage: first_paint_window [LOGBOOK]. The desktop as main.cpp starts it; writes the moment of its first paint to
// standard output and, where it was handed a logbook, the moments in which the bench and then the review queue are
// painted.
#include "bench/painted_application.h"
#include "main_window/guarded_application.h"
#include "main_window/main_window.h"

#include <QTimer>

#include <cstdio>

namespace {

using hammerline::main_window::MainWindow;
using hammerline::main_window::View;

using Application = hammerline::bench::PaintedApplication<hammerline::main_window::GuardedApplication>;

void stampAndQuit(Application &application)
{
    std::printf("%lld\n", hammerline::bench::monotonicNow());
    application.onPainted({});
    QTimer::singleShot(0, &application, &QCoreApplication::quit); // some platforms paint before the event loop begins
}

/// The paint that shows the logbook; then the review queue's.
void stampOfBench(Application &application, QMainWindow &window)
{
    auto &opening = dynamic_cast<MainWindow &>(window);
    if (!opening.workshop().isOpen())
        return;
    std::printf("%lld\n", hammerline::bench::monotonicNow());
    application.onPainted([&application](QMainWindow &) { stampAndQuit(application); });
    opening.views().go(View::Review);
}

} // namespace

int main(int argc, char **argv)
{
    Application application(argc, argv);
    std::optional<QString> logbook;
    if (argc > 1)
        logbook = QString::fromLocal8Bit(argv[1]);
    application.onPainted([&](QMainWindow &) {
        if (!logbook)
            return stampAndQuit(application);
        std::printf("%lld\n", hammerline::bench::monotonicNow());
        application.onPainted([&application](QMainWindow &window) { stampOfBench(application, window); });
    });
    return hammerline::main_window::runDesktop(application, logbook, {});
}
