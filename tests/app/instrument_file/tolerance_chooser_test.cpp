#include "exchange/exchange.h"
#include "exchange/tolerance_json.h"
#include "instrument_file/tolerance_chooser.h"
#include "instrument_file/tolerance_rows.h"
#include "prompts/queued_prompts.h"
#include "support/workshop_on_disk.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace hammerline::instrument_file {
namespace {

using catalogue::ActionKind;

class Choosing : public ::testing::Test {
protected:
    [[nodiscard]] std::unique_ptr<ToleranceChooser> chooser(ActionKind action)
    {
        auto made = std::make_unique<ToleranceChooser>(action, std::string{}, wording::NumberForm{}, prompts);
        made->setAttribute(Qt::WA_DeleteOnClose, false);
        QObject::connect(made.get(), &ToleranceChooser::chosen,
                         [this](const exchange::NamedSet &set) { chosen.push_back(set); });
        return made;
    }
    [[nodiscard]] QString setFile(ActionKind action)
    {
        tolerance::ToleranceSet set = support::plainSet();
        set.action = action;
        if (action == ActionKind::Vertical)
            set.entries.erase(catalogue::Quantity::Drop);
        const QString path = folder.filePath("own.json");
        EXPECT_TRUE(
            exchange::writeFile(path.toStdString(), exchange::writeToleranceSet(set), exchange::Overwrite::Yes));
        return path;
    }
    void pressFile(ToleranceChooser &form)
    {
        QTest::mouseClick(form.findChild<QPushButton *>("toleranceFile"), Qt::LeftButton);
    }

