// What plan, fit, gauge-study and spot-check really answer keeps to the schemas that outsiders build on.
#include "action/fit.h"
#include "action/plan.h"
#include "exchange/built_in.h"
#include "exchange/plan_json.h"
#include "exchange/study_json.h"
#include "exchange/trials_csv.h"
#include "support/json_schema.h"

#include <gmock/gmock.h>

namespace hammerline::exchange {
namespace {

using catalogue::Quantity;
using support::JsonSchema;
using testing::IsEmpty;

constexpr keyboard::Compass shortCompass{keyboard::Note(1), keyboard::Note(6)};

/// An upright that nobody has looked after: let-off and dip stray from note to note.
readings::ValueTable strayingUpright()
{
    readings::ValueTable values;
    const auto put = [&](Quantity quantity, int note, double mm) {
        values.set(quantity, keyboard::Note(note), {units::Amount::fromDisplay(units::Dimension::Length, mm), 1});
    };
    for (int note = 1; note <= shortCompass.count(); ++note) {
        put(Quantity::Blow, note, 47);
        put(Quantity::LostMotion, note, 0.2 + 0.1 * note);
        put(Quantity::LetOff, note, 2 + 0.5 * note);
        put(Quantity::Dip, note, 9 + 0.3 * note);
        put(Quantity::Aftertouch, note, 0.5 + 0.15 * note);
    }
    return values;
}

TEST(PlannedSchemas, aPlanAndAFitKeepToTheirs)
{
    const tolerance::ToleranceSet set = findToleranceSet("full-upright").value().set;
    action::PlanTask task;
    task.values = strayingUpright();
    task.set = set;
    task.setup = findSetup("full-upright").value();
    task.compass = shortCompass;
    const action::Plan plan = action::bestPlan(task);
    ASSERT_THAT(plan.moves, testing::Not(IsEmpty()));
    EXPECT_THAT(JsonSchema("plan").faultsOf(planJson(plan)), IsEmpty());
    const auto fit = action::fitTargets({strayingUpright(), set, shortCompass, {}});
    ASSERT_TRUE(fit);
    EXPECT_THAT(JsonSchema("fit").faultsOf(fitJson(fit.value())), IsEmpty());
}

TEST(PlannedSchemas, bothStudiesKeepToTheirs)
{
    std::string text = "note,person,take,value\n";
    for (int note = 1; note <= 3; ++note) {
        for (const std::string person : {"a", "b"})
            text += std::to_string(note) + "," + person + ",1,3." + std::to_string(note) + "\n" + std::to_string(note) +
                    "," + person + ",2,3." + std::to_string(note + 1) + "\n";
    }
    const auto study = analysis::gaugeStudy(readTrialsCsv(text, {}).value());
    ASSERT_TRUE(study);
    EXPECT_THAT(JsonSchema("gauge-study").faultsOf(gaugeStudyJson(study.value())), IsEmpty());
    EXPECT_THAT(JsonSchema("spot-check").faultsOf(spotCheckJson(analysis::spotCheck(88, 20, 0, "0.95").value())),
                IsEmpty());
}

} // namespace
} // namespace hammerline::exchange
