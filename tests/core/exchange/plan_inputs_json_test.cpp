#include "exchange/plan_inputs_json.h"

#include "exchange/built_in.h"

#include "core/exchange/faults_of.h"

#include <gmock/gmock.h>

namespace hammerline::exchange {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;

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

TEST(PlanInputs, RefuseNotesThatNoKeyboardHasSinceAPlanWalksThemAll)
{
    const std::string written = planInputsJson(task());
    const auto with = [&](const std::string &was, const std::string &now) {
        std::string changed = written;
        changed.replace(changed.find(was), was.size(), now);
        return faultTexts(readPlanInputs(changed));
    };
    for (const char *note : {"2000000000", "-2147483648", "1e300", "1.5", "108", "\"1\"", "null"})
        EXPECT_THAT(with("\"last_note\":85", "\"last_note\":" + std::string(note)),
                    Contains(HasSubstr("kept plan: note: ")))
            << note;
    EXPECT_THAT(with("\"first_note\":1", "\"first_note\":86"), Contains(HasSubstr("lies below the first")));
    EXPECT_THAT(with("[\"treble\",29,85]", "[\"treble\",29,900]"), ElementsAre(HasSubstr("no keyboard has")));
    EXPECT_THAT(with("[[\"let_off\",12]]", "[[\"let_off\",-21]]"), ElementsAre(HasSubstr("no keyboard has")));
}

} // namespace
} // namespace hammerline::exchange
