#include "app/main_window/window_desk.h"

#include "exchange/plan_inputs_json.h"
#include "keyboard_strip/keyboard_strip.h"

#include <QDoubleSpinBox>
#include <QProcess>
#include <QTableView>

namespace hammerline::main_window {
namespace {

class PlanInWindow : public WindowDesk {
protected:
    void SetUp() override
    {
        window = openWindow();
        window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(1));
        for (int note = 1; note <= 12; ++note)
            type(*window, "3.85");
        trigger(*window, "viewPlan");
    }
    void tickFirst()
    {
        auto *table = part<QTableView>(*window, "planTable");
        table->setFocus();
        table->setCurrentIndex(table->model()->index(1, plan_sheet::PlanModel::Done)); // under its heading
        QTest::keyClick(table, Qt::Key_Space);
    }
    std::unique_ptr<MainWindow> window;
};

TEST_F(PlanInWindow, StandsOnStripAndSheetAtOnce)
{
    const auto &plan = window->views().plan()->sheet().plan();
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->pairsInBefore, 0);
    EXPECT_EQ(plan->pairsInAfter, 12);
    EXPECT_EQ(window->workshop().planned().size(), 12u);
    const auto *strip = window->findChild<keyboard_strip::KeyboardStrip *>("strip");
    EXPECT_TRUE(strip->model().find(keyboard::Note(1))->planned.has_value());
}

TEST_F(PlanInWindow, WorkTickedOffIsLoggedWithAPlanThatCanBeLookedUp)
{
    tickFirst();
    const auto pass = window->workshop().pass()->pass.id;
    const auto done = shop.book.workDone(pass);
    ASSERT_EQ(done.size(), 1u);
    EXPECT_EQ(done.front().took.count(), 0) << "nobody timed it";
    const auto kept = shop.book.keptPlan(pass);
    ASSERT_TRUE(kept);
    EXPECT_EQ(exchange::readPlanInputs(*kept).value().values, window->workshop().pass()->values);
    tickFirst();
    EXPECT_TRUE(shop.book.workDone(pass).empty());
}

TEST_F(PlanInWindow, AnotherMoveOfTheSameScrewIsNotDone)
{
    const auto firstIsDone = [this] {
        const auto *model = part<QTableView>(*window, "planTable")->model();
        return model->index(1, plan_sheet::PlanModel::Done).data(Qt::CheckStateRole).toInt() == Qt::Checked;
    };
    tickFirst();
    EXPECT_TRUE(firstIsDone());
    trigger(*window, "viewBench");
    window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(1));
    type(*window, "4.15");
    trigger(*window, "viewPlan");
    ASSERT_EQ(window->views().plan()->sheet().plan()->moves.front().note, keyboard::Note(1));
    EXPECT_FALSE(firstIsDone());
}

TEST_F(PlanInWindow, IsForgottenOnTheStripWhenTheReadingsChange)
{
    trigger(*window, "viewBench");
    type(*window, "3.2");
    EXPECT_TRUE(window->workshop().planned().empty());
}

TEST_F(PlanInWindow, TimeThatWasTypedIsLoggedAndTheTickOfAHeadingLogsAll)
{
    part<QDoubleSpinBox>(*window, "planTook")->setValue(6);
    auto *table = part<QTableView>(*window, "planTable");
    table->setFocus();
    table->setCurrentIndex(table->model()->index(0, plan_sheet::PlanModel::Done));
    QTest::keyClick(table, Qt::Key_Space);
    const auto done = shop.book.workDone(window->workshop().pass()->pass.id);
    ASSERT_EQ(done.size(), 12u);
    for (const logbook::WorkDone &work : done)
        EXPECT_EQ(work.took.count(), 30);
    QTest::keyClick(table, Qt::Key_Space);
    EXPECT_TRUE(shop.book.workDone(window->workshop().pass()->pass.id).empty());
}

TEST_F(PlanInWindow, PrintsToTheFileThatWasChosenOnThePaperThatWasChosen)
{
    const QString path = folder.filePath("plan.pdf");
    for (const auto &[paper, size] : {std::pair("A4", "595"), std::pair("Letter", "612")}) {
        prompts.willPick(path);
        prompts.willChoose(QString(paper));
        QTest::mouseClick(part(*window, "planPrint"), Qt::LeftButton);
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_TRUE(file.readAll().startsWith("%PDF-1.6"));
        QProcess process;
        process.start("pdfinfo", {path});
        process.waitForFinished();
        EXPECT_TRUE(process.readAllStandardOutput().contains(size)) << paper;
    }
}

TEST_F(PlanInWindow, FollowsTheShopsOwnOrderAndRemembersIt)
{
    window->views().bench()->ask(catalogue::Quantity::Checking, keyboard::Note(1));
    trigger(*window, "viewBench");
    type(*window, "25");
    QTest::keyClick(part<QLineEdit>(*window, "entryField"), Qt::Key_Return);
    trigger(*window, "viewPlan");
    prompts.willType(QStringLiteral("checking, let_off"));
    QTest::mouseClick(part(*window, "planOrder"), Qt::LeftButton);
    const plan_sheet::PlanSheet &sheet = window->views().plan()->sheet();
    EXPECT_EQ(sheet.order(), (std::vector{catalogue::Quantity::Checking, catalogue::Quantity::LetOff}));
    prompts.willType(QStringLiteral("checking, wobble"));
    QTest::mouseClick(part(*window, "planOrder"), Qt::LeftButton);
    EXPECT_EQ(prompts.notices().size(), 1u);
    EXPECT_EQ(openWindow()->views().plan()->sheet().order(), sheet.order());
}

TEST_F(PlanInWindow, SaysWhyTargetsCannotBeFittedWhereTooLittleWasRead)
{
    QTest::mouseClick(part(*window, "planFit"), Qt::LeftButton);
    EXPECT_FALSE(prompts.notices().empty());
}

} // namespace
} // namespace hammerline::main_window
