#include "core/logbook/logbook_fixture.h"
#include "support/posix_locks.h"

#include <gmock/gmock.h>

#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <unistd.h>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;

class HeldFiles : public LogbookTest {
protected:
    static constexpr readings::PassId pass = 1;
    /// What a file dialog that looks at contents does.
    void lookInside() const
    {
        for (const char *end : {"", "-wal", "-shm"})
            ::close(::open((file() + end).c_str(), O_RDONLY));
    }
    [[nodiscard]] int letAnotherProgramLook() const
    {
        return std::system(("sqlite3 '" + file() + "' 'SELECT count(*) FROM sqlite_schema' >/dev/null").c_str());
    }
};

TEST_F(HeldFiles, AnOpenLogbookIsHeld)
{
    const Logbook logbook = withPass();
    EXPECT_TRUE(support::isHeld(file()));
    lookInside();
    EXPECT_FALSE(support::isHeld(file())) << "this is what nothing of ours may do";
}

TEST_F(HeldFiles, AfterItsLogWasTakenAwayNothingIsAcknowledgedAndNothingStoredIsLost)
{
    {
        Logbook logbook = withPass();
        static_cast<void>(logbook.enter(pass, reading(letOff(40), 3'200'000, "stored"), ada));
        lookInside();
        ASSERT_EQ(letAnotherProgramLook(), 0);
        ASSERT_FALSE(std::filesystem::exists(file() + "-wal")) << "taken away by the one who took himself for the last";
        EXPECT_THAT(
            messageOf([&] { static_cast<void>(logbook.enter(pass, reading(letOff(41), 3'200'000, "too late"), ada)); }),
            HasSubstr("working files"));
        EXPECT_THAT(messageOf([&] { static_cast<void>(logbook.newestDeed()); }), HasSubstr("working files"));
        ASSERT_EQ(letAnotherProgramLook(), 0);
    }
    Logbook logbook = Logbook::open(file());
    EXPECT_EQ(logbook.readings(pass).size(), 1U);
    static_cast<void>(logbook.enter(pass, reading(letOff(41), 3'200'000, "again"), ada));
    EXPECT_EQ(logbook.readings(pass).size(), 2U);
}

TEST_F(HeldFiles, ClosingWithoutALookDoesNotBringAnOldLogIntoAFileThatWentOn)
{
    {
        Logbook logbook = withPass();
        for (int note = 1; note <= 40; ++note)
            static_cast<void>(logbook.enter(pass, reading(letOff(note), 3'200'000, "stored"), ada));
        lookInside();
        ASSERT_EQ(letAnotherProgramLook(), 0);
        RawDatabase(file()).run("CREATE TABLE added_later(x)");
        std::filesystem::copy_file(file(), file() + ".copy");
    }
    EXPECT_EQ(std::system(("cmp '" + file() + "' '" + file() + ".copy'").c_str()), 0);
}

} // namespace
} // namespace hammerline::logbook
