// A program that types at the bench is killed with SIGKILL at random moments in mid-pass; every reading whose verdict
// it had shown, and every mark of a confirmed one, is there when the logbook is opened again. HAMMERLINE_CRASH_ROUNDS
// says how often (20).
#include "logbook/verify_history.h"
#include "support/workshop_on_disk.h"

#include <QProcess>
#include <QThread>
#include <gtest/gtest.h>

#include <algorithm>
#include <csignal>
#include <iostream>
#include <random>
#include <sstream>

namespace hammerline::bench {
namespace {

struct Shown {
    readings::PassId pass = 0;
    readings::Place place{};
    units::Amount value{};
    bool confirmed = false;
};

std::vector<Shown> shownIn(const QByteArray &lines)
{
    std::vector<Shown> all;
    std::istringstream text(lines.toStdString());
    for (std::string line; std::getline(text, line);) {
        std::istringstream fields(line);
        long long pass = 0, value = 0;
        int quantity = 0, note = 0, confirmed = 0;
        if (fields >> pass >> quantity >> note >> value >> confirmed)
            all.push_back({pass,
                           {static_cast<catalogue::Quantity>(quantity), keyboard::Note(note), 1},
                           units::Amount(units::Dimension::Length, value),
                           confirmed != 0});
    }
    return all;
}

class Crash : public ::testing::Test {
protected:
    /// What the typist had shown when it was killed, that long after its first line.
    QByteArray typedUntilKilled(int milliseconds)
    {
        QProcess typist;
        typist.start(HAMMERLINE_TYPIST, {QString::fromStdString(shop.path())});
        EXPECT_TRUE(typist.waitForReadyRead(60'000)) << typist.readAllStandardError().toStdString();
        QThread::msleep(static_cast<unsigned long>(milliseconds));
        kill(static_cast<pid_t>(typist.processId()), SIGKILL);
        typist.waitForFinished();
        EXPECT_EQ(typist.exitStatus(), QProcess::CrashExit) << "it ended by itself: " << typist.exitCode();
        return typist.readAllStandardOutput();
    }
    void expectThere(const logbook::Logbook &book, const Shown &shown)
    {
        if (m_loaded != shown.pass) {
            m_readings = book.readings(shown.pass);
            m_slips = book.confirmedSlips(shown.pass);
            m_loaded = shown.pass;
        }
        const auto found = std::ranges::find(m_readings, shown.place, &readings::Reading::place);
        ASSERT_NE(found, m_readings.end()) << "lost: pass " << shown.pass << ' ' << shown.place.note.name();
        ASSERT_EQ(found->value, shown.value);
        if (!shown.confirmed)
            return;
        const auto slip = std::ranges::find(m_slips, shown.place, &logbook::ConfirmedSlip::place);
        ASSERT_NE(slip, m_slips.end()) << "its mark is lost: pass " << shown.pass << ' ' << shown.place.note.name();
        ++marks;
    }
    void round(int milliseconds)
    {
        const auto all = shownIn(typedUntilKilled(milliseconds));
        const auto book = logbook::Logbook::open(shop.path());
        m_loaded = 0;
        for (const Shown &shown : all)
            expectThere(book, shown);
        readings += all.size();
    }

    support::WorkshopOnDisk shop;
    std::size_t readings = 0, marks = 0;

private:
    readings::PassId m_loaded = 0;
    std::vector<readings::Reading> m_readings;
    std::vector<logbook::ConfirmedSlip> m_slips;
};

TEST_F(Crash, KilledInMidPassNoReadingWhoseVerdictWasShownIsLost)
{
    const int wanted = qEnvironmentVariableIntValue("HAMMERLINE_CRASH_ROUNDS");
    const int rounds = wanted > 0 ? wanted : 20;
    std::mt19937 random(20'261'125);
    std::uniform_int_distribution<int> milliseconds(0, 300);
    for (int i = 0; i < rounds && !HasFatalFailure(); ++i)
        round(milliseconds(random));
    // A slow machine (or a build with sanitizers) shows little in that time and is given more.
    for (int longer = 600; (marks == 0 || readings <= static_cast<std::size_t>(rounds)) && longer < 20'000; longer *= 2)
        round(longer);
    std::cout << rounds << " kills, " << readings << " readings shown, " << marks << " confirmed, all there\n";
    EXPECT_GT(readings, static_cast<std::size_t>(rounds));
    EXPECT_GT(marks, 0u);
    const auto check = logbook::verifyHistory(shop.path());
    EXPECT_TRUE(check.whole()) << check.alterations.front().text();
}

} // namespace
} // namespace hammerline::bench