    QTemporaryDir folder;
    prompts::QueuedPrompts prompts;
    std::vector<exchange::NamedSet> chosen;
};

TEST_F(Choosing, OffersTheBuiltInSetsOfTheActionAlone)
{
    for (const ActionKind action : {ActionKind::Vertical, ActionKind::Grand}) {
        const auto form = chooser(action);
        ASSERT_GE(form->findChild<QListWidget *>("toleranceList")->count(), 2);
        form->accept();
        EXPECT_EQ(chosen.back().set.action, action);
    }
}

TEST_F(Choosing, EveryNumberShowsItsSourceOrThatItHasNone)
{
    const auto form = chooser(ActionKind::Grand);
    const auto *table = form->findChild<QTableWidget *>("toleranceNumbers");
    ASSERT_GT(table->rowCount(), 3);
    for (int row = 0; row < table->rowCount(); ++row)
        EXPECT_FALSE(table->item(row, 6)->text().isEmpty());
}

TEST_F(Choosing, SaysThatTheMakersManualOutranksEverySet)
{
    const auto form = chooser(ActionKind::Grand);
    EXPECT_TRUE(form->findChild<QLabel *>("manualOutranks")->text().contains("outranks"));
}

TEST_F(Choosing, ASetFromAFileIsChosenWithItsText)
{
    const auto form = chooser(ActionKind::Grand);
    prompts.willPick(setFile(ActionKind::Grand));
    pressFile(*form);
    form->accept();
    ASSERT_EQ(chosen.size(), 1u);
    EXPECT_EQ(chosen.front().set, support::plainSet());
    EXPECT_TRUE(exchange::readToleranceSet(chosen.front().text, "own.json"));
}

class CountingWithAStudy : public Choosing {
protected:
    /// plainSet judges blow by 44 to 46 mm.
    [[nodiscard]] std::unique_ptr<ToleranceChooser> offering(const char *uncertainty)
    {
        auto form = chooser(ActionKind::Grand);
        form->offer({"own", exchange::writeToleranceSet(support::plainSet()), support::plainSet()});
        const auto expanded = units::Length::millimetres(QString(uncertainty).toDouble());
        form->offerStudies({{catalogue::Quantity::Blow, expanded, "rule 3", "2026-03-02"},
                            {catalogue::Quantity::UpWeight, units::Mass::grams(1), "scales", "2026-03-02"}});
        form->show();
        return form;
    }
    [[nodiscard]] static const tolerance::Entry &blowOf(const exchange::NamedSet &set)
    {
        return set.set.entries.at(catalogue::Quantity::Blow);
    }
};

TEST_F(CountingWithAStudy, MakesASetOfItsOwnThatSaysWhereItsDoubtComesFrom)
{
    const auto form = offering("0.124");
    form->findChild<QCheckBox *>("studiedGuarded")->setChecked(true);
    form->findChild<QPushButton *>("studiedTake")->click();
    EXPECT_TRUE(form->findChild<QLabel *>("toleranceAbout")->text().contains("gauge study of \"rule 3\", 2026-03-02"));
    form->accept();
    ASSERT_EQ(chosen.size(), 1u);
    EXPECT_EQ(blowOf(chosen[0]).expandedUncertainty, units::Amount(units::Length::nanometres(124'000)));
    EXPECT_EQ(blowOf(chosen[0]).rule, tolerance::Rule::Guarded);
    EXPECT_EQ(exchange::readToleranceSet(chosen[0].text, "own").value(), chosen[0].set) << "kept as its text says";
}

TEST_F(CountingWithAStudy, ShowsInEveryRowWhatIsCountedWith)
{
    const auto form = offering("0.124");
    const auto *table = form->findChild<QTableWidget *>("toleranceNumbers");
    EXPECT_EQ(table->item(0, 5)->text(), "");
    form->findChild<QCheckBox *>("studiedGuarded")->setChecked(true);
    form->findChild<QPushButton *>("studiedTake")->click();
    EXPECT_TRUE(table->item(0, 5)->text().endsWith(", guarded")) << table->item(0, 5)->text().toStdString();
}

TEST_F(CountingWithAStudy, TakenTwiceStaysOneSet)
{
    const auto form = offering("0.124");
    const auto *list = form->findChild<QListWidget *>("toleranceList");
    form->findChild<QPushButton *>("studiedTake")->click();
    const int after = list->count();
    form->findChild<QPushButton *>("studiedTake")->click();
    EXPECT_EQ(list->count(), after);
}

TEST_F(CountingWithAStudy, WarnsWhereNoReadingCouldBeInAnyMore)
{
    const auto form = offering("5");
    form->findChild<QCheckBox *>("studiedGuarded")->setChecked(true);
    form->findChild<QPushButton *>("studiedTake")->click();
    EXPECT_TRUE(form->findChild<QLabel *>("formFaults")->text().contains("no reading can be in there"));
}

TEST_F(CountingWithAStudy, IsNotOfferedForWhatTheSetDoesNotJudgeNorWithoutStudies)
{
    const auto form = offering("0.124");
    form->findChild<QComboBox *>("studiedStudies")->setCurrentIndex(1);
    EXPECT_FALSE(form->findChild<QPushButton *>("studiedTake")->isEnabled());
    const auto none = chooser(ActionKind::Grand);
    none->show();
    EXPECT_FALSE(none->findChild<QWidget *>("studiedRow")->isVisible());
}

TEST_F(Choosing, ASetForTheOtherActionIsRefused)
{
    const auto form = chooser(ActionKind::Grand);
    const int before = form->findChild<QListWidget *>("toleranceList")->count();
    prompts.willPick(setFile(ActionKind::Vertical));
    pressFile(*form);
    EXPECT_EQ(form->findChild<QListWidget *>("toleranceList")->count(), before);
    EXPECT_FALSE(form->findChild<QLabel *>("formFaults")->text().isEmpty());
}

TEST_F(Choosing, AFaultyFileIsRefusedWithItsFaults)
{
    const auto form = chooser(ActionKind::Grand);
    const QString path = folder.filePath("faulty.json");
    ASSERT_TRUE(exchange::writeFile(path.toStdString(), "{\"format\": \"letter\"}", exchange::Overwrite::No));
    prompts.willPick(path);
    pressFile(*form);
    EXPECT_TRUE(form->findChild<QLabel *>("formFaults")->text().contains("faulty.json"));
}

TEST(ToleranceRows, ASourceIsThePointsElseTheEntrysElseTheSetsElseNone)
{
    tolerance::ToleranceSet set = support::plainSet();
    const auto sourceOfFirst = [&set] { return rowsOf(set, {}).front().source; };
    EXPECT_EQ(sourceOfFirst(), "no source");
    set.source = "the shop";
    EXPECT_EQ(sourceOfFirst(), "the shop");
    auto &blow = set.entries[catalogue::Quantity::Blow];
    blow.source = "a manual";
    EXPECT_EQ(sourceOfFirst(), "a manual");
    blow.both.front().source = "page 3";
    EXPECT_EQ(sourceOfFirst(), "page 3");
}

} // namespace
} // namespace hammerline::instrument_file
