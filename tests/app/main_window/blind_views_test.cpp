// While somebody reads a sample again, no view shows what was read before or what the lead said of it; when the last
// value is read, all of it is there again.
#include "app/main_window/spot_check_desk.h"
#include "app/main_window/words_seen.h"

#include "main_window/open_items.h"

#include <QTabWidget>
#include <QTreeWidget>

namespace hammerline::main_window {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::Purpose;

/// What an earlier pass read of every note, and how far apart two of them lie; found nowhere else.
const QStringList formerWords{"4.61", "3.87", "3.93", "0.74", "0.68", "stiff there"};

class BlindViews : public SpotCheckDesk {
protected:
    BlindViews()
    {
        fill(shop.pass, 4.61);
        fill(shop.begin(Purpose::AsLeft), 3.87);
        recheck = shop.begin(Purpose::Recheck);
        fill(recheck, 3.93);
        const auto value = shop.book.values(recheck.id).value(Quantity::LetOff, Note(40));
        decisions::SentBack word{};
        word.quantity = Quantity::LetOff;
        word.note = Note(40);
        word.value = value;
        word.words = "stiff there";
        EXPECT_TRUE(shop.book.sendBack(recheck.id, {word}, shop.stamp()));
        window = openWindow();
    }
    void fill(const readings::Pass &pass, double mm)
    {
        for (int n = 30; n <= 50; ++n) {
            readings::Reading reading;
            reading.place = {Quantity::LetOff, Note(n), 1};
            reading.value = units::Length::millimetres(mm);
            reading.typed = std::to_string(mm);
            shop.book.enter(pass.id, reading, shop.stamp());
        }
    }
    void drawThree() { draw(*window, "Lea", "3"); }
    void readAll()
    {
        while (window->workshop().readsBlind())
            type(*window, "3.2");
    }
    /// Of the words that tell what was read before, those seen in a view or on one of its pages.
    [[nodiscard]] QStringList told(const char *view)
    {
        trigger(*window, view);
        QStringList seen;
        auto *pages = part<QTabWidget>(*window, "filePages");
        for (int page = 0; page < (QString(view) == "viewFile" ? pages->count() : 1); ++page) {
            pages->setCurrentIndex(page);
            for (const QString &line : wordsSeen(*window).split('\n'))
                for (const QString &word : formerWords)
                    if (line.contains(word))
                        seen << word + " in: " + line;
        }
        return seen;
    }
    [[nodiscard]] QTreeWidgetItem *passRow(int row) const
    {
        return part<QTreeWidget>(*window, "workshopTree")->currentItem()->parent()->child(row);
    }

