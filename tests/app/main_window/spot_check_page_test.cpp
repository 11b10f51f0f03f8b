// The lead draws a sample, reads it again at the bench without seeing what was read before, and is told what it proves.
#include "app/main_window/spot_check_desk.h"

#include "analysis/draw_sample.h"
#include "charts/chart_pane.h"
#include "keyboard_strip/keyboard_strip.h"
#include "main_window/logbook_files.h"
#include "main_window/spot_check_page.h"
#include "support/command_run.h"
#include "wording/wording.h"

#include <QFile>
#include <QPushButton>
#include <QTableWidget>
#include <QTreeWidget>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace hammerline::main_window {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using nlohmann::json;

class SpotCheckWindow : public SpotCheckDesk {
protected:
    SpotCheckWindow()
    {
        fillFirstPass();
        window = openWindow();
    }
    [[nodiscard]] SpotCheckPage *page() const
    {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        return window->findChild<SpotCheckPage *>("spotCheckPage");
    }
    [[nodiscard]] QTableWidget &table() const { return *part<QTableWidget>(*page(), "spotCheckTable"); }
    [[nodiscard]] QString words(const char *label) const { return part<QLabel>(*page(), label)->text(); }
    [[nodiscard]] static json answerOf(std::vector<std::string> arguments)
    {
        arguments.push_back("--json");
        const auto run = test_support::runCommand(arguments);
        EXPECT_EQ(run.status, 0) << run.err;
        return json::parse(run.out);
    }
    [[nodiscard]] std::string exported(readings::PassId pass, const QString &name) const
    {
        const std::string path = folder.filePath(name).toStdString();
        EXPECT_TRUE(exportPass(shop.book, pass, path));
        return path;
    }

    std::unique_ptr<MainWindow> window;
};

TEST_F(SpotCheckWindow, TheLeadIsLedThroughTheDrawnNotesAlone)
{
    draw(*window, "Lea", "12");
    const auto check = checkOf(*window);
    std::vector<Note> all;
    for (int n = 1; n <= 88; ++n)
        all.emplace_back(n);
    EXPECT_EQ(check.notes, analysis::drawSample(all, 12, check.seed)) << "the kept seed draws the sample anew";
    EXPECT_EQ(check.checked, shop.pass.id);
    std::vector<Note> walked;
    for (const readings::Place &place : window->views().bench()->session()->route())
        if (place.quantity == Quantity::LetOff)
            walked.push_back(place.note);
    EXPECT_EQ(walked, check.notes);
    EXPECT_EQ(window->views().bench()->session()->progress().all, 24) << "let-off and blow, as the first reader";
    EXPECT_EQ(window->views().current(), View::Bench);
    EXPECT_EQ(window->workshop().stamp().person, "Lea");
    EXPECT_TRUE(window->windowTitle().contains("Spot check")) << window->windowTitle().toStdString();
}

TEST_F(SpotCheckWindow, WhileItIsReadNothingShowsWhatWasReadBefore)
{
    draw(*window, "Lea", "12");
    readAgain(*window, 3);
    EXPECT_EQ(window->workshop().before(), nullptr);
    for (const auto &key : part<keyboard_strip::KeyboardStrip>(*window, "strip")->model().keys)
        EXPECT_FALSE(key.before) << key.note.name();
    trigger(*window, "viewCharts");
    EXPECT_FALSE(window->views().chart()->data()->before);
    EXPECT_EQ(page(), nullptr);
}

TEST_F(SpotCheckWindow, TheFindingShowsItselfWhenTheLastNoteIsRead)
{
    draw(*window, "Lea", "12");
    readAgain(*window, 1);
    EXPECT_EQ(page(), nullptr);
    readAgain(*window);
    ASSERT_NE(page(), nullptr);
    EXPECT_TRUE(words("spotCheckOrigin").contains("Read by Ada, read again by Lea"));
    EXPECT_TRUE(words("spotCheckProof").contains("With 95 % confidence at most"))
        << words("spotCheckProof").toStdString();
}

TEST_F(SpotCheckWindow, WhoLooksTooEarlyIsAskedFirst)
{
    draw(*window, "Lea", "12");
    readAgain(*window, 5);
    prompts.willChoose("Read on");
    trigger(*window, "tellSpotCheck");
    EXPECT_EQ(page(), nullptr);
    prompts.willChoose("Show it all the same");
    trigger(*window, "tellSpotCheck");
    ASSERT_NE(page(), nullptr);
    EXPECT_TRUE(words("spotCheckOrigin").contains("not read again yet"));
}

