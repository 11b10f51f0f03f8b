#include "exchange/setup_json.h"

#include "core/exchange/faults_of.h"

#include <gmock/gmock.h>

namespace hammerline::exchange {
namespace {

using catalogue::Quantity;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using units::Length;

/// The example of the file form's own description.
constexpr const char *example =
    R"({"format": "hammerline-action-setup", "version": 1, "action": "vertical", "lever_ratio": 5.0,
 "adjustments": {
   "let_off":     {"step_mm": 0.05, "max_mm": 3.0, "minutes": 0.5, "mm_per_turn": 2.4},
   "lost_motion": {"step_mm": 0.05, "max_mm": 2.0, "minutes": 0.5, "mm_per_turn": -0.9},
   "dip":         {"step_mm": 0.05, "max_mm": 1.5, "minutes": 1.0, "punchings_mm": [0.05, 0.13, 0.25, 0.5, 1.0]},
   "checking":    {"step_mm": 0.5, "max_mm": 8.0, "minutes": 0.5}},
 "rails": {"rest_rail": {"quantity": "blow", "shape": "uniform", "step_mm": 0.5, "max_mm": 5.0, "minutes": 12, "notes": [1, 88]}}})";

std::string document(const std::string &adjustments, const std::string &rails, const std::string &action = "vertical")
{
    return R"({"format": "hammerline-action-setup", "version": 1, "lever_ratio": 5, "action": ")" + action +
           R"(", "adjustments": {)" + adjustments + R"(}, "rails": {)" + rails + "}}";
}

std::vector<std::string> faultsOf(const std::string &json)
{
    return faultTexts(readSetup(json, "setup.json"));
}

constexpr const char *plain = R"({"step_mm": 0.1, "max_mm": 1, "minutes": 1})";

std::string rail(const std::string &quantity, const std::string &shape, const std::string &more = "")
{
    return R"("r": {"quantity": ")" + quantity + R"(", "shape": ")" + shape +
           R"(", "step_mm": 1, "max_mm": 2, "minutes": 3)" + more + "}";
}

