// The third structure, in sample-data/logbooks: it had every table of today, and no index that leads to the deeds about
// an instrument.

#include "core/logbook/logbook_fixture.h"
#include "logbook/gauge_studies.h"
#include "logbook/verify_instrument.h"

namespace hammerline::logbook {
namespace {

class ThirdStructureTest : public LogbookTest {
protected:
    ThirdStructureTest()
    {
        std::filesystem::copy_file(HAMMERLINE_SOURCE_DIR "/sample-data/logbooks/structure-3.hammerline", file());
        std::filesystem::permissions(file(), std::filesystem::perms::owner_all);
    }
};

/// As it was printed when the file was made.
constexpr std::string_view digestOfStructure3 = "bbfb3b6b79583b1df0199c57b5144197a268bc7743bcdc767192617a77830594";

TEST_F(ThirdStructureTest, IsBackedUpAndBroughtUpToDateAndStaysWhole)
{
    EXPECT_EQ(verifyHistory(file()).newestDigest, digestOfStructure3) << "before it was brought up to date";
    static_cast<void>(Logbook::open(file()));
    const HistoryCheck check = verifyHistory(file());
    EXPECT_TRUE(check.whole()) << check.alterations.front().text();
    EXPECT_EQ(check.newestDigest, digestOfStructure3);
    EXPECT_EQ(verifyHistory(file() + ".schema-3-backup").newestDigest, digestOfStructure3);
    EXPECT_TRUE(verifyInstrument(file(), 1).whole());
}

TEST_F(ThirdStructureTest, IsReadAndCheckedWithoutBeingBroughtUpToDate)
{
    Logbook book = Logbook::open(file(), Access::ReadOnly);
    EXPECT_EQ(book.readingCount(1), 4);
    EXPECT_EQ(book.instruments().size(), 2u);
    EXPECT_EQ(GaugeStudies(book).all().size(), 1u);
    EXPECT_TRUE(book.handOver(1));
    EXPECT_FALSE(std::filesystem::exists(file() + ".schema-3-backup"));
    RawDatabase(file()).run("UPDATE reading SET value = value + 1 WHERE note = 38");
    EXPECT_EQ(verifyInstrument(file(), 1).alterations.size(), 1u);
    EXPECT_TRUE(verifyInstrument(file(), 2).whole());
}

} // namespace
} // namespace hammerline::logbook
