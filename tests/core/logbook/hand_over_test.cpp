#include "logbook/hand_over.h"

#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"
#include "support/small_jpeg.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

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
    }
    void fillDossier()
    {
        static_cast<void>(from.addWork(1, {.what = "hammers", .departure = true, .why = "worn"}, ada).value());
        from.sayCondition(1, {dossier::Moment::AsReceived, dossier::Area::Keys}, {dossier::Grade::Poor, "chips"}, ada);
        static_cast<void>(from.addPhotograph(1, {.view = "front"}, support::smallJpeg(8, 8), ada).value());
        from.noteSale(1, {"the parish hall", "3400", {}}, ada);
    }

    std::string handedOver() { return from.handOver(1).value(); }
    TakenOver takenOver(const std::string &document) { return to.takeOver(document, "piano.json", ben).value(); }
    std::string problemOf(const std::string &document)
    {
        const DeedId before = to.newestDeed();
        const auto taken = to.takeOver(document, "piano.json", ben);
        EXPECT_EQ(to.newestDeed(), before);
        return taken ? "none" : taken.fault().text();
    }
    /// The document after `change`.
    std::string changed(const std::function<void(nlohmann::ordered_json &)> &change)
    {
        auto json = nlohmann::ordered_json::parse(handedOver());
        change(json);
        return json.dump();
    }

    Logbook from = withPass();
    Logbook to = Logbook::create(file("other.hammerline"), ben).value();
};

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
    EXPECT_EQ(from.takeOver(to.handOver(2).value(), "back.json", ada).value().added, 1u);
    EXPECT_EQ(from.readings(1), to.readings(2));
}

TEST_F(HandOverTest, BringsTwoShopsTogetherWhereTheyWroteToDifferentPlaces)
{
    static_cast<void>(takenOver(handedOver()));
    to.enter(2, reading(letOff(50), 3'000'000), ben);
    from.enter(1, reading(letOff(51), 3'100'000), ada);
    EXPECT_THAT(takenOver(handedOver()).conflicts, IsEmpty());
    EXPECT_EQ(from.takeOver(to.handOver(2).value(), "back.json", ada).value().added, 1u);
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

TEST_F(HandOverTest, IsRefusedCutOffAnywhere)
{
    const std::string document = handedOver();
    for (std::size_t kept = 0; kept + 2 < document.size(); kept += 97)
        EXPECT_THAT(problemOf(document.substr(0, kept)), HasSubstr("piano.json: ")) << kept;
}

TEST_F(HandOverTest, IsRefusedWithEverySingleMemberTakenOut)
{
    const auto whole = nlohmann::ordered_json::parse(handedOver());
    for (const auto &[name, value] : whole.items())
        EXPECT_NE(problemOf(changed([&](auto &json) { json.erase(name); })), "none") << name;
    for (const char *name : {"deed", "at", "person", "name", "subject", "rows"})
        EXPECT_NE(problemOf(changed([&](auto &json) { json["deeds"][3].erase(name); })), "none") << name;
    for (const char *name : {"table", "pass", "quantity", "note", "take", "version"})
        EXPECT_NE(problemOf(changed([&](auto &json) { json["deeds"][2]["rows"][0].erase(name); })), "none") << name;
}

TEST_F(HandOverTest, IsRefusedWhereItHoldsWhatALogbookCannotRead)
{
    const auto withRow = [&](std::size_t deed, const char *name, const nlohmann::ordered_json &value) {
        return problemOf(changed([&](auto &json) { json["deeds"][deed]["rows"][0][name] = value; }));
    };
    EXPECT_THAT(withRow(0, "action", "harp"), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(withRow(0, "sections", "[[1]]"), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(withRow(0, "name", ""), HasSubstr("no name"));
    EXPECT_THAT(withRow(0, "instrument", std::string(32, '0')), HasSubstr("another instrument"));
    EXPECT_THAT(withRow(1, "purpose", "for fun"), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(withRow(2, "quantity", "loudness"), HasSubstr("no quantity"));
    EXPECT_THAT(withRow(2, "note", 400), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(withRow(2, "take", 0), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(withRow(2, "value", 1e300), HasSubstr("whole number"));
    EXPECT_THAT(withRow(2, "value", "3.2"), HasSubstr("whole number"));
    EXPECT_THAT(withRow(2, "typed", 3), HasSubstr("no text"));
    EXPECT_THAT(withRow(2, "version", 2), HasSubstr("does not follow"));
    EXPECT_THAT(withRow(2, "colour", "red"), HasSubstr("newer one may"));
    EXPECT_THAT(withRow(2, "table", "history"), HasSubstr("does not know"));
    EXPECT_THAT(withRow(2, "pass", std::string(32, '0')), HasSubstr("pass"));
    EXPECT_THAT(withRow(2, "origin", 99), HasSubstr("not before it"));
}

TEST_F(HandOverTest, IsRefusedOfANewerVersionOrAnotherKind)
{
    EXPECT_THAT(problemOf(changed([](auto &json) { json["version"] = 2; })), HasSubstr("version 2"));
    EXPECT_THAT(problemOf(changed([](auto &json) { json["format"] = "hammerline-check"; })), HasSubstr("format"));
    EXPECT_THAT(problemOf("[]"), HasSubstr("missing"));
}

TEST_F(HandOverTest, IsRefusedWithADeedLeftOutOrAPictureExchanged)
{
    EXPECT_THAT(problemOf(changed([](auto &json) { json["deeds"].erase(2); })), HasSubstr("out of order"));
    EXPECT_THAT(problemOf(changed([](auto &json) { json["pictures"] = nlohmann::ordered_json::array(); })),
                HasSubstr("is missing"));
    EXPECT_THAT(problemOf(changed([](auto &json) { json["pictures"][0]["jpeg_base64"] = "AAAA"; })),
                HasSubstr("not the one"));
    EXPECT_THAT(problemOf(changed([](auto &json) { json["pictures"][0]["jpeg_base64"] = "%"; })),
                HasSubstr("not the one"));
}

TEST_F(HandOverTest, APassOfAnotherInstrumentIsNotTouched)
{
    const std::string uid = to.pass(1)->uid;
    const std::string ours = from.pass(1)->uid;
    std::string document = handedOver();
    for (std::size_t at = 0; (at = document.find(ours, at)) != std::string::npos;)
        document.replace(at, ours.size(), uid);
    EXPECT_THAT(problemOf(document), HasSubstr("belongs to another instrument"));
}

} // namespace
} // namespace hammerline::logbook
