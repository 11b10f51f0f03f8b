#include "exchange/tolerance_json.h"

#include "core/exchange/faults_of.h"

#include <gmock/gmock.h>

namespace hammerline::exchange {
namespace {

using catalogue::Quantity;
using keyboard::Colour;
using keyboard::Note;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using units::Length;

/// The example of the file form's own description.
constexpr const char *example = R"({
 "format": "hammerline-tolerance-set", "version": 1, "name": "Workshop", "action": "vertical", "source": "the shop",
 "quantities": {
  "let_off": {"points": [{"note": 88, "low_mm": 1.2, "target_mm": 1.6, "high_mm": 2.0},
                         {"note": 1, "low_mm": 2.4, "target_mm": 3.2, "high_mm": 4.0, "source": "a book"}],
              "step_mm": 0.6, "expanded_uncertainty_mm": 0.2, "coverage_factor": 2, "rule": "guarded"},
  "dip": {"naturals": {"points": [{"note": 1, "low_mm": 9.8, "target_mm": 10.0, "high_mm": 10.4}]},
          "sharps": {"points": [{"note": 1, "target_mm": 9.7, "high_mm": 10.2}]},
          "step_mm": 0.2, "remark": "at the edge"}}})";

std::string document(const std::string &quantities, const std::string &action = "vertical")
{
    return R"({"format": "hammerline-tolerance-set", "version": 1, "name": "x", "action": ")" + action +
           R"(", "quantities": {)" + quantities + "}}";
}

std::vector<std::string> faultsOf(const std::string &json)
{
    return faultTexts(readToleranceSet(json, "set.json"));
}

