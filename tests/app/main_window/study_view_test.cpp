// Gauge studies in the window: planned and taken by keys, blind, and what passes take from them. With
// HAMMERLINE_PICTURES=<folder> each state is saved to be looked at.

#include "app/main_window/screens.h"
#include "app/main_window/window_desk.h"

#include "charts/study_pane.h"
#include "exchange/exchange.h"
#include "exchange/trials_csv.h"
#include "main_window/bench_tools.h"
#include "main_window/strip_area.h"
#include "study_desk/study_desk.h"
#include "support/bad_cable.h"

#include <QApplication>
#include <QCheckBox>
#include <QDialog>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSpinBox>
#include <QTabBar>
#include <QTableWidget>

namespace hammerline::main_window {
namespace {

class StudyViewTest : public WindowDesk {
protected:
    /// The study of the sample trials, as far as `trials` of them were read.
    logbook::PlannedStudy studied(std::size_t trials = 1000)
    {
        const auto sample = exchange::readTrialsCsv(
            exchange::readFile(HAMMERLINE_SOURCE_DIR "/sample-data/trials/let-off-gauge.csv").value(), {});
        logbook::PlannedStudy study{.gauge = {.name = "rule 3", .resolution = units::Length::millimetres(0.01)}};
        for (const analysis::Trial &trial : sample.value()) {
            addOnce(study.plan.notes, trial.note);
            addOnce(study.plan.people, trial.person);
            study.plan.takes = std::max(study.plan.takes, trial.take);
        }
        study.instrument = shop.grand.id;
        study = logbook::GaugeStudies(shop.book).plan(study, shop.stamp()).value();
        for (const analysis::Trial &trial : sample.value())
            if (trials-- > 0)
                EXPECT_TRUE(logbook::GaugeStudies(shop.book)
                                .enter(study.id, {trial.note, trial.person, trial.take}, trial.value,
                                       units::exactDecimal(trial.value), shop.stamp())
                                .ok());
            else
                break;
        return study;
    }
    template <typename Thing>
    static void addOnce(std::vector<Thing> &among, const Thing &thing)
    {
        if (std::ranges::find(among, thing) == among.end())
            among.insert(std::ranges::upper_bound(among, thing), thing);
    }
};

TEST_F(StudyViewTest, AStudyIsPlannedAndBegunByKeysAlone)
{
    const auto window = openWindow();
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    QTest::keyClick(window.get(), Qt::Key_8, Qt::ControlModifier);
    ASSERT_EQ(window->views().current(), View::Studies);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    QTest::keyClicks(part<QLineEdit>(*window, "studyGauge"), "rule 3");
    part<QPlainTextEdit>(*window, "studyPeople")->setPlainText("Ada\nBen");
    QTest::keyClick(part<QSpinBox>(*window, "studySeed"), Qt::Key_Return);
    const auto studies = logbook::GaugeStudies(shop.book).all();
    ASSERT_EQ(studies.size(), 1u);
    EXPECT_EQ(studies[0].plan.notes.size(), 10u);
    QTest::keyClick(window.get(), Qt::Key_1, Qt::ControlModifier);
    QTest::keyClick(window.get(), Qt::Key_8, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), "3.1");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(logbook::GaugeStudies(shop.book).trials(studies[0].id).size(), 1u);
}

TEST_F(StudyViewTest, HoweverTheViewIsReachedWhatIsTypedIsTheNextValueOfTheStudy)
{
    static_cast<void>(studied(5));
    const auto window = openWindow();
    part<QTabBar>(*window, "viewNames")->setCurrentIndex(static_cast<int>(View::Studies)); // as the mouse does
    QCoreApplication::processEvents();
    ASSERT_TRUE(part<QLineEdit>(*window, "studyField")->isVisible());
    EXPECT_EQ(window->focusWidget(), part<QLineEdit>(*window, "studyField"));
}

TEST_F(StudyViewTest, TheStripIsCoveredOnlyWhileAStudyIsTaken)
{
    static_cast<void>(studied(5));
    const auto window = openWindow();
    const auto *strip = window->findChild<StripArea *>();
    ASSERT_NE(strip, nullptr);
    EXPECT_TRUE(strip->isVisible());
    trigger(*window, "viewStudies");
    EXPECT_FALSE(strip->isVisible());
    trigger(*window, "viewBench");
    EXPECT_TRUE(strip->isVisible());
}

TEST_F(StudyViewTest, TheStripStaysWithAFinishedStudy)
{
    static_cast<void>(studied());
    const auto window = openWindow();
    trigger(*window, "viewStudies");
    EXPECT_TRUE(window->findChild<StripArea *>()->isVisible());
    EXPECT_TRUE(part<QLabel>(*window, "studyStory")->isVisible());
}

TEST_F(StudyViewTest, APassBegunWithAStudiedGaugeDoubtsItsVerdictsByTheStudy)
{
    const auto study = studied();
    const auto window = openWindow();
    trigger(*window, "beginPass");
    QTest::keyClicks(part<QLineEdit>(*window, "passGauge"), "rule 3");
    EXPECT_TRUE(part<QLabel>(*window, "passStudied")->isVisible());
    part<QPushButton>(*part<QDialog>(*window, "passForm"), "formAccept")->click();
    const auto found = study_desk::findingsOf(shop.book, study, nullptr).value();
    const auto *pass = window->workshop().pass();
    EXPECT_EQ(pass->pass.gauge.expandedUncertainty, study_desk::expandedUncertaintyOf(found));
    window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(40));
    type(*window, "3.69");
    const auto *verdict = window->workshop().pass()->judgement.find(catalogue::Quantity::LetOff, keyboard::Note(40));
    ASSERT_TRUE(verdict != nullptr && verdict->doubt);
    EXPECT_GE(verdict->doubt->expanded(), found.figures.expandedUncertainty);
    EXPECT_TRUE(verdict->withinDoubt());
}

