#include "logbook/hand_over.h"

#include "core/logbook/hand_over_fixture.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

TEST_F(HandOverTest, KeepsEverythingThatTheLogbookHeld)
{
    const TakenOver taken = takenOver(handedOver());
    EXPECT_TRUE(taken.isNew);
    EXPECT_EQ(taken.instrument, 2);
    auto expected = from.instrument(1).value();
    expected.id = 2;
    EXPECT_EQ(to.instrument(2), expected);
    EXPECT_EQ(to.dossier(2), from.dossier(1));
    EXPECT_EQ(to.picture(to.dossier(2).photographs.at(0).digest), support::smallJpeg(8, 8));
    const auto before = from.passes(1);
    const auto after = to.passes(2);
    ASSERT_EQ(after.size(), 2u);
    for (std::size_t index = 0; index < 2; ++index) {
        auto pass = before[index];
        pass.id = after[index].id;
        pass.instrument = 2;
        EXPECT_EQ(after[index], pass);
        EXPECT_EQ(to.readings(after[index].id), from.readings(before[index].id));
    }
    const auto pass = after[0].id;
    EXPECT_EQ(to.faultMarks(pass), from.faultMarks(1));
    EXPECT_EQ(to.tolerance(pass), from.tolerance(1));
    EXPECT_EQ(to.keptPlan(pass), from.keptPlan(1));
    EXPECT_EQ(to.workDone(pass), from.workDone(1));
    EXPECT_EQ(to.route(pass), from.route(1));
    EXPECT_EQ(to.confirmedSlips(pass), from.confirmedSlips(1));
    EXPECT_EQ(to.versions(pass, letOff(40)).size(), 3u);
    EXPECT_EQ(to.versions(pass, letOff(40))[1].reason, "misread");
}

TEST_F(HandOverTest, LeavesTheOthersInstrumentsAlone)
{
    const auto ours = to.instrument(1);
    static_cast<void>(takenOver(handedOver()));
    EXPECT_EQ(to.instrument(1), ours);
    EXPECT_EQ(to.readings(1).size(), 1u);
    EXPECT_EQ(to.instruments().size(), 2u);
}

TEST_F(HandOverTest, IsTheSameByteForByteOutOfEitherLogbook)
{
    const std::string document = handedOver();
    const TakenOver taken = takenOver(document);
    EXPECT_EQ(to.handOver(taken.instrument).value(), document);
}

TEST_F(HandOverTest, TakenOverTwiceAddsNothing)
{
    const std::string document = handedOver();
    static_cast<void>(takenOver(document));
    const DeedId newest = to.newestDeed();
    const TakenOver again = takenOver(document);
    EXPECT_EQ(again.added, 0u);
    EXPECT_FALSE(again.isNew);
    EXPECT_EQ(again.instrument, 2);
    EXPECT_EQ(to.newestDeed(), newest);
}

TEST_F(HandOverTest, LeavesAHistoryThatIsWholeAndSaysWhoBroughtItIn)
{
    const TakenOver taken = takenOver(handedOver());
    const auto check = verifyHistory(to.path());
    EXPECT_TRUE(check.whole()) << check.alterations[0].text();
    const Deed first = to.deed(to.newestDeed() - static_cast<DeedId>(taken.added)).value();
    EXPECT_EQ(first.name, "instrument-taken-over");
    EXPECT_EQ(first.stamp.person, "Ben");
}

TEST_F(HandOverTest, CanStillBeTakenBackAtTheOtherEnd)
{
    static_cast<void>(takenOver(handedOver()));
    const auto sold = to.dossier(2).sale;
    to.undo(*to.undoableOfInstrument(2), ben);
    EXPECT_FALSE(to.dossier(2).sale.said());
    to.redo(*to.redoableOfInstrument(2), ben);
    EXPECT_EQ(to.dossier(2).sale, sold);
}

TEST_F(HandOverTest, BringsWhatWasDoneSince)
{
    static_cast<void>(takenOver(handedOver()));
    from.enter(1, reading(letOff(41), 3'000'000), ada);
    const std::string document = handedOver();
    EXPECT_EQ(takenOver(document).added, 1u);
    EXPECT_EQ(to.readings(2).size(), from.readings(1).size());
    EXPECT_EQ(to.handOver(2).value(), document);
}

TEST_F(HandOverTest, AndThereAndBackAgain)
{
    static_cast<void>(takenOver(handedOver()));
    to.enter(2, reading(letOff(50), 3'000'000), ben);
    EXPECT_EQ(from.takeOver(to.handOver(2).value(), "back.json", ada, anySet).value().added, 1u);
    EXPECT_EQ(from.readings(1), to.readings(2));
}

TEST_F(HandOverTest, BringsTwoShopsTogetherWhereTheyWroteToDifferentPlaces)
{
    static_cast<void>(takenOver(handedOver()));
    to.enter(2, reading(letOff(50), 3'000'000), ben);
    from.enter(1, reading(letOff(51), 3'100'000), ada);
    EXPECT_THAT(takenOver(handedOver()).conflicts, IsEmpty());
    EXPECT_EQ(from.takeOver(to.handOver(2).value(), "back.json", ada, anySet).value().added, 1u);
    EXPECT_EQ(from.readings(1), to.readings(2));
    EXPECT_EQ(takenOver(handedOver()).added, 0u);
}

TEST_F(HandOverTest, NamesWhatBothWroteToAndWritesNothing)
{
    static_cast<void>(takenOver(handedOver()));
    to.enter(2, reading(letOff(40), 3'000'000), ben);
    from.enter(1, reading(letOff(40), 3'100'000), ada);
    from.enter(1, reading(letOff(60), 3'100'000), ada);
    const DeedId newest = to.newestDeed();
    const TakenOver taken = takenOver(handedOver());
    ASSERT_EQ(taken.conflicts.size(), 1u);
    EXPECT_EQ(taken.conflicts[0].text(), "reading let_off C4: here reading-corrected by Ben on 2026-02-02, "
                                         "in the file reading-corrected by Ada on 2026-02-02");
    EXPECT_EQ(to.newestDeed(), newest);
}

TEST_F(HandOverTest, OfNoInstrumentIsAFault)
{
    EXPECT_THAT(from.handOver(9).fault().problem, HasSubstr("no instrument 9"));
}

TEST_F(HandOverTest, OfAnotherInstrumentUnderTheUidOfOneHereIsRefused)
{
    auto twin = upright("the twin");
    twin.uid = from.instrument(1)->uid;
    static_cast<void>(to.addInstrument(twin, ben));
    EXPECT_THAT(problemOf(handedOver()), HasSubstr("has the uid of instrument 2"));
}

TEST_F(HandOverTest, APassOfAnotherInstrumentIsNotTouched)
{
    const std::string uid = to.pass(1)->uid;
    const std::string ours = from.pass(1)->uid;
    std::string document = handedOver();
    for (std::size_t at = 0; (at = document.find(ours, at)) != std::string::npos;)
        document.replace(at, ours.size(), uid);
    EXPECT_THAT(problemOf(vouchedAnew(nlohmann::json::parse(document))), HasSubstr("belongs to another instrument"));
}

} // namespace
} // namespace hammerline::logbook