TEST(SetupJson, theExampleOfTheFileFormIsReadWholeAndComesBack)
{
    const auto read = readSetup(example, "setup.json");
    ASSERT_THAT(faultTexts(read), IsEmpty());
    const action::Setup &setup = read.value();
    EXPECT_EQ(setup.adjustments.size(), 4u);
    EXPECT_EQ(setup.adjustments.at(Quantity::LostMotion).perTurn, units::Amount(Length::nanometres(-900'000)));
    EXPECT_EQ(setup.adjustments.at(Quantity::Dip).punchings.at(1), Length::nanometres(130'000));
    ASSERT_EQ(setup.rails.size(), 1u);
    EXPECT_EQ(setup.rails[0].id, "rest_rail");
    EXPECT_EQ(setup.rails[0].notes->last, keyboard::Note(88));
    const auto again = readSetup(writeSetup(setup), "again.json");
    ASSERT_THAT(faultTexts(again), IsEmpty());
    EXPECT_EQ(again.value(), setup);
}

TEST(SetupJson, aMassIsAdjustedInGrams)
{
    const auto read =
        readSetup(document(R"("down_weight": {"step_g": 0.5, "max_g": 8, "minutes": 4, "g_per_turn": 1})", ""), "s");
    ASSERT_THAT(faultTexts(read), IsEmpty());
    EXPECT_EQ(read.value().adjustments.at(Quantity::DownWeight).step, units::Amount(units::Mass::milligrams(500)));
    EXPECT_THAT(faultsOf(document(R"("down_weight": {"step_mm": 0.5, "max_mm": 8, "minutes": 4})", "")),
                testing::SizeIs(4));
}

TEST(SetupJson, aftertouchAndABlowOfTheOtherKindAreRefused)
{
    EXPECT_THAT(faultsOf(document(std::string(R"("aftertouch": )") + plain, "")),
                ElementsAre(HasSubstr("setup.json: adjustments.aftertouch: is not adjusted by itself")));
    EXPECT_THAT(faultsOf(document(std::string(R"("blow": )") + plain, "")),
                ElementsAre(HasSubstr("setup.json: adjustments.blow: a vertical has no blow of single notes")));
    EXPECT_THAT(faultsOf(document("", rail("blow", "uniform"), "grand")),
                ElementsAre(HasSubstr("setup.json: rails.r: a grand sets its blow note by note")));
    EXPECT_THAT(faultsOf(document(std::string(R"("drop": )") + plain, "")),
                ElementsAre(HasSubstr("adjustments.drop: a vertical action has no such quantity")));
    EXPECT_THAT(faultsOf(document(std::string(R"("blow": )") + plain, "", "grand")), IsEmpty());
}

TEST(SetupJson, aRailMovesBlowLetOffOrCheckingAlone)
{
    EXPECT_THAT(faultsOf(document("", rail("dip", "uniform"))),
                ElementsAre(HasSubstr("rails.r.quantity: a rail moves blow")));
    EXPECT_THAT(faultsOf(document("", rail("let_off", "bent"))), ElementsAre(HasSubstr("rails.r.shape: is no shape")));
    EXPECT_THAT(
        faultsOf(document("", rail("let_off", "linear") + "," + "\"s\": " + rail("checking", "uniform").substr(5))),
        IsEmpty());
}

TEST(SetupJson, aLinearRailReachesOverTwoNotesAtLeastAndMayGoBeyondTheInstrument)
{
    EXPECT_THAT(faultsOf(document("", rail("let_off", "linear", R"(, "notes": [5, 5])"))),
                ElementsAre(HasSubstr("rails.r.notes: a linear rail must reach over two notes")));
    EXPECT_THAT(faultsOf(document("", rail("let_off", "uniform", R"(, "notes": [5, 5])"))), IsEmpty());
    EXPECT_THAT(faultsOf(document("", rail("let_off", "uniform", R"(, "notes": [9, 5])"))),
                ElementsAre(HasSubstr("rails.r.notes: the first note must not lie above the last")));
    EXPECT_THAT(faultsOf(document("", rail("let_off", "linear", R"(, "notes": [-50, 150])"))), IsEmpty());
    EXPECT_THAT(faultsOf(document("", rail("let_off", "linear", R"(, "notes": [1])"))),
                ElementsAre(HasSubstr("rails.r.notes: must be a list of two notes")));
}

TEST(SetupJson, stepsAreAboveZeroAndCostsAndLimitsNotBelow)
{
    EXPECT_THAT(faultsOf(document(R"("let_off": {"step_mm": 0, "max_mm": -1, "minutes": -1, "mm_per_turn": 0})", "")),
                ElementsAre(HasSubstr("adjustments.let_off.step_mm: must be more than 0"),
                            HasSubstr("adjustments.let_off.max_mm: must not be less than 0"),
                            HasSubstr("adjustments.let_off.minutes: must not be less than 0"),
                            HasSubstr("adjustments.let_off: a turn that changes nothing")));
    EXPECT_THAT(faultsOf(document(R"("dip": {"step_mm": 1, "max_mm": 1, "minutes": 1, "punchings_mm": [0, "x"]})", "")),
                ElementsAre(HasSubstr("adjustments.dip.punchings_mm[1]: must be a number")));
    EXPECT_THAT(faultsOf(document(R"("dip": {"step_mm": 1, "max_mm": 1, "minutes": 1, "punchings_mm": [0]})", "")),
                ElementsAre(HasSubstr("adjustments.dip.punchings_mm: a thickness must be more than 0")));
}

TEST(SetupJson, missingAndUnknownKeysAreNamedWithTheirPath)
{
    EXPECT_THAT(faultsOf(R"({"format": "hammerline-action-setup", "version": 1, "adjustments": {"let_off": {"step": 1}},
                            "rails": {"r": {"colour": 1}}})"),
                ElementsAre(HasSubstr("action: is missing"), HasSubstr("lever_ratio: is missing"),
                            HasSubstr("adjustments.let_off.step_mm: is missing"),
                            HasSubstr("adjustments.let_off.max_mm: is missing"),
                            HasSubstr("adjustments.let_off.minutes: is missing"),
                            HasSubstr("adjustments.let_off.step: is no key that may stand here"),
                            HasSubstr("rails.r.quantity: is missing"), HasSubstr("rails.r.shape: is missing"),
                            HasSubstr("rails.r.step_mm: is missing"), HasSubstr("rails.r.max_mm: is missing"),
                            HasSubstr("rails.r.minutes: is missing"),
                            HasSubstr("rails.r.colour: is no key that may stand here")));
}

TEST(SetupJson, theLeverRatioIsAboveZero)
{
    EXPECT_THAT(faultsOf(R"({"format": "hammerline-action-setup", "version": 1, "action": "grand", "lever_ratio": 0})"),
                ElementsAre("setup.json: lever_ratio: must be more than 0"));
}

} // namespace
} // namespace hammerline::exchange
