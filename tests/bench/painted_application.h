#pragma once
// An application that tells when a window has been painted: the moment in which the event that painted it was done
// with, its picture handed to the platform.

#include <QEvent>
#include <QMainWindow>

#include <chrono>
#include <functional>
#include <utility>

namespace hammerline::bench {

/// Nanoseconds of the monotonic clock, which all processes of a machine share.
inline long long monotonicNow()
{
    return std::chrono::duration_cast<std::chrono::nanoseconds>(std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

/// `Application`: what the product or the yardstick runs on.
template <typename Application>
class PaintedApplication : public Application {
public:
    using Application::Application;

    /// Runs at the end of the event that paints a main window.
    void onPainted(std::function<void(QMainWindow &)> act) { m_act = std::move(act); }

    bool notify(QObject *receiver, QEvent *event) override
    {
        ++m_depth;
        const bool handled = Application::notify(receiver, event);
        if (event->type() == QEvent::Paint && receiver->isWidgetType()) // children may cover the window itself
            if (auto *window = qobject_cast<QMainWindow *>(static_cast<QWidget *>(receiver)->window()))
                m_painted = window;
        if (--m_depth == 0 && m_painted) {
            QMainWindow *window = std::exchange(m_painted, nullptr);
            if (const auto act = m_act) // which may set another
                act(*window);
        }
        return handled;
    }

private:
    std::function<void(QMainWindow &)> m_act;
    QMainWindow *m_painted = nullptr;
    int m_depth = 0;
};

} // namespace hammerline::bench
