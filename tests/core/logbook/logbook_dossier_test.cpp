#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"
#include "support/small_jpeg.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using dossier::Area;
using dossier::Grade;
using dossier::Moment;
using dossier::WorkKind;
using testing::HasSubstr;

dossier::WorkEntry hammers()
{
    dossier::WorkEntry entry;
    entry.kind = WorkKind::Recovered;
    entry.what = "hammers";
    entry.notes = keyboard::NoteRange{keyboard::Note(1), keyboard::Note(88)};
    entry.material = "felt of another density";
    entry.person = "Cid";
    entry.day = dossier::parseIsoDay("2026-01-30");
    entry.took = std::chrono::minutes(750);
    entry.departure = true;
    entry.why = "the old felt is no longer made";
    entry.remark = "shanks kept";
    return entry;
}

class DossierTest : public LogbookTest {
protected:
    Logbook logbook = withPass();
};

TEST_F(DossierTest, WorkIsKeptToTheLastWord)
{
    const auto kept = logbook.addWork(1, hammers(), ada).value();
    EXPECT_EQ(kept.uid.size(), 32u);
    EXPECT_THAT(Logbook::open(file()).dossier(1).work, testing::ElementsAre(kept));
    auto expected = hammers();
    expected.uid = kept.uid;
    EXPECT_EQ(kept, expected);
}

TEST_F(DossierTest, WorkOfWhichLittleIsKnownIsKeptToo)
{
    const auto kept = logbook.addWork(1, {.kind = WorkKind::FoundAltered, .what = "new keytops"}, ada).value();
    EXPECT_THAT(logbook.dossier(1).work, testing::ElementsAre(kept));
}

TEST_F(DossierTest, WorkStandsByDayAndThenAsItWasEntered)
{
    auto entry = hammers();
    for (const char *what : {"third", "second", "again second", "first"}) {
        entry.what = what;
        entry.day = dossier::parseIsoDay(what == std::string("third") ? "2026-03-01" : "2026-02-01");
        if (what == std::string("first"))
            entry.day.reset();
        static_cast<void>(logbook.addWork(1, entry, ada).value());
    }
    std::vector<std::string> order;
    for (const auto &each : logbook.dossier(1).work)
        order.push_back(each.what);
    EXPECT_THAT(order, testing::ElementsAre("first", "second", "again second", "third"));
}

TEST_F(DossierTest, FaultyWorkIsRefusedAndNothingIsWritten)
{
    auto entry = hammers();
    entry.why.clear();
    const DeedId before = logbook.newestDeed();
    EXPECT_THAT(logbook.addWork(1, entry, ada).fault().problem, HasSubstr("reason"));
    EXPECT_EQ(logbook.newestDeed(), before);
}

TEST_F(DossierTest, WorkOfNoInstrumentIsRefused)
{
    EXPECT_THAT(messageOf([&] { static_cast<void>(logbook.addWork(9, hammers(), ada)); }),
                HasSubstr("no instrument 9"));
}

TEST_F(DossierTest, WorkIsChangedAndStruckAndTakenBack)
{
    auto kept = logbook.addWork(1, hammers(), ada).value();
    auto changed = kept;
    changed.took = std::chrono::minutes(800);
    EXPECT_TRUE(logbook.changeWork(1, changed, ben, "counted again").ok());
    EXPECT_TRUE(logbook.strikeWork(1, kept.uid, ben, "another piano"));
    EXPECT_TRUE(logbook.dossier(1).work.empty());
    EXPECT_FALSE(logbook.strikeWork(1, kept.uid, ben, ""));
    EXPECT_FALSE(logbook.changeWork(1, changed, ben, "").ok());
    logbook.undo(*logbook.undoableOfInstrument(1), ada);
    EXPECT_THAT(logbook.dossier(1).work, testing::ElementsAre(changed));
    logbook.undo(*logbook.undoableOfInstrument(1), ada);
    EXPECT_THAT(logbook.dossier(1).work, testing::ElementsAre(kept));
    logbook.redo(*logbook.redoableOfInstrument(1), ada);
    EXPECT_THAT(logbook.dossier(1).work, testing::ElementsAre(changed));
}

TEST_F(DossierTest, ConditionIsSaidByAreaAndMoment)
{
    EXPECT_TRUE(logbook.sayCondition(1, {Moment::AsReceived, Area::Keys}, {Grade::Poor, "chips on three"}, ada));
    EXPECT_TRUE(logbook.sayCondition(1, {Moment::AsItLeaves, Area::Keys}, {Grade::Good, {}}, ada));
    EXPECT_TRUE(logbook.sayCondition(1, {Moment::AsReceived, Area::Case}, {{}, "sun on one side"}, ada));
    const dossier::Conditions expected{{{Moment::AsReceived, Area::Keys}, {Grade::Poor, "chips on three"}},
                                       {{Moment::AsItLeaves, Area::Keys}, {Grade::Good, {}}},
                                       {{Moment::AsReceived, Area::Case}, {{}, "sun on one side"}}};
    EXPECT_EQ(Logbook::open(file()).dossier(1).conditions, expected);
}