    readings::Pass recheck;
    std::unique_ptr<MainWindow> window;
};

constexpr std::array views{"viewBench",  "viewCharts", "viewReadings", "viewWorst", "viewPlan",
                           "viewReview", "viewFile",   "viewStudies",  "viewShop"};

TEST_F(BlindViews, ThePassesThemselvesAreToldByTheViewsThatShowReadings)
{
    for (const char *view : {"viewCharts", "viewReadings", "viewWorst", "viewReview", "viewFile"})
        EXPECT_FALSE(told(view).isEmpty()) << view;
    EXPECT_FALSE(told("viewReview").filter("stiff there").isEmpty());
}

TEST_F(BlindViews, NoViewTellsAnyOfItBeforeTheFirstValueOfTheSample)
{
    drawThree();
    ASSERT_TRUE(window->workshop().readsBlind());
    for (const char *view : views)
        EXPECT_TRUE(told(view).isEmpty()) << view << ": " << told(view).join(", ").toStdString();
}

TEST_F(BlindViews, NoViewTellsAnyOfItBeforeTheLastValueOfTheSample)
{
    drawThree();
    type(*window, "3.2");
    type(*window, "3.2");
    ASSERT_TRUE(window->workshop().readsBlind());
    for (const char *view : views)
        EXPECT_TRUE(told(view).isEmpty()) << view << ": " << told(view).join(", ").toStdString();
}

TEST_F(BlindViews, NoQuestionOfTheChartsTellsAnyOfIt)
{
    drawThree();
    type(*window, "3.2");
    trigger(*window, "viewCharts");
    for (const char *question : {"chartAlong", "chartSpread", "chartMoved", "chartDrifted", "chartAgree"}) {
        part<QAbstractButton>(*window, question)->click();
        EXPECT_TRUE(told("viewCharts").isEmpty()) << question << told("viewCharts").join('\n').toStdString();
    }
}

TEST_F(BlindViews, TheReviewSaysWhatItDoesNotListAndWhy)
{
    drawThree();
    trigger(*window, "viewReview");
    const auto *withheld = part<QLabel>(*window->findChild<QWidget *>("reviewTable")->parentWidget(), "reviewWithheld");
    EXPECT_TRUE(withheld->isVisible());
    EXPECT_TRUE(withheld->text().contains("Grey grand")) << withheld->text().toStdString();
}

TEST_F(BlindViews, WhenTheLastValueIsReadEveryViewTellsItAgain)
{
    drawThree();
    trigger(*window, "viewReview");
    trigger(*window, "viewBench");
    readAll();
    EXPECT_FALSE(told("viewReview").filter("stiff there").isEmpty());
    EXPECT_FALSE(told("viewFile").filter("0.74").isEmpty());
    trigger(*window, "viewCharts");
    part<QAbstractButton>(*window, "chartAgree")->click();
    EXPECT_FALSE(told("viewCharts").isEmpty());
}

TEST_F(BlindViews, TakingTheLastValueBackIsBlindAgain)
{
    drawThree();
    readAll();
    EXPECT_FALSE(told("viewReview").isEmpty());
    trigger(*window, "undo");
    EXPECT_TRUE(window->workshop().readsBlind());
    EXPECT_TRUE(told("viewReview").isEmpty()) << told("viewReview").join('\n').toStdString();
}

TEST_F(BlindViews, TheListOfARefusedSignatureClosesWhenASampleIsDrawn)
{
    prompts.willType("Ada");
    prompts.willType("");
    trigger(*window, "signPass");
    ASSERT_NE(window->findChild<OpenItems *>(), nullptr);
    drawThree();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_EQ(window->findChild<OpenItems *>(), nullptr);
}

TEST_F(BlindViews, WhoWantsToSeeAnEarlierPassIsAskedFirst)
{
    drawThree();
    const auto check = window->workshop().pass()->pass.id;
    prompts.willChoose("Read on");
    part<QTreeWidget>(*window, "workshopTree")->setCurrentItem(passRow(0));
    QCoreApplication::processEvents();
    EXPECT_EQ(window->workshop().pass()->pass.id, check);
    EXPECT_EQ(part<QTreeWidget>(*window, "workshopTree")->currentItem(), passRow(3)) << "the row of the check";
    prompts.willChoose("Show it all the same");
    part<QTreeWidget>(*window, "workshopTree")->setCurrentItem(passRow(0));
    QCoreApplication::processEvents();
    EXPECT_EQ(window->workshop().pass()->pass.id, shop.pass.id);
    EXPECT_TRUE(prompts.allUsed());
}

TEST_F(BlindViews, AnotherWindowAndTheNextStartGoOnWithTheSampleBlind)
{
    drawThree();
    const auto check = window->workshop().pass()->pass.id;
    const auto again = openWindow();
    EXPECT_EQ(again->workshop().pass()->pass.id, check);
    EXPECT_TRUE(again->workshop().readsBlind());
    readAll();
    EXPECT_NE(openWindow()->workshop().pass()->pass.id, check) << "read to its end, it is one of several";
}

TEST_F(BlindViews, WhoLooksAtTheRowOfTheInstrumentIsAskedToo)
{
    drawThree();
    prompts.willChoose("Read on");
    auto *tree = part<QTreeWidget>(*window, "workshopTree");
    tree->setCurrentItem(tree->currentItem()->parent());
    QCoreApplication::processEvents();
    EXPECT_TRUE(window->workshop().readsBlind());
    EXPECT_TRUE(prompts.allUsed());
}

} // namespace
} // namespace hammerline::main_window
