// The pages of an instrument's file and the form of its work.

#include "instrument_file/condition_page.h"
#include "instrument_file/drift_page.h"
#include "instrument_file/sale_page.h"
#include "instrument_file/work_form.h"
#include "instrument_file/work_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>
#include <gtest/gtest.h>

namespace hammerline::instrument_file {
namespace {

using keyboard::Note;

dossier::WorkEntry hammers()
{
    dossier::WorkEntry entry;
    entry.uid = std::string(32, 'a');
    entry.kind = dossier::WorkKind::Recovered;
    entry.what = "hammers";
    entry.notes = keyboard::NoteRange{Note(1), Note(85)};
    entry.material = "felt";
    entry.person = "Ada";
    entry.day = dossier::parseIsoDay("2026-03-02");
    entry.took = std::chrono::minutes(150);
    entry.departure = true;
    entry.why = "the old felt is no longer made";
    entry.remark = "shanks kept";
    return entry;
}

QLineEdit *line(const QWidget &page, const char *name)
{
    auto *found = page.findChild<QLineEdit *>(name);
    EXPECT_NE(found, nullptr) << name;
    return found;
}

TEST(WorkForm, ShowsAndKeepsEverythingNotedOfTheWork)
{
    const WorkForm form(hammers(), {Note(1), Note(85)});
    EXPECT_EQ(form.entered().value(), hammers());
}

TEST(WorkForm, OneNoteMayBeGivenAsFirstOrLast)
{
    const WorkForm form(hammers(), {Note(1), Note(85)});
    line(form, "workLast")->clear();
    line(form, "workFirst")->setText("C4");
    EXPECT_EQ(form.entered().value().notes, (keyboard::NoteRange{Note(40), Note(40)}));
    line(form, "workFirst")->clear();
    EXPECT_FALSE(form.entered().value().notes);
}

TEST(WorkForm, TellsEachFieldThatCannotStandAndStaysOpen)
{
    WorkForm form({}, {Note(1), Note(85)});
    form.setAttribute(Qt::WA_DeleteOnClose, false);
    line(form, "workDay")->setText("yesterday");
    line(form, "workHours")->setText("many");
    line(form, "workFirst")->setText("H9");
    form.findChild<QCheckBox *>("workDeparture")->setChecked(true);
    const QSignalSpy ready(&form, &WorkForm::ready);
    form.show();
    form.accept();
    EXPECT_EQ(ready.count(), 0);
    EXPECT_TRUE(form.isVisible());
    EXPECT_EQ(form.entered().faults().size(), 5u);
    EXPECT_TRUE(form.findChild<QLabel *>("formFaults")->text().contains("2026-03-02"));
}

TEST(WorkPage, MarksWhatDepartsFromTheOriginalBuild)
{
    WorkPage page;
    dossier::Dossier dossier;
    dossier.work = {hammers()};
    page.show(dossier);
    const auto *table = page.findChild<QTableWidget *>("workTable");
    ASSERT_EQ(table->rowCount(), 1);
    EXPECT_EQ(table->item(0, 6)->text(), "2 h 30 min");
    EXPECT_TRUE(table->item(0, 7)->text().contains("no longer made"));
}

TEST(WorkPage, AsksForTheEntryThatIsCurrent)
{
    WorkPage page;
    dossier::Dossier dossier;
    dossier.work = {hammers(), hammers()};
    dossier.work[1].uid = std::string(32, 'b');
    page.show(dossier);
    page.findChild<QTableWidget *>("workTable")->setCurrentCell(1, 0);
    QSignalSpy change(&page, &WorkPage::changeWanted);
    page.findChild<QPushButton *>("workChange")->click();
    ASSERT_EQ(change.count(), 1);
    EXPECT_EQ(change[0][0].toString(), QString(32, 'b'));
}

TEST(ConditionPage, TellsAFieldThatWasLeftOnceAndOnlyWhereItChanged)
{
    ConditionPage page;
    page.show(dossier::Conditions{});
    int told = 0;
    dossier::Condition last;
    QObject::connect(&page, &ConditionPage::said, &page, [&](const auto &place, const auto &condition) {
        EXPECT_EQ(place, (dossier::ConditionPlace{dossier::Moment::AsItLeaves, dossier::Area::Keys}));
        last = condition;
        ++told;
    });
    auto *words = line(page, "words-keys-as-it-leaves");
    QTest::keyClicks(words, "even");
    QTest::keyClick(words, Qt::Key_Return);
    QTest::keyClick(words, Qt::Key_Return);
    EXPECT_EQ(told, 1);
    page.findChild<QComboBox *>("grade-keys-as-it-leaves")->setCurrentIndex(4);
    EXPECT_EQ(told, 2);
    EXPECT_EQ(last, (dossier::Condition{dossier::Grade::Good, "even"}));
}

TEST(ConditionPage, ShowsWhatIsKeptWithoutTellingIt)
{
    ConditionPage page;
    const QSignalSpy told(&page, &ConditionPage::said);
    page.show(dossier::Conditions{
        {{dossier::Moment::AsReceived, dossier::Area::Case}, {dossier::Grade::Poor, "sun on one side"}}});
    EXPECT_EQ(told.count(), 0);
    EXPECT_EQ(line(page, "words-case-as-received")->text(), "sun on one side");
    EXPECT_EQ(page.findChild<QComboBox *>("grade-case-as-received")->currentIndex(), 2);
}

TEST(SalePage, TellsWhatWasNoted)
{
    SalePage page;
    page.show(dossier::Sale{});
    dossier::Sale noted;
    QObject::connect(&page, &SalePage::noted, &page, [&](const dossier::Sale &sale) { noted = sale; });
    QTest::keyClicks(line(page, "salePrice"), "3400");
    QTest::keyClick(line(page, "salePrice"), Qt::Key_Return);
    EXPECT_EQ(noted, (dossier::Sale{{}, "3400", {}}));
}

TEST(DriftPage, TellsWhichWayUnderTheClimateOfBothDays)
{
    readings::Pass left{.purpose = readings::Purpose::AsLeft, .climate = {21, 45}};
    readings::Pass later{.purpose = readings::Purpose::Recheck, .climate = {18.5, 62}};
    analysis::Drift drift;
    drift.quantity = catalogue::Quantity::LetOff;
    drift.change.pairs = 88;
    drift.change.meanChange = -0.4;
    drift.toldApart = 0.2;
    drift.way = analysis::Way::Smaller;
    DriftPage page;
    page.show(left, later, {drift}, {});
    const QString story = page.findChild<QLabel *>()->text();
    EXPECT_TRUE(story.contains("45 % r.h.")) << story.toStdString();
    EXPECT_TRUE(story.contains("62 % r.h."));
    EXPECT_EQ(page.findChild<QTableWidget *>("driftTable")->item(0, 4)->text(), "0.40 mm smaller");
}

} // namespace
} // namespace hammerline::instrument_file