TEST_F(StudyViewTest, TheSetOfTheInstrumentTakesOverWhatTheStudyFound)
{
    const auto study = studied();
    const auto window = openWindow();
    trigger(*window, "chooseSet");
    auto *chooser = part<QDialog>(*window, "toleranceChooser");
    EXPECT_TRUE(part<QWidget>(*chooser, "studiedRow")->isVisible());
    part<QCheckBox>(*chooser, "studiedGuarded")->setChecked(true);
    part<QPushButton>(*chooser, "studiedTake")->click();
    part<QPushButton>(*chooser, "formAccept")->click();
    const auto found = study_desk::findingsOf(shop.book, study, nullptr).value();
    const auto set = setOf(*window->workshop().instrument()).value();
    const auto &entry = set.entries.at(catalogue::Quantity::LetOff);
    EXPECT_EQ(entry.expandedUncertainty, study_desk::uncertaintyOf(found));
    EXPECT_EQ(entry.rule, tolerance::Rule::Guarded);
    EXPECT_NE(set.source.find("gauge study of \"rule 3\""), std::string::npos) << set.source;
    trigger(*window, "chooseSet");
    EXPECT_NE(part<QLabel>(*window, "toleranceAbout")->text().indexOf("rule 3"), -1) << "its own set is preselected";
}

TEST_F(StudyViewTest, AGaugeOnItsCableReadsForTheStudyInViewAndForTheBenchElse)
{
    const QString link = folder.filePath("gauge");
    support::BadCable cable{link};
    settings.setValue("gauge/device", link);
    settings.setValue("gauge/wanted", true);
    const auto study = studied(5);
    const auto window = openWindow();
    auto &gauge = window->findChild<BenchTools *>("benchTools")->gauge();
    ASSERT_TRUE(QTest::qWaitFor([&] { return gauge.state() == gauge_desk::GaugeState::Waiting; }));
    QTest::qWait(30);
    trigger(*window, "viewStudies");
    cable.say("01A+0003.21 mm\r\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return logbook::GaugeStudies(shop.book).trials(study.id).size() == 6; }));
    cable.say("?? low battery\r\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return part<QLabel>(*window, "studySaid")->text().contains("low battery"); }))
        << part<QLabel>(*window, "studySaid")->text().toStdString();
    EXPECT_EQ(stored(), 0u);
    EXPECT_EQ(window->views().current(), View::Studies);
    trigger(*window, "viewBench");
    cable.say("01A+0046.10 mm\r\n");
    EXPECT_TRUE(QTest::qWaitFor([&] { return stored() == 1; }));
    EXPECT_EQ(logbook::GaugeStudies(shop.book).trials(study.id).size(), 6u);
}

TEST_F(StudyViewTest, AMarkClickedIsTheNoteThatAllViewsSpeakOf)
{
    static_cast<void>(studied());
    const auto window = openWindow();
    trigger(*window, "viewStudies");
    emit part<charts::StudyPane>(*window, "studyChart")->noteChosen(keyboard::Note(40));
    EXPECT_EQ(window->workshop().selection(), (Selection{catalogue::Quantity::LetOff, keyboard::Note(40)}));
    EXPECT_EQ(window->views().current(), View::Studies);
}

class StudyPictures : public StudyViewTest, public ::testing::WithParamInterface<Screen> {
protected:
    const OnScreen screen{GetParam()};

    StudyPictures() {}
    static void save(QWidget &shown, const char *what) { keepPicture(shown, what, GetParam()); }
};

TEST_P(StudyPictures, OfPlanningTakingAndFindings)
{
    const auto window = openWindow();
    window->resize(GetParam().size);
    trigger(*window, "viewStudies");
    save(*window, "study-empty");
    part<QPushButton>(*window, "studyPlan")->click();
    auto *form = part<QDialog>(*window, "studyPlanForm");
    EXPECT_LE(form->minimumSizeHint().height(), 768);
    save(*form, "study-plan");
    form->reject();
    static_cast<void>(studied());
    trigger(*window, "viewBench");
    trigger(*window, "viewStudies");
    EXPECT_LE(window->minimumSizeHint().width(), 1366);
    EXPECT_LE(window->minimumSizeHint().height(), 768);
    for (const char *chart : {"studyWords", "studyValues", "studyRanges", "studySources"}) {
        part<QRadioButton>(*window, chart)->click();
        save(*window, chart);
    }
    trigger(*window, "chooseSet");
    auto *chooser = part<QDialog>(*window, "toleranceChooser");
    part<QPushButton>(*chooser, "studiedTake")->click();
    EXPECT_LE(chooser->minimumSizeHint().width(), 1366);
    save(*chooser, "set-from-study");
    chooser->reject();
    static_cast<void>(studied(31));
    trigger(*window, "viewBench");
    trigger(*window, "viewStudies");
    part<QTableWidget>(*window, "studyList")->setCurrentCell(0, 0);
    save(*window, "study-taking");
}

INSTANTIATE_TEST_SUITE_P(SizesAndThemes, StudyPictures, ::testing::ValuesIn(everyScreen()), nameOfScreen);

} // namespace
} // namespace hammerline::main_window
