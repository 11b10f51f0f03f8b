// A disk that fails at every call in turn, and a power cut at every call in turn. A day's work is done on it; whatever
// had been acknowledged must be there afterwards, whole, and nothing of what had failed.
//
// Every call is tried where HAMMERLINE_FAULTS is set to "all"; otherwise every seventh.

#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"
#include "support/faulty_disk.h"

#include <cstdio>
#include <cstdlib>

namespace hammerline::logbook {
namespace {

using test_support::DiskFault;
using test_support::FaultyDisk;

/// What a reader sees.
struct State {
    DeedId newest = 0;
    std::size_t instruments = 0;
    std::vector<std::pair<readings::Place, units::Amount>> readings{};
    bool operator==(const State &) const = default;
};

State stateOf(const Logbook &book)
{
    State state{book.newestDeed(), book.instruments().size(), {}};
    for (const readings::PassId pass : {1, 2})
        for (const auto &found : book.readings(pass))
            state.readings.emplace_back(found.place, found.value);
    return state;
}

std::vector<readings::Reading> wholePass()
{
    std::vector<readings::Reading> many;
    for (int note = 1; note <= 88; ++note)
        many.push_back(reading(letOff(note), note, "typed on note " + std::to_string(note)));
    return many;
}

/// A day at one logbook, step by step.
class Day {
public:
    explicit Day(std::string path) : m_path(std::move(path)) {}
    static constexpr int steps = 13;

    void step(int number)
    {
        switch (number) {
        case 0:
            m_book.emplace(Logbook::create(m_path, ada).value());
            break;
        case 1:
            static_cast<void>(m_book->addInstrument(upright(), ada));
            break;
        case 2:
            static_cast<void>(m_book->beginPass({.instrument = 1, .began = moment(1)}, ada));
            break;
        case 6: // corrected
            m_book->enter(1, reading(letOff(3), 33), ben, "slipped");
            break;
        case 7:
            static_cast<void>(m_book->withdraw(1, letOff(4), ben, "gauge fell"));
            break;
        case 8:
            static_cast<void>(m_book->importPass({.instrument = 1, .began = moment(2)}, wholePass(), ada));
            break;
        case 9: // the evening, the next morning
            m_book.reset();
            m_book.emplace(Logbook::open(m_path));
            break;
        case 11:
            static_cast<void>(m_book->undo(m_book->undoable(1).value(), ben));
            break;
        default:
            m_book->enter(1, reading(letOff(number), number), ada);
        }
    }
    /// The step that failed, or `steps`.
    int workFrom(int first)
    {
        for (int number = first; number < steps; ++number)
            try {
                step(number);
            } catch (const outcome::BrokenWorld &) {
                return number;
            }
        return steps;
    }
    void close() { m_book.reset(); }
    [[nodiscard]] bool isOpen() const { return m_book.has_value(); }
    [[nodiscard]] const Logbook &book() const { return *m_book; }

private:
    std::string m_path;
    std::optional<Logbook> m_book;
};

class FaultyDiskTest : public LogbookTest {
protected:
    FaultyDiskTest()
    {
        Day day(file("plain"));
        disk.arm(DiskFault::None, 0);
        for (int number = 0; number < Day::steps; ++number) {
            day.step(number);
            after.push_back(stateOf(day.book()));
        }
        day.close();
        disk.arm(DiskFault::None, 0);
        EXPECT_EQ(work("counted").workFrom(0), Day::steps);
        calls = disk.calls();
    }
    [[nodiscard]] Day work(const std::string &name)
    {
        path = file(name);
        for (const char *end : {"", "-wal", "-shm"})
            std::filesystem::remove(path + end);
        return Day(path);
    }
    /// From the first call to the last, or those that fit into a short test.
    [[nodiscard]] static std::int64_t stride()
    {
        const char *wish = std::getenv("HAMMERLINE_FAULTS");
        return wish != nullptr && std::string(wish) == "all" ? 1 : 7;
    }
    [[nodiscard]] State reopened() const
    {
        EXPECT_TRUE(verifyHistory(path).whole());
        return stateOf(Logbook::open(path));
    }
    [[nodiscard]] State acknowledged(int steps) const
    {
        return steps == 0 ? State{} : after[static_cast<std::size_t>(steps) - 1];
    }
    void failAndGoOn(DiskFault fault, std::int64_t at, bool lasting)
    {
        Day day = work("failing");
        disk.arm(fault, at, lasting);
        int reached = day.workFrom(0);
        disk.heal();
        failed += disk.struck() ? 1 : 0;
        if (day.isOpen()) {
            EXPECT_EQ(stateOf(day.book()), acknowledged(reached));
        }
        EXPECT_EQ(day.workFrom(reached), Day::steps) << "it goes on once the disk is well again";
        day.close();
        EXPECT_EQ(reopened(), after.back());
    }
    void failAndOpenAnew(DiskFault fault, std::int64_t at)
    {
        Day day = work("failing");
        disk.arm(fault, at, true);
        const int reached = day.workFrom(0);
        day.close();
        disk.heal();
        failed += disk.struck() ? 1 : 0;
        if (reached == 0) {
            EXPECT_FALSE(std::filesystem::exists(path)) << "half a logbook is left";
            return;
        }
        EXPECT_TRUE(isRightAfter(reached, reopened()));
    }
    /// The step under way may have come through whole, where only its last flush failed.
    [[nodiscard]] bool isRightAfter(int reached, const State &found) const
    {
        return found == acknowledged(reached) || found == acknowledged(std::min(reached + 1, Day::steps));
    }
    /// Whether all that was acknowledged before the cut is there after it.
    [[nodiscard]] bool survivesCut(std::int64_t at, unsigned seed)
    {
        std::mt19937 dice(seed);
        Day day = work("cut");
        disk.arm(DiskFault::PowerCut, at);
        const int reached = day.workFrom(0);
        day.close();
        disk.comeBack(dice);
        ++failed;
        if (reached == 0)
            return true; // nothing was acknowledged yet
        try {
            return isRightAfter(reached, stateOf(Logbook::open(path))) && verifyHistory(path).whole();
        } catch (const outcome::BrokenWorld &) {
            return false;
        }
    }
    void tell(const char *what)
    {
        std::printf("%s: %d of %d calls in turn, readings lost: %s\n", what, failed, static_cast<int>(calls),
                    HasFailure() ? "see above" : "0");
        RecordProperty("tried", failed);
    }

