#include "core/logbook/logbook_fixture.h"
#include "logbook/gauge_studies.h"
#include "logbook/hand_over.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

#include <csignal>
#include <sys/wait.h>
#include <unistd.h>

namespace hammerline::logbook {
namespace {

using analysis::StudyStop;
using keyboard::Note;
using testing::HasSubstr;

PlannedStudy planned()
{
    return {
        .gauge = {.name = "rule 3", .resolution = units::Length::nanometres(396'875)},
        .quantity = catalogue::Quantity::LetOff,
        .plan = {.notes = {Note(5), Note(40), Note(71)}, .people = {"Ada", "Ben, \"junior\""}, .takes = 2, .seed = 11},
        .unit = units::Unit::Inch};
}

units::Amount millimetres(double mm)
{
    return units::Length::millimetres(mm);
}

class GaugeStudiesTest : public LogbookTest {
protected:
    /// With study 1 and its first trial.
    [[nodiscard]] Logbook begun() const
    {
        Logbook book = withPass();
        GaugeStudies studies(book);
        EXPECT_TRUE(studies.plan(planned(), ada).ok());
        EXPECT_TRUE(studies.enter(1, first(), millimetres(3.175), "1/8", ben).ok());
        return book;
    }
    [[nodiscard]] static StudyStop first() { return orderOf(planned().plan).front(); }
};

TEST_F(GaugeStudiesTest, APlanAndItsTrialsReadTheSameAfterReopening)
{
    static_cast<void>(begun());
    Logbook book = Logbook::open(file());
    const GaugeStudies studies(book);
    PlannedStudy expected = planned();
    expected.id = 1;
    expected.at = ada.at;
    expected.person = "Ada";
    EXPECT_EQ(studies.all(), std::vector{expected});
    EXPECT_EQ(studies.find(1), expected);
    EXPECT_EQ(studies.find(2), std::nullopt);
    const ReadTrial trial{.stop = first(), .value = millimetres(3.175), .typed = "1/8", .at = ben.at};
    EXPECT_EQ(studies.trials(1), std::vector{trial});
}

TEST_F(GaugeStudiesTest, APlanThatCannotBeTakenIsRefusedAndNothingWritten)
{
    Logbook book = withPass();
    const DeedId before = book.newestDeed();
    PlannedStudy alone = planned();
    alone.plan.people = {"Ada"};
    EXPECT_FALSE(GaugeStudies(book).plan(alone, ada).ok());
    PlannedStudy nameless = planned();
    nameless.gauge.name.clear();
    EXPECT_FALSE(GaugeStudies(book).plan(nameless, ada).ok());
    EXPECT_EQ(book.newestDeed(), before);
}

TEST_F(GaugeStudiesTest, ATrialOutsideThePlanOrOfAnotherDimensionIsRefused)
{
    Logbook book = begun();
    GaugeStudies studies(book);
    const DeedId before = book.newestDeed();
    EXPECT_FALSE(studies.enter(1, {Note(6), "Ada", 1}, millimetres(3), "3", ada).ok());
    EXPECT_FALSE(studies.enter(1, {Note(5), "Eve", 1}, millimetres(3), "3", ada).ok());
    EXPECT_FALSE(studies.enter(1, {Note(5), "Ada", 3}, millimetres(3), "3", ada).ok());
    EXPECT_FALSE(studies.enter(1, {Note(5), "Ada", 2}, units::Mass::grams(3), "3 g", ada).ok());
    EXPECT_THROW(static_cast<void>(studies.enter(2, first(), millimetres(3), "3", ada)), outcome::BrokenWorld);
    EXPECT_EQ(book.newestDeed(), before);
}

TEST_F(GaugeStudiesTest, AStandingTrialIsNeverEnteredOver)
{
    Logbook book = begun();
    Logbook other = Logbook::open(file());
    const auto refused = GaugeStudies(other).enter(1, first(), millimetres(4), "4", ada);
    ASSERT_FALSE(refused.ok());
    EXPECT_THAT(refused.fault().problem, HasSubstr("entered already"));
    EXPECT_EQ(GaugeStudies(book).trials(1).front().value, millimetres(3.175));
}

TEST_F(GaugeStudiesTest, TheLastTrialIsTakenBackReadAnewAndStaysInTheHistory)
{
    Logbook book = begun();
    GaugeStudies studies(book);
    const auto last = studies.undoable(1);
    ASSERT_TRUE(last);
    EXPECT_EQ(last->name, "gauge-trial-entered");
    book.undo(*last, ben);
    EXPECT_TRUE(studies.trials(1).empty());
    EXPECT_EQ(studies.redoable(1)->id, last->id);
    ASSERT_TRUE(studies.enter(1, first(), millimetres(3.5), "3.5 mm", ben).ok());
    EXPECT_EQ(studies.trials(1).front().value, millimetres(3.5));
    EXPECT_FALSE(studies.redoable(1));
    EXPECT_EQ(RawDatabase(file()).one("SELECT count(*) FROM gauge_trial"), "3");
    EXPECT_TRUE(verifyHistory(file()).whole());
}

TEST_F(GaugeStudiesTest, UndoOfAStudyTouchesNoPassAndNoOtherStudy)
{
    Logbook book = begun();
    GaugeStudies studies(book);
    ASSERT_TRUE(studies.plan(planned(), ada).ok());
    book.enter(1, reading(letOff(40), 3'000'000), ada);
    book.undo(studies.undoable(1).value(), ada);
    EXPECT_TRUE(studies.trials(1).empty());
    EXPECT_EQ(studies.all().size(), 2u);
    EXPECT_EQ(book.readingCount(1), 1);
    EXPECT_EQ(book.undoable(1)->name, "reading-entered");
    EXPECT_EQ(studies.undoable(1)->name, "gauge-study-planned");
    book.redo(studies.redoable(1).value(), ada);
    EXPECT_EQ(studies.trials(1).size(), 1u);
}

TEST_F(GaugeStudiesTest, AStruckStudyIsGoneUntilThatIsTakenBack)
{
    Logbook book = begun();
    GaugeStudies studies(book);
    EXPECT_TRUE(studies.strike(1, ben, "the wrong gauge"));
    EXPECT_FALSE(studies.strike(1, ben, "the wrong gauge"));
    EXPECT_TRUE(studies.all().empty());
    EXPECT_EQ(book.deed(book.newestDeed())->reason, "the wrong gauge");
    book.undo(studies.undoable(1).value(), ada);
    EXPECT_EQ(studies.all().size(), 1u);
    EXPECT_EQ(studies.trials(1).size(), 1u);
}

TEST_F(GaugeStudiesTest, TheCheckOfTheHistoryCoversStudiesAndTrials)
{
    static_cast<void>(begun());
    const HistoryCheck check = verifyHistory(file());
    EXPECT_TRUE(check.whole());
    EXPECT_EQ(check.rows, 4); // instrument, pass, study, trial
    RawDatabase(file()).run("UPDATE gauge_trial SET value = value + 1");
    const HistoryCheck altered = verifyHistory(file());
    ASSERT_EQ(altered.alterations.size(), 1u);
    EXPECT_THAT(altered.alterations[0].text(), HasSubstr("gauge_trial"));
}

TEST_F(GaugeStudiesTest, ATrialMovedRemovedOrPutInByAnotherProgramIsFound)
{
    for (const char *tamper : {"UPDATE gauge_trial SET study = 2", "DELETE FROM gauge_trial",
                               "UPDATE gauge_trial SET deed = 2", "UPDATE gauge_study SET seed = 12",
                               "INSERT INTO gauge_trial VALUES (1, 71, 'Ada', 2, 1, 3000000, '3', 0, 99)",
                               "INSERT INTO gauge_trial VALUES (1, 71, 'Ada', 2, 1, 3000000, '3', 0, 1)"}) {
        std::filesystem::remove(file());
        static_cast<void>(begun());
        RawDatabase(file()).run(tamper);
        EXPECT_FALSE(verifyHistory(file()).whole()) << tamper;
    }
}

TEST_F(GaugeStudiesTest, APlanThatNobodyCouldTakeIsToldAsDamage)
{
    static_cast<void>(begun());
    RawDatabase(file()).run("UPDATE gauge_study SET takes = 4000000000");
    Logbook book = Logbook::open(file());
    EXPECT_THAT(messageOf([&] { static_cast<void>(GaugeStudies(book).all()); }), HasSubstr("gauge_study"));
}

TEST_F(GaugeStudiesTest, AStudyIsNotHandedOverWithTheInstrument)
{
    Logbook book = begun();
    const std::string document = book.handOver(1).value();
    EXPECT_EQ(document.find("gauge_trial"), std::string::npos);
    EXPECT_EQ(document.find("gauge_study"), std::string::npos);
}

TEST_F(GaugeStudiesTest, KilledWhileTakingAStudyNothingAcknowledgedIsLost)
{
    static_cast<void>(begun());
    const auto order = orderOf(planned().plan);
    int ends[2] = {};
    ASSERT_EQ(pipe(ends), 0);
    const pid_t child = fork();
    if (child == 0) {
        Logbook book = Logbook::open(file());
        for (std::size_t stop = 1; stop < order.size(); ++stop) {
            const bool entered = GaugeStudies(book).enter(1, order[stop], millimetres(3), "3", ben).ok();
            if (!entered || write(ends[1], &stop, sizeof stop) != sizeof stop)
                _exit(1);
        }
        pause();
    }
    close(ends[1]);
    std::size_t acknowledged = 0;
    for (int heard = 0; heard < 5; ++heard)
        ASSERT_EQ(read(ends[0], &acknowledged, sizeof acknowledged), static_cast<ssize_t>(sizeof acknowledged));
    kill(child, SIGKILL);
    waitpid(child, nullptr, 0);
    close(ends[0]);
    Logbook book = Logbook::open(file());
    EXPECT_GT(GaugeStudies(book).trials(1).size(), acknowledged);
    EXPECT_TRUE(verifyHistory(file()).whole());
}

} // namespace
} // namespace hammerline::logbook
