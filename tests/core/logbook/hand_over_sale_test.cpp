// Handing over without the sale, and with it later.
#include "core/logbook/hand_over_fixture.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

class HandOverSaleTest : public HandOverTest {
protected:
    HandOverSaleTest()
    {
        from.noteSale(1, {"the town hall", "3600", {}}, ada);
        from.undo(*from.undoableOfInstrument(1), ada);
        from.enter(1, reading(letOff(60), 3'000'000), ada);
    }
    std::string withoutSale() { return from.handOver(1, HandedSale::StaysHere).value(); }
};

TEST_F(HandOverSaleTest, LeavesOutBuyerAndPriceAndThatThereWasASale)
{
    const std::string document = withoutSale();
    for (const char *word : {"parish", "town hall", "\"3400\"", "\"3600\"", "sale-noted", "\"table\":\"sale\""})
        EXPECT_THAT(document, Not(HasSubstr(word)));
    Logbook unsold = Logbook::create(file("unsold.hammerline"), ada).value();
    static_cast<void>(unsold.takeOver(document, "piano.json", ben, anySet).value());
    EXPECT_EQ(unsold.handOver(1, HandedSale::StaysHere).value(), document);
}

TEST_F(HandOverSaleTest, VouchesForTheRestAndIsTakenOver)
{
    const std::string document = withoutSale();
    EXPECT_EQ(vouchedAnew(nlohmann::json::parse(document)), document);
    const TakenOver taken = takenOver(document);
    EXPECT_TRUE(taken.saleLeftOut);
    EXPECT_FALSE(to.dossier(2).sale.said());
    EXPECT_EQ(to.dossier(2).work, from.dossier(1).work);
    EXPECT_EQ(to.readings(2).size(), from.readings(1).size());
    EXPECT_TRUE(verifyHistory(to.path()).whole());
}

TEST_F(HandOverSaleTest, AWholeDocumentLaterBringsTheSaleWithoutConflict)
{
    const auto left = takenOver(withoutSale()).added;
    const TakenOver whole = takenOver(handedOver());
    EXPECT_THAT(whole.conflicts, IsEmpty());
    EXPECT_FALSE(whole.saleLeftOut);
    EXPECT_EQ(whole.added, 3u);
    EXPECT_EQ(to.dossier(2), from.dossier(1));
    EXPECT_EQ(to.dossier(2).sale.buyer, "the parish hall");
    EXPECT_TRUE(verifyHistory(to.path()).whole());
    EXPECT_EQ(takenOver(handedOver()).added, 0u);
    EXPECT_EQ(nlohmann::json::parse(handedOver())["deeds"].size(), left + 3);
    EXPECT_EQ(to.handOver(2, HandedSale::StaysHere).value(), withoutSale());
}

TEST_F(HandOverSaleTest, ADocumentWithoutTheSaleAfterAWholeOneAddsNothing)
{
    static_cast<void>(takenOver(handedOver()));
    const TakenOver again = takenOver(withoutSale());
    EXPECT_EQ(again.added, 0u);
    EXPECT_THAT(again.conflicts, IsEmpty());
    EXPECT_EQ(to.dossier(2), from.dossier(1));
    EXPECT_EQ(to.handOver(2).value(), handedOver());
}

TEST_F(HandOverSaleTest, ASaleOfOnesOwnIsAConflictWithTheOneLeftOutBefore)
{
    static_cast<void>(takenOver(withoutSale()));
    to.noteSale(2, {"somebody else", "2800", {}}, ben);
    const TakenOver whole = takenOver(handedOver());
    ASSERT_FALSE(whole.conflicts.empty());
    EXPECT_THAT(whole.conflicts[0].text(), HasSubstr("sale"));
    EXPECT_EQ(takenOver(withoutSale()).added, 0u);
    EXPECT_EQ(to.dossier(2).sale.buyer, "somebody else");
}

class DeliveredTest : public HandOverSaleTest {
protected:
    DeliveredTest() { sign(20); }

    void sign(int minutes)
    {
        const auto newest = from.passes(1).back().id;
        ASSERT_TRUE(
            from.signPass(newest, {.action = catalogue::ActionKind::Vertical}, {}, {moment(minutes), "Ada"}, {}));
    }
    void change(int minutes, const std::function<void(instrument::Instrument &)> &how)
    {
        auto changed = from.instrument(1).value();
        how(changed);
        ASSERT_TRUE(from.changeInstrument(changed, {moment(minutes), "Ada"}, {}));
    }
    void deliver(int minutes)
    {
        change(minutes, [](auto &changed) { changed.state = instrument::State::Delivered; });
    }
};

TEST_F(DeliveredTest, ThatItWasDeliveredIsLeftOutToo)
{
    const std::string before = withoutSale();
    deliver(30);
    EXPECT_TRUE(tellsOfDelivery(handedOver()));
    const std::string document = withoutSale();
    EXPECT_FALSE(tellsOfDelivery(document));
    EXPECT_EQ(document, before) << "nothing shows that there was more";
    static_cast<void>(takenOver(document));
    EXPECT_EQ(to.instrument(2)->state, instrument::State::SignedOff);
    EXPECT_EQ(to.handOver(2, HandedSale::StaysHere).value(), document);
}

TEST_F(DeliveredTest, AWholeDocumentLaterBringsTheDelivery)
{
    deliver(30);
    static_cast<void>(takenOver(withoutSale()));
    EXPECT_THAT(takenOver(handedOver()).conflicts, IsEmpty());
    EXPECT_EQ(to.instrument(2)->state, instrument::State::Delivered);
    EXPECT_EQ(to.handOver(2).value(), handedOver());
}

TEST_F(DeliveredTest, DeliveredAndTakenBackIsLeftOutAsWell)
{
    const std::string before = withoutSale();
    deliver(30);
    from.undo(*from.undoableOfInstrument(1), {moment(31), "Ada"});
    deliver(32);
    EXPECT_EQ(withoutSale(), before);
}

TEST_F(DeliveredTest, WhereMoreWasWrittenOfTheInstrumentSinceTheDeliveryStaysAndIsTold)
{
    deliver(30);
    change(40, [](auto &changed) { changed.remark = "stands by a window"; });
    EXPECT_TRUE(tellsOfDelivery(withoutSale()));
    EXPECT_EQ(takenOver(withoutSale()).added, nlohmann::json::parse(withoutSale())["deeds"].size());
}

TEST_F(HandOverSaleTest, ADocumentThatSaysItIsWithoutAndIsNotIsRefused)
{
    EXPECT_THAT(problemOfForged([](auto &json) { json["without"] = {"sale"}; }), HasSubstr("is of the sale"));
}

TEST_F(HandOverSaleTest, ToSayThatNothingWasLeftOutIsFound)
{
    auto json = nlohmann::json::parse(withoutSale());
    json.erase("without");
    EXPECT_THAT(problemOf(json.dump()), HasSubstr("the document was altered"));
}

} // namespace
} // namespace hammerline::logbook
