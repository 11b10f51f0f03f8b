// Hand-overs whose digests are right and that say of the instrument what does not fit it.
#include "core/logbook/hand_over_fixture.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

class HandOverFitTest : public HandOverTest {
protected:
    /// The last row of `table` that has `name` gets `value`; its place in the JSON, as a message tells it.
    std::string alter(nlohmann::json &json, const std::string &table, const std::string &name,
                      const nlohmann::json &value)
    {
        nlohmann::json *found = nullptr;
        std::string place = "no such row";
        for (std::size_t deed = 0; deed < json["deeds"].size(); ++deed)
            for (std::size_t row = 0; row < json["deeds"][deed]["rows"].size(); ++row)
                if (auto &each = json["deeds"][deed]["rows"][row]; each["table"] == table && each.contains(name)) {
                    found = &each[name];
                    place = "piano.json: deed " + std::to_string(deed + 1) + ", deeds[" + std::to_string(deed) +
                            "].rows[" + std::to_string(row) + "]." + name + ": ";
                }
        if (found != nullptr)
            *found = value;
        return place;
    }
    void expectRefused(const std::string &table, const std::string &name, const nlohmann::json &value,
                       const std::string &says)
    {
        std::string place;
        const auto problem = problemOfForged([&](auto &json) { place = alter(json, table, name, value); });
        EXPECT_THAT(problem, StartsWith(place));
        EXPECT_THAT(problem, HasSubstr(says));
    }
    void correct(const std::function<void(instrument::Instrument &)> &change)
    {
        auto changed = from.instrument(1).value();
        change(changed);
        ASSERT_TRUE(from.changeInstrument(changed, ben, "measured again"));
    }
};

TEST_F(HandOverFitTest, ANoteOutsideTheCompassIsRefusedWithItsPlace)
{
    const std::string right = "one of its notes, 1-88, would be right";
    expectRefused("reading", "note", 95, right);
    expectRefused("fault_mark", "note", 0, right);
    expectRefused("confirmed_slip", "note", 89, right);
}

TEST_F(HandOverFitTest, ADecisionOrAnotherReadingOutsideTheCompassIsRefused)
{
    decisions::Decision missing{.note = keyboard::Note(7), .kind = decisions::Kind::Missing, .words = "no hammer"};
    ASSERT_TRUE(from.accept(1, {missing}, ben));
    missing.note = keyboard::Note(8);
    ASSERT_TRUE(from.sendBack(1, {missing}, ben));
    static_cast<void>(from.beginSpotCheck(
        {.instrument = 1, .began = moment(70)},
        {.checked = 1, .seed = 7, .notes = {keyboard::Note(40)}, .quantities = {catalogue::Quantity::LetOff}}, ben));
    expectRefused("concession", "note", 90, "outside the instrument");
    expectRefused("sent_back", "note", 90, "outside the instrument");
    expectRefused("sent_back", "quantity", "drop", "quantity of the other action");
    expectRefused("spot_check", "notes", "90", "outside the instrument");
    expectRefused("spot_check", "quantities", "drop", "quantity of the other action");
}

TEST_F(HandOverFitTest, WorkOutsideTheCompassIsRefused)
{
    const keyboard::NoteRange treble{keyboard::Note(80), keyboard::Note(85)};
    ASSERT_TRUE(from.addWork(1, {.what = "felts", .notes = treble}, ben));
    const auto problem = problemOfForged([](auto &json) {
        for (auto &deed : json["deeds"])
            for (auto &row : deed["rows"])
                if (row["table"] == "work_entry" && row.contains("last_note"))
                    row["last_note"] = 90;
    });
    EXPECT_THAT(problem, HasSubstr("rows[0].first_note: the work lies on notes 80-90"));
    EXPECT_THAT(problem, HasSubstr("inside 1-88 would be right"));
}

TEST_F(HandOverFitTest, AQuantityOfTheOtherActionIsRefusedWithThoseThatItHas)
{
    expectRefused("reading", "quantity", "drop",
                  "drop is a quantity of the other action; this one has key_height, blow, lost_motion, let_off, dip, ");
}

TEST_F(HandOverFitTest, AToleranceSetThatCannotBeReadIsRefusedWithWhatIsWrongInIt)
{
    const SetCheck refuses = [](const std::string &text, const std::string &file) {
        return text == "{}" ? std::vector<outcome::Fault>{{file, 0, "\"format\" is missing"}}
                            : std::vector<outcome::Fault>();
    };
    const auto taken = to.takeOver(handedOver(), "piano.json", ben, refuses);
    ASSERT_FALSE(taken);
    EXPECT_THAT(taken.fault().text(), HasSubstr("].rows[0].tolerance_text: the tolerance set cannot be read"));
    EXPECT_THAT(taken.fault().text(), HasSubstr("\"format\" is missing; the whole text of a set would be right"));
    EXPECT_EQ(to.instruments().size(), 1u);
}

TEST_F(HandOverFitTest, WhatFittedBeforeTheCompassWasCorrectedIsTakenOver)
{
    from.enter(1, reading(letOff(88), 3'000'000), ada);
    correct([](auto &changed) { changed.compass.last = keyboard::Note(85); });
    const std::string document = handedOver();
    static_cast<void>(takenOver(document));
    EXPECT_EQ(to.handOver(2).value(), document);
    EXPECT_EQ(to.readings(2).back().place, letOff(88));
    expectRefused("reading", "note", 89, "one of its notes, 1-85, would be right");
}

TEST_F(HandOverFitTest, WhatFittedBeforeTheActionWasCorrectedIsTakenOver)
{
    correct([](auto &changed) { changed.action = catalogue::ActionKind::Grand; });
    from.enter(1, {.place = {catalogue::Quantity::Drop, keyboard::Note(40), 1}, .value = units::Length()}, ben);
    correct([](auto &changed) { changed.action = catalogue::ActionKind::Vertical; });
    const std::string document = handedOver();
    static_cast<void>(takenOver(document));
    EXPECT_EQ(to.handOver(2).value(), document);
}

TEST_F(HandOverFitTest, AnAlteredDocumentIsCalledAlteredAndNotMisfitting)
{
    auto json = nlohmann::json::parse(handedOver());
    static_cast<void>(alter(json, "reading", "note", 95));
    EXPECT_THAT(problemOf(json.dump()), HasSubstr("was altered"));
}

} // namespace
} // namespace hammerline::logbook
