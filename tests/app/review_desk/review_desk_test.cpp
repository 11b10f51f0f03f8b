#include "review_desk/review_desk.h"
#include "support/lively_pass.h"
#include "wording/wording.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

#include <set>

namespace hammerline::review_desk {
namespace {

class DeskShown : public ::testing::Test {
protected:
    [[nodiscard]] static review::JudgedPass passOf(instrument::InstrumentId id, double spread)
    {
        return {id, id * 10,
                tolerance::judge(support::livelyValues(spread), support::livelySet(), {}, support::livelySections())};
    }
    void showTwo()
    {
        const std::vector passes{passOf(1, 1), passOf(2, 0.3)};
        desk.show({review::queueOf(passes), {}, {}, {{1, "Blue"}, {2, "Grey"}}, {}}, {}, true);
    }
    void choose(const char *box, const QString &text)
    {
        auto *choice = desk.findChild<QComboBox *>(box);
        ASSERT_GE(choice->findText(text), 0) << text.toStdString();
        choice->setCurrentText(text);
    }
    [[nodiscard]] QCheckBox *filter(const char *name) { return desk.findChild<QCheckBox *>(name); }
    [[nodiscard]] const ItemModel &model() const { return desk.model(); }

    ReviewDesk desk{Scope::Workshop};
};

TEST_F(DeskShown, WorstComesFirstAcrossInstruments)
{
    showTwo();
    ASSERT_GT(model().rowCount(), 5);
    for (int row = 1; row < model().rowCount(); ++row)
        EXPECT_GE(model().itemAt(row - 1).halfWidths.value_or(0), model().itemAt(row).halfWidths.value_or(0)) << row;
}

TEST_F(DeskShown, TheHeadlineTellsWhatWasAcceptedTooAndThatNothingWaits)
{
    const auto headline = [this] { return desk.findChild<QLabel *>("reviewHeadline")->text().toStdString(); };
    const std::vector passes{passOf(1, 1)};
    const auto items = review::queueOf(passes);
    ASSERT_GT(items.size(), 3u);
    desk.show({.items = items}, {}, true);
    EXPECT_EQ(headline().find("accepted"), std::string::npos);
    std::vector<review::Settled> conceded;
    for (std::size_t index = 0; index < 3; ++index)
        conceded.push_back({items[index], {}});
    desk.show({.items = {items[3]}, .conceded = conceded}, {}, true);
    EXPECT_TRUE(headline().ends_with(" not read · 3 accepted")) << headline();
    desk.show({.conceded = conceded}, {}, true);
    EXPECT_EQ(headline(), "Nothing waits · 3 accepted");
}

TEST_F(DeskShown, TheChooserOfTheListIsAsWideAsItsCountsHoweverTheyGrow)
{
    desk.resize(1366, 640);
    desk.QWidget::show();
    QCoreApplication::processEvents();
    auto *list = desk.findChild<QComboBox *>("deskList");
    list->setItemText(list->count() - 1, list->itemText(list->count() - 1).replace("(0)", "(123 456)"));
    QCoreApplication::processEvents();
    EXPECT_GE(list->width(), list->sizeHint().width());
    EXPECT_GT(list->sizeHint().width(), list->fontMetrics().horizontalAdvance(list->itemText(list->count() - 1)));
}

TEST_F(DeskShown, WhatIsNotReadIsCountedButHiddenUntilAskedFor)
{
    showTwo();
    ASSERT_GT(model().countOf(review::Kind::Missing), 0);
    const int before = model().rowCount();
    filter("showMissing")->setChecked(true);
    EXPECT_EQ(model().rowCount(), before + model().countOf(review::Kind::Missing));
    for (const char *name : {"showOut", "showMarginal", "showUneven"})
        filter(name)->setChecked(false);
    EXPECT_EQ(model().rowCount(), model().countOf(review::Kind::Missing));
}

TEST_F(DeskShown, WhatIsNotReadIsToldWhereItIsNotListedAndOnePressListsIt)
{
    showTwo();
    auto *button = desk.findChild<QPushButton *>("showNotRead");
    EXPECT_FALSE(button->isHidden());
    EXPECT_TRUE(button->text().contains(QString::number(model().countOf(review::Kind::Missing))));
    button->click();
    EXPECT_TRUE(filter("showMissing")->isChecked());
    EXPECT_TRUE(button->isHidden()) << "it is listed now";
}

TEST_F(DeskShown, NobodyIsNamedAsTheReaderOfWhatIsNotRead)
{
    showTwo();
    filter("showMissing")->setChecked(true);
    int missing = 0;
    for (int row = 0; row < model().rowCount(); ++row)
        if (model().itemAt(row).kind == review::Kind::Missing) {
            EXPECT_EQ(model().index(row, ItemModel::ReadBy).data().toString(), "");
            ++missing;
        }
    EXPECT_GT(missing, 0);
}

TEST_F(DeskShown, DirectionIsSaidBySignMarkAndWord)
{
    showTwo();
    for (int row = 0; row < model().rowCount(); ++row) {
        const review::Item &item = model().itemAt(row);
        if (item.kind != review::Kind::Out)
            continue;
        const bool below = item.verdict.deviation->baseCount() < 0;
        const QString off = model().index(row, ItemModel::Off).data().toString();
        EXPECT_TRUE(off.contains(below ? "▼" : "▲"));
        EXPECT_TRUE(off.contains(below ? "−" : "+"));
        const auto direction = below ? wording::Direction::TooSmall : wording::Direction::TooLarge;
        EXPECT_TRUE(model()
                        .index(row, ItemModel::Finding)
                        .data()
                        .toString()
                        .contains(wording::directionText(item.verdict.quantity, direction)));
    }
}

TEST_F(DeskShown, EnterGoesToTheNote)
{
    showTwo();
    desk.QWidget::show();
    auto *table = desk.findChild<QTableView *>("reviewTable");
    table->setCurrentIndex(model().index(2, ItemModel::NoteColumn));
    const QSignalSpy chosen(&desk, &ReviewDesk::chosen);
    QTest::keyClick(table, Qt::Key_Return);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.front().front().value<review::Item>().verdict.note, model().itemAt(2).verdict.note);
}

TEST_F(DeskShown, FiltersByInstrumentQuantityPersonAndAge)
{
    using namespace std::chrono_literals;
    Desk both{review::queueOf({passOf(1, 1), passOf(2, 1)}), {}, {}, {{1, "Blue"}, {2, "Grey"}}, {}};
    const readings::Instant now = readings::parseRfc3339("2026-03-20T09:00:00Z").value();
    both.now = now;
    for (review::Item &item : both.items) {
        item.person = item.instrument == 1 ? "Ada" : "Ben";
        item.at = now - (item.instrument == 1 ? 200h : -5h); // the clock of the other went back
    }
    desk.show(both, {}, true);
    const int all = model().rowCount();
    choose("filterInstrument", "Blue");
    const int blue = model().rowCount();
    EXPECT_LT(blue, all);
    choose("filterInstrument", "Every instrument");
    choose("filterPerson", "Ada");
    EXPECT_EQ(model().rowCount(), blue);
    choose("filterPerson", "Everybody");
    choose("filterAge", "Over a week");
    EXPECT_EQ(model().rowCount(), blue);
    choose("filterAge", "Over a month");
    EXPECT_EQ(model().rowCount(), 0);
    choose("filterAge", "Of any age");
    EXPECT_EQ(model().rowCount(), all) << "an item of tomorrow is young, not gone";
    choose("filterQuantity", wording::nameOf(model().itemAt(0).verdict.quantity));
    for (int row = 0; row < model().rowCount(); ++row)
        EXPECT_EQ(model().itemAt(row).verdict.quantity, model().itemAt(0).verdict.quantity);
}

TEST_F(DeskShown, TheRowsChosenAreHandedOnTogether)
{
    showTwo();
    auto *table = desk.findChild<QTableView *>("reviewTable");
    EXPECT_FALSE(desk.findChild<QPushButton *>("acceptChosen")->isEnabled()) << "nothing is chosen yet";
    table->selectionModel()->select({model().index(0, 0), model().index(2, 0)},
                                    QItemSelectionModel::Select | QItemSelectionModel::Rows);
    std::vector<review::Item> asked;
    QObject::connect(&desk, &ReviewDesk::sendBackWanted, &desk, [&](const auto &items) { asked = items; });
    desk.findChild<QPushButton *>("sendBackChosen")->click();
    ASSERT_EQ(asked.size(), 3u);
    EXPECT_EQ(asked[1].verdict.note, model().itemAt(1).verdict.note);
}

TEST_F(DeskShown, WhatWasDecidedIsOneListFurther)
{
    Desk decided{review::queueOf({passOf(1, 1)}), {}, {}, {{1, "Blue"}}, {}};
    ASSERT_GT(decided.items.size(), 2u);
    decisions::Decision word;
    word.person = "Ben";
    word.words = "the owner wants it so";
    decided.items[0].sentBack = std::make_shared<const decisions::SentBack>(word);
    decided.items[0].course = review::Course::SentBack;
    decided.conceded.push_back({decided.items[1], word});
    desk.show(decided, {}, true);
    EXPECT_EQ(model().index(0, ItemModel::Decided).data().toString(), "sent back by Ben: the owner wants it so");
    choose("deskList", "Accepted as it is (1)");
    ASSERT_EQ(model().rowCount(), 1);
    EXPECT_EQ(model().index(0, ItemModel::Decided).data().toString(), "accepted by Ben: the owner wants it so");
    EXPECT_TRUE(desk.findChild<QTableView *>("reviewTable")->isColumnHidden(ItemModel::Finding));
    choose("deskList", "Sent back and mended (0)");
    EXPECT_EQ(model().rowCount(), 0);
    EXPECT_TRUE(desk.chosenItems().empty());
}

TEST_F(DeskShown, WhatIsInButWithinTheGaugesDoubtIsAListOfItsOwnWithHowSureItIs)
{
    review::JudgedPass pass = passOf(1, 0.6);
    for (tolerance::Verdict &verdict : pass.judgement.verdicts)
        if (verdict.value && verdict.limits) {
            verdict.doubt = tolerance::Doubt{.gauge = 0.1};
            verdict.conformanceProbability = tolerance::conformanceProbability(*verdict.value, *verdict.limits, 0.1);
        }
    Desk doubtful{.items = review::queueOf({pass}), .names = {{1, "Blue"}}, .inDoubt = review::inDoubtOf(pass)};
    review::putLeastSureFirst(doubtful.inDoubt);
    const int count = static_cast<int>(doubtful.inDoubt.size());
    ASSERT_GT(count, 1);
    desk.show(doubtful, {}, true);
    EXPECT_TRUE(model().index(0, ItemModel::Sure).data().toString().contains('%'));
    choose("deskList", QString("In, but within the gauge's doubt (%1)").arg(count));
    ASSERT_EQ(model().rowCount(), count);
    EXPECT_TRUE(model().index(0, ItemModel::Finding).data().toString().contains("in, but within the gauge's doubt"));
    EXPECT_TRUE(model().index(0, ItemModel::Sure).data().toString().contains('%'));
    EXPECT_FALSE(desk.findChild<QTableView *>("reviewTable")->isColumnHidden(ItemModel::Finding));
    desk.findChild<QTableView *>("reviewTable")->selectRow(0);
    EXPECT_TRUE(desk.chosenItems().empty()) << "there is nothing to decide";
    EXPECT_FALSE(desk.findChild<QPushButton *>("acceptChosen")->isEnabled());
}

TEST_F(DeskShown, WhatIsInDoubtAndUnevenTooIsMarkedInEitherList)
{
    review::JudgedPass pass = passOf(1, 0.6);
    pass.judgement.verdicts.resize(1);
    tolerance::Verdict &verdict = pass.judgement.verdicts.front();
    verdict.status = tolerance::Status::In;
    verdict.doubt = tolerance::Doubt{.gauge = 100};
    verdict.uneven = true;
    verdict.stepFromBelow = units::Length::millimetres(0.7);
    desk.show({.items = review::queueOf({pass}), .names = {{1, "Blue"}}, .inDoubt = review::inDoubtOf(pass)}, {}, true);
    for (const char *list : {"Waiting (1)", "In, but within the gauge's doubt (1)"}) {
        choose("deskList", list);
        ASSERT_EQ(model().rowCount(), 1) << list;
        const QString finding = model().index(0, ItemModel::Finding).data().toString();
        EXPECT_TRUE(finding.endsWith("in, but within the gauge's doubt; uneven, a step of 0.70 mm from the note below"))
            << finding.toStdString() << ": said once";
    }
}

TEST_F(DeskShown, WhereNoDoubtIsKnownThereIsNoColumnForIt)
{
    showTwo();
    EXPECT_TRUE(desk.findChild<QTableView *>("reviewTable")->isColumnHidden(ItemModel::Sure));
}

TEST_F(DeskShown, FiltersAndButtonsGoOnInAFurtherLineWhereTheWidthDoesNotHoldThem)
{
    showTwo();
    const std::vector names{"showOut",   "showMissing",  "filterInstrument", "filterQuantity", "filterPerson",
                            "filterAge", "acceptChosen", "sendBackChosen",   "deskList"};
    const auto lines = [&](int width, const std::vector<const char *> &of) {
        desk.resize(width, 700);
        desk.QWidget::show();
        QCoreApplication::processEvents();
        std::set<int> tops;
        for (const char *name : of) {
            const auto *part = desk.findChild<QWidget *>(name);
            const QRect shown(part->mapTo(&desk, QPoint(0, 0)), part->size());
            EXPECT_TRUE(desk.rect().contains(shown)) << name << " is cut at a width of " << width;
            tops.insert(shown.center().y() / 8);
        }
        return tops.size();
    };
    EXPECT_EQ(lines(1600, {"acceptChosen", "sendBackChosen", "deskList"}), 1u);
    lines(1600, names);
    EXPECT_GT(lines(420, {"acceptChosen", "sendBackChosen", "deskList"}), 1u);
    lines(420, names);
}

TEST_F(DeskShown, SaysThatNothingIsJudgedInsteadOfShowingAnEmptyTable)
{
    desk.show({}, {}, false);
    desk.QWidget::show();
    EXPECT_TRUE(desk.findChild<QLabel *>("reviewEmpty")->isVisible());
    EXPECT_FALSE(desk.findChild<QTableView *>("reviewTable")->isVisible());
}

TEST(OnePassDesk, HasNoColumnForTheInstrument)
{
    const ReviewDesk desk(Scope::OnePass);
    EXPECT_TRUE(desk.findChild<QTableView *>("worstTable")->isColumnHidden(ItemModel::Instrument));
}

} // namespace
} // namespace hammerline::review_desk
