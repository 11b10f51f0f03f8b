#include "core/logbook/logbook_fixture.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using catalogue::Quantity;
using readings::Reading;
using testing::HasSubstr;

Reading stored(Reading reading, const Stamp &stamp)
{
    reading.person = stamp.person;
    reading.at = stamp.at;
    return reading;
}

TEST_F(LogbookTest, AReadingIsThereForEveryOtherConnectionWhenEnterReturns)
{
    Logbook logbook = withPass();
    const DeedId deed = logbook.enter(1, reading(letOff(40), 3'175'000, "1/8"), ben);
    EXPECT_EQ(deed, 4);
    EXPECT_EQ(RawDatabase(file()).one("SELECT value FROM reading"), "3175000");
    EXPECT_EQ(logbook.readings(1), std::vector{stored(reading(letOff(40), 3'175'000, "1/8"), ben)});
    const Deed said = logbook.deed(deed).value();
    EXPECT_EQ(said.name, "reading-entered");
    EXPECT_EQ(said.subject, "let_off C4");
    EXPECT_EQ(said.instrument, 1);
    EXPECT_EQ(said.pass, 1);
}

TEST_F(LogbookTest, TypedTextComesBackWhetherItIsTheExactNumberOrNotOrEmpty)
{
    Logbook logbook = withPass();
    logbook.enter(1, reading(letOff(1), 3'175'000, "3.175"), ada);
    logbook.enter(1, reading(letOff(2), 3'175'000, "3,175 mm"), ada);
    logbook.enter(1, reading(letOff(3), 3'175'000, ""), ada);
    const auto found = logbook.readings(1);
    EXPECT_EQ(found[0].typed, "3.175");
    EXPECT_EQ(found[1].typed, "3,175 mm");
    EXPECT_EQ(found[2].typed, "");
    EXPECT_EQ(RawDatabase(file()).one("SELECT count(*) FROM reading WHERE typed IS NULL"), "1");
}

TEST_F(LogbookTest, PersonAndMomentOfAReadingAreTheStampsUnlessItHasItsOwn)
{
    Logbook logbook = withPass();
    Reading own = reading(letOff(40), 1);
    own.person = "Cid";
    own.at = moment(77);
    logbook.enter(1, own, ada);
    logbook.enter(1, reading(letOff(41), 1), ben);
    EXPECT_EQ(logbook.readings(1), (std::vector{own, stored(reading(letOff(41), 1), ben)}));
}

