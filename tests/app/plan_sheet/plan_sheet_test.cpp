#include "plan_sheet/plan_sheet.h"

#include "app/plan_sheet/planned_action.h"
#include "plan_sheet/plan_model.h"
#include "plan_sheet/work_clock.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QTextBrowser>

#include <gtest/gtest.h>

namespace hammerline::plan_sheet {
namespace {

class PlanSheetTest : public ::testing::Test {
protected:
    void SetUp() override
    {
        sheet.show(smallTask(), {{QStringLiteral("upright"), smallTask().setup}}, {}, {});
        sheet.QWidget::show();
    }
    template <typename Kind>
    [[nodiscard]] Kind *part(const char *name) const
    {
        return sheet.findChild<Kind *>(name);
    }
    [[nodiscard]] std::size_t moves() const { return sheet.plan()->moves.size(); }
    /// The space bar on the box of a row, as a person without a mouse would.
    void press(int row, PlanModel::Column column)
    {
        auto *table = part<QTableView>("planTable");
        table->setFocus();
        table->setCurrentIndex(table->model()->index(row, column));
        QTest::keyClick(table, Qt::Key_Space);
    }
    [[nodiscard]] const PlanModel &model() const
    {
        return *qobject_cast<PlanModel *>(part<QTableView>("planTable")->model());
    }
    /// Where the first move on a note stands.
    [[nodiscard]] int firstMove() const
    {
        int row = 0;
        while (row < model().rowCount() && !model().pairAt(row))
            ++row;
        return row;
    }
    [[nodiscard]] static std::vector<TickedWork> ticked(const QSignalSpy &spy, int call)
    {
        return spy.at(call).at(0).value<std::vector<TickedWork>>();
    }
    void chooseLimit(catalogue::Quantity quantity)
    {
        auto *of = part<QComboBox>("planLimitOf");
        of->setCurrentIndex(of->findData(static_cast<int>(quantity)));
    }
    PlanSheet sheet;
};

TEST_F(PlanSheetTest, ShowsEveryMoveInTheOrderOfTheWork)
{
    ASSERT_TRUE(sheet.plan());
    int listed = 0;
    for (int row = 0; row < model().rowCount(); ++row)
        listed += model().isHeading(row) ? 0 : 1;
    EXPECT_EQ(listed, static_cast<int>(moves() + sheet.plan()->rails.size()));
    EXPECT_EQ(sheet.plan()->pairsInAfter, static_cast<int>(sheet.plan()->pairs.size()));
    EXPECT_TRUE(part<QLabel>("planHeadline")->text().contains(QStringLiteral("14 of 16")));
}

TEST_F(PlanSheetTest, AMoveThatIsUntickedIsRuledOutAndTheBestPlanWithoutItIsThere)
{
    part<QCheckBox>("planUse-let_off_rail") ? part<QCheckBox>("planUse-let_off_rail")->setChecked(false) : void();
    const auto before = moves();
    ASSERT_GE(before, 1U);
    press(firstMove(), PlanModel::Use);
    EXPECT_EQ(sheet.task()->forbidden.single.size(), 1U);
    EXPECT_LT(sheet.plan()->pairsInAfter, 16);
    press(part<QTableView>("planTable")->model()->rowCount() - 1, PlanModel::Use);
    EXPECT_TRUE(sheet.task()->forbidden.single.empty());
    EXPECT_EQ(moves(), before);
    EXPECT_EQ(sheet.plan()->pairsInAfter, 16);
}

TEST_F(PlanSheetTest, AnAdjustmentThatIsRuledOutIsUsedNowhere)
{
    const QSignalSpy planned(&sheet, &PlanSheet::planned);
    for (QCheckBox *box : sheet.findChildren<QCheckBox *>())
        if (box->objectName().contains(QStringLiteral("let_off")))
            box->click();
    EXPECT_GE(planned.count(), 1);
    for (const action::Move &move : sheet.plan()->moves)
        EXPECT_NE(move.adjust, catalogue::Quantity::LetOff);
    EXPECT_EQ(sheet.plan()->unresolved.size(), 2U);
}

TEST_F(PlanSheetTest, AWiderLimitNeedsLessWork)
{
    chooseLimit(catalogue::Quantity::LetOff);
    part<QDoubleSpinBox>("planUpper")->setValue(3.0);
    EXPECT_EQ(moves(), 0U);
    EXPECT_EQ(sheet.plan()->minutes, 0);
    part<QDoubleSpinBox>("planUpper")->setValue(0);
    EXPECT_GT(sheet.plan()->minutes, 0);
}

TEST_F(PlanSheetTest, AnotherTargetIsPlannedForAtOnce)
{
    chooseLimit(catalogue::Quantity::LetOff);
    const auto before = tolerance::limitsAt(sheet.task()->set, catalogue::Quantity::LetOff, keyboard::Note(40));
    part<QDoubleSpinBox>("planTarget")->setValue(0.1);
    const auto after = tolerance::limitsAt(sheet.task()->set, catalogue::Quantity::LetOff, keyboard::Note(40));
    EXPECT_EQ(after->target, before->target + units::Amount(units::Length::millimetres(0.1)));
    EXPECT_EQ(after->high, before->high);
}

TEST_F(PlanSheetTest, ATargetOutsideItsLimitsIsRefusedInWordsAndTheLastPlanStands)
{
    chooseLimit(catalogue::Quantity::LetOff);
    const double minutes = sheet.plan()->minutes;
    const auto before = sheet.task()->set;
    part<QDoubleSpinBox>("planTarget")->setValue(4.5);
    EXPECT_TRUE(part<QLabel>("planLimitWords")->text().contains("between its limits"));
    EXPECT_EQ(sheet.task()->set, before);
    EXPECT_EQ(sheet.plan()->minutes, minutes);
    part<QDoubleSpinBox>("planTarget")->setValue(0);
    EXPECT_TRUE(part<QLabel>("planLimitWords")->text().contains("target"));
}

TEST_F(PlanSheetTest, WhatIsTickedOffTookTheTimeSinceTheTickBefore)
{
    std::chrono::milliseconds now{1000};
    sheet.clock().setTicks([&now] { return now; });
    const QSignalSpy spy(&sheet, &PlanSheet::workTicked);
    press(firstMove(), PlanModel::Done);
    EXPECT_EQ(ticked(spy, 0).at(0).took.count(), 0) << "nobody timed it";
    part<QPushButton>("planClock")->click();
    now += std::chrono::seconds(90);
    press(firstMove(), PlanModel::Done);
    EXPECT_EQ(ticked(spy, 1).at(0).took.count(), 90);
    now += std::chrono::seconds(30);
    part<QPushButton>("planClock")->click();
    now += std::chrono::hours(1); // away for lunch
    press(firstMove(), PlanModel::Done);
    EXPECT_EQ(ticked(spy, 2).at(0).took.count(), 30);
    part<QDoubleSpinBox>("planTook")->setValue(2.5);
    press(firstMove(), PlanModel::Done);
    EXPECT_EQ(ticked(spy, 3).at(0).took.count(), 150);
}

TEST_F(PlanSheetTest, TheTickOfAHeadingIsThatOfAllItsMovesAndSharesTheirTime)
{
    const QSignalSpy spy(&sheet, &PlanSheet::workTicked);
    part<QDoubleSpinBox>("planTook")->setValue(2.5);
    press(firstMove() - 1, PlanModel::Done);
    const auto work = ticked(spy, 0);
    ASSERT_EQ(work.size(), 2U);
    EXPECT_EQ((work[0].took + work[1].took).count(), 150);
    sheet.setDone({{.item = work[0].item, .took = work[0].took}});
    EXPECT_EQ(model().index(firstMove() - 1, PlanModel::Done).data(Qt::CheckStateRole).toInt(), Qt::PartiallyChecked);
    press(firstMove() - 1, PlanModel::Done);
    EXPECT_EQ(ticked(spy, 1).size(), 1U) << "only what was not ticked yet";
}

TEST_F(PlanSheetTest, TellsTheHoursPlannedAndTaken)
{
    const QSignalSpy spy(&sheet, &PlanSheet::workTicked);
    press(firstMove(), PlanModel::Done);
    sheet.setDone({{.item = ticked(spy, 0).at(0).item, .took = std::chrono::minutes(3)}});
    const QString aside = part<QTextBrowser>("planAside")->toPlainText();
    EXPECT_TRUE(aside.contains("Done: 1 of 2, planned at 1 min")) << aside.toStdString();
    EXPECT_TRUE(aside.contains("Taken: 3 min"));
    EXPECT_TRUE(aside.contains("the rest takes 3 min"));
}

TEST_F(PlanSheetTest, ASetupThatWasMadeElsewhereIsChosenAndPlannedWithAtOnce)
{
    const QSignalSpy chosen(&sheet, &PlanSheet::setupChosen);
    action::Setup own = smallTask().setup;
    own.adjustments.at(catalogue::Quantity::LetOff).perTurn = units::Length::millimetres(2.4);
    sheet.chooseSetup({"own", own});
    EXPECT_EQ(chosen.count(), 1);
    EXPECT_TRUE(sheet.plan()->moves.front().turns);
    own.adjustments.erase(catalogue::Quantity::LetOff);
    sheet.chooseSetup({"own", own});
    EXPECT_EQ(chosen.count(), 2);
    EXPECT_EQ(part<QComboBox>("planSetup")->count(), 2);
    EXPECT_EQ(moves(), 0U);
}

TEST_F(PlanSheetTest, TheWorkIsListedInTheOrderThatWasChosen)
{
    auto task = smallTask();
    task.values.set(catalogue::Quantity::Checking, keyboard::Note(47), {units::Length::millimetres(24), 1});
    sheet.show(task, {{QStringLiteral("upright"), task.setup}}, {}, {});
    EXPECT_EQ(sheet.plan()->moves.front().adjust, catalogue::Quantity::LetOff);
    sheet.setOrder({catalogue::Quantity::Checking});
    EXPECT_EQ(sheet.plan()->moves.front().adjust, catalogue::Quantity::Checking);
    EXPECT_EQ(sheet.plan()->moves.front().order, 1);
}

TEST_F(PlanSheetTest, EnterGoesToTheNote)
{
    const QSignalSpy chosen(&sheet, &PlanSheet::noteChosen);
    auto *table = part<QTableView>("planTable");
    const int row = firstMove();
    table->setFocus();
    table->setCurrentIndex(table->model()->index(row, PlanModel::NoteColumn));
    QTest::keyClick(table, Qt::Key_Return);
    EXPECT_EQ(chosen.count(), 1);
}

TEST_F(PlanSheetTest, SaysWhatToDoFirstWhereThereIsNothingToPlan)
{
    sheet.show(std::nullopt, {}, {}, QStringLiteral("Read some notes first."));
    EXPECT_EQ(part<QLabel>("planHeadline")->text(), QStringLiteral("Read some notes first."));
    EXPECT_FALSE(part<QTableView>("planTable")->isVisible());
    EXPECT_FALSE(sheet.plan());
}

TEST(ValuesAfter, ArePredictedToTheNanometreAndLeaveTheRestAlone)
{
    const auto task = smallTask();
    const auto after = valuesAfter(action::bestPlan(task), task.values);
    EXPECT_EQ(after.column(catalogue::Quantity::LetOff).size(), 8U);
    EXPECT_LT(after.value(catalogue::Quantity::LetOff, keyboard::Note(40))->inDisplay(), 4.6);
}

} // namespace
} // namespace hammerline::plan_sheet
