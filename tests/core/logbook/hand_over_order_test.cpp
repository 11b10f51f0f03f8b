// Two shops hand parts of one instrument to each other; what either hands over in the end is the same.
#include "core/logbook/hand_over_fixture.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

class HandOverOrderTest : public HandOverTest {
protected:
    HandOverOrderTest() { bring(from, to); }

    static Stamp at(int minutes, const std::string &person) { return {moment(minutes), person}; }
    static instrument::InstrumentId pianoIn(const Logbook &book)
    {
        return book.instruments().back().name == "another one" ? 1 : 2;
    }
    static void bring(const Logbook &giver, Logbook &taker)
    {
        const auto taken = taker.takeOver(giver.handOver(pianoIn(giver)).value(), "piano.json", at(900, "Cid"), anySet);
        ASSERT_TRUE(taken);
        EXPECT_THAT(taken.value().conflicts, IsEmpty());
    }
    void expectSame() const
    {
        EXPECT_EQ(from.handOver(1).value(), to.handOver(2).value());
        EXPECT_EQ(from.handOver(1, HandedSale::StaysHere).value(), to.handOver(2, HandedSale::StaysHere).value());
        EXPECT_TRUE(verifyHistory(from.path()).whole());
        EXPECT_TRUE(verifyHistory(to.path()).whole());
    }
};

TEST_F(HandOverOrderTest, WhateverTheOrderInWhichThePartsCame)
{
    from.enter(1, reading(letOff(10), 3'000'000), at(100, "Ada"));
    to.enter(2, reading(letOff(20), 3'100'000), at(101, "Ben"));
    bring(to, from);
    from.enter(1, reading(letOff(20), 3'200'000), at(103, "Ada"), "measured again");
    to.sayCondition(2, {dossier::Moment::AsItLeaves, dossier::Area::Keys}, {dossier::Grade::Good, "new"},
                    at(102, "Ben"));
    static_cast<void>(to.importPass({.instrument = 2, .purpose = readings::Purpose::Recheck, .began = moment(104)},
                                    {reading(letOff(1), 1'000'000)}, at(104, "Ben")));
    bring(from, to);
    to.undo(*to.undoableOfInstrument(2), at(105, "Ben"));
    bring(to, from);
    expectSame();
}

TEST_F(HandOverOrderTest, AThirdLogbookHoldsThemInItsOwnOrderAndTellsThemTheSame)
{
    from.enter(1, reading(letOff(10), 3'000'000), at(100, "Ada"));
    to.enter(2, reading(letOff(20), 3'100'000), at(99, "Ben"));
    Logbook third = Logbook::create(file("third.hammerline"), ben).value();
    static_cast<void>(third.takeOver(from.handOver(1).value(), "a.json", ben, anySet).value());
    static_cast<void>(third.takeOver(to.handOver(2).value(), "b.json", ben, anySet).value());
    bring(from, to);
    bring(to, from);
    expectSame();
    EXPECT_EQ(third.handOver(1).value(), from.handOver(1).value());
}

TEST_F(HandOverOrderTest, NoDeedComesBeforeOneThatItBuildsUponWhateverTheClocksSaid)
{
    to.enter(2, reading(letOff(20), 3'100'000), at(200, "Ben"));
    bring(to, from);
    from.enter(1, reading(letOff(20), 3'200'000), at(-100, "Ada"), "the clock was slow");
    from.undo(*from.undoable(1), at(-200, "Ada"));
    static_cast<void>(from.beginSpotCheck(
        {.instrument = 1, .began = moment(-300)},
        {.checked = 1, .seed = 7, .notes = {keyboard::Note(40)}, .quantities = {catalogue::Quantity::LetOff}},
        at(-300, "Ada")));
    bring(from, to);
    expectSame();
    EXPECT_EQ(to.versions(2, letOff(20)).size(), 3u);
    Logbook third = Logbook::create(file("third.hammerline"), ben).value();
    static_cast<void>(third.takeOver(from.handOver(1).value(), "a.json", ben, anySet).value());
    EXPECT_EQ(third.handOver(1).value(), from.handOver(1).value());
}

TEST_F(HandOverOrderTest, ASignatureStaysBehindAllThatWasSigned)
{
    tolerance::ToleranceSet nothing{.action = catalogue::ActionKind::Vertical};
    from.enter(1, reading(letOff(30), 3'100'000), at(200, "Ada"));
    ASSERT_TRUE(from.signPass(1, nothing, {"shop", "{}"}, at(100, "Ada"), "fit"));
    ASSERT_TRUE(from.reopenPass(1, at(90, "Ada"), "a hammer was changed"));
    from.enter(1, reading(letOff(31), 3'100'000), at(80, "Ada"));
    bring(from, to);
    expectSame();
    const auto json = nlohmann::json::parse(to.handOver(2).value());
    std::vector<std::string> names;
    for (const auto &deed : json["deeds"])
        names.push_back(deed["name"]);
    const auto end = std::vector<std::string>(names.end() - 3, names.end());
    EXPECT_EQ(end, (std::vector<std::string>{"pass-signed", "pass-reopened", "reading-entered"}));
}

} // namespace
} // namespace hammerline::logbook
