#include "core/logbook/logbook_fixture.h"
#include "logbook/inside/schema_steps.h"

#include <gmock/gmock.h>

#include <fstream>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;
using testing::MatchesRegex;

TEST_F(LogbookTest, ANewOneHasOneDeedThatSaysSo)
{
    const Logbook logbook = created();
    ASSERT_EQ(logbook.newestDeed(), 1);
    const auto deeds = logbook.deeds(0, 10);
    ASSERT_EQ(deeds.size(), 1u);
    EXPECT_EQ(deeds[0].name, "logbook-created");
    EXPECT_EQ(deeds[0].stamp.person, "Ada");
    EXPECT_EQ(deeds[0].stamp.at, moment(0));
}

TEST_F(LogbookTest, CreatingOverAFileIsAFaultAndLeavesItAlone)
{
    std::ofstream(file()) << "precious";
    const auto refused = Logbook::create(file(), ada);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.fault().text(), HasSubstr("there already"));
    std::string content;
    std::ifstream(file()) >> content;
    EXPECT_EQ(content, "precious");
}

TEST_F(LogbookTest, CreatingInAFolderThatIsNotThereSaysSo)
{
    EXPECT_THAT(messageOf([&] { static_cast<void>(Logbook::create(file("no/such/folder"), ada)); }),
                HasSubstr("cannot be opened"));
}

TEST_F(LogbookTest, TheFileIsAWriteAheadLogOfOurKind)
{
    const Logbook logbook = created();
    RawDatabase raw(file());
    EXPECT_EQ(raw.one("PRAGMA journal_mode"), "wal");
    EXPECT_EQ(raw.one("PRAGMA application_id"), std::to_string(0x486D724C));
    EXPECT_EQ(raw.one("PRAGMA user_version"), std::to_string(inside::schemaSteps().size()));
}

