// What another set would say of the shop, in the window: beside what stands, while the window answers.
#include "app/main_window/window_desk.h"
#include "main_window/rejudge_page.h"
#include "main_window/rejudge_run.h"

#include <QComboBox>
#include <QFile>
#include <QPushButton>
#include <QRadioButton>
#include <QTableView>

namespace hammerline::main_window {
namespace {

using catalogue::Quantity;
using keyboard::Note;

class RejudgePageTest : public WindowDesk {
protected:
    void put(const readings::Pass &pass, int note, double mm)
    {
        const units::Amount value = units::Length::millimetres(mm);
        shop.book.enter(pass.id, {.place = {Quantity::LetOff, Note(note), 1}, .value = value, .typed = "x"},
                        shop.stamp());
    }
    /// Let-off 3.2 mm and nothing else, give or take.
    QString write(const QString &name, double give, catalogue::ActionKind action = catalogue::ActionKind::Grand)
    {
        tolerance::ToleranceSet set{.name = name.toStdString(), .action = action};
        set.entries[Quantity::LetOff] = support::entryAround(3.2, give);
        QFile file(folder.filePath(name + ".json"));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(exchange::writeToleranceSet(set)));
        return file.fileName();
    }
    std::unique_ptr<MainWindow> openPage()
    {
        auto window = openWindow();
        trigger(*window, "viewShop");
        part<QRadioButton>(*window, "shopRejudge")->click();
        return window;
    }
    static const RejudgePage &page(MainWindow &window) { return window.views().shop()->rejudge(); }
    static void wait(MainWindow &window)
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !page(window).isJudging(); }, 20'000));
    }
    void chooseFile(MainWindow &window, const QString &path)
    {
        prompts.willPick(path);
        choose(window, part<QComboBox>(window, "rejudgeSet")->count() - 1);
        wait(window);
    }
    static void choose(MainWindow &window, int row)
    {
        auto *box = part<QComboBox>(window, "rejudgeSet");
        box->setCurrentIndex(row);
        emit box->activated(row);
    }
    static QString cell(MainWindow &window, int row, int column)
    {
        const auto *model = part<QTableView>(window, "rejudgeTable")->model();
        return model->index(row, column).data().toString();
    }
};

TEST_F(RejudgePageTest, ShowsWhatAnotherSetWouldSayBesideWhatStands)
{
    put(shop.pass, 1, 3.2);
    put(shop.pass, 2, 3.5); // in now, out then
    put(shop.pass, 3, 9);   // out by both
    const auto window = openPage();
    EXPECT_TRUE(part<QLabel>(*window, "rejudgeAnswer")->text().startsWith("Choose a set"));
    chooseFile(*window, write("Narrow", 0.1));
    ASSERT_EQ(part<QTableView>(*window, "rejudgeTable")->model()->rowCount(), 1);
    EXPECT_EQ(cell(*window, 0, 0), "Let-off");
    EXPECT_EQ(cell(*window, 0, 1), "2");  // in now
    EXPECT_EQ(cell(*window, 0, 2), "1");  // in then
    EXPECT_EQ(cell(*window, 0, 6), "2");  // out then
    EXPECT_EQ(cell(*window, 0, 7), "+1"); // more
    const QString answer = part<QLabel>(*window, "rejudgeAnswer")->text();
    EXPECT_TRUE(answer.contains(QString::fromUtf8("“Narrow”: 2 of 3 readings (66.7 %); as it stands: 1 of 3")))
        << answer.toStdString();
    EXPECT_EQ(shop.book.instrument(shop.grand.id)->toleranceId, "Plain") << "nothing is changed";
}

TEST_F(RejudgePageTest, WithNoSetChosenThereIsASentenceNoEmptyChartAndNothingToSave)
{
    put(shop.pass, 1, 3.5);
    const auto window = openPage();
    const auto *table = part<QTableView>(*window, "rejudgeTable");
    const auto *bars = page(*window).findChild<charts::BarsPane *>();
    const auto shown = [&](bool expected) {
        EXPECT_EQ(table->isVisible(), expected);
        EXPECT_EQ(bars->isVisible(), expected);
        for (const char *name : {"shopExport", "shopSaveChart"})
            EXPECT_EQ(part<QPushButton>(*window, name)->isEnabled(), expected) << name;
    };
    shown(false);
    chooseFile(*window, write("Narrow", 0.1));
    shown(true);
    choose(*window, 0);
    shown(false);
}

TEST_F(RejudgePageTest, EachHeadSaysWhichOfTheTwoSetsItCountsBy)
{
    const auto window = openPage();
    const auto *model = part<QTableView>(*window, "rejudgeTable")->model();
    for (int column = 1; column < model->columnCount(); ++column) {
        const QString head = model->headerData(column, Qt::Horizontal).toString();
        EXPECT_TRUE(head.endsWith("\nas it stands") || head.endsWith("\nby the other set")) << head.toStdString();
    }
}

TEST_F(RejudgePageTest, InstrumentsOfTheOtherActionAreCountedAndSaidNotToBeJudged)
{
    put(shop.pass, 1, 3.5);
    const auto answerBy = [this](catalogue::ActionKind action, const char *name) {
        const auto window = openPage();
        chooseFile(*window, write(name, 0.1, action));
        return part<QLabel>(*window, "rejudgeAnswer")->text();
    };
    EXPECT_FALSE(answerBy(catalogue::ActionKind::Grand, "Ours").contains("another action"));
    EXPECT_TRUE(answerBy(catalogue::ActionKind::Vertical, "Theirs")
                    .contains("One instrument has another action than the set is for"));
    auto other = shop.grand;
    other.id = 0, other.uid.clear(), other.toleranceText.clear(), other.toleranceId.clear();
    ASSERT_TRUE(shop.book.addInstrument(other, shop.stamp()));
    EXPECT_TRUE(answerBy(catalogue::ActionKind::Vertical, "Again")
                    .contains("2 instruments have another action than the set is for"));
}

