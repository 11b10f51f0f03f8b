// The schemas are what outsiders build on: our own files and answers keep to them, and what we refuse they refuse too.
#include "core/exchange/faults_of.h"
#include "exchange/answers_json.h"
#include "exchange/built_in.h"
#include "exchange/setup_json.h"
#include "exchange/tolerance_json.h"
#include "support/json_schema.h"

#include <filesystem>
#include <gmock/gmock.h>

namespace hammerline::exchange {
namespace {

using support::JsonSchema;
using testing::IsEmpty;
using testing::Not;

TEST(Schemas, everySetAndSetupThatIsBuiltInKeepsToItsSchema)
{
    for (const auto &builtIn : builtInToleranceSets()) {
        EXPECT_THAT(JsonSchema("tolerance-set").faultsOf(builtIn.text), IsEmpty()) << builtIn.id;
        const auto set = readToleranceSet(builtIn.text, builtIn.id);
        ASSERT_TRUE(set);
        EXPECT_THAT(JsonSchema("tolerance-set").faultsOf(writeToleranceSet(set.value())), IsEmpty()) << builtIn.id;
    }
    for (const auto &builtIn : builtInSetups()) {
        EXPECT_THAT(JsonSchema("action-setup").faultsOf(builtIn.text), IsEmpty()) << builtIn.id;
        const auto setup = readSetup(builtIn.text, builtIn.id);
        ASSERT_TRUE(setup);
        EXPECT_THAT(JsonSchema("action-setup").faultsOf(writeSetup(setup.value())), IsEmpty()) << builtIn.id;
    }
}

TEST(Schemas, theSchemaRefusesWhatTheReaderRefuses)
{
    const std::string head =
        R"({"format": "hammerline-tolerance-set", "version": 1, "action": "vertical", "quantities": )";
    for (
        const std::string quantities :
        {R"({"let_off": {"points": []}})", R"({"let_off": {}})",
         R"({"let_of": {"points": [{"note": 1, "target_mm": 1}]}})",
         R"({"let_off": {"points": [{"note": 1, "target_g": 1}]}})",
         R"({"up_weight": {"points": [{"note": 1, "target_mm": 1}]}})",
         R"({"let_off": {"points": [{"note": 1, "target_mm": 1}], "sharps": {"points": [{"note": 1, "target_mm": 1}]}}})",
         R"({"let_off": {"sharps": {"points": [{"note": 1, "target_mm": 1}], "step_mm": 1}}})",
         R"({"let_off": {"points": [{"note": 1, "target_mm": 1}], "coverage_factor": 0}})",
         R"({"let_off": {"points": [{"note": 1, "target_mm": 1}], "rule": "loose"}})",
         R"({"let_off": {"points": [{"note": 1.5, "target_mm": 1}]}})"}) {
        EXPECT_FALSE(readToleranceSet(head + quantities + "}", "x")) << quantities;
        EXPECT_THAT(JsonSchema("tolerance-set").faultsOf(head + quantities + "}"), Not(IsEmpty())) << quantities;
    }
}

TEST(Schemas, everySchemaOfTheFolderNamesItsFormatAndVersion)
{
    int count = 0;
    for (const auto &entry : std::filesystem::directory_iterator(HAMMERLINE_SOURCE_DIR "/resources/schemas")) {
        const auto json = nlohmann::json::parse(std::ifstream(entry.path()));
        const std::string name = entry.path().filename().string();
        EXPECT_EQ(json["$schema"], "https://json-schema.org/draft/2020-12/schema") << name;
        EXPECT_EQ(json["properties"]["format"]["const"].get<std::string>() + ".schema.json", "hammerline-" + name);
        EXPECT_EQ(json["properties"]["version"]["const"], name == "hand-over.schema.json" ? 2 : 1) << name;
        ++count;
    }
    EXPECT_GE(count, 13);
}

TEST(Schemas, theExamplesOfThePlannedAndStudiedAnswersKeepToTheirs)
{
    EXPECT_THAT(
        JsonSchema("plan").faultsOf(R"({"format":"hammerline-plan","version":1,"aim":"in","rails":[{"rail":"rest_rail",
        "bass_mm":1,"treble_mm":1}],"moves":[{"order":1,"note":12,"adjust":"let_off","by_mm":-0.6,"turns":-0.25}],"minutes":1,
        "pairs":2,"pairs_in_before":1,"pairs_in_after":2,"closeness":0.5,"after":[{"note":12,"quantity":"let_off","value_mm":3,
        "status":"in","predicted":false}],"unresolved":[{"note":1,"quantity":"dip","why":"x"}],"remeasure":[]})"),
        IsEmpty());
    EXPECT_THAT(JsonSchema("plan").faultsOf(R"({"format":"hammerline-plan","version":1,"aim":"near"})"),
                Not(IsEmpty()));
    EXPECT_THAT(
        JsonSchema("fit").faultsOf(R"({"format":"hammerline-fit","version":1,"notes":[{"note":12,"lever_ratio":5.31,
        "feasible":true,"targets":{"blow_mm":45,"let_off_mm":2,"dip_mm":10,"aftertouch_mm":1}}]})"),
        IsEmpty());
    EXPECT_THAT(JsonSchema("spot-check").faultsOf(R"({"format":"hammerline-spot-check","version":1,"most_out":3,
        "sample_to_prove":[{"at_most_out":0,"sample":84}]})"),
                IsEmpty());
    EXPECT_THAT(
        JsonSchema("gauge-study").faultsOf(R"({"format":"hammerline-gauge-study","version":1,"notes":10,"people":3,
        "takes":3,"interaction_pooled":true,"anova":[{"source":"note","df":9,"ss":1.5,"ms":0.2,"f":3,"p":0.01}],
        "variance":{"repeatability":1,"reproducibility":1,"gauge":1,"note":1,"total":1},
        "sd":{"repeatability":1,"reproducibility":1,"gauge":1,"note":1,"total":1},"percent_of_total_sd":{"gauge":100},
        "distinct_categories":1,"expanded_uncertainty":2})"),
        IsEmpty());
}

} // namespace
} // namespace hammerline::exchange
