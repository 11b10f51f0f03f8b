#include "core/logbook/logbook_fixture.h"
#include "logbook/inside/schema_steps.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

#include <csignal>
#include <fcntl.h>
#include <fstream>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace hammerline::logbook {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class BrokenWorldTest : public LogbookTest {
protected:
    std::string openMessage(Access access = Access::ReadWrite) const
    {
        return messageOf([&] { static_cast<void>(Logbook::open(file(), access)); });
    }
    /// Runs in a child, as an ordinary user where the test runs as root, whom no file is read-only for.
    static int inChild(const std::function<int()> &act, bool asOrdinaryUser = false)
    {
        const pid_t child = fork();
        if (child == 0) {
            constexpr uid_t nobody = 65534;
            if (asOrdinaryUser && geteuid() == 0 && seteuid(nobody) != 0)
                _exit(99);
            int result = 98;
            try {
                result = act();
            } catch (const outcome::BrokenWorld &) {
                result = 97;
            }
            _exit(result);
        }
        int status = 0;
        waitpid(child, &status, 0);
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    /// All that a reader sees.
    static auto contentOf(const std::string &path)
    {
        const Logbook logbook = Logbook::open(path, Access::ReadOnly);
        std::vector<std::string> digests;
        for (DeedId deed = 1; deed <= logbook.newestDeed() && deed < 100; ++deed)
            digests.push_back(logbook.digest(deed) + logbook.deed(deed).value_or(Deed{}).subject);
        return std::tuple(logbook.instruments(), logbook.passes(1), logbook.readings(2), digests);
    }
    void closedWithReadings(int count) const
    {
        Logbook logbook = withPass();
        std::vector<readings::Reading> many;
        for (int take = 1; take <= count; ++take)
            many.push_back(reading(letOff(40, take), take, "typed " + std::to_string(take)));
        static_cast<void>(logbook.importPass({.instrument = 1}, many, ada));
    }
};

TEST_F(BrokenWorldTest, AFileThatIsNotThereSaysSo)
{
    EXPECT_THAT(openMessage(), AllOf(HasSubstr(file()), HasSubstr("cannot be opened")));
    EXPECT_FALSE(std::filesystem::exists(file()));
}