TEST_F(RejudgePageTest, OffersWhatIsBuiltInAndWhatTheLogbookJudgesBy)
{
    const auto window = openPage();
    const auto *box = part<QComboBox>(*window, "rejudgeSet");
    EXPECT_EQ(box->count(), 1 + int(exchange::builtInToleranceSets().size()) + 1 + 1);
    EXPECT_EQ(box->itemText(box->count() - 2), "Plain (in this logbook)");
    put(shop.pass, 1, 9);
    choose(*window, box->count() - 2);
    wait(*window);
    EXPECT_EQ(cell(*window, 0, 7), "0") << "the set in force changes nothing";
}

TEST_F(RejudgePageTest, InstrumentsComeWithTheWorstChangeFirstAndAreExported)
{
    put(shop.pass, 1, 3.5);
    auto other = shop.grand;
    other.id = 0, other.uid.clear(), other.name = "Brown grand";
    other = shop.book.addInstrument(other, shop.stamp()).value();
    const auto pass = shop.book.beginPass({.instrument = other.id, .began = shop.stamp().at}, shop.stamp());
    for (int note = 1; note <= 3; ++note)
        put(pass, note, 3.5);
    const auto window = openPage();
    chooseFile(*window, write("Narrow", 0.1));
    part<QComboBox>(*window, "rejudgeBy")->setCurrentIndex(1);
    EXPECT_EQ(cell(*window, 0, 0), "Brown grand");
    EXPECT_EQ(cell(*window, 0, 7), "+3");
    EXPECT_EQ(cell(*window, 1, 0), "Grey grand");
    const QString table = folder.filePath("sets.csv"), drawing = folder.filePath("sets.svg");
    prompts.willPick(table);
    part<QPushButton>(*window, "shopExport")->click();
    prompts.willPick(drawing);
    part<QPushButton>(*window, "shopSaveChart")->click();
    QFile written(table);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_TRUE(written.readAll().contains("\r\n2,Brown grand,3,0,0,"));
    QFile drawn(drawing);
    ASSERT_TRUE(drawn.open(QIODevice::ReadOnly));
    EXPECT_TRUE(drawn.readAll().contains("How much would be out by another set?"));
}

TEST_F(RejudgePageTest, FollowsWhatIsReadMeanwhile)
{
    put(shop.pass, 1, 3.2);
    const auto window = openPage();
    chooseFile(*window, write("Narrow", 0.1));
    put(shop.pass, 2, 9);
    EXPECT_TRUE(QTest::qWaitFor([&] { return cell(*window, 0, 6) == "1"; }, 20'000));
}

TEST_F(RejudgePageTest, FiltersAndPassesAskAnew)
{
    put(shop.pass, 1, 9);
    const auto window = openPage();
    chooseFile(*window, write("Narrow", 0.1));
    EXPECT_EQ(page(*window).judged().size(), 1u);
    auto *which = part<QComboBox>(*window, "rejudgeWhich");
    which->setCurrentIndex(which->findText("as left"));
    wait(*window);
    EXPECT_TRUE(page(*window).judged().empty());
    EXPECT_TRUE(part<QLabel>(*window, "rejudgeAnswer")->text().startsWith("Nothing that this set could judge"));
    which->setCurrentIndex(0);
    auto *state = part<QComboBox>(*window, "shopState");
    state->setCurrentIndex(state->findData(static_cast<int>(instrument::State::Delivered)));
    wait(*window);
    EXPECT_TRUE(page(*window).judged().empty());
}

TEST_F(RejudgePageTest, AFileThatIsNoSetIsRefusedAndNothingIsChosen)
{
    QFile broken(folder.filePath("broken.json"));
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write("{");
    broken.close();
    const auto window = openPage();
    chooseFile(*window, broken.fileName());
    ASSERT_EQ(prompts.notices().size(), 1u);
    EXPECT_EQ(part<QComboBox>(*window, "rejudgeSet")->currentIndex(), 0);
}

TEST_F(RejudgePageTest, ClosingTheLogbookOrTheWindowEndsAJudgingThatIsUnderWay)
{
    put(shop.pass, 1, 9);
    auto window = openPage();
    prompts.willPick(write("Narrow", 0.1));
    choose(*window, part<QComboBox>(*window, "rejudgeSet")->count() - 1);
    EXPECT_TRUE(page(*window).isJudging());
    EXPECT_TRUE(window->openLogbook(QString::fromStdString(shop.path())));
    wait(*window);
    choose(*window, 1);
    window.reset();
}

TEST(RejudgeRun, ThrowsWhatBrokeItToWhoeverAsks)
{
    RejudgeRun run;
    run.begin("/there/is/no/such/logbook", {});
    EXPECT_TRUE(run.isRunning());
    EXPECT_THROW(while (run.isRunning()) static_cast<void>(run.take()), outcome::BrokenWorld);
    EXPECT_FALSE(run.isRunning());
    run.begin("/there/is/no/such/logbook", {});
    run.stop();
    EXPECT_FALSE(run.take());
}

} // namespace
} // namespace hammerline::main_window
