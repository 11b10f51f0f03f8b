// A process is killed with SIGKILL at a random moment while it enters readings; whatever it had acknowledged must be
// there when the file is opened again.

#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"

#include <csignal>
#include <random>
#include <set>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace hammerline::logbook {
namespace {

constexpr int rounds = 50;
constexpr std::int64_t valuesARound = 100'000;

/// Enters without end, and says each reading's value into the pipe once `enter` has returned.
[[noreturn]] void enterForEver(const std::string &path, int round, int pipe)
{
    Logbook logbook = Logbook::open(path);
    for (int number = 1;; ++number) {
        const std::int64_t value = round * valuesARound + number;
        logbook.enter(1, reading(letOff(number % 88 + 1, number / 88 + 1 + round * 1'000), value), ada);
        if (write(pipe, &value, sizeof value) != sizeof value)
            _exit(1);
    }
}

/// What the child said before it was killed. `afterFirst`: the time runs from the first acknowledged reading, so that
/// a busy machine still gets one; otherwise from the start, so that opening is interrupted too.
std::vector<std::int64_t> acknowledgedBefore(const std::string &path, int round, bool afterFirst,
                                             std::chrono::microseconds killedAfter)
{
    int ends[2] = {};
    if (pipe(ends) != 0)
        throw std::runtime_error("no pipe");
    const pid_t child = fork();
    if (child == 0) {
        close(ends[0]);
        enterForEver(path, round, ends[1]);
    }
    close(ends[1]);
    std::vector<std::int64_t> values;
    std::int64_t value = 0;
    if (afterFirst && read(ends[0], &value, sizeof value) == sizeof value)
        values.push_back(value);
    std::this_thread::sleep_for(killedAfter);
    kill(child, SIGKILL);
    waitpid(child, nullptr, 0);
    while (read(ends[0], &value, sizeof value) == sizeof value)
        values.push_back(value);
    close(ends[0]);
    return values;
}

TEST_F(LogbookTest, KilledAtAnyMomentNothingAcknowledgedIsLost)
{
    static_cast<void>(withPass());
    std::mt19937 random(20'260'301);
    std::uniform_int_distribution<int> microseconds(0, 30'000);
    std::size_t acknowledged = 0;
    for (int round = 1; round <= rounds; ++round) {
        const auto values =
            acknowledgedBefore(file(), round, round % 5 != 0, std::chrono::microseconds(microseconds(random)));
        std::set<std::int64_t> present;
        for (const auto &found : Logbook::open(file()).readings(1))
            present.insert(found.value.baseCount());
        for (const std::int64_t value : values)
            ASSERT_TRUE(present.contains(value)) << "round " << round << ", value " << value;
        acknowledged += values.size();
    }
    EXPECT_GE(acknowledged, rounds * 4u / 5); // each round but every fifth has one at least
    EXPECT_TRUE(verifyHistory(file()).whole());
    RecordProperty("acknowledged", static_cast<int>(acknowledged));
}

} // namespace
} // namespace hammerline::logbook
