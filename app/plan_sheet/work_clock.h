#pragma once
// How long the work takes, told by a clock that is started and stopped, or by a number typed before ticking. What is
// ticked off takes the time since the tick before it; a typed number goes before the clock. Neither: nobody timed it.

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>

#include <chrono>
#include <functional>

class QDoubleSpinBox;
class QLabel;
class QPushButton;

namespace hammerline::plan_sheet {

class WorkClock : public QWidget {
    Q_OBJECT
public:
    /// Time that only goes forward.
    using Ticks = std::function<std::chrono::milliseconds()>;

    explicit WorkClock(QWidget *parent = nullptr);
    /// Another time than the machine's; for tests.
    void setTicks(Ticks ticks) { m_ticks = std::move(ticks); }
    /// What the work that is ticked off now took; begins anew from here. 0: nobody timed it.
    [[nodiscard]] std::chrono::seconds take();
    /// Stops and forgets.
    void reset();

private:
    void run(bool running);
    [[nodiscard]] std::chrono::milliseconds elapsed() const;
    void tell();

    QElapsedTimer m_own;
    Ticks m_ticks;
    std::chrono::milliseconds m_since{};  ///< when it was started, or last taken from
    std::chrono::milliseconds m_before{}; ///< run before it was last stopped
    QTimer m_second;
    QPushButton *m_button;
    QLabel *m_time;
    QDoubleSpinBox *m_typed;
};

} // namespace hammerline::plan_sheet