TEST(ToleranceJson, theExampleOfTheFileFormIsReadWhole)
{
    const auto read = readToleranceSet(example, "set.json");
    ASSERT_THAT(faultTexts(read), IsEmpty());
    const tolerance::ToleranceSet &set = read.value();
    EXPECT_EQ(set.name, "Workshop");
    EXPECT_EQ(set.source, "the shop");
    const tolerance::Entry &letOff = set.entries.at(Quantity::LetOff);
    ASSERT_EQ(letOff.both.size(), 2u);
    EXPECT_EQ(letOff.both[0].note, Note(1)) << "points may stand in any order and come out rising";
    EXPECT_EQ(letOff.both[0].low, units::Amount(Length::nanometres(2'400'000)));
    EXPECT_EQ(letOff.both[0].source, "a book");
    EXPECT_EQ(letOff.step, units::Amount(Length::nanometres(600'000)));
    EXPECT_EQ(letOff.expandedUncertainty, units::Amount(Length::nanometres(200'000)));
    EXPECT_EQ(letOff.rule, tolerance::Rule::Guarded);
    const tolerance::Entry &dip = set.entries.at(Quantity::Dip);
    EXPECT_TRUE(dip.byColour());
    EXPECT_FALSE(dip.sharps[0].low) << "the two colours may differ in what is one-sided";
    EXPECT_EQ(dip.rule, tolerance::Rule::Simple);
    EXPECT_EQ(dip.remark, "at the edge");
}

TEST(ToleranceJson, whatIsWrittenReadsBackAsTheSameSet)
{
    const auto set = readToleranceSet(example, "set.json");
    ASSERT_TRUE(set);
    const auto again = readToleranceSet(writeToleranceSet(set.value()), "again.json");
    ASSERT_THAT(faultTexts(again), IsEmpty());
    EXPECT_EQ(again.value(), set.value());
}

TEST(ToleranceJson, decimalsBecomeTheExactNanometreAndHalvesRoundAwayFromZero)
{
    const auto set = readToleranceSet(
        document(R"("let_off": {"points": [{"note": 1, "target_mm": 1.0000005, "high_mm": 3.175}]})"), "set.json");
    ASSERT_TRUE(set);
    const tolerance::Point &point = set.value().entries.at(Quantity::LetOff).both[0];
    EXPECT_EQ(point.target.baseCount(), 1'000'001);
    EXPECT_EQ(point.high->baseCount(), 3'175'000);
}

TEST(ToleranceJson, massesAreGivenInGrams)
{
    const auto set =
        readToleranceSet(document(R"("down_weight": {"points": [{"note": 1, "low_g": 47.5, "target_g": 50}],
                                                  "step_g": 4, "expanded_uncertainty_g": 1})"),
                         "set.json");
    ASSERT_THAT(faultTexts(set), IsEmpty());
    EXPECT_EQ(set.value().entries.at(Quantity::DownWeight).both[0].low, units::Amount(units::Mass::milligrams(47'500)));
    EXPECT_THAT(
        faultsOf(document(R"("down_weight": {"points": [{"note": 1, "target_g": 50}], "step_mm": 4})")),
        ElementsAre(HasSubstr("set.json: quantities.down_weight.step_mm: is no key that may stand here; these may: "
                              "coverage_factor, expanded_uncertainty_g")));
}

TEST(ToleranceJson, aPointMayLieOutsideAnyInstrument)
{
    EXPECT_THAT(
        faultsOf(document(R"("let_off": {"points": [{"note": -30, "target_mm": 3}, {"note": 140, "target_mm": 2}]})")),
        IsEmpty());
}

TEST(ToleranceJson, everyUnknownKeyIsRefusedWithItsPathWhereverItStands)
{
    const std::string json = R"({"format": "hammerline-tolerance-set", "version": 1, "action": "vertical", "nmae": "x",
        "quantities": {"let_of": {}, "let_off": {"pionts": [], "points": [{"note": 1, "target_mm": 2, "hgih_mm": 3}]},
        "dip": {"naturals": {"points": [{"note": 1, "target_mm": 10}], "step_mm": 0.2}}}})";
    EXPECT_THAT(
        faultsOf(json),
        ElementsAre("set.json: quantities.dip.naturals.step_mm: is no key that may stand here; these may: points",
                    HasSubstr("set.json: quantities.let_of: is no quantity; these are: key_height, blow"),
                    "set.json: quantities.let_off.points[0].hgih_mm: is no key that may stand here; these may: "
                    "high_mm, low_mm, note, remark, source, target_mm",
                    HasSubstr("set.json: quantities.let_off.pionts: is no key that may stand here; these may: "),
                    "set.json: nmae: is no key that may stand here; these may: action, format, name, quantities, "
                    "remark, source, version"));
}

TEST(ToleranceJson, wrongTypesAreRefusedOneByOne)
{
    EXPECT_THAT(
        faultsOf(document(
            R"("let_off": {"points": [{"note": "A4", "low_mm": "1", "target_mm": true, "source": 7}], "rule": 1})")),
        ElementsAre(
            "set.json: quantities.let_off.points[0].note: must be the whole number of a note (A0 is 1, C8 is 88), not "
            "\"A4\"",
            "set.json: quantities.let_off.points[0].low_mm: must be a number, not \"1\"",
            "set.json: quantities.let_off.points[0].target_mm: must be a number, not true",
            "set.json: quantities.let_off.points[0].source: must be text in quotation marks, not 7",
            "set.json: quantities.let_off.rule: must be \"simple\" or \"guarded\""));
    EXPECT_THAT(faultsOf(document(R"("let_off": 3, "dip": {"points": {}})")),
                ElementsAre("set.json: quantities.dip.points: must be a list in brackets of at least one point",
                            "set.json: quantities.let_off: must be an object in braces, not 3"));
    EXPECT_THAT(faultsOf(document(R"("let_off": {"points": [{"note": 1.5, "target_mm": null}]})")).size(), 2u);
}

TEST(ToleranceJson, whatIsMissingIsNamed)
{
    EXPECT_THAT(
        faultsOf(document(R"("let_off": {"points": [{"low_mm": 1}]}, "dip": {"step_mm": 1})")),
        ElementsAre("set.json: quantities.dip.points: is missing; points, or one or both of naturals and sharps, must "
                    "stand here",
                    "set.json: quantities.let_off.points[0].note: is missing; the number of a note must stand here",
                    "set.json: quantities.let_off.points[0].target_mm: is missing; a number of mm must stand here"));
    EXPECT_THAT(faultsOf(R"({"format": "hammerline-tolerance-set", "version": 1})"),
                ElementsAre("set.json: action: is missing; \"vertical\" or \"grand\" must stand here",
                            "set.json: quantities: is missing; an object with one entry a quantity must stand here"));
    EXPECT_THAT(faultsOf("[]"), ElementsAre("set.json: must be an object in braces, not []"));
}

TEST(ToleranceJson, anotherFormatOrANewerVersionIsRefusedBeforeAnythingElse)
{
    EXPECT_THAT(
        faultsOf(R"({"format": "hammerline-action-setup", "version": 1, "rest": 0})"),
        ElementsAre("set.json: format: is \"hammerline-action-setup\"; \"hammerline-tolerance-set\" must stand here"));
    EXPECT_THAT(faultsOf(R"({"format": "hammerline-tolerance-set", "version": 2, "rest": 0})"),
                ElementsAre("set.json: version: is 2, written by a newer program; this one reads up to 1"));
    EXPECT_THAT(faultsOf(R"({"format": "hammerline-tolerance-set", "version": "1"})"),
                ElementsAre("set.json: version: must be a whole number from 1, not \"1\""));
    EXPECT_THAT(faultsOf("{}"), ElementsAre(HasSubstr("format: is missing"), HasSubstr("version: is missing")));
}

TEST(ToleranceJson, pointsStandAloneOrByColourNeverBoth)
{
    EXPECT_THAT(faultsOf(document(R"("dip": {"points": [{"note": 1, "target_mm": 9}],
                                             "sharps": {"points": [{"note": 1, "target_mm": 9}]}})")),
                ElementsAre(HasSubstr("quantities.dip.points: stands beside naturals or sharps")));
}

TEST(ToleranceJson, faultsOfContentNameQuantityAndNote)
{
    EXPECT_THAT(
        faultsOf(document(R"("let_off": {"points": [{"note": 5, "low_mm": 3, "target_mm": 2, "high_mm": 1},
                                                            {"note": 5, "low_mm": 1, "target_mm": 2}]})")),
        testing::IsSupersetOf({HasSubstr("set.json: quantities.let_off, note 5: the low limit lies above the target"),
                               HasSubstr("set.json: quantities.let_off, note 5: the note has two points"),
                               HasSubstr("set.json: quantities.let_off: the high limit stands at some points only")}));
    EXPECT_THAT(faultsOf(document(R"("let_off": {"points": [{"note": 1, "target_mm": 2}], "coverage_factor": 0,
                                                 "expanded_uncertainty_mm": -1})")),
                testing::SizeIs(2));
}

TEST(ToleranceJson, dropOnAVerticalIsRefused)
{
    EXPECT_THAT(faultsOf(document(R"("drop": {"points": [{"note": 1, "target_mm": 1}]})")),
                ElementsAre(HasSubstr("quantities.drop: a vertical action has no such quantity")));
    EXPECT_THAT(faultsOf(document(R"("drop": {"points": [{"note": 1, "target_mm": 1}]})", "grand")), IsEmpty());
}

} // namespace
} // namespace hammerline::exchange
