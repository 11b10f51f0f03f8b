#include "plan_sheet/setup_form.h"

#include "app/plan_sheet/planned_action.h"
#include "exchange/setup_json.h"
#include "plan_sheet/setup_tables.h"
#include "prompts/queued_prompts.h"

#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace hammerline::plan_sheet {
namespace {

using catalogue::Quantity;

class SetupFormTest : public ::testing::Test {
protected:
    SetupFormTest() { form.setAttribute(Qt::WA_DeleteOnClose, false); }
    template <typename Kind>
    [[nodiscard]] Kind *part(const char *name) const
    {
        return form.findChild<Kind *>(name);
    }
    void click(const char *name) { QTest::mouseClick(part<QPushButton>(name), Qt::LeftButton); }
    void setCell(const char *table, int row, int column, const QString &text)
    {
        part<QTableWidget>(table)->item(row, column)->setText(text);
    }
    [[nodiscard]] int rowOf(Quantity quantity) const
    {
        const auto &rows = part<AdjustmentTable>("setupAdjustments")->quantities();
        return static_cast<int>(std::ranges::find(rows, quantity) - rows.begin());
    }
    [[nodiscard]] QString faults() const { return part<QLabel>("setupFaults")->text(); }

    prompts::QueuedPrompts prompts;
    QTemporaryDir folder;
    action::Setup known = smallTask().setup;
    SetupForm form{known, {}, prompts};
};

TEST_F(SetupFormTest, GivesBackWhatItWasGivenWhereNothingIsTyped)
{
    ASSERT_TRUE(form.entered());
    EXPECT_EQ(form.entered().value(), known);
}

TEST_F(SetupFormTest, ATrialTurnSaysWhatOneTurnDoes)
{
    part<QLineEdit>("trialTurned")->setText("-1/4");
    part<QLineEdit>("trialBefore")->setText("3.20");
    part<QLineEdit>("trialAfter")->setText("2,60");
    click("trialTake");
    const auto made = form.entered().value();
    EXPECT_EQ(made.adjustments.at(Quantity::LetOff).perTurn, units::Amount(units::Length::millimetres(2.4)));
    EXPECT_EQ(made.adjustments.at(Quantity::LetOff).source, "the shop's own figures");
    EXPECT_EQ(made.adjustments.at(Quantity::Dip), known.adjustments.at(Quantity::Dip));
}

TEST_F(SetupFormTest, WhatIsNoTrialIsRefusedInWords)
{
    const auto trial = [](const char *turns, const char *before, const char *after) {
        return trialTurn(turns, before, after, units::Dimension::Length, units::Unit::Millimetre);
    };
    for (const char *turns : {"", "0", "a quarter", "1/0"})
        EXPECT_FALSE(trial(turns, "3.2", "2.6")) << turns;
    EXPECT_FALSE(trial("1/4", "3.2", "3.2"));
    EXPECT_FALSE(trial("1/4", "3.2", "wobble"));
    EXPECT_EQ(trial("1 1/2", "3", "4.5").value(), units::Amount(units::Length::millimetres(1)));
}

TEST_F(SetupFormTest, ARowWithoutAStepIsNoAdjustmentAndANewStepIsOne)
{
    setCell("setupAdjustments", rowOf(Quantity::Checking), AdjustmentTable::Step, "");
    setCell("setupAdjustments", rowOf(Quantity::KeyHeight), AdjustmentTable::Step, "0.1");
    setCell("setupAdjustments", rowOf(Quantity::KeyHeight), AdjustmentTable::Most, "1");
    setCell("setupAdjustments", rowOf(Quantity::KeyHeight), AdjustmentTable::Minutes, "0,5");
    setCell("setupAdjustments", rowOf(Quantity::Dip), AdjustmentTable::Punchings, "0.1 0.5; 1");
    const auto made = form.entered().value();
    EXPECT_FALSE(made.adjustments.contains(Quantity::Checking));
    EXPECT_EQ(made.adjustments.at(Quantity::KeyHeight).minutes, 0.5);
    EXPECT_EQ(made.adjustments.at(Quantity::Dip).punchings.size(), 3U);
}

TEST_F(SetupFormTest, ARailIsAddedWithItsNotesAndTakenOutAgain)
{
    click("setupAddRail");
    const int row = part<QTableWidget>("setupRails")->rowCount() - 1;
    setCell("setupRails", row, RailTable::Name, "let_off_rail");
    setCell("setupRails", row, RailTable::Step, "0.5");
    setCell("setupRails", row, RailTable::Most, "3");
    setCell("setupRails", row, RailTable::Minutes, "10");
    setCell("setupRails", row, RailTable::First, "A0");
    EXPECT_FALSE(form.entered()) << "a first note without a last one";
    setCell("setupRails", row, RailTable::Last, "E2");
    const auto made = form.entered().value();
    ASSERT_EQ(made.rails.size(), known.rails.size() + 1);
    EXPECT_EQ(made.rails.front().id, "let_off_rail");
    EXPECT_EQ(made.rails.front().notes, (keyboard::NoteRange{keyboard::Note(1), keyboard::Note(20)}));
    click("setupRemoveRail");
    EXPECT_EQ(form.entered().value(), known);
}

TEST_F(SetupFormTest, StaysOpenWithTheReasonUntilTheEntryCanStand)
{
    const QSignalSpy ready(&form, &SetupForm::ready);
    form.QWidget::show();
    setCell("setupAdjustments", rowOf(Quantity::LetOff), AdjustmentTable::Step, "wobble");
    form.accept();
    EXPECT_TRUE(form.isVisible());
    EXPECT_TRUE(faults().contains("Let-off, step")) << faults().toStdString();
    setCell("setupAdjustments", rowOf(Quantity::LetOff), AdjustmentTable::Step, "0.1");
    form.accept();
    EXPECT_EQ(ready.count(), 1);
    EXPECT_FALSE(form.isVisible());
}

TEST_F(SetupFormTest, IsSavedToAFileAndTakenInAgain)
{
    const QString path = folder.filePath("own.json");
    part<QLineEdit>("setupName")->setText("Our upright");
    part<QLineEdit>("setupRatio")->setText("5.25");
    prompts.willPick(path);
    click("setupSave");
    SetupForm other(known, {}, prompts);
    other.setAttribute(Qt::WA_DeleteOnClose, false);
    prompts.willPick(path);
    QTest::mouseClick(other.findChild<QPushButton *>("setupLoad"), Qt::LeftButton);
    EXPECT_EQ(other.entered().value().name, "Our upright");
    EXPECT_EQ(other.entered().value().leverRatio, 5.25);
}

TEST_F(SetupFormTest, ASetupForTheOtherKindOfActionIsRefused)
{
    const QString path = folder.filePath("grand.json");
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(exchange::writeSetup(exchange::findSetup("grand-over-2m").value()).c_str());
    file.close();
    prompts.willPick(path);
    click("setupLoad");
    EXPECT_TRUE(faults().contains("other kind of action"));
    EXPECT_EQ(form.entered().value(), known);
}

} // namespace
} // namespace hammerline::plan_sheet
