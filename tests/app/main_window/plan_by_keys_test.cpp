// The whole plan sheet without a mouse.
#include "app/main_window/window_desk.h"

#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QTableView>

namespace hammerline::main_window {
namespace {

using plan_sheet::PlanModel;

class PlanByKeys : public WindowDesk {
protected:
    void SetUp() override
    {
        window = openWindow();
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
        window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(1));
        for (int note = 1; note <= 6; ++note)
            type(*window, "3.85");
        QTest::keyClick(window.get(), Qt::Key_5, Qt::ControlModifier);
    }
    static void press(int key) { QTest::keyClick(QApplication::focusWidget(), Qt::Key(key)); }
    static void tabTo(const char *name)
    {
        constexpr int mostStops = 60;
        for (int stop = 0; stop < mostStops && QApplication::focusWidget()->objectName() != name; ++stop)
            press(Qt::Key_Tab);
        EXPECT_EQ(QApplication::focusWidget()->objectName(), name);
    }
    static void typeInto(const char *name, const QString &text)
    {
        tabTo(name);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(QApplication::focusWidget(), text);
        press(Qt::Key_Return);
    }
    /// From the top: the heading, then the first move.
    void goToFirstMove(PlanModel::Column column)
    {
        tabTo("planTable");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Home, Qt::ControlModifier);
        press(Qt::Key_Down);
        for (int step = 0; step < column; ++step)
            press(Qt::Key_Right);
        const auto *table = part<QTableView>(*window, "planTable");
        EXPECT_EQ(table->currentIndex(), table->model()->index(1, column));
    }
    [[nodiscard]] const plan_sheet::PlanSheet &sheet() const { return window->views().plan()->sheet(); }
    std::unique_ptr<MainWindow> window;
};

TEST_F(PlanByKeys, OpensWithTheMovesUnderTheFingers)
{
    EXPECT_EQ(QApplication::focusWidget()->objectName(), "planTable");
}

TEST_F(PlanByKeys, AMoveIsUntickedAndAnAdjustmentRuledOut)
{
    goToFirstMove(PlanModel::Use);
    press(Qt::Key_Space);
    EXPECT_EQ(sheet().task()->forbidden.single.size(), 1u);
    EXPECT_EQ(sheet().plan()->moves.size(), 5u);
    tabTo("planUse-let_off");
    press(Qt::Key_Space);
    EXPECT_TRUE(sheet().plan()->moves.empty());
    tabTo("planUse-let_off");
    press(Qt::Key_Space);
    EXPECT_EQ(sheet().plan()->moves.size(), 5u);
}

TEST_F(PlanByKeys, ALimitIsChanged)
{
    tabTo("planLimitOf");
    for (int i = 0; i < 3 && part<QComboBox>(*window, "planLimitOf")->currentText() != "Let-off"; ++i)
        press(Qt::Key_Down);
    typeInto("planUpper", "0.5");
    EXPECT_TRUE(sheet().plan()->moves.empty());
    typeInto("planUpper", "0");
    EXPECT_EQ(sheet().plan()->moves.size(), 6u);
}

TEST_F(PlanByKeys, WorkIsTimedAndTickedOffAndThePlanPrinted)
{
    typeInto("planTook", "1.5");
    goToFirstMove(PlanModel::Done);
    press(Qt::Key_Space);
    const auto done = shop.book.workDone(shop.pass.id);
    ASSERT_EQ(done.size(), 1u);
    EXPECT_EQ(done.front().took.count(), 90);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), "planTable") << "ready for the next tick";
    const QString path = folder.filePath("plan.pdf");
    prompts.willPick(path);
    prompts.willChoose(QString("A4"));
    tabTo("planPrint");
    press(Qt::Key_Space);
    EXPECT_TRUE(QFile::exists(path));
}

} // namespace
} // namespace hammerline::main_window
