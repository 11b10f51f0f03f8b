#include "exchange/exchange.h"
#include "exchange/tolerance_json.h"
#include "instrument_file/tolerance_chooser.h"
#include "instrument_file/tolerance_rows.h"
#include "prompts/queued_prompts.h"
#include "support/workshop_on_disk.h"

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
        EXPECT_FALSE(table->item(row, 5)->text().isEmpty());
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