TEST_F(BrokenWorldTest, WhatIsNoDatabaseIsRefusedAndUntouched)
{
    const std::string text(10'000, 'n');
    std::ofstream(file()) << text;
    EXPECT_THAT(openMessage(), HasSubstr("not a Hammerline logbook"));
    EXPECT_EQ(std::filesystem::file_size(file()), text.size());
}

TEST_F(BrokenWorldTest, AnEmptyFileAndAnotherProgramsDatabaseAreNotLogbooks)
{
    std::ofstream(file()).flush();
    EXPECT_THAT(openMessage(), HasSubstr("not a Hammerline logbook"));
    RawDatabase(file()).run("CREATE TABLE t(x)");
    EXPECT_THAT(openMessage(), HasSubstr("not a Hammerline logbook"));
}

TEST_F(BrokenWorldTest, ANewerLogbookIsRefusedWithBothNumbers)
{
    static_cast<void>(created());
    RawDatabase(file()).run("CREATE TABLE of_tomorrow(x); PRAGMA user_version = 77");
    EXPECT_THAT(openMessage(),
                AllOf(HasSubstr("structure 77"), HasSubstr("up to " + std::to_string(inside::schemaSteps().size()))));
}

TEST_F(BrokenWorldTest, AnAlteredHeadOfALogbookIsCalledEdited)
{
    static_cast<void>(created());
    for (const char *sql : {"PRAGMA user_version = 77", "PRAGMA user_version = 0", "PRAGMA application_id = 0"}) {
        RawDatabase(file()).run(sql);
        EXPECT_THAT(openMessage(), HasSubstr("edited by another program")) << sql;
    }
}

TEST_F(BrokenWorldTest, AddedTriggersViewsTablesAndChangedOnesAreRefused)
{
    for (const char *sql :
         {"CREATE TRIGGER t AFTER INSERT ON history BEGIN DELETE FROM reading; END", "CREATE VIEW v AS SELECT 1",
          "CREATE TABLE more(x)", "DROP INDEX pass_of_instrument", "ALTER TABLE reading ADD COLUMN more TEXT",
          "ALTER TABLE pass RENAME COLUMN person TO who"}) {
        std::filesystem::remove(file());
        static_cast<void>(created());
        RawDatabase(file()).run(sql);
        EXPECT_THAT(openMessage(), HasSubstr("edited by another program")) << sql;
    }
}

TEST_F(BrokenWorldTest, AHugeTextIsRefusedNotLoaded)
{
    closedWithReadings(1);
    RawDatabase(file()).run("UPDATE reading SET remark = hex(zeroblob(40000000))");
    const auto message = messageOf([&] { static_cast<void>(Logbook::open(file()).readings(2)); });
    EXPECT_THAT(message, HasSubstr(file()));
}

TEST_F(BrokenWorldTest, UnknownIdsInRowsAreRefused)
{
    closedWithReadings(1);
    RawDatabase(file()).run("UPDATE instrument SET state = 'stolen'");
    EXPECT_THAT(messageOf([&] { static_cast<void>(Logbook::open(file()).instruments()); }),
                HasSubstr("state is none that is known"));
    RawDatabase(file()).run("UPDATE reading SET quantity = 1000");
    EXPECT_THAT(messageOf([&] { static_cast<void>(Logbook::open(file()).readings(2)); }),
                HasSubstr("no quantity 1000"));
}

TEST_F(BrokenWorldTest, ATruncatedFileIsRefused)
{
    closedWithReadings(2'000);
    const auto size = std::filesystem::file_size(file());
    for (const auto part : {size / 2, size - 4096, size - 1, std::uintmax_t{100}}) {
        std::filesystem::copy_file(file(), file("cut"), std::filesystem::copy_options::overwrite_existing);
        std::filesystem::resize_file(file("cut"), part);
        EXPECT_THROW(static_cast<void>(Logbook::open(file("cut"))), outcome::BrokenWorld) << part;
    }
}

TEST_F(BrokenWorldTest, AFlippedBitIsRefusedOrFoundByTheCheckAndNeverCrashes)
{
    closedWithReadings(300);
    std::ifstream in(file(), std::ios::binary);
    const std::string whole((std::istreambuf_iterator<char>(in)), {});
    const auto content = contentOf(file());
    int found = 0;
    int tried = 0;
    for (std::size_t at = 18; at < whole.size(); at += 211) {
        std::string flipped = whole;
        flipped[at] = static_cast<char>(flipped[at] ^ 0x10);
        std::ofstream(file("flipped"), std::ios::binary | std::ios::trunc) << flipped;
        ++tried;
        try {
            const auto read = contentOf(file("flipped"));
            const bool noticed = !verifyHistory(file("flipped")).whole();
            // A bit of unused space or of a counter that nobody looks at changes nothing.
            EXPECT_TRUE(noticed || read == content) << at;
            found += noticed ? 1 : 0;
        } catch (const outcome::BrokenWorld &) {
            ++found;
        }
    }
    EXPECT_GT(found, tried / 10);
}

TEST_F(BrokenWorldTest, LockedByAnotherProgramIsSaidAndNothingIsLost)
{
    Logbook logbook = withPass();
    logbook.enter(1, reading(letOff(40), 1), ada);
    {
        RawDatabase other(file());
        other.run("BEGIN IMMEDIATE");
        EXPECT_THAT(messageOf([&] { logbook.enter(1, reading(letOff(41), 1), ada); }), HasSubstr("keeps it locked"));
    }
    EXPECT_EQ(logbook.readingCount(1), 1);
    logbook.enter(1, reading(letOff(41), 1), ada);
    EXPECT_EQ(logbook.readingCount(1), 2);
}

TEST_F(BrokenWorldTest, WritersThatMeetWaitForEachOther)
{
    static_cast<void>(withPass());
    const auto write = [this](int quantityTake) {
        Logbook logbook = Logbook::open(file());
        for (int note = 1; note <= 40; ++note)
            logbook.enter(1, reading(letOff(note, quantityTake), note), ben);
        return 0;
    };
    const pid_t child = fork();
    if (child == 0)
        _exit(write(1));
    EXPECT_EQ(write(2), 0);
    int status = 1;
    waitpid(child, &status, 0);
    EXPECT_EQ(status, 0);
    EXPECT_EQ(Logbook::open(file()).readingCount(1), 80);
    EXPECT_TRUE(verifyHistory(file()).whole());
}

TEST_F(BrokenWorldTest, AFullDiskIsSaidAndWhatWasAcknowledgedIsThere)
{
    static_cast<void>(withPass());
    const int acknowledged = inChild([this] {
        std::signal(SIGXFSZ, SIG_IGN);
        const rlimit most{400 * 1024, 400 * 1024};
        setrlimit(RLIMIT_FSIZE, &most);
        Logbook logbook = Logbook::open(file());
        int entered = 0;
        const std::string message = messageOf([&] {
            for (; entered < 90; ++entered)
                logbook.enter(1, reading(letOff(1, entered + 1), 1, std::string(5'000, 't')), ada);
        });
        const bool said = message.find("full") != std::string::npos || message.find("disk") != std::string::npos;
        return said && logbook.readingCount(1) == entered ? entered : 95;
    });
    EXPECT_GT(acknowledged, 5);
    EXPECT_LT(acknowledged, 90);
    Logbook again = Logbook::open(file());
    EXPECT_EQ(again.readingCount(1), acknowledged);
    again.enter(1, reading(letOff(2), 1), ada);
    EXPECT_TRUE(verifyHistory(file()).whole());
}

TEST_F(BrokenWorldTest, AReadOnlyFileInAReadOnlyFolderCanBeReadButNotWritten)
{
    closedWithReadings(3);
    std::filesystem::permissions(file(), std::filesystem::perms(0444));
    std::filesystem::permissions(folder, std::filesystem::perms(0555));
    const int read = inChild([this] { return Logbook::open(file(), Access::ReadOnly).readingCount(2); }, true);
    const int said = inChild(
        [this] {
            const auto message = messageOf([&] { static_cast<void>(Logbook::open(file())); });
            return message.find("read-only") != std::string::npos &&
                           message.find("instruments, passes, review, export and verify read it") != std::string::npos
                       ? 1
                       : 0;
        },
        true);
    std::filesystem::permissions(folder, std::filesystem::perms(0755));
    EXPECT_EQ(read, 3);
    EXPECT_EQ(said, 1);
}

TEST_F(BrokenWorldTest, OpenedForReadingOnlyNothingIsEntered)
{
    closedWithReadings(3);
    Logbook logbook = Logbook::open(file(), Access::ReadOnly);
    EXPECT_EQ(logbook.access(), Access::ReadOnly);
    EXPECT_THAT(messageOf([&] { logbook.enter(2, reading(letOff(1), 1), ada); }), HasSubstr("for reading only"));
    EXPECT_EQ(logbook.readingCount(2), 3);
}

} // namespace
} // namespace hammerline::logbook
