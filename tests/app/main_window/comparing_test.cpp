// Passes held against each other in the window: the page of before and after, and the charts.
#include "app/main_window/window_desk.h"

#include "wording/claim_words.h"

#include <QComboBox>
#include <QRadioButton>
#include <QTabWidget>
#include <QTableWidget>
#include <QTextBrowser>
#include <QUrl>

namespace hammerline::main_window {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::Purpose;

class Comparing : public WindowDesk {
protected:
    void put(const readings::Pass &pass, int note, double mm)
    {
        readings::Reading reading;
        reading.place = {Quantity::LetOff, Note(note), 1};
        reading.value = units::Length::millimetres(mm);
        reading.typed = std::to_string(mm);
        shop.book.enter(pass.id, reading, shop.stamp());
    }
    /// Ten notes too large as found; as left all inside but the last, which was spoiled.
    readings::Pass regulated()
    {
        const auto left = shop.begin(Purpose::AsLeft);
        for (int note = 1; note <= 10; ++note) {
            put(shop.pass, note, note == 10 ? 3.2 : 3.9 + 0.02 * note);
            put(left, note, note == 10 ? 4.2 : 3.2 + 0.01 * note);
        }
        return left;
    }
    readings::Pass byBen(double more)
    {
        readings::Pass begun{.instrument = shop.grand.id, .purpose = Purpose::Recheck, .began = shop.stamp().at};
        begun.person = "Ben";
        begun = shop.book.beginPass(begun, shop.stamp());
        for (int note = 1; note <= 10; ++note)
            put(begun, note, 3.2 + 0.01 * note + more + 0.02 * (note % 2));
        return begun;
    }
    static QString cell(const MainWindow &window, int column)
    {
        return part<QTableWidget>(window, "changeTable")->item(0, column)->text();
    }
};

TEST_F(Comparing, BeforeAndAfterShowsTheFiguresOfCompare)
{
    const auto left = regulated();
    const auto window = openWindow();
    trigger(*window, "viewFile");
    const auto set = support::plainSet();
    const auto same =
        analysis::compare(shop.book.values(shop.pass.id), shop.book.values(left.id), &set).at(Quantity::LetOff);
    const auto form = wording::formOf(shop.pass);
    EXPECT_EQ(cell(*window, 1), "10");
    EXPECT_EQ(cell(*window, 2), wording::figureText(same.meanChange, Quantity::LetOff, form));
    EXPECT_EQ(cell(*window, 3), wording::spanText(same.ci95Low, same.ci95High, Quantity::LetOff, form));
    EXPECT_EQ(cell(*window, 4), wording::testText(same, form));
    EXPECT_EQ(cell(*window, 7), QString::fromUtf8("9 \u2192 1"));
}

TEST_F(Comparing, BeforeAndAfterNamesTheNotesAndAClickStandsOnOne)
{
    regulated();
    const auto window = openWindow();
    trigger(*window, "viewFile");
    part<QTabWidget>(*window, "filePages")->setCurrentIndex(5);
    auto *story = part<QTextBrowser>(*window, "changeStory");
    const QString text = story->toPlainText();
    EXPECT_TRUE(text.contains(QString::fromUtf8("Mended, out before and not after: A0, A\u266f0, B0")));
    EXPECT_TRUE(text.contains(QString::fromUtf8("Spoiled, out after and not before: F\u266f1"))) << text.toStdString();
    EXPECT_TRUE(text.contains("Iglewicz and Hoaglin"));
    emit story->anchorClicked(QUrl("note:10"));
    EXPECT_EQ(window->workshop().selection(), (Selection{Quantity::LetOff, Note(10)}));
}

TEST_F(Comparing, AnotherPairIsChosenByHand)
{
    regulated();
    const auto ben = byBen(0.3);
    const auto window = openWindow();
    trigger(*window, "viewFile");
    auto *after = part<QComboBox>(*window, "changeAfter");
    after->setCurrentIndex(after->findData(static_cast<qlonglong>(ben.id)));
    emit after->activated(after->currentIndex());
    EXPECT_EQ(part<QComboBox>(*window, "changeAfter")->currentData().toLongLong(), ben.id);
    const auto same = analysis::compare(shop.book.values(shop.pass.id), shop.book.values(ben.id), nullptr);
    EXPECT_EQ(cell(*window, 2),
              wording::figureText(same.at(Quantity::LetOff).meanChange, Quantity::LetOff, wording::formOf(shop.pass)));
}

TEST_F(Comparing, TheChartHoldsTheChosenPassAgainstAsFound)
{
    regulated();
    const auto window = openWindow();
    emit window->views().pairChosen(Quantity::LetOff, Note(3));
    trigger(*window, "viewCharts");
    part<QRadioButton>(*window, "chartMoved")->click();
    const auto data = window->views().chart()->data().value();
    EXPECT_EQ(data.question, charts::Question::WhichNotesMoved);
    ASSERT_TRUE(data.before);
    EXPECT_NEAR(data.before->find(Quantity::LetOff, Note(1))->value->inDisplay(), 3.92, 1e-9);
    EXPECT_NEAR(data.now.find(Quantity::LetOff, Note(1))->value->inDisplay(), 3.21, 1e-9);
}

TEST_F(Comparing, AgreementIsAskedOfAnotherPersonAndTheLaterPassIsTheOneMeasuredFrom)
{
    regulated();
    byBen(0.1);
    const auto window = openWindow();
    emit window->views().pairChosen(Quantity::LetOff, Note(3));
    trigger(*window, "viewCharts");
    part<QRadioButton>(*window, "chartAgree")->click();
    const auto data = window->views().chart()->data().value();
    EXPECT_EQ(data.nowPerson, "Ben");
    EXPECT_EQ(data.beforePerson, "Ada");
    EXPECT_EQ(charts::titleOf(data), "Do Ada and Ben agree on let-off?");
}

TEST_F(Comparing, AgreementIsAskedOfTheNearestReadingsWithNotesInCommonAndSaysWhenTheyWereRead)
{
    const auto left = regulated();
    const auto on = [&](int days, const char *person, int first) {
        readings::Pass begun{.instrument = shop.grand.id, .purpose = Purpose::Recheck};
        begun.began = left.began + std::chrono::days(days);
        begun.person = person;
        begun = shop.book.beginPass(begun, shop.stamp());
        for (int note = first; note < first + 10; ++note)
            put(begun, note, 3.2 + 0.01 * note);
        return begun;
    };
    on(2, "Ben", 1);
    on(300, "Cid", 40); // newest of all, with no note in common
    const auto mine = on(310, "Ada", 1);
    on(500, "Ben", 1);
    Workshop workshop([this] { return shop.stamp().at; });
    workshop.use(logbook::Logbook::open(shop.path()));
    const auto answerFor = [&](const readings::Pass &pass) {
        workshop.choosePass(pass.id);
        workshop.select({Quantity::LetOff, Note(1)});
        ChartView view(workshop);
        part<QRadioButton>(view, "chartAgree")->click();
        view.show();
        return charts::answerOf(view.data().value());
    };
    EXPECT_TRUE(answerFor(left).contains("; read on 2026-03-02 and 2026-03-04")) << answerFor(left).toStdString();
    EXPECT_FALSE(answerFor(left).contains("drifted"));
    EXPECT_TRUE(answerFor(mine).contains("190 days lie between, so what drifted since is in it"))
        << answerFor(mine).toStdString();
}

TEST_F(Comparing, WhoReadsASampleAgainDoesNotSeeWhatWasReadBefore)
{
    const auto left = regulated();
    const readings::Pass begun{
        .instrument = shop.grand.id, .purpose = Purpose::Recheck, .began = shop.stamp().at, .person = "Ben"};
    const auto check = shop.book.beginSpotCheck(
        begun, {.checked = left.id, .seed = 1, .notes = {Note(1), Note(2)}, .quantities = {Quantity::LetOff}},
        shop.stamp());
    put(check, 1, 3.3);
    Workshop workshop([this] { return shop.stamp().at; });
    workshop.use(logbook::Logbook::open(shop.path()));
    workshop.choosePass(check.id);
    workshop.select({Quantity::LetOff, Note(1)});
    ChartView chart(workshop);
    chart.show();
    for (const char *question : {"chartMoved", "chartAgree", "chartDrifted"}) {
        part<QRadioButton>(chart, question)->click();
        EXPECT_FALSE(chart.data().value().before) << question;
        EXPECT_TRUE(chart.data().value().trends.empty()) << question;
    }
}

TEST_F(Comparing, DriftIsDrawnOverEveryPassSinceItWasLeft)
{
    regulated();
    byBen(0.1);
    byBen(0.2);
    const auto window = openWindow();
    emit window->views().pairChosen(Quantity::LetOff, Note(3));
    trigger(*window, "viewCharts");
    part<QRadioButton>(*window, "chartDrifted")->click();
    const auto data = window->views().chart()->data().value();
    ASSERT_FALSE(data.trends.empty());
    EXPECT_EQ(data.trends.front().points.size(), 3u);
}

} // namespace
} // namespace hammerline::main_window
