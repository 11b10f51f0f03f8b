// The desk of studies by the keys and answers of a person.

#include "study_desk/study_desk.h"

#include "app/study_desk/study_fixture.h"
#include "exchange/exchange.h"
#include "exchange/study_json.h"
#include "exchange/trials_csv.h"
#include "prompts/queued_prompts.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableWidget>
#include <QTest>

namespace hammerline::study_desk {
namespace {

class StudyDeskTest : public StudyTest {
protected:
    StudyDeskTest() : desk(clock())
    {
        desk.setPrompts(&prompts);
        desk.resize(1366, 640);
        desk.QWidget::show();
        desk.show(place());
    }
    [[nodiscard]] StudyPlace place()
    {
        StudyPlace of;
        of.book = &shop.book;
        of.proposal.instrument = shop.grand;
        of.proposal.people = {"Ada"};
        of.proposal.seed = 4711;
        return of;
    }
    template <typename Kind = QWidget>
    [[nodiscard]] Kind *part(const char *name) const
    {
        auto *found = desk.findChild<Kind *>(name);
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    void planByHand()
    {
        part<QPushButton>("studyPlan")->click();
        QTest::keyClicks(part<QLineEdit>("studyGauge"), "rule 3");
        part<QPlainTextEdit>("studyPeople")->setPlainText("Ada\nBen\n");
        part<QSpinBox>("studyNotes")->setValue(3);
        part<QSpinBox>("studyTakes")->setValue(2);
        part<QPushButton>("formAccept")->click();
    }
    void type(const QString &text)
    {
        QTest::keyClicks(part<QLineEdit>("studyField"), text);
        QTest::keyClick(part<QLineEdit>("studyField"), Qt::Key_Return);
    }
    void takeByHand()
    {
        const auto study = logbook::GaugeStudies(shop.book).all().back();
        for (const analysis::StudyStop &stop : orderOf(study.plan))
            type(QString::fromStdString(valueOf(stop)));
    }

    prompts::QueuedPrompts prompts;
    StudyDesk desk;
};

TEST_F(StudyDeskTest, AnEmptyDeskSaysWhatAStudyIsFor)
{
    EXPECT_TRUE(part<QLabel>("studyEmpty")->isVisible());
    EXPECT_FALSE(part<QPushButton>("studyStrike")->isEnabled());
    EXPECT_FALSE(desk.blind());
}

TEST_F(StudyDeskTest, APlanByHandIsKeptWithItsSeedAndItsNotesAreTheInstruments)
{
    planByHand();
    const auto studies = logbook::GaugeStudies(shop.book).all();
    ASSERT_EQ(studies.size(), 1u);
    EXPECT_EQ(studies[0].gauge.name, "rule 3");
    EXPECT_EQ(studies[0].plan.seed, 4711u);
    EXPECT_EQ(studies[0].plan.people, (std::vector<std::string>{"Ada", "Ben"}));
    EXPECT_EQ(studies[0].plan.notes.size(), 3u);
    EXPECT_EQ(studies[0].instrument, shop.grand.id);
    EXPECT_TRUE(desk.blind());
    EXPECT_TRUE(part<QLineEdit>("studyField")->isVisible());
}

TEST_F(StudyDeskTest, APlanThatCannotBeTakenStaysOpenAndSaysWhy)
{
    part<QPushButton>("studyPlan")->click();
    part<QPushButton>("formAccept")->click();
    EXPECT_TRUE(part<QLabel>("formFaults")->text().contains("gauge needs a name"));
    EXPECT_TRUE(logbook::GaugeStudies(shop.book).all().empty());
}

TEST_F(StudyDeskTest, WhileItIsTakenNoValueThatWasReadIsShownAnywhere)
{
    planByHand();
    type("3.217");
    type("3.219");
    for (const QLabel *label : desk.findChildren<QLabel *>())
        EXPECT_FALSE(label->isVisible() && label->text().contains("3.21")) << label->text().toStdString();
    EXPECT_TRUE(part<QLineEdit>("studyField")->text().isEmpty());
    EXPECT_TRUE(part<QLabel>("studyProgress")->text().startsWith("2 of 12"));
}

TEST_F(StudyDeskTest, UpAsksForTheLastOneAgain)
{
    planByHand();
    const QString first = part<QLabel>("studyNote")->text();
    type("3.2");
    EXPECT_NE(part<QLabel>("studyNote")->text() + part<QLabel>("studyPerson")->text(), first);
    QTest::keyClick(part<QLineEdit>("studyField"), Qt::Key_Up);
    EXPECT_EQ(part<QLabel>("studyNote")->text(), first);
    EXPECT_TRUE(part<QLabel>("studyProgress")->text().startsWith("0 of 12"));
}

TEST_F(StudyDeskTest, HalfTypedTextSurvivesWhatAnotherWindowDoes)
{
    planByHand();
    QTest::keyClicks(part<QLineEdit>("studyField"), "3.");
    desk.show(place());
    EXPECT_EQ(part<QLineEdit>("studyField")->text(), "3.");
}

TEST_F(StudyDeskTest, ANonsenseValueIsToldAndNotKept)
{
    planByHand();
    type("abc");
    EXPECT_TRUE(part<QLabel>("studySaid")->text().startsWith("Not kept"));
    EXPECT_TRUE(part<QLabel>("studyProgress")->text().startsWith("0 of 12"));
}

TEST_F(StudyDeskTest, TheResultEqualsTheCommandsOnTheSameTrials)
{
    planByHand();
    QSignalSpy blind(&desk, &StudyDesk::blindChanged);
    takeByHand();
    ASSERT_EQ(blind.size(), 1);
    EXPECT_FALSE(desk.blind());
    const QString path = shop.filePath("trials.csv");
    prompts.willPick(path);
    part<QPushButton>("studySaveTrials")->click();
    // what `hammerline gauge-study trials.csv --json` does
    const auto trials = exchange::readTrialsCsv(exchange::readFile(path.toStdString()).value(), {});
    ASSERT_TRUE(trials.ok()) << trials.fault().text();
    const auto byCommand = exchange::gaugeStudyJson(analysis::gaugeStudy(trials.value()).value());
    EXPECT_EQ(byCommand, exchange::gaugeStudyJson(part<charts::StudyPane>("studyChart")->data().study));
    EXPECT_EQ(trials.value().size(), 12u);
}

TEST_F(StudyDeskTest, TheTrialsAreSavedAsTheCommandTakesThemWhereASetJudgesTheNotesToo)
{
    planByHand();
    takeByHand();
    const auto set = support::plainSet();
    auto judged = place();
    judged.set = &set;
    desk.show(judged);
    for (const char *page : {"studyWords", "studyValues", "studyRanges", "studySources"}) {
        part<QRadioButton>(page)->click();
        ASSERT_FALSE(part<charts::StudyPane>("studyChart")->data().limits.empty());
        const QString path = shop.filePath(QString("%1-trials.csv").arg(page));
        prompts.willPick(path);
        part<QPushButton>("studySaveTrials")->click();
        const auto trials = exchange::readTrialsCsv(exchange::readFile(path.toStdString()).value(), {});
        ASSERT_TRUE(trials.ok()) << page << ": " << trials.fault().text();
        EXPECT_EQ(trials.value(), part<charts::StudyPane>("studyChart")->data().trials) << page;
    }
}

TEST_F(StudyDeskTest, TheFiguresOfAChartWithLimitsAreToldFromTrialsByTheCommand)
{
    planByHand();
    takeByHand();
    const auto set = support::plainSet();
    auto judged = place();
    judged.set = &set;
    desk.show(judged);
    part<QRadioButton>("studyValues")->click();
    const QString path = shop.filePath("chart.csv");
    prompts.willPick(path);
    part<QPushButton>("studySaveChart")->click();
    const auto trials = exchange::readTrialsCsv(exchange::readFile(path.toStdString()).value(), {});
    ASSERT_FALSE(trials.ok());
    EXPECT_NE(trials.fault().text().find("saving the study's trials"), std::string::npos) << trials.fault().text();
}

TEST_F(StudyDeskTest, EveryChartIsSavedInEveryForm)
{
    planByHand();
    takeByHand();
    for (const char *chart : {"studyValues", "studyRanges", "studySources"}) {
        part<QRadioButton>(chart)->click();
        for (const char *form : {"png", "svg", "pdf", "csv"}) {
            const QString path = shop.filePath(QString("%1.%2").arg(chart, form));
            prompts.willPick(path);
            part<QPushButton>("studySaveChart")->click();
            EXPECT_GT(QFile(path).size(), 100) << path.toStdString();
        }
    }
}

TEST_F(StudyDeskTest, TheNameOfferedForAFileNamesGaugeQuantityAndDay)
{
    Taking taking(shop.book, planned("rule 3/b \"blue\""), clock());
    takeAll(taking);
    desk.show(place());
    for (const auto &[chart, what] :
         {std::pair("studyValues", "values"), {"studyRanges", "people"}, {"studySources", "sources"}}) {
        part<QRadioButton>(chart)->click();
        prompts.willPick(std::nullopt);
        part<QPushButton>("studySaveChart")->click();
        EXPECT_EQ(prompts.fileWishes().back().start,
                  QString("rule-3-b-blue--let-off-study-%1-%2.svg").arg(dayOf(taking.study()), what));
    }
    prompts.willPick(std::nullopt);
    part<QPushButton>("studySaveTrials")->click();
    EXPECT_EQ(prompts.fileWishes().back().start,
              QString("rule-3-b-blue--let-off-study-%1-trials.csv").arg(dayOf(taking.study())));
}

TEST_F(StudyDeskTest, TheNameOfferedForAChartIsOneThatADiskTakes)
{
    Taking taking(shop.book, planned(std::string(10'000, 'g')), clock());
    takeAll(taking);
    desk.show(place());
    part<QRadioButton>("studyValues")->click();
    prompts.willPick(std::nullopt);
    part<QPushButton>("studySaveChart")->click();
    EXPECT_LT(prompts.fileWishes().back().start.toUtf8().size(), 200);
}

TEST_F(StudyDeskTest, AStudyThatGoesOnHasTheFocusInItsField)
{
    part<QPushButton>("studyPlan")->setFocus();
    static_cast<void>(planned());
    desk.show(place());
    QCoreApplication::processEvents();
    EXPECT_EQ(desk.focusWidget(), part<QLineEdit>("studyField"));
    part<QTableWidget>("studyList")->setFocus(); // whoever walks along the list keeps it
    desk.show(place());
    QCoreApplication::processEvents();
    EXPECT_EQ(desk.focusWidget(), part<QTableWidget>("studyList"));
}

TEST_F(StudyDeskTest, AStruckStudyLeavesTheListWithItsReasonKept)
{
    planByHand();
    prompts.willType("the wrong gauge");
    part<QPushButton>("studyStrike")->click();
    EXPECT_EQ(part<QTableWidget>("studyList")->rowCount(), 0);
    EXPECT_FALSE(desk.blind());
    EXPECT_EQ(shop.book.deed(shop.book.newestDeed())->reason, "the wrong gauge");
}

TEST_F(StudyDeskTest, TheListTellsWhatIsBeingTakenAndHowFarTheOthersCanBeTrusted)
{
    planByHand();
    EXPECT_EQ(part<QTableWidget>("studyList")->item(0, 1)->text(), "being taken");
    takeByHand();
    EXPECT_TRUE(part<QTableWidget>("studyList")->item(0, 1)->text().endsWith("mm"));
    EXPECT_TRUE(part<QLabel>("studyStory")->text().contains("can be trusted to"));
}

} // namespace
} // namespace hammerline::study_desk
