// The setup of an action in the window: changed in its form, remembered with the instrument, and what that does to
// plans and targets.
#include "app/main_window/window_desk.h"

#include "exchange/built_in.h"
#include "exchange/tolerance_json.h"
#include "plan_sheet/setup_form.h"

#include <QComboBox>
#include <QPushButton>

#include <cmath>

namespace hammerline::main_window {
namespace {

using catalogue::Quantity;

class PlanSetup : public WindowDesk {
protected:
    void put(readings::PassId pass, Quantity quantity, int note, double mm)
    {
        readings::Reading reading;
        reading.place = {quantity, keyboard::Note(note), 1};
        reading.value = units::Length::millimetres(mm);
        reading.typed = std::to_string(mm);
        shop.book.enter(pass, reading, shop.stamp());
    }
    [[nodiscard]] std::unique_ptr<MainWindow> openPlan()
    {
        auto window = openWindow();
        trigger(*window, "viewPlan");
        return window;
    }
    static const plan_sheet::PlanSheet &sheet(MainWindow &window) { return window.views().plan()->sheet(); }
    /// Let-off falls by 0.6 mm in a quarter turn.
    static void makeTrialTurn(const MainWindow &window)
    {
        QTest::mouseClick(part(window, "planEditSetup"), Qt::LeftButton);
        auto *form = window.findChild<plan_sheet::SetupForm *>();
        part<QLineEdit>(*form, "trialTurned")->setText("1/4");
        part<QLineEdit>(*form, "trialBefore")->setText("3.80");
        part<QLineEdit>(*form, "trialAfter")->setText("3.20");
        QTest::mouseClick(part(*form, "trialTake"), Qt::LeftButton);
        QTest::mouseClick(part(*form, "setupAccept"), Qt::LeftButton);
    }
};

TEST_F(PlanSetup, ATrialTurnReachesThePlanAndIsRememberedForTheNextPass)
{
    put(shop.pass.id, Quantity::LetOff, 40, 3.85);
    const auto window = openPlan();
    ASSERT_FALSE(sheet(*window).plan()->moves.empty());
    EXPECT_FALSE(sheet(*window).plan()->moves.front().turns);
    makeTrialTurn(*window);
    EXPECT_LT(0, sheet(*window).plan()->moves.front().turns.value_or(0));
    const readings::Pass next = shop.begin(readings::Purpose::AsLeft);
    put(next.id, Quantity::LetOff, 41, 3.95);
    const auto another = openPlan();
    ASSERT_EQ(another->workshop().pass()->pass.id, next.id);
    EXPECT_TRUE(sheet(*another).plan()->moves.front().turns) << "of the instrument, not of one pass";
    EXPECT_EQ(part<QComboBox>(*another, "planSetup")->currentText(), "Own setup of this instrument");
}

TEST_F(PlanSetup, TheAimIsRememberedWithTheInstrumentAndCanBeUndone)
{
    put(shop.pass.id, Quantity::LetOff, 40, 3.85);
    const auto window = openPlan();
    auto *aim = part<QComboBox>(*window, "planAim");
    aim->setCurrentIndex(1);
    ASSERT_TRUE(shop.book.actionSetup(shop.grand.id));
    EXPECT_EQ(shop.book.actionSetup(shop.grand.id)->aim, "target");
    EXPECT_EQ(sheet(*openPlan()).task()->aim, action::Aim::Target);
    trigger(*window, "undo");
    EXPECT_FALSE(shop.book.actionSetup(shop.grand.id));
    EXPECT_EQ(sheet(*window).task()->aim, action::Aim::In);
}

TEST_F(PlanSetup, APlanThatIsKeptIsKeptAnewWithTheNewSetup)
{
    put(shop.pass.id, Quantity::LetOff, 40, 3.85);
    const auto window = openPlan();
    QTest::mouseClick(part(*window, "planKeep"), Qt::LeftButton);
    const auto before = shop.book.keptPlan(shop.pass.id);
    makeTrialTurn(*window);
    EXPECT_NE(shop.book.keptPlan(shop.pass.id), before);
    EXPECT_TRUE(sheet(*openPlan()).plan()->moves.front().turns);
}

/// A set whose targets this action cannot reach together, and ten sample notes of a ratio near 5.4.
class FitInWindow : public PlanSetup {
protected:
    void SetUp() override
    {
        tolerance::ToleranceSet set = support::plainSet();
        set.entries[Quantity::Dip] = support::entryAround(10.0, 0.3);
        set.entries[Quantity::Aftertouch] = support::entryAround(1.2, 0.5);
        set.source = "invented for a test";
        shop.grand.toleranceText = exchange::writeToleranceSet(set);
        ASSERT_TRUE(shop.book.changeInstrument(shop.grand, shop.stamp(), {}));
        for (int note = 10; note <= 82; note += 8) {
            put(shop.pass.id, Quantity::Blow, note, 46);
            put(shop.pass.id, Quantity::LetOff, note, 3.2);
            put(shop.pass.id, Quantity::Dip, note, 9.8);
            put(shop.pass.id, Quantity::Aftertouch, note, std::round((9.8 - 42.8 / 5.4) * 100) / 100);
        }
        window = openPlan();
    }
    void chooseFit(const QString &choice)
    {
        prompts.willChoose(choice);
        QTest::mouseClick(part(*window, "planFit"), Qt::LeftButton);
    }
    std::unique_ptr<MainWindow> window;
};

TEST_F(FitInWindow, SaysInOneSentenceWhatTheTargetsComeOutAtAndWhichFit)
{
    chooseFit("Leave it");
    ASSERT_EQ(prompts.questions().size(), 1u);
    const QString text = prompts.questions().front().text;
    EXPECT_TRUE(text.startsWith("This action's ratio is 5.4; with these targets aftertouch comes out at 2.0"))
        << text.toStdString();
    EXPECT_TRUE(text.contains("These targets fit it: blow 4"));
    EXPECT_EQ(shop.book.instrument(shop.grand.id)->toleranceId, "Plain");
}

TEST_F(FitInWindow, JudgesByTheNewSetWhichSaysWhereItCameFrom)
{
    chooseFit("Judge by these targets");
    const auto judged = shop.book.instrument(shop.grand.id);
    EXPECT_EQ(judged->toleranceId, "Plain (fitted)");
    const auto set = exchange::readToleranceSet(judged->toleranceText, {});
    ASSERT_TRUE(set);
    EXPECT_NE(set.value().remark.find("readings of “Grey grand”, as found 2026-03-02; before that: Plain"),
              std::string::npos)
        << set.value().remark;
    const auto dip = tolerance::limitsAt(set.value(), Quantity::Dip, keyboard::Note(40));
    EXPECT_LT(dip->target, units::Amount(units::Length::millimetres(10)));
    EXPECT_EQ(dip->high, units::Amount(units::Length::millimetres(10.3))) << "limits stay";
    EXPECT_EQ(window->workshop().set()->name, "Plain (fitted)");
}

TEST_F(FitInWindow, SavesTheNewSetToAFileThatReadsAgain)
{
    const QString path = folder.filePath("fitted.json");
    prompts.willPick(path);
    chooseFit("Save them to a file…");
    const auto saved = exchange::findToleranceSet(path.toStdString());
    ASSERT_TRUE(saved);
    EXPECT_EQ(saved.value().set.name, "Plain (fitted)");
    EXPECT_EQ(shop.book.instrument(shop.grand.id)->toleranceId, "Plain") << "saving is not judging";
}

} // namespace
} // namespace hammerline::main_window