TEST_F(SpotCheckWindow, TheProofIsThatOfTheSpotCheckCommand)
{
    draw(*window, "Lea", "40");
    readAgain(*window);
    ASSERT_NE(page(), nullptr);
    const auto check = checkOf(*window);
    const auto out = std::ranges::count_if(check.notes, [](Note note) { return note.number() % 11 == 0; });
    ASSERT_GT(out, 0);
    const int most =
        answerOf({"spot-check", "--notes", "88", "--sample", "40", "--found", std::to_string(out)})["most_out"];
    const int row = table().findItems("Let-off", Qt::MatchExactly).value(0)->row();
    EXPECT_EQ(table().item(row, SpotCheckPage::ReadAgain)->text(), "40 of 88");
    EXPECT_EQ(table().item(row, SpotCheckPage::Out)->text(), QString::number(out));
    EXPECT_EQ(table().item(row, SpotCheckPage::MostOut)->text(), QString("%1 of 88").arg(most));
    table().setCurrentCell(row, 0);
    EXPECT_TRUE(words("spotCheckProof").contains(QString("at most %1 of the 88 notes").arg(most)));
}

TEST_F(SpotCheckWindow, TheAgreementIsThatOfTheCompareCommand)
{
    draw(*window, "Lea", "30");
    readAgain(*window);
    ASSERT_NE(page(), nullptr);
    const auto compared = answerOf({"compare", exported(shop.pass.id, "first.csv"),
                                    exported(window->workshop().pass()->pass.id, "second.csv")})["quantities"];
    for (const char *quantity : {"let_off", "blow"}) {
        const json &told = compared.at(quantity);
        const auto name = wording::nameOf(*catalogue::findQuantity(quantity));
        const int row = table().findItems(name, Qt::MatchExactly).value(0)->row();
        table().setCurrentCell(row, 0);
        const auto &drawn = page()->chart();
        const auto answer = charts::answerOf(drawn);
        for (const char *figure : {"mean_change_mm", "agreement_low_mm", "agreement_high_mm"})
            EXPECT_TRUE(answer.contains(charts::changeText(told[figure], drawn))) << answer.toStdString();
        EXPECT_TRUE(answer.contains(QString("(%1 notes)").arg(told["pairs"].get<int>()))) << answer.toStdString();
        EXPECT_EQ(table().item(row, SpotCheckPage::Mean)->text(),
                  charts::changeText(told["mean_change_mm"], page()->chart()));
        EXPECT_TRUE(
            words("spotCheckAgreement").contains(charts::changeText(told["agreement_high_mm"], page()->chart())));
    }
}

TEST_F(SpotCheckWindow, TheArrowKeysGoFromQuantityToQuantityAndEscapeCloses)
{
    draw(*window, "Lea", "12");
    readAgain(*window);
    ASSERT_NE(page(), nullptr);
    const Quantity first = page()->chart().quantity;
    QTest::keyClick(&table(), Qt::Key_Down);
    EXPECT_NE(page()->chart().quantity, first);
    QTest::keyClick(page(), Qt::Key_Escape);
    EXPECT_EQ(page(), nullptr);
}

TEST_F(SpotCheckWindow, ItsChartIsSavedWithTheDifferences)
{
    draw(*window, "Lea", "12");
    readAgain(*window);
    ASSERT_NE(page(), nullptr);
    prompts.willPick(folder.filePath("agreement.csv"));
    part<QPushButton>(*page(), "spotCheckSave")->click();
    QFile file(folder.filePath("agreement.csv"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readLine().trimmed().contains(",before,after,change,mean,"));
}

TEST_F(SpotCheckWindow, OnePersonAloneIsToldThatItSaysHowOneRepeats)
{
    draw(*window, "Ada", "5");
    readAgain(*window);
    ASSERT_NE(page(), nullptr);
    EXPECT_TRUE(words("spotCheckOrigin").contains("the same person"));
}

TEST_F(SpotCheckWindow, ASizeThatIsNoneDrawsNothing)
{
    for (const char *size : {"0", "89", "many"})
        draw(*window, "Lea", size);
    EXPECT_EQ(prompts.notices().size(), 3u);
    EXPECT_TRUE(shop.book.spotChecks(shop.grand.id).empty());
}

TEST_F(SpotCheckWindow, TheCheckStandsAmongThePassesAndLeadsBack)
{
    draw(*window, "Lea", "5");
    auto *tree = part<QTreeWidget>(*window, "workshopTree");
    ASSERT_NE(tree->currentItem(), nullptr);
    EXPECT_TRUE(tree->currentItem()->text(0).startsWith("Spot check"));
    prompts.willChoose("Show it all the same");
    tree->setCurrentItem(tree->topLevelItem(0)->child(0));
    QCoreApplication::processEvents();
    EXPECT_EQ(window->workshop().pass()->pass.id, shop.pass.id);
}

} // namespace
} // namespace hammerline::main_window
