// Two people at one logbook at the same moment, each with a Logbook and a thread of their own, and a third who only
// looks: what every thread sanitizer run is for, since the program itself starts no thread.

#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"

#include <atomic>
#include <thread>

namespace hammerline::logbook {
namespace {

constexpr int notesEach = 40;

/// Whoever waited for three seconds in vain is told so and tries again; on a busy machine that is no fault.
template <typename Deed>
auto patiently(Deed deed)
{
    for (int left = 20; left > 0; --left)
        try {
            return deed();
        } catch (const outcome::BrokenWorld &) {
        }
    return deed();
}

class LogbookThreadsTest : public LogbookTest {
protected:
    LogbookThreadsTest()
    {
        Logbook book = withPass();
        static_cast<void>(book.beginPass({.instrument = 1, .began = moment(2), .person = "Ben"}, ben));
    }
    /// Reads in one pass until all is there; what was there once never goes away.
    void watch(readings::PassId pass, std::atomic<int> &errors) const
    {
        const Logbook book = Logbook::open(file(), Access::ReadOnly);
        for (int seen = 0; seen < notesEach;) {
            const int now = book.readingCount(pass);
            errors += now < seen ? 1 : 0;
            seen = now;
            static_cast<void>(book.deeds(0, 10));
            std::this_thread::yield();
        }
    }
    void work(readings::PassId pass, const Stamp &stamp) const
    {
        Logbook book = Logbook::open(file());
        for (int note = 1; note <= notesEach; ++note)
            patiently([&] { return book.enter(pass, reading(letOff(note), pass * 1000 + note), stamp); });
    }
};

TEST_F(LogbookThreadsTest, TwoWriteWhileAThirdWatchesAndNothingIsLost)
{
    std::atomic<int> errors = 0;
    std::vector<std::thread> people;
    people.emplace_back([&] { work(1, ada); });
    people.emplace_back([&] { work(2, ben); });
    people.emplace_back([&] { watch(1, errors); });
    for (std::thread &one : people)
        one.join();
    EXPECT_EQ(errors, 0);
    const Logbook book = Logbook::open(file());
    for (const readings::PassId pass : {1, 2})
        for (int note = 1; note <= notesEach; ++note)
            EXPECT_EQ(book.versions(pass, letOff(note)).size(), 1u);
    EXPECT_TRUE(verifyHistory(file()).whole());
}

TEST_F(LogbookThreadsTest, ACopyIsWholeWhileOthersWrite)
{
    std::thread writer([&] { work(1, ada); });
    const Logbook book = Logbook::open(file(), Access::ReadOnly);
    for (int copy = 0; copy < 5; ++copy) {
        const std::string path = file("copy-" + std::to_string(copy));
        EXPECT_TRUE(book.copyTo(path));
        EXPECT_TRUE(verifyHistory(path).whole());
    }
    writer.join();
}

TEST_F(LogbookThreadsTest, OneReadingIsWrittenByOneOfTwoWhoMeantTheSamePlace)
{
    std::atomic<int> written = 0;
    const auto enter = [&](const Stamp &stamp) {
        Logbook book = Logbook::open(file());
        for (int note = 1; note <= notesEach; ++note)
            written +=
                patiently([&] { return book.enterOver(std::nullopt, 1, reading(letOff(note), note), stamp); }) ? 1 : 0;
    };
    std::thread first([&] { enter(ada); });
    std::thread second([&] { enter(ben); });
    first.join();
    second.join();
    EXPECT_EQ(written, notesEach);
}

} // namespace
} // namespace hammerline::logbook
