#include "exchange/answers_json.h"

#include "exchange/built_in.h"
#include "support/json_schema.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>

namespace hammerline::exchange {
namespace {

using catalogue::Quantity;
using support::JsonSchema;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using Json = nlohmann::ordered_json;

units::Amount mm(double value)
{
    return units::Amount::fromDisplay(units::Dimension::Length, value);
}

std::vector<std::string> keysOf(const Json &object)
{
    std::vector<std::string> keys;
    for (const auto &item : object.items())
        keys.push_back(item.key());
    return keys;
}

tolerance::Verdict readVerdict()
{
    tolerance::Verdict verdict;
    verdict.quantity = Quantity::LetOff;
    verdict.note = keyboard::Note(1);
    verdict.status = tolerance::Status::In;
    verdict.value = mm(3.175);
    verdict.takes = 2;
    verdict.limits = tolerance::Limits{mm(2.4), mm(3.2), mm(4), mm(0), 2, tolerance::Rule::Simple};
    verdict.deviation = mm(-0.025);
    verdict.conformanceProbability = 1;
    return verdict;
}

TEST(AnswersJson, aJudgedReadingHasItsKeysInTheOrderOfTheFormAndExactValues)
{
    const Json json = Json::parse(checkJson({{readVerdict()}}, {}));
    EXPECT_EQ(json["format"], "hammerline-check");
    EXPECT_EQ(json["version"], 1);
    const Json &reading = json["readings"][0];
    EXPECT_EQ(keysOf(reading),
              (std::vector<std::string>{"note", "name", "quantity", "value_mm", "low_mm", "target_mm", "high_mm",
                                        "deviation_mm", "status", "uneven", "conformance_probability", "takes"}));
    EXPECT_EQ(reading["value_mm"].dump(), "3.175");
    EXPECT_EQ(reading["deviation_mm"].dump(), "-0.025");
    EXPECT_EQ(reading["name"], "A0");
}

TEST(AnswersJson, whatDoesNotApplyIsAbsent)
{
    tolerance::Verdict missing = readVerdict();
    missing.status = tolerance::Status::Missing;
    missing.value.reset();
    missing.deviation.reset();
    missing.conformanceProbability.reset();
    missing.takes = 0;
    tolerance::Limits oneSided = *missing.limits;
    oneSided.low.reset();
    missing.limits = oneSided;
    tolerance::Verdict unjudged;
    unjudged.quantity = Quantity::UpWeight;
    unjudged.note = keyboard::Note(2);
    unjudged.value = units::Amount(units::Mass::milligrams(22'500));
    unjudged.takes = 1;
    const std::string text = checkJson({{missing, unjudged}}, {});
    const Json json = Json::parse(text);
    EXPECT_EQ(keysOf(json["readings"][0]),
              (std::vector<std::string>{"note", "name", "quantity", "target_mm", "high_mm", "status"}));
    EXPECT_EQ(json["readings"][1].dump(),
              R"({"note":2,"name":"A#0","quantity":"up_weight","value_g":22.5,"status":"unjudged"})");
    EXPECT_THAT(text, Not(HasSubstr("null")));
    EXPECT_THAT(JsonSchema("check").faultsOf(text), IsEmpty());
}

TEST(AnswersJson, aSummaryCountsVerdictsOnlyWhereTheQuantityIsJudged)
{
    analysis::QuantitySummary summary;
    summary.count = 2;
    summary.mean = summary.median = summary.min = summary.max = 3.5;
    summary.sd = 0.0;
    summary.mad = 0.0;
    analysis::Summaries summaries{{Quantity::Dip, summary}, {Quantity::DownWeight, summary}};
    summaries[Quantity::DownWeight].judged = true;
    summaries[Quantity::DownWeight].largestStep = 1.25;
    const std::string text = checkJson({}, summaries);
    const Json json = Json::parse(text)["quantities"];
    EXPECT_EQ(keysOf(json), (std::vector<std::string>{"dip", "down_weight"}));
    EXPECT_EQ(keysOf(json["dip"]),
              (std::vector<std::string>{"count", "mean_mm", "sd_mm", "median_mm", "mad_mm", "min_mm", "max_mm"}));
    EXPECT_EQ(keysOf(json["down_weight"]),
              (std::vector<std::string>{"count", "missing", "in", "marginal", "out", "uneven", "mean_g", "sd_g",
                                        "median_g", "mad_g", "min_g", "max_g", "largest_step_g"}));
    EXPECT_THAT(JsonSchema("check").faultsOf(text), IsEmpty());
}

TEST(AnswersJson, noNumberIsEverNotANumber)
{
    analysis::Comparison comparison;
    comparison.pairs = 2;
    comparison.sdChange = std::numeric_limits<double>::quiet_NaN();
    comparison.t = std::numeric_limits<double>::infinity();
    comparison.meanChange = -0.0;
    const Json json = Json::parse(compareJson({{Quantity::Blow, comparison}}))["quantities"]["blow"];
    EXPECT_EQ(json.dump(), R"({"pairs":2,"mean_change_mm":0.0})");
}

TEST(AnswersJson, aComparisonHasItsKeysInTheOrderOfTheForm)
{
    analysis::Comparison comparison;
    comparison.pairs = 10;
    comparison.degreesOfFreedom = 9;
    comparison.sdChange = comparison.t = comparison.ci95Low = comparison.ci95High = 1;
    comparison.p = 0.5;
    comparison.agreementLow = comparison.agreementHigh = 1;
    comparison.outBefore = comparison.outAfter = comparison.mended = comparison.spoiled = 0;
    const std::string text = compareJson({{Quantity::LetOff, comparison}});
    EXPECT_EQ(keysOf(Json::parse(text)["quantities"]["let_off"]),
              (std::vector<std::string>{"pairs", "mean_change_mm", "sd_change_mm", "t", "degrees_of_freedom", "p",
                                        "ci95_low_mm", "ci95_high_mm", "agreement_low_mm", "agreement_high_mm",
                                        "out_before", "out_after", "mended", "spoiled"}));
    EXPECT_THAT(JsonSchema("compare").faultsOf(text), IsEmpty());
}

TEST(AnswersJson, listsOfALogbookKeepToTheirForms)
{
    instrument::Instrument instrument;
    instrument.id = 3;
    instrument.name = "Say \"hello\"\n\xE2\x99\xAD";
    EXPECT_EQ(Json::parse(instrumentsJson({instrument}))["instruments"].dump(),
              "[{\"id\":3,\"name\":\"Say "
              "\\\"hello\\\"\\n\xE2\x99\xAD\",\"action\":\"vertical\",\"first_note\":1,\"last_note\":88,"
              "\"state\":\"taken-in\"}]");
    EXPECT_EQ(instrumentsJson({}),
              "{\n  \"format\": \"hammerline-instruments\",\n  \"version\": 1,\n  \"instruments\": []\n}\n");
    readings::Pass pass;
    pass.id = 7;
    pass.began = readings::parseRfc3339("2026-03-02T09:10:00Z").value();
    EXPECT_EQ(Json::parse(passesJson({{pass, 352}}))["passes"].dump(),
              R"([{"id":7,"purpose":"as-found","began":"2026-03-02T09:10:00Z","readings":352}])");
    EXPECT_EQ(Json::parse(importJson(7, 352)).dump(),
              R"({"format":"hammerline-import","version":1,"pass":7,"readings":352})");
    EXPECT_THAT(JsonSchema("instruments").faultsOf(instrumentsJson({instrument})), IsEmpty());
    EXPECT_THAT(JsonSchema("passes").faultsOf(passesJson({{pass, 352}})), IsEmpty());
    EXPECT_THAT(JsonSchema("import").faultsOf(importJson(7, 352)), IsEmpty());
}

TEST(AnswersJson, aNameOfBrokenBytesStillMakesADocument)
{
    instrument::Instrument instrument;
    instrument.name = "\xff";
    EXPECT_EQ(Json::parse(instrumentsJson({instrument}))["instruments"][0]["name"], "\xEF\xBF\xBD");
}

TEST(AnswersJson, reviewItemsLackHalfWidthsWhereThereAreNone)
{
    review::Item out{1, 2, readVerdict(), review::Kind::Out, 1.5};
    review::Item missing{1, 2, readVerdict(), review::Kind::Missing, {}};
    missing.verdict.value.reset();
    missing.verdict.deviation.reset();
    const std::string text = reviewJson({out, missing});
    const Json items = Json::parse(text)["items"];
    EXPECT_EQ(items[0].dump(),
              R"({"instrument":1,"pass":2,"note":1,"quantity":"let_off","kind":"out","value_mm":3.175,)"
              R"("deviation_mm":-0.025,"half_widths":1.5})");
    EXPECT_EQ(items[1].dump(), R"({"instrument":1,"pass":2,"note":1,"quantity":"let_off","kind":"missing"})");
    EXPECT_THAT(JsonSchema("review").faultsOf(text), IsEmpty());
}

TEST(AnswersJson, reviewTellsTheDoubtOfAValueAndWhatIsInWithinIt)
{
    review::Item out{1, 2, readVerdict(), review::Kind::Out, 1.5};
    out.verdict.doubt = tolerance::Doubt{.gauge = 0.15, .resolution = 0.2};
    out.verdict.conformanceProbability = 0.25;
    review::Item near = out;
    near.kind = review::Kind::Marginal;
    near.verdict.status = tolerance::Status::In;
    near.verdict.uneven = false;
    review::Item uneven = near;
    uneven.verdict.uneven = true;
    const std::string text = reviewJson({out}, {near, uneven});
    const Json answer = Json::parse(text);
    EXPECT_EQ(answer["items"][0]["doubt_mm"], 0.5) << "k = 2";
    EXPECT_EQ(answer["items"][0]["probability_inside"], 0.25);
    ASSERT_EQ(answer["items"].size(), 1u) << "no item: nobody need decide about it";
    ASSERT_EQ(answer["in_doubt"].size(), 2u);
    EXPECT_FALSE(answer["items"][0].contains("uneven")) << "its kind says so";
    EXPECT_FALSE(answer["in_doubt"][0].contains("kind"));
    EXPECT_EQ(answer["in_doubt"][0]["uneven"], false);
    EXPECT_EQ(answer["in_doubt"][1]["uneven"], true);
    EXPECT_EQ(answer["in_doubt"][0]["value_mm"], 3.175);
    EXPECT_THAT(JsonSchema("review").faultsOf(text), IsEmpty());
}

sale_record::SaleRecord assembled()
{
    sale_record::RecordInput input;
    input.instrument.name = "Upright by the door";
    input.instrument.owner = "a private person";
    input.instrument.size = units::Length::nanometres(1'220'000'000);
    input.instrument.dampers = {{{keyboard::Note(1), keyboard::Note(68)}, "flat"}};
    input.set = findToleranceSet("full-upright").value().set;
    input.issued = readings::parseRfc3339("2026-03-03T10:00:00Z").value();
    input.programVersion = "0.1.0";
    const auto addPass = [&](readings::Purpose purpose, double letOff, const char *began) {
        readings::Pass pass;
        pass.id = static_cast<readings::PassId>(input.passes.size()) + 1;
        pass.purpose = purpose;
        pass.began = readings::parseRfc3339(began).value();
        pass.climate.celsius = 21.5;
        readings::Reading reading;
        reading.place = {Quantity::LetOff, keyboard::Note(1), 1};
        reading.value = mm(letOff);
        reading.typed = "typed";
        input.passes.emplace_back(pass, std::vector{reading});
    };
    addPass(readings::Purpose::AsFound, 5, "2026-03-01T10:00:00Z");
    addPass(readings::Purpose::AsLeft, 3, "2026-03-02T10:00:00Z");
    input.felt[1] = {{keyboard::Note(1), "blocking"}};
    return sale_record::assemble(input).value();
}

TEST(AnswersJson, aRecordCarriesWhatItWasWorkedOutFromAndNotTheOwner)
{
    const std::string text = recordJson(assembled());
    EXPECT_THAT(JsonSchema("record").faultsOf(text), IsEmpty());
    const Json json = Json::parse(text);
    EXPECT_EQ(json["as_found"]["takes"][0]["value_mm"], 5.0);
    EXPECT_EQ(json["as_found"]["felt_faults"].dump(), R"([{"note":1,"fault":"blocking"}])");
    EXPECT_FALSE(json["as_left"].contains("felt_faults"));
    EXPECT_EQ(json["as_left"]["pass"]["purpose"], "as-left");
    EXPECT_EQ(json["tolerances"]["format"], "hammerline-tolerance-set");
    EXPECT_EQ(json["instrument"]["size_mm"], 1220.0);
    EXPECT_EQ(json["change"]["let_off"]["mean_change_mm"], -2.0);
    EXPECT_THAT(text, Not(HasSubstr("private person")));
    EXPECT_THAT(text, Not(HasSubstr("null")));
}

} // namespace
} // namespace hammerline::exchange
