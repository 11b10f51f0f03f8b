#pragma once
// A day's work at a logbook, step by step, on a disk that fails at every call in turn, and with a power cut at every
// call in turn. Whatever had been acknowledged must be there afterwards, whole, and nothing of what had failed.
//
// Every call is tried where HAMMERLINE_FAULTS is set to "all"; otherwise one in `DaysWork::every`.

#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"
#include "support/faulty_disk.h"

#include <algorithm>
#include <cstdio>
#include <optional>

namespace hammerline::logbook {

/// Where the work of a day stands: the logbook while it is open, and where it lies.
struct Desk {
    std::string path{};
    std::optional<Logbook> book{};
};

/// What is done on a day: each step is one deed, or one opening or closing.
struct DaysWork {
    int steps = 0;
    void (*step)(Desk &desk, int number) = nullptr;
    /// What a reader sees, as text.
    std::string (*stateOf)(const Logbook &book) = nullptr;
    /// A logbook that lies there in the morning, which the first step opens; empty: the first step makes one.
    std::string kept{};
    std::int64_t every = 7; ///< which calls are tried in a short test
};

class FaultyDays : public LogbookTest {
protected:
    using DiskFault = test_support::DiskFault;

    explicit FaultyDays(const DaysWork &todo) : work(todo)
    {
        Desk plain = deskAt("plain");
        disk.arm(DiskFault::None, 0);
        for (int number = 0; number < work.steps; ++number) {
            work.step(plain, number);
            after.push_back(work.stateOf(*plain.book));
        }
        plain.book.reset();
        Desk counted = deskAt("counted");
        disk.arm(DiskFault::None, 0);
        EXPECT_EQ(workFrom(counted, 0), work.steps);
        counted.book.reset();
        calls = disk.calls();
    }
    void eachFaultOnce()
    {
        for (const DiskFault fault : {DiskFault::IoError, DiskFault::Full, DiskFault::ShortWrite})
            for (std::int64_t at = 1; at <= calls && !HasFailure(); at += stride()) {
                SCOPED_TRACE(testing::Message() << "fault " << static_cast<int>(fault) << " at call " << at);
                failAndGoOn(fault, at);
            }
        tell("one call fails");
    }
    void eachFaultForGood()
    {
        for (const DiskFault fault : {DiskFault::IoError, DiskFault::Full, DiskFault::ShortWrite})
            for (std::int64_t at = 1; at <= calls && !HasFailure(); at += stride()) {
                SCOPED_TRACE(testing::Message() << "fault " << static_cast<int>(fault) << " from call " << at);
                failAndOpenAnew(fault, at);
            }
        tell("all calls fail from one on");
    }
    void eachPowerCut()
    {
        for (unsigned seed = 1; seed <= 3; ++seed)
            for (std::int64_t at = 1; at <= calls && !HasFailure(); at += stride()) {
                SCOPED_TRACE(testing::Message() << "cut at call " << at << ", seed " << seed);
                EXPECT_TRUE(survivesCut(at, seed));
            }
        tell("power cuts");
    }
    /// Whether all that was acknowledged before the cut is there after it.
    [[nodiscard]] bool survivesCut(std::int64_t at, unsigned seed)
    {
        std::mt19937 dice(seed);
        Desk desk = deskAt("cut");
        disk.arm(DiskFault::PowerCut, at);
        const int reached = workFrom(desk, 0);
        desk.book.reset();
        disk.comeBack(dice);
        ++tried;
        if (reached == 0 && work.kept.empty())
            return true; // nothing was acknowledged yet
        try {
            return isRightAfter(reached, work.stateOf(Logbook::open(desk.path))) && verifyHistory(desk.path).whole();
        } catch (const outcome::BrokenWorld &) {
            return false;
        }
    }

    test_support::FaultyDisk disk;
    DaysWork work;
    std::vector<std::string> after; ///< each step
    std::int64_t calls = 0;

private:
    /// With nothing there yet but what was kept.
    [[nodiscard]] Desk deskAt(const std::string &name) const
    {
        for (const auto &entry : std::filesystem::directory_iterator(folder))
            if (entry.path().filename().string().starts_with(name))
                std::filesystem::remove(entry.path());
        if (!work.kept.empty()) {
            std::filesystem::copy_file(work.kept, file(name));
            std::filesystem::permissions(file(name), std::filesystem::perms::owner_all);
        }
        return {.path = file(name)};
    }
    /// From the first call to the last, or those that fit into a short test.
    [[nodiscard]] std::int64_t stride() const
    {
        const char *wish = std::getenv("HAMMERLINE_FAULTS");
        return wish != nullptr && std::string(wish) == "all" ? 1 : work.every;
    }
    /// The step that failed, or how many there are.
    [[nodiscard]] int workFrom(Desk &desk, int first) const
    {
        for (int number = first; number < work.steps; ++number)
            try {
                work.step(desk, number);
            } catch (const outcome::BrokenWorld &) {
                return number;
            }
        return work.steps;
    }
    [[nodiscard]] std::string acknowledged(int steps) const
    {
        if (steps == 0 && work.kept.empty())
            return {};
        return after[static_cast<std::size_t>(std::max(steps, 1)) - 1]; // opening adds nothing to what was kept
    }
    [[nodiscard]] std::string reopened(const std::string &path) const
    {
        EXPECT_TRUE(verifyHistory(path).whole());
        return work.stateOf(Logbook::open(path));
    }
    void failAndGoOn(DiskFault fault, std::int64_t at)
    {
        Desk desk = deskAt("failing");
        disk.arm(fault, at, false);
        const int reached = workFrom(desk, 0);
        disk.heal();
        tried += disk.struck() ? 1 : 0;
        if (desk.book) {
            EXPECT_EQ(work.stateOf(*desk.book), acknowledged(reached));
        }
        EXPECT_EQ(workFrom(desk, reached), work.steps) << "it goes on once the disk is well again";
        desk.book.reset();
        EXPECT_EQ(reopened(desk.path), after.back());
    }
    void failAndOpenAnew(DiskFault fault, std::int64_t at)
    {
        Desk desk = deskAt("failing");
        disk.arm(fault, at, true);
        const int reached = workFrom(desk, 0);
        desk.book.reset();
        disk.heal();
        tried += disk.struck() ? 1 : 0;
        if (reached == 0 && work.kept.empty()) {
            EXPECT_FALSE(std::filesystem::exists(desk.path)) << "half a logbook is left";
            return;
        }
        EXPECT_TRUE(isRightAfter(reached, reopened(desk.path)));
    }
    /// The step under way may have come through whole, where only its last flush failed.
    [[nodiscard]] bool isRightAfter(int reached, const std::string &found) const
    {
        return found == acknowledged(reached) || found == acknowledged(std::min(reached + 1, work.steps));
    }
    void tell(const char *what)
    {
        std::printf("%s: %d faults at the %d calls of a day, deeds lost: %s\n", what, tried, static_cast<int>(calls),
                    HasFailure() ? "see above" : "0");
        RecordProperty("tried", tried);
    }

    int tried = 0;
};

} // namespace hammerline::logbook
