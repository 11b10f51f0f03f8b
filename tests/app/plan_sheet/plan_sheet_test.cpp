#include "plan_sheet/plan_sheet.h"

#include "app/plan_sheet/planned_action.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

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
    PlanSheet sheet;
};

TEST_F(PlanSheetTest, ShowsEveryMoveInTheOrderOfTheWork)
{
    ASSERT_TRUE(sheet.plan());
    EXPECT_EQ(part<QTableView>("planTable")->model()->rowCount(),
              static_cast<int>(moves() + sheet.plan()->rails.size()));
    EXPECT_EQ(sheet.plan()->pairsInAfter, static_cast<int>(sheet.plan()->pairs.size()));
    EXPECT_TRUE(part<QLabel>("planHeadline")->text().contains(QStringLiteral("14 of 16")));
}

TEST_F(PlanSheetTest, AMoveThatIsUntickedIsRuledOutAndTheBestPlanWithoutItIsThere)
{
    part<QCheckBox>("planUse-let_off_rail") ? part<QCheckBox>("planUse-let_off_rail")->setChecked(false) : void();
    const auto before = moves();
    ASSERT_GE(before, 1U);
    press(static_cast<int>(sheet.plan()->rails.size()), PlanModel::Use);
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
    auto *of = part<QComboBox>("planLimitOf");
    of->setCurrentIndex(of->findData(static_cast<int>(catalogue::Quantity::LetOff)));
    part<QDoubleSpinBox>("planUpper")->setValue(3.0);
    EXPECT_EQ(moves(), 0U);
    EXPECT_EQ(sheet.plan()->minutes, 0);
    part<QDoubleSpinBox>("planUpper")->setValue(0);
    EXPECT_GT(sheet.plan()->minutes, 0);
}

TEST_F(PlanSheetTest, TickingOffTellsWhatWasDoneAndHowLongItTakes)
{
    const QSignalSpy ticked(&sheet, &PlanSheet::workTicked);
    press(0, PlanModel::Done);
    ASSERT_EQ(ticked.count(), 1);
    const std::string item = ticked.at(0).at(0).toString().toStdString();
    EXPECT_TRUE(ticked.at(0).at(2).toBool());
    EXPECT_GT(ticked.at(0).at(1).toDouble(), 0);
    sheet.setDone({{.item = item, .took = std::chrono::seconds(30)}});
    press(0, PlanModel::Done);
    EXPECT_FALSE(ticked.at(1).at(2).toBool());
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
    const int row = static_cast<int>(sheet.plan()->rails.size());
    if (row >= table->model()->rowCount())
        return;
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
