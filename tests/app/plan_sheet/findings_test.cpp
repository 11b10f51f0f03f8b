#include "plan_sheet/findings.h"

#include "app/plan_sheet/planned_action.h"
#include "plan_sheet/plan_sheet.h"

#include <QTextBrowser>
#include <gtest/gtest.h>

namespace hammerline::plan_sheet {
namespace {

using catalogue::Quantity;
using keyboard::Note;

Findings findingsOfTask(const action::PlanTask &task)
{
    return findingsOf(task.values, task.set, task.compass, task.sections, units::Length::millimetres(0.1));
}

TEST(Findings, NameReadingsThatCannotAllBeTrue)
{
    auto task = smallTask();
    task.values.set(Quantity::Blow, Note(43), {units::Length::millimetres(2), 1});
    const QStringList lines = doubtLines(findingsOfTask(task), {});
    ASSERT_FALSE(lines.isEmpty());
    EXPECT_TRUE(lines.front().startsWith(QStringLiteral("D♯4"))) << lines.front().toStdString();
}

TEST(Findings, SayWhatOneRemedyWouldMendWhereManyAreOut)
{
    auto task = smallTask();
    EXPECT_TRUE(patternLines(findingsOfTask(task), {}).isEmpty()) << "two notes out are single notes";
    for (int number = 40; number <= 47; ++number)
        task.values.set(Quantity::LetOff, Note(number), {units::Length::millimetres(4.6), 1});
    const QStringList lines = patternLines(findingsOfTask(task), {});
    ASSERT_EQ(lines.size(), 1);
    EXPECT_TRUE(lines.front().contains(QStringLiteral("0 of 8 inside"))) << lines.front().toStdString();
    EXPECT_TRUE(lines.front().contains(QStringLiteral("would make it 8")));
}

TEST(Findings, WhatWasLearnedIsToldAndGoesIntoTheTurns)
{
    Findings findings;
    findings.learned = {
        {.adjust = Quantity::LetOff, .trials = 8, .gain = 0.86, .low = 0.7, .high = 0.95, .displayPerTurn = 2.0}};
    EXPECT_EQ(learnedLines(findings, {}).front(),
              QStringLiteral("Let-off, whole action: does 86 % of what is asked (70 to 95 %, 8 trials); 2.00 a turn"));
    PlanSheet sheet;
    sheet.show(smallTask(), {{QStringLiteral("upright"), smallTask().setup}}, {}, {});
    for (const action::Move &move : sheet.plan()->moves)
        EXPECT_FALSE(move.turns);
    sheet.setFindings(findings);
    for (const action::Move &move : sheet.plan()->moves)
        EXPECT_TRUE(move.turns) << "the next plan uses what was learned";
    EXPECT_TRUE(sheet.findChild<QTextBrowser *>("planAside")->toPlainText().contains(QStringLiteral("86 %")));
}

} // namespace
} // namespace hammerline::plan_sheet