    FaultyDisk disk;
    std::vector<State> after; ///< each step
    std::int64_t calls = 0;
    std::string path;
    int failed = 0;
};

TEST_F(FaultyDiskTest, AfterOneFailedCallNothingIsLostAndTheWorkGoesOn)
{
    for (const DiskFault fault : {DiskFault::IoError, DiskFault::Full, DiskFault::ShortWrite})
        for (std::int64_t at = 1; at <= calls && !HasFailure(); at += stride()) {
            SCOPED_TRACE(testing::Message() << "fault " << static_cast<int>(fault) << " at call " << at);
            failAndGoOn(fault, at, false);
        }
    tell("one call fails");
}

TEST_F(FaultyDiskTest, AfterADiskThatStaysBrokenAllThatWasAcknowledgedIsThere)
{
    for (const DiskFault fault : {DiskFault::IoError, DiskFault::Full, DiskFault::ShortWrite})
        for (std::int64_t at = 1; at <= calls && !HasFailure(); at += stride()) {
            SCOPED_TRACE(testing::Message() << "fault " << static_cast<int>(fault) << " from call " << at);
            failAndOpenAnew(fault, at);
        }
    tell("all calls fail from one on");
}

TEST_F(FaultyDiskTest, AfterAPowerCutThatDropsAndTearsUnflushedWritesAllThatWasAcknowledgedIsThere)
{
    for (unsigned seed = 1; seed <= 3; ++seed)
        for (std::int64_t at = 1; at <= calls && !HasFailure(); at += stride()) {
            SCOPED_TRACE(testing::Message() << "cut at call " << at << ", seed " << seed);
            EXPECT_TRUE(survivesCut(at, seed));
        }
    tell("power cuts");
}

TEST_F(FaultyDiskTest, WithoutFlushesACutWouldLoseReadingsSoTheseTestsCanFail)
{
    disk.forgetFlushes();
    int lost = 0;
    for (unsigned seed = 1; seed <= 10; ++seed)
        lost += survivesCut(calls - 20, seed) ? 0 : 1;
    EXPECT_GT(lost, 0);
}

} // namespace
} // namespace hammerline::logbook
