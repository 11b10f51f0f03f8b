#pragma once
// Two shops between which an instrument goes.

#include "core/logbook/logbook_fixture.h"
#include "logbook/hand_over.h"
#include "support/small_jpeg.h"
#include "support/vouched_anew.h"

#include <functional>
#include <string>

namespace hammerline::logbook {

using support::forged;
using support::sha256Of;
using support::vouchedAnew;

/// Two shops: the one that hands over, whose piano has something in every table, and one with pianos of its own.
class HandOverTest : public LogbookTest {
protected:
    HandOverTest()
    {
        static_cast<void>(from.addInstrument(upright("another one"), ada));
        fillReadings();
        fillDossier();
        static_cast<void>(to.addInstrument(upright("one of our own"), ben));
        static_cast<void>(to.beginPass({.instrument = 1, .began = moment(2)}, ben));
        to.enter(1, reading(letOff(40), 2'000'000), ben);
    }

    void fillReadings()
    {
        from.enter(1, reading(letOff(40), 3'175'000, "1/8"), ada);
        from.enter(1, reading(letOff(40, 2), 3'200'000, "3,2"), ada);
        from.enter(1, reading(letOff(40), 3'300'000, "3.3"), ben, "misread");
        ada.at = moment(6);
        ben.at = moment(7);
        from.undo(*from.undoable(1), ada);
        from.markFault(1, {keyboard::Note(40), "blocking"}, ada);
        from.rememberTolerance(1, {"shop", "{}"}, ada);
        from.keepPlan(1, "{}", ada);
        from.logWork(1, "let_off 40", std::chrono::seconds(30), ada);
        from.chooseRoute(1, {"chromatic", ""}, ada);
        from.confirmSlip(1, {letOff(40), units::Length::millimetres(3), "ten-times-off"}, ada);
        std::vector<readings::Reading> many{reading(letOff(1), 1'000'000), reading(letOff(2), 2'000'000)};
        many[1].person = "Cid";
        many[1].remark = "cold";
        static_cast<void>(from.importPass(
            {.instrument = 1, .purpose = readings::Purpose::AsLeft, .began = moment(60), .person = "Ada"}, many, ben));
        ada.at = ben.at = moment(8);
    }
    void fillDossier()
    {
        static_cast<void>(from.addWork(1, {.what = "hammers", .departure = true, .why = "worn"}, ada).value());
        from.sayCondition(1, {dossier::Moment::AsReceived, dossier::Area::Keys}, {dossier::Grade::Poor, "chips"}, ada);
        static_cast<void>(from.addPhotograph(1, {.view = "front"}, support::smallJpeg(8, 8), ada).value());
        from.noteSale(1, {"the parish hall", "3400", {}}, ada);
    }

    std::string handedOver() { return from.handOver(1).value(); }
    TakenOver takenOver(const std::string &document)
    {
        return to.takeOver(document, "piano.json", ben, anySet).value();
    }
    std::string problemOf(const std::string &document)
    {
        const DeedId before = to.newestDeed();
        const auto taken = to.takeOver(document, "piano.json", ben, anySet);
        EXPECT_EQ(to.newestDeed(), before);
        return taken ? "none" : taken.fault().text();
    }
    /// What is wrong with the document after `change`, every digest made anew: nothing but what it says is wrong with
    /// it.
    std::string problemOfForged(const std::function<void(nlohmann::json &)> &change)
    {
        return problemOf(forged(handedOver(), change));
    }

    Stamp ada = logbook::ada; ///< their clocks go on: a hand-over tells deeds by their moments
    Stamp ben = logbook::ben;
    Logbook from = withPass();
    Logbook to = Logbook::create(file("other.hammerline"), ben).value();
};

} // namespace hammerline::logbook
