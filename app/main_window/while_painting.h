#pragma once
// Work of a few tenths of a second that no window needs to take part in, such as stretching a passphrase: done on a
// thread of its own while the window keeps painting and shows the busy cursor. Keys and clicks wait. What the work
// throws is thrown here.

#include <QApplication>
#include <QEventLoop>

#include <chrono>
#include <future>

namespace hammerline::main_window {

class BusyCursor {
public:
    BusyCursor() { QApplication::setOverrideCursor(Qt::WaitCursor); }
    ~BusyCursor() { QApplication::restoreOverrideCursor(); }
    BusyCursor(const BusyCursor &) = delete;
    BusyCursor &operator=(const BusyCursor &) = delete;
};

/// `work` must touch nothing that the window's thread touches meanwhile.
template <class Work>
auto whilePainting(Work work)
{
    const BusyCursor busy;
    auto result = std::async(std::launch::async, std::move(work));
    while (result.wait_for(std::chrono::milliseconds(10)) != std::future_status::ready)
        QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
    return result.get();
}

} // namespace hammerline::main_window
