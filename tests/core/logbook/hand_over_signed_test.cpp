// Handing over what the lead decided: signatures, concessions, what was sent back, samples drawn.
#include "logbook/hand_over.h"

#include "core/logbook/hand_over_fixture.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

class HandOverSignedTest : public LogbookTest {
protected:
    HandOverSignedTest()
    {
        from.enter(1, reading(letOff(40), 3'000'000), ada);
        decisions::Decision missing{
            .quantity = letOff(1).quantity, .note = keyboard::Note(43), .kind = decisions::Kind::Missing};
        missing.words = "no hammer";
        EXPECT_TRUE(from.accept(1, {missing}, ben));
        missing.note = keyboard::Note(44);
        EXPECT_TRUE(from.sendBack(1, {missing}, ben));
        static_cast<void>(from.beginSpotCheck(
            {.instrument = 1, .began = moment(20)},
            {.checked = 1, .seed = 7, .notes = {keyboard::Note(40)}, .quantities = {letOff(1).quantity}}, ben));
    }
    static void sign(Logbook &book, readings::PassId pass)
    {
        const tolerance::ToleranceSet lenient{.action = catalogue::ActionKind::Vertical};
        EXPECT_TRUE(book.signPass(pass, lenient, {"shop", "{}"}, ben, "fit to go"));
    }
    std::string handedOver() { return from.handOver(1).value(); }
    TakenOver takenOver(const std::string &document)
    {
        return to.takeOver(document, "piano.json", ben, anySet).value();
    }
    /// What is wrong with the document once `value` stands at `name` in the first row of `table`.
    std::string problemWith(const std::string &table, const char *name, const nlohmann::json &value)
    {
        const std::string document = forged(handedOver(), [&](nlohmann::json &json) {
            for (auto &deed : json["deeds"])
                for (auto &row : deed["rows"])
                    if (row["table"] == table)
                        row[name] = value;
        });
        const auto taken = to.takeOver(document, "piano.json", ben, anySet);
        return taken ? "none" : taken.fault().text();
    }

    Logbook from = withPass();
    Logbook to = Logbook::create(file("other.hammerline"), ben).value();
};

TEST_F(HandOverSignedTest, KeepsWhatTheLeadDecided)
{
    sign(from, 1);
    EXPECT_TRUE(from.reopenPass(1, ben, "a hammer came loose"));
    sign(from, 1);
    const std::string document = handedOver();
    const TakenOver taken = takenOver(document);
    const auto passes = to.passes(taken.instrument);
    ASSERT_EQ(passes.size(), 1u);
    EXPECT_EQ(to.decisions(passes[0].id), from.decisions(1));
    EXPECT_TRUE(to.refusal(passes[0].id));
    const auto checks = to.spotChecks(taken.instrument);
    ASSERT_EQ(checks.size(), 1u);
    auto expected = from.spotCheck(2).value();
    expected.checked = passes[0].id;
    EXPECT_EQ(to.spotCheck(checks[0].id), expected);
    EXPECT_EQ(to.handOver(taken.instrument).value(), document);
    EXPECT_EQ(takenOver(document).added, 0u);
    EXPECT_TRUE(verifyHistory(to.path()).whole());
}

TEST_F(HandOverSignedTest, APassSignedHereThatTheFileWentOnWithIsAConflict)
{
    const auto pass = to.passes(takenOver(handedOver()).instrument).at(0).id;
    sign(to, pass);
    from.enter(1, reading(letOff(50), 9'000'000), ada);
    const DeedId newest = to.newestDeed();
    const TakenOver taken = takenOver(handedOver());
    ASSERT_EQ(taken.conflicts.size(), 1u);
    EXPECT_THAT(taken.conflicts[0].text(), HasSubstr("here pass-signed by Ben"));
    EXPECT_THAT(taken.conflicts[0].text(), HasSubstr("in the file reading-entered by Ada"));
    EXPECT_EQ(to.newestDeed(), newest);
}

TEST_F(HandOverSignedTest, APassSignedInTheFileThatWasGoneOnWithHereIsAConflict)
{
    const auto pass = to.passes(takenOver(handedOver()).instrument).at(0).id;
    to.enter(pass, reading(letOff(50), 9'000'000), ada);
    sign(from, 1);
    EXPECT_EQ(takenOver(handedOver()).conflicts.size(), 1u);
}

TEST_F(HandOverSignedTest, ASignatureTravelsWhereNobodyWentOn)
{
    const auto pass = to.passes(takenOver(handedOver()).instrument).at(0).id;
    sign(from, 1);
    EXPECT_THAT(takenOver(handedOver()).conflicts, IsEmpty());
    EXPECT_TRUE(to.refusal(pass));
}

TEST_F(HandOverSignedTest, WhatNoDeskWritesIsRefused)
{
    sign(from, 1);
    EXPECT_THAT(problemWith("pass_standing", "standing", "blessed"), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(problemWith("pass_standing", "revision", 0), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(problemWith("concession", "kind", "fine"), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(problemWith("sent_back", "note", 400), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(problemWith("spot_check", "notes", "400"), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(problemWith("spot_check", "notes", "40 41"), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(problemWith("spot_check", "quantities", "loudness"), HasSubstr("holds what no logbook holds"));
    EXPECT_EQ(to.instruments().size(), 0u);
}

} // namespace
} // namespace hammerline::logbook