TEST_F(DossierTest, ConditionSaidAgainInTheSameWordsWritesNothing)
{
    const dossier::ConditionPlace keys{Moment::AsReceived, Area::Keys};
    EXPECT_FALSE(logbook.sayCondition(1, keys, {}, ada));
    EXPECT_TRUE(logbook.sayCondition(1, keys, {Grade::Poor, "worn"}, ada));
    EXPECT_FALSE(logbook.sayCondition(1, keys, {Grade::Poor, "worn"}, ada));
    EXPECT_TRUE(logbook.sayCondition(1, keys, {}, ada));
    EXPECT_TRUE(logbook.dossier(1).conditions.empty());
}

TEST_F(DossierTest, APhotographIsKeptByteForByteAndMeasured)
{
    const std::string jpeg = support::smallJpeg(640, 480);
    const auto kept = logbook.addPhotograph(1, {.view = "front", .caption = "in the hall"}, jpeg, ada).value();
    EXPECT_EQ(kept.width, 640);
    EXPECT_EQ(kept.height, 480);
    const Logbook again = Logbook::open(file());
    EXPECT_THAT(again.dossier(1).photographs, testing::ElementsAre(kept));
    EXPECT_EQ(again.picture(kept.digest), jpeg);
    EXPECT_FALSE(again.picture(std::string(64, '0')));
}

TEST_F(DossierTest, ThePictureIsTheCameraCopyWithoutPlaceOrNone)
{
    const std::string withPlace = support::smallJpeg(8, 8, support::segment(0xe1, "Exif"));
    EXPECT_THAT(logbook.addPhotograph(1, {}, withPlace, ada).fault().problem, HasSubstr("camera data"));
    EXPECT_TRUE(logbook.dossier(1).photographs.empty());
}

TEST_F(DossierTest, PhotographsStandAsTheyWereAddedAndOnePictureIsKeptOnce)
{
    const std::string jpeg = support::smallJpeg(8, 8);
    for (const char *view : {"b", "a", "c"})
        static_cast<void>(logbook.addPhotograph(1, {.view = view}, jpeg, ada).value());
    std::string order;
    for (const auto &each : logbook.dossier(1).photographs)
        order += each.view;
    EXPECT_EQ(order, "bac");
    EXPECT_EQ(RawDatabase(file()).one("SELECT count(*) FROM picture"), "1");
}

TEST_F(DossierTest, APhotographKeepsItsPictureWhateverIsSaidOfIt)
{
    const auto kept = logbook.addPhotograph(1, {.view = "front"}, support::smallJpeg(8, 8), ada).value();
    auto changed = kept;
    changed.caption = "after the polish";
    changed.moment = Moment::AsItLeaves;
    changed.digest = std::string(64, '0');
    changed.width = 1;
    EXPECT_TRUE(logbook.changePhotograph(1, changed, ben).ok());
    changed.digest = kept.digest;
    changed.width = 8;
    EXPECT_THAT(logbook.dossier(1).photographs, testing::ElementsAre(changed));
    EXPECT_TRUE(logbook.removePhotograph(1, kept.uid, ben));
    EXPECT_FALSE(logbook.removePhotograph(1, kept.uid, ben));
    EXPECT_FALSE(logbook.changePhotograph(1, changed, ben).ok());
    logbook.undo(*logbook.undoableOfInstrument(1), ada);
    EXPECT_THAT(logbook.dossier(1).photographs, testing::ElementsAre(changed));
}

TEST_F(DossierTest, TheSaleIsKeptAndTheInstrumentItselfStays)
{
    const auto before = logbook.instrument(1);
    logbook.noteSale(1, {"the parish hall", "3400", "in two parts"}, ada);
    EXPECT_EQ(logbook.dossier(1).sale, (dossier::Sale{"the parish hall", "3400", "in two parts"}));
    EXPECT_EQ(logbook.instrument(1), before);
}

TEST_F(DossierTest, TheFilesOfTwoInstrumentsStayApart)
{
    static_cast<void>(logbook.addInstrument(upright("another"), ada));
    static_cast<void>(logbook.addWork(2, hammers(), ada).value());
    logbook.noteSale(2, {"nobody", {}, {}}, ada);
    EXPECT_EQ(logbook.dossier(1), dossier::Dossier());
}

TEST_F(DossierTest, APictureAlteredRemovedOrAddedIsFoundAndNamed)
{
    const auto kept = logbook.addPhotograph(1, {.view = "front"}, support::smallJpeg(8, 8), ada).value();
    EXPECT_TRUE(verifyHistory(file()).whole());
    const auto textAfter = [&](const std::string &sql) {
        std::filesystem::remove(file("tampered"));
        static_cast<void>(logbook.copyTo(file("tampered")));
        RawDatabase(file("tampered")).run(sql);
        const auto check = verifyHistory(file("tampered"));
        std::string text;
        for (const auto &alteration : check.alterations)
            text += (text.empty() ? "" : "\n") + alteration.text();
        return text;
    };
    EXPECT_EQ(textAfter("UPDATE picture SET jpeg = x'00'"), "picture " + kept.digest + ": was altered");
    EXPECT_THAT(textAfter("DELETE FROM picture"), HasSubstr("picture " + kept.digest + ": was removed"));
    EXPECT_THAT(textAfter("INSERT INTO picture VALUES ('ab', x'00')"), HasSubstr("picture ab"));
    EXPECT_THAT(textAfter("UPDATE photograph SET digest = 'ab'"), HasSubstr("was altered"));
}

} // namespace
} // namespace hammerline::logbook
