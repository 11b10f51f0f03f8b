// Logbooks kept from the versions before, one a structure, in sample-data/logbooks: each is opened, brought up to date
// and still tells what was written then.

#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

class OlderStructureTest : public LogbookTest {
protected:
    /// A copy, so that the kept one stays as it is.
    [[nodiscard]] std::string kept(int structure) const
    {
        const std::string name = "structure-" + std::to_string(structure) + ".hammerline";
        std::filesystem::copy_file(HAMMERLINE_SOURCE_DIR "/sample-data/logbooks/" + name, file());
        std::filesystem::permissions(file(), std::filesystem::perms::owner_all);
        return file();
    }
};

/// As it was printed when the file was made.
constexpr std::string_view digestOfStructure1 = "f535ccb490cd0066bf73df98e03fd0a90a76e318600b04171092123b87ecbb01";

TEST_F(OlderStructureTest, TheFirstIsBackedUpAndBroughtUpToDateAndStaysWhole)
{
    const std::string path = kept(1);
    EXPECT_EQ(verifyHistory(path).newestDigest, digestOfStructure1) << "before it was brought up to date";
    const DeedId newest = Logbook::open(path).newestDeed();
    const HistoryCheck check = verifyHistory(path);
    EXPECT_TRUE(check.whole()) << check.alterations.front().text();
    EXPECT_EQ(check.newestDigest, digestOfStructure1);
    EXPECT_EQ(check.deeds, newest);
    const HistoryCheck backup = verifyHistory(path + ".schema-1-backup");
    EXPECT_TRUE(backup.whole());
    EXPECT_EQ(backup.newestDigest, digestOfStructure1);
}

TEST_F(OlderStructureTest, TheFirstTellsWhatWasWrittenThen)
{
    const Logbook book = Logbook::open(kept(1));
    const auto piano = book.instrument(1);
    ASSERT_TRUE(piano);
    EXPECT_EQ(piano->name, "Upright in the corner");
    EXPECT_EQ(piano->state, instrument::State::InWork);
    EXPECT_EQ(book.readingCount(1), 4);
    EXPECT_EQ(book.values(1).value(catalogue::Quantity::LetOff, keyboard::Note(40)),
              units::Amount(units::Length::nanometres(3'100'000)));
    EXPECT_THAT(book.faultMarks(1), ElementsAre(FaultMark{keyboard::Note(41), "blocking"}));
    EXPECT_EQ(book.workDone(1).size(), 1u);
    EXPECT_TRUE(book.keptPlan(1) && book.route(1) && book.tolerance(1));
    EXPECT_EQ(book.confirmedSlips(1).size(), 1u);
}

TEST_F(OlderStructureTest, TheFirstIsWorkedOnAndUndoneAcrossTheStep)
{
    Logbook book = Logbook::open(kept(1));
    book.enter(1, reading(letOff(43), 3'000'000), ben);
    const auto newest = book.undoable(1);
    ASSERT_TRUE(newest);
    book.undo(*newest, ben);
    const auto older = book.undoable(1);
    ASSERT_TRUE(older);
    EXPECT_EQ(older->name, "slip-confirmed");
    book.undo(*older, ben);
    EXPECT_TRUE(verifyHistory(file()).whole());
}

TEST_F(OlderStructureTest, AnAlterationBeforeTheStepIsFoundAfterIt)
{
    static_cast<void>(Logbook::open(kept(1)));
    RawDatabase(file()).run("UPDATE reading SET value = value + 1 WHERE note = 38");
    const HistoryCheck check = verifyHistory(file());
    ASSERT_EQ(check.alterations.size(), 1u);
    EXPECT_THAT(check.alterations[0].text(), HasSubstr("note 38"));
}

TEST_F(OlderStructureTest, ARowPutIntoATableOfTheStepIsFound)
{
    static_cast<void>(Logbook::open(kept(1)));
    RawDatabase(file()).run("INSERT INTO concession VALUES (1, 4, 40, 1, 'looks fine', 3100000, 'out', 'Eve', 0, 5)");
    const HistoryCheck check = verifyHistory(file());
    ASSERT_FALSE(check.whole());
    EXPECT_THAT(check.alterations[0].text(), HasSubstr("concession"));
}

} // namespace
} // namespace hammerline::logbook
