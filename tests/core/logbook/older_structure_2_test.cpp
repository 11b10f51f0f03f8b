// The second structure, in sample-data/logbooks: it had the lead's desk and the file of an instrument, and no gauge
// studies.

#include "core/logbook/logbook_fixture.h"
#include "logbook/gauge_studies.h"
#include "logbook/verify_history.h"

namespace hammerline::logbook {
namespace {

class SecondStructureTest : public LogbookTest {
protected:
    SecondStructureTest()
    {
        std::filesystem::copy_file(HAMMERLINE_SOURCE_DIR "/sample-data/logbooks/structure-2.hammerline", file());
        std::filesystem::permissions(file(), std::filesystem::perms::owner_all);
    }
};

/// As it was printed when the file was made.
constexpr std::string_view digestOfStructure2 = "41d70458886ae91ac65a8a4d7cf1a367be9352ddc4dc99585bb3da14784c261b";

TEST_F(SecondStructureTest, IsBackedUpAndBroughtUpToDateAndStaysWhole)
{
    EXPECT_EQ(verifyHistory(file()).newestDigest, digestOfStructure2) << "before it was brought up to date";
    EXPECT_TRUE(verifyHistory(file()).whole());
    static_cast<void>(Logbook::open(file()));
    const HistoryCheck check = verifyHistory(file());
    EXPECT_TRUE(check.whole()) << check.alterations.front().text();
    EXPECT_EQ(check.newestDigest, digestOfStructure2);
    EXPECT_EQ(verifyHistory(file() + ".schema-2-backup").newestDigest, digestOfStructure2);
}

TEST_F(SecondStructureTest, TellsWhatTheLeadDecidedThen)
{
    const Logbook book = Logbook::open(file());
    EXPECT_EQ(book.readingCount(1), 3);
    EXPECT_EQ(book.decisions(1).concessions.size(), 1u);
    EXPECT_EQ(book.decisions(1).sentBack.front().words, "a little closer");
    EXPECT_EQ(book.spotChecks(1).size(), 1u);
    EXPECT_EQ(book.dossier(1).work.size(), 1u);
    EXPECT_EQ(book.actionSetup(1), (ActionSetup{"measured", "in"}));
}

TEST_F(SecondStructureTest, TakesAGaugeStudyAfterTheStep)
{
    Logbook book = Logbook::open(file());
    GaugeStudies studies(book);
    EXPECT_TRUE(studies.all().empty());
    EXPECT_TRUE(studies
                    .plan({.gauge = {.name = "rule"},
                           .plan = {.notes = {keyboard::Note(1), keyboard::Note(2)}, .people = {"Ada", "Ben"}}},
                          ada)
                    .ok());
    EXPECT_EQ(studies.all().size(), 1u);
    EXPECT_TRUE(verifyHistory(file()).whole());
}

} // namespace
} // namespace hammerline::logbook
