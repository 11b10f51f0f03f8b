#include "main_window/while_painting.h"

#include "outcome/outcome.h"

#include <QTimer>

#include <gtest/gtest.h>

#include <thread>

namespace hammerline::main_window {
namespace {

TEST(WhilePainting, TheWindowsThreadGoesOnUnderABusyCursor)
{
    int ticks = 0;
    bool wasBusy = false;
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, [&] {
        ++ticks;
        wasBusy = QApplication::overrideCursor() != nullptr;
    });
    timer.start(5);
    const auto thread = whilePainting([] {
        std::this_thread::sleep_for(std::chrono::milliseconds(200));
        return std::this_thread::get_id();
    });
    EXPECT_NE(thread, std::this_thread::get_id());
    EXPECT_GT(ticks, 1);
    EXPECT_TRUE(wasBusy);
    EXPECT_EQ(QApplication::overrideCursor(), nullptr);
}

TEST(WhilePainting, WhatTheWorkThrowsIsThrownHere)
{
    EXPECT_THROW(whilePainting([]() -> int { throw outcome::BrokenWorld("gone"); }), outcome::BrokenWorld);
    EXPECT_EQ(QApplication::overrideCursor(), nullptr);
}

} // namespace
} // namespace hammerline::main_window
