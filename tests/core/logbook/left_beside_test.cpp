// What reading a logbook leaves beside it, and a logbook where nothing can be left.
#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"
#include "logbook/verify_instrument.h"

#include <fstream>
#include <iostream>
#include <sys/wait.h>
#include <unistd.h>

namespace hammerline::logbook {
namespace {

namespace fs = std::filesystem;

class LeftBesideTest : public LogbookTest {
protected:
    LeftBesideTest()
    {
        Logbook logbook = withPass();
        logbook.enter(1, reading(letOff(40), 3'000'000), ada);
    }
    ~LeftBesideTest() override { fs::permissions(folder, fs::perms::owner_all); }

    [[nodiscard]] std::vector<std::string> names() const
    {
        std::vector<std::string> found;
        for (const auto &entry : fs::directory_iterator(folder))
            found.push_back(entry.path().filename().string());
        return found;
    }
    [[nodiscard]] std::string bytes() const
    {
        std::ifstream stream(file(), std::ios::binary);
        return {std::istreambuf_iterator<char>(stream), {}};
    }
    /// Everything that reads, each with a connection of its own.
    void readAll() const
    {
        EXPECT_EQ(Logbook::open(file(), Access::ReadOnly).readings(1).size(), 1u);
        EXPECT_TRUE(verifyHistory(file()).whole());
        EXPECT_TRUE(verifyInstrument(file(), 1).whole());
        EXPECT_TRUE(Logbook::open(file(), Access::ReadOnly).handOver(1).ok());
    }
    const std::vector<std::string> alone{"shop.hammerline"};
};

TEST_F(LeftBesideTest, ReadingLeavesNothingAndChangesNothing)
{
    ASSERT_EQ(names(), alone);
    const std::string before = bytes();
    const auto written = fs::last_write_time(file());
    readAll();
    EXPECT_EQ(names(), alone);
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(fs::last_write_time(file()), written);
}

TEST_F(LeftBesideTest, ReadingClearsAwayTheEmptyLogThatAnEarlierReaderLeft)
{
    std::ofstream(file() + "-wal").flush();
    readAll();
    EXPECT_EQ(names(), alone);
}

TEST_F(LeftBesideTest, ReadersAndAWriterAtOnceSeeTheNewest)
{
    Logbook writer = Logbook::open(file());
    const Logbook reader = Logbook::open(file(), Access::ReadOnly);
    writer.enter(1, reading(letOff(41), 3'000'000), ada);
    EXPECT_EQ(reader.readings(1).size(), 2u);
    EXPECT_EQ(Logbook::open(file(), Access::ReadOnly).readings(1).size(), 2u);
    EXPECT_TRUE(verifyHistory(file()).whole());
}

TEST_F(LeftBesideTest, AReaderWritesNothing)
{
    Logbook reader = Logbook::open(file(), Access::ReadOnly);
    EXPECT_THROW(reader.enter(1, reading(letOff(41), 3'000'000), ada), outcome::BrokenWorld);
    EXPECT_EQ(reader.readings(1).size(), 1u);
}

TEST_F(LeftBesideTest, AWriteProtectedLogbookIsReadWithoutAnythingBesideIt)
{
    fs::permissions(file(), fs::perms::owner_read | fs::perms::group_read | fs::perms::others_read);
    readAll();
    EXPECT_EQ(names(), alone);
}

/// By somebody who may not write there; root may everywhere.
int asNobody(const std::function<bool()> &reads)
{
    const pid_t child = fork();
    if (child == 0) {
        if (geteuid() == 0 && setuid(65534) != 0)
            _exit(3);
        try {
            _exit(reads() ? 0 : 1);
        } catch (const std::exception &broken) {
            std::cerr << broken.what() << '\n';
            _exit(2);
        }
    }
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

TEST_F(LeftBesideTest, ALogbookInAReadOnlyFolderIsRead)
{
    using fs::perms;
    fs::permissions(file(), perms::owner_all | perms::group_all | perms::others_all);
    fs::permissions(folder, perms::owner_read | perms::owner_exec | perms::group_read | perms::group_exec |
                                perms::others_read | perms::others_exec);
    EXPECT_EQ(asNobody([&] {
                  return Logbook::open(file(), Access::ReadOnly).readings(1).size() == 1 &&
                         verifyHistory(file()).whole() && verifyInstrument(file(), 1).whole();
              }),
              0);
    EXPECT_EQ(names(), alone);
}

} // namespace
} // namespace hammerline::logbook
