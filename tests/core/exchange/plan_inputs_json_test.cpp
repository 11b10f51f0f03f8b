#include "exchange/plan_inputs_json.h"

#include "exchange/built_in.h"

#include <gtest/gtest.h>

namespace hammerline::exchange {
namespace {

using catalogue::Quantity;
using keyboard::Note;

action::PlanTask task()
{
    action::PlanTask task;
    task.set = findToleranceSet("full-upright").value().set;
    task.setup = findSetup("full-upright").value();
    task.compass = {Note(1), Note(85)};
    task.sections = {{"bass; \"low\"", {Note(1), Note(28)}}, {"treble", {Note(29), Note(85)}}};
    task.aim = action::Aim::Target;
    task.forbidden.everywhere.insert(Quantity::Dip);
    task.forbidden.single.emplace(Quantity::LetOff, Note(12));
    task.forbidden.rails.insert("rest_rail");
    task.values.set(Quantity::LetOff, Note(12), {units::Length::nanometres(3'175'001), 1});
    return task;
}

TEST(PlanInputs, ComeBackAsTheyWere)
{
    const auto written = planInputsJson(task());
    const auto read = readPlanInputs(written);
    ASSERT_TRUE(read.ok()) << read.fault().text();
    EXPECT_EQ(read.value().set, task().set);
    EXPECT_EQ(read.value().setup, task().setup);
    EXPECT_EQ(read.value().values, task().values);
    EXPECT_EQ(read.value().sections, task().sections);
    EXPECT_EQ(read.value().forbidden, task().forbidden);
    EXPECT_EQ(planInputsJson(read.value()), written);
}

TEST(PlanInputs, RefuseWhatIsNoneOfOurs)
{
    for (const char *text : {"", "{}", R"({"format":"hammerline-plan-inputs","version":2})",
                             R"({"format":"hammerline-plan-inputs","version":1,"aim":3})"})
        EXPECT_FALSE(readPlanInputs(text).ok()) << text;
}

} // namespace
} // namespace hammerline::exchange