TEST_F(LogbookTest, MassesAndNegativeHeightsComeBack)
{
    Logbook logbook = withPass();
    Reading mass{.place = {Quantity::DownWeight, keyboard::Note(5), 1},
                 .value = units::Mass::milligrams(52'001),
                 .typed = "52.001"};
    Reading height{.place = {Quantity::KeyHeight, keyboard::Note(-8), 1},
                   .value = units::Length::nanometres(-250'000),
                   .typed = "-.25"};
    logbook.enter(1, mass, ada);
    logbook.enter(1, height, ada);
    EXPECT_EQ(logbook.readings(1), (std::vector{stored(height, ada), stored(mass, ada)}));
}

TEST_F(LogbookTest, ReadingsComeByQuantityNoteAndTakeWhateverTheOrderOfEntry)
{
    Logbook logbook = withPass();
    logbook.enter(1, reading({Quantity::Dip, keyboard::Note(3), 1}, 10), ada);
    logbook.enter(1, reading(letOff(40, 2), 20), ada);
    logbook.enter(1, reading(letOff(40, 1), 30), ada);
    logbook.enter(1, reading(letOff(-2), 40), ada);
    std::vector<std::int64_t> values;
    for (const auto &found : logbook.readings(1))
        values.push_back(found.value.baseCount());
    EXPECT_EQ(values, (std::vector<std::int64_t>{40, 30, 20, 10}));
    EXPECT_EQ(logbook.readingCount(1), 4);
    EXPECT_EQ(logbook.values(1), readings::meansOf(logbook.readings(1)));
}

TEST_F(LogbookTest, ACorrectionIsTheNewestVersionAndTheFirstStays)
{
    Logbook logbook = withPass();
    logbook.enter(1, reading(letOff(40), 3'000'000, "3"), ada);
    const DeedId second = logbook.enter(1, reading(letOff(40), 3'200'000, "3.2"), ben, "misread");
    ASSERT_EQ(logbook.readings(1).size(), 1u);
    EXPECT_EQ(logbook.readings(1)[0].value, units::Length::nanometres(3'200'000));
    EXPECT_EQ(logbook.readingCount(1), 1);
    EXPECT_TRUE(logbook.hasReadings(1));
    EXPECT_FALSE(logbook.hasReadings(2));
    EXPECT_EQ(logbook.deed(second)->name, "reading-corrected");
    const auto versions = logbook.versions(1, letOff(40));
    ASSERT_EQ(versions.size(), 2u);
    EXPECT_EQ(versions[0].value, units::Amount(units::Length::nanometres(3'000'000)));
    EXPECT_EQ(versions[0].typed, "3");
    EXPECT_EQ(versions[0].stamp.person, "Ada");
    EXPECT_EQ(versions[1].stamp.person, "Ben");
    EXPECT_EQ(versions[1].reason, "misread");
    EXPECT_EQ(versions[1].deed, second);
}

TEST_F(LogbookTest, AWithdrawnReadingIsGoneButItsVersionsStay)
{
    Logbook logbook = withPass();
    logbook.enter(1, reading(letOff(40), 3'000'000), ada);
    EXPECT_TRUE(logbook.withdraw(1, letOff(40), ben, "wrong piano"));
    EXPECT_TRUE(logbook.readings(1).empty());
    EXPECT_TRUE(logbook.values(1).empty());
    EXPECT_EQ(logbook.readingCount(1), 0);
    EXPECT_FALSE(logbook.hasReadings(1));
    const auto versions = logbook.versions(1, letOff(40));
    ASSERT_EQ(versions.size(), 2u);
    EXPECT_FALSE(versions[1].value.has_value());
    EXPECT_EQ(versions[1].reason, "wrong piano");
}

TEST_F(LogbookTest, WithdrawingNothingWritesNothing)
{
    Logbook logbook = withPass();
    EXPECT_FALSE(logbook.withdraw(1, letOff(40), ada, ""));
    logbook.enter(1, reading(letOff(40), 1), ada);
    EXPECT_TRUE(logbook.withdraw(1, letOff(40), ada, ""));
    EXPECT_FALSE(logbook.withdraw(1, letOff(40), ada, ""));
    EXPECT_EQ(logbook.newestDeed(), 5);
}

TEST_F(LogbookTest, AfterAWithdrawalTheNextOneIsEnteredNotCorrected)
{
    Logbook logbook = withPass();
    logbook.enter(1, reading(letOff(40), 1), ada);
    logbook.withdraw(1, letOff(40), ada, "");
    EXPECT_EQ(logbook.deed(logbook.enter(1, reading(letOff(40), 2), ada))->name, "reading-entered");
}

TEST_F(LogbookTest, EnteringOverSomethingElseThanThoughtWritesNothing)
{
    Logbook logbook = withPass();
    const units::Amount three = units::Length::nanometres(3);
    EXPECT_TRUE(logbook.enterOver(std::nullopt, 1, reading(letOff(40), 3), ada).has_value());
    EXPECT_FALSE(logbook.enterOver(std::nullopt, 1, reading(letOff(40), 4), ben).has_value());
    EXPECT_EQ(logbook.readings(1).at(0).value, three);
    EXPECT_TRUE(logbook.enterOver(three, 1, reading(letOff(40), 4), ben).has_value());
    EXPECT_EQ(logbook.newestDeed(), 5);
}

TEST_F(LogbookTest, EnteringIntoAPassThatIsNotThereIsRefused)
{
    Logbook logbook = withPass();
    EXPECT_THAT(messageOf([&] { logbook.enter(2, reading(letOff(40), 1), ada); }), HasSubstr("no pass 2"));
    EXPECT_EQ(logbook.newestDeed(), 3);
}

TEST_F(LogbookTest, AnImportIsOneDeedAndTakesPersonAndMomentFromThePass)
{
    Logbook logbook = withPass();
    Reading other = reading(letOff(2), 8, "8 nm");
    other.person = "Cid";
    const readings::Pass file{
        .instrument = 1, .purpose = readings::Purpose::AsLeft, .began = moment(-99), .person = "Dot"};
    const auto pass = logbook.importPass(file, {other, reading(letOff(1), 7)}, ben);
    EXPECT_EQ(logbook.newestDeed(), 4);
    EXPECT_EQ(logbook.deed(4)->name, "pass-imported");
    EXPECT_EQ(logbook.deed(4)->stamp.person, "Ben");
    const auto found = logbook.readings(pass.id);
    ASSERT_EQ(found.size(), 2u);
    EXPECT_EQ(found[0], stored(reading(letOff(1), 7), {moment(-99), "Dot"}));
    EXPECT_EQ(found[1], stored(other, {moment(-99), "Cid"}));
}

TEST_F(LogbookTest, ReadingsOfAnImportKeepTheirMomentWhenThePassIsChanged)
{
    Logbook logbook = withPass();
    auto pass =
        logbook.importPass({.instrument = 1, .began = moment(-99), .person = "Dot"}, {reading(letOff(1), 7)}, ben);
    pass.person = "Eve";
    pass.began = moment(-1);
    logbook.changePass(pass, ben, "");
    EXPECT_EQ(logbook.readings(pass.id).at(0).person, "Dot");
    EXPECT_EQ(logbook.readings(pass.id).at(0).at, moment(-99));
}

TEST_F(LogbookTest, AnImportThatFailsLeavesNothing)
{
    Logbook logbook = withPass();
    const std::vector twice{reading(letOff(1), 7), reading(letOff(1), 8)};
    EXPECT_THROW(static_cast<void>(logbook.importPass({.instrument = 1}, twice, ben)), outcome::BrokenWorld);
    EXPECT_EQ(logbook.newestDeed(), 3);
    EXPECT_EQ(logbook.passes(1).size(), 1u);
    logbook.enter(1, reading(letOff(1), 7), ada);
    EXPECT_EQ(logbook.newestDeed(), 4);
}

TEST_F(LogbookTest, PassesDoNotMixTheirReadings)
{
    Logbook logbook = withPass();
    const auto other = logbook.beginPass({.instrument = 1, .began = moment(9)}, ada);
    logbook.enter(1, reading(letOff(40), 1), ada);
    logbook.enter(other.id, reading(letOff(40), 2), ada);
    EXPECT_EQ(logbook.readings(1).at(0).value, units::Length::nanometres(1));
    EXPECT_EQ(logbook.versions(other.id, letOff(40)).size(), 1u);
}

} // namespace
} // namespace hammerline::logbook