TEST_F(LogbookTest, EverythingOfAnInstrumentComesBackAfterReopening)
{
    instrument::Instrument grand = upright("Grand \"Ännchen\"");
    grand.action = catalogue::ActionKind::Grand;
    grand.compass = {keyboard::Note(-8), keyboard::Note(88)};
    grand.sections = {{"bass", {keyboard::Note(-8), keyboard::Note(26)}},
                      {"treble, \"high\"", {keyboard::Note(27), keyboard::Note(88)}}};
    grand.maker = "Nobody & Sons";
    grand.model = "M";
    grand.serial = "0007";
    grand.year = 1911;
    grand.size = units::Length::nanometres(1'879'600'001);
    grand.stringing = {{{keyboard::Note(27), keyboard::Note(88)}, "three plain strings"}};
    grand.dampers = {{{keyboard::Note(-8), keyboard::Note(20)}, "wedge"},
                     {{keyboard::Note(21), keyboard::Note(67)}, "flat"}};
    grand.condition = "worn\nbut sound";
    grand.owner = "the owner";
    grand.remark = "a remark";
    grand.state = instrument::State::InReview;
    grand.toleranceId = "shop";
    grand.toleranceText = "{\"format\": \"x\"}";
    {
        Logbook logbook = created();
        const auto stored = logbook.addInstrument(grand, ada);
        ASSERT_TRUE(stored);
        grand.id = stored.value().id;
        grand.uid = stored.value().uid;
    }
    const Logbook again = Logbook::open(file());
    EXPECT_EQ(again.instrument(grand.id), grand);
    EXPECT_EQ(again.instruments(), std::vector{grand});
}

TEST_F(LogbookTest, AnInstrumentGetsAnIdAndAUidUnlessItHasOne)
{
    Logbook logbook = created();
    const auto first = logbook.addInstrument(upright(), ada).value();
    instrument::Instrument travelled = upright("Travelled");
    travelled.uid = "0123456789abcdef0123456789abcdef";
    const auto second = logbook.addInstrument(travelled, ada).value();
    EXPECT_EQ(first.id, 1);
    EXPECT_THAT(first.uid, MatchesRegex("[0-9a-f]{32}"));
    EXPECT_EQ(second.id, 2);
    EXPECT_EQ(second.uid, travelled.uid);
}

TEST_F(LogbookTest, TheLinesOfAListSayTheNewestNameAndStateAndLeaveOutWhatWasTakenBack)
{
    Logbook logbook = created();
    auto moved = logbook.addInstrument(upright("First"), ada).value();
    moved.name = "Moved upstairs";
    moved.state = instrument::State::InWork;
    ASSERT_TRUE(logbook.changeInstrument(moved, ada, {}));
    const auto taken = logbook.addInstrument(upright("Taken back"), ada).value();
    const auto kept = logbook.addInstrument(upright("Kept"), ada).value();
    static_cast<void>(logbook.undo(*logbook.undoableOfInstrument(taken.id), ada));
    EXPECT_EQ(logbook.instrumentLines(),
              (std::vector<InstrumentLine>{{moved.id, "Moved upstairs", instrument::State::InWork},
                                           {kept.id, "Kept", instrument::State::TakenIn}}));
}

TEST_F(LogbookTest, AStateThatNoLogbookOfOursHoldsIsDamage)
{
    static_cast<void>(created().addInstrument(upright(), ada));
    RawDatabase(file()).run("UPDATE instrument SET state = 'lost'");
    EXPECT_THAT(messageOf([&] { static_cast<void>(Logbook::open(file()).instrumentLines()); }),
                HasSubstr("instrument 1"));
}

TEST_F(LogbookTest, AFaultyInstrumentIsRefusedAndNothingIsWritten)
{
    Logbook logbook = created();
    EXPECT_FALSE(logbook.addInstrument(upright(""), ada));
    EXPECT_EQ(logbook.newestDeed(), 1);
    const auto stored = logbook.addInstrument(upright(), ada).value();
    instrument::Instrument changed = stored;
    changed.name.clear();
    EXPECT_FALSE(logbook.changeInstrument(changed, ada, "slip"));
    EXPECT_EQ(logbook.instrument(stored.id), stored);
    EXPECT_EQ(logbook.newestDeed(), 2);
}

TEST_F(LogbookTest, AChangeIsANewerVersionAndTheOldOneStays)
{
    Logbook logbook = created();
    auto piano = logbook.addInstrument(upright(), ada).value();
    piano.state = instrument::State::InWork;
    ASSERT_TRUE(logbook.changeInstrument(piano, ben, "work began"));
    EXPECT_EQ(logbook.instrument(piano.id), piano);
    EXPECT_EQ(RawDatabase(file()).one("SELECT group_concat(state) FROM instrument"), "taken-in,in-work");
    const Deed deed = logbook.deeds(2, 1).at(0);
    EXPECT_EQ(deed.name, "instrument-changed");
    EXPECT_EQ(deed.reason, "work began");
    EXPECT_EQ(deed.instrument, piano.id);
    EXPECT_EQ(deed.pass, 0);
}

TEST_F(LogbookTest, ChangingAnInstrumentThatIsNotThereIsAFault)
{
    Logbook logbook = created();
    instrument::Instrument stranger = upright();
    stranger.id = 99;
    EXPECT_FALSE(logbook.changeInstrument(stranger, ada, ""));
    EXPECT_FALSE(logbook.instrument(99).has_value());
}

TEST_F(LogbookTest, EverythingOfAPassComesBackAfterReopening)
{
    readings::Pass pass{.instrument = 1, .purpose = readings::Purpose::AsLeft, .began = moment(3), .person = "Ben"};
    pass.climate = {21.5, 43.25};
    pass.gauge = {"dial 3", units::Length::nanometres(10'000), units::Length::nanometres(50'800)};
    pass.dipDatum = readings::DipDatum::Back13mm;
    pass.dropDatum = readings::DropDatum::FromString;
    pass.unit = units::Unit::Mil;
    pass.remark = "cold day";
    {
        Logbook logbook = withPass();
        pass = logbook.beginPass(pass, ben);
        EXPECT_EQ(pass.id, 2);
        EXPECT_THAT(pass.uid, MatchesRegex("[0-9a-f]{32}"));
    }
    EXPECT_EQ(Logbook::open(file()).pass(2), pass);
}

TEST_F(LogbookTest, PassesComeByTheirBeginningThenId)
{
    Logbook logbook = withPass();
    static_cast<void>(logbook.addInstrument(upright("another"), ada));
    static_cast<void>(logbook.beginPass({.instrument = 1, .began = moment(-60)}, ada));
    static_cast<void>(logbook.beginPass({.instrument = 2, .began = moment(0)}, ada));
    static_cast<void>(logbook.beginPass({.instrument = 1, .began = moment(1)}, ada));
    std::vector<readings::PassId> ids;
    for (const auto &pass : logbook.passes(1))
        ids.push_back(pass.id);
    EXPECT_EQ(ids, (std::vector<readings::PassId>{2, 1, 4}));
}

TEST_F(LogbookTest, APassNeedsItsInstrumentAndStaysWithIt)
{
    Logbook logbook = withPass();
    EXPECT_THAT(messageOf([&] { static_cast<void>(logbook.beginPass({.instrument = 7}, ada)); }),
                HasSubstr("no instrument 7"));
    auto pass = logbook.pass(1).value();
    pass.instrument = 2;
    EXPECT_THAT(messageOf([&] { logbook.changePass(pass, ada, ""); }), HasSubstr("stays with its instrument"));
    EXPECT_EQ(logbook.newestDeed(), 3);
}

TEST_F(LogbookTest, AChangedPassIsANewerVersion)
{
    Logbook logbook = withPass();
    auto pass = logbook.pass(1).value();
    pass.remark = "lamp was off";
    logbook.changePass(pass, ben, "forgot");
    EXPECT_EQ(logbook.pass(1), pass);
    EXPECT_EQ(logbook.passes(1), std::vector{pass});
    EXPECT_EQ(logbook.deeds(3, 1).at(0).name, "pass-changed");
}

TEST_F(LogbookTest, NamesAreStoredAsTheyAre)
{
    const std::string hard =
        "Robert'); DROP TABLE reading;-- \"q\" \xE2\x80\x8F\xD7\x90\xE2\x80\xAE" + std::string(5'000, 'x');
    Logbook logbook = withPass();
    readings::Reading hardOne = reading(letOff(40), 3'000'000, hard + "\n\r\t\x01");
    hardOne.remark = hard;
    logbook.enter(1, hardOne, {moment(2), hard}, hard);
    const auto stored = logbook.readings(1).at(0);
    EXPECT_EQ(stored.typed, hard + "\n\r\t\x01");
    EXPECT_EQ(stored.remark, hard);
    EXPECT_EQ(stored.person, hard);
    EXPECT_EQ(logbook.deeds(3, 1).at(0).reason, hard);
}

TEST_F(LogbookTest, OddFileNamesAreOnlyNames)
{
    for (const char *name : {"a'b.hammerline", "x?mode=memory", "file:y", ":memory:", "with blank #1 %41"}) {
        static_cast<void>(Logbook::create(file(name), ada).value());
        EXPECT_EQ(Logbook::open(file(name), Access::ReadOnly).newestDeed(), 1) << name;
    }
}

TEST_F(LogbookTest, DeedsComeOldestFirstAndNoMoreThanAsked)
{
    const Logbook logbook = withPass();
    const auto deeds = logbook.deeds(1, 1);
    ASSERT_EQ(deeds.size(), 1u);
    EXPECT_EQ(deeds[0].name, "instrument-added");
    EXPECT_EQ(logbook.deeds(0, 100).size(), 3u);
    EXPECT_TRUE(logbook.deeds(3, 100).empty());
    EXPECT_EQ(logbook.deed(3)->name, "pass-begun");
    EXPECT_FALSE(logbook.deed(4).has_value());
    EXPECT_THAT(logbook.digest(3), MatchesRegex("[0-9a-f]{64}"));
    EXPECT_EQ(logbook.digest(4), "");
}

TEST_F(LogbookTest, TwoOnOneFileSeeEachOther)
{
    Logbook one = withPass();
    Logbook two = Logbook::open(file());
    one.enter(1, reading(letOff(40), 3'000'000), ada);
    EXPECT_EQ(two.newestDeed(), one.newestDeed());
    EXPECT_EQ(two.readings(1), one.readings(1));
    two.enter(1, reading(letOff(41), 3'100'000), ben);
    EXPECT_EQ(one.readingCount(1), 2);
    EXPECT_EQ(one.newestDeed(), 5);
}

TEST_F(LogbookTest, ACopyIsWholeAndNeverOverwrites)
{
    Logbook logbook = withPass();
    logbook.enter(1, reading(letOff(40), 3'000'000), ada);
    ASSERT_TRUE(logbook.copyTo(file("copy")));
    EXPECT_FALSE(logbook.copyTo(file("copy")));
    EXPECT_EQ(Logbook::open(file("copy")).readings(1), logbook.readings(1));
}

} // namespace
} // namespace hammerline::logbook
