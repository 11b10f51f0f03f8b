#include "review_desk/review_desk.h"
#include "support/lively_pass.h"
#include "wording/wording.h"

#include <QCheckBox>
#include <QLabel>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace hammerline::review_desk {
namespace {

class Desk : public ::testing::Test {
protected:
    [[nodiscard]] static review::JudgedPass passOf(instrument::InstrumentId id, double spread)
    {
        return {id, id * 10,
                tolerance::judge(support::livelyValues(spread), support::livelySet(), {}, support::livelySections())};
    }
    void showTwo() { desk.show(review::queueOf({passOf(1, 1), passOf(2, 0.3)}), {{1, "Blue"}, {2, "Grey"}}, {}, true); }
    [[nodiscard]] QCheckBox *filter(const char *name) { return desk.findChild<QCheckBox *>(name); }
    [[nodiscard]] const ItemModel &model() const { return desk.model(); }

    ReviewDesk desk{Scope::Workshop};
};

TEST_F(Desk, WorstComesFirstAcrossInstruments)
{
    showTwo();
    ASSERT_GT(model().rowCount(), 5);
    for (int row = 1; row < model().rowCount(); ++row)
        EXPECT_GE(model().itemAt(row - 1).halfWidths.value_or(0), model().itemAt(row).halfWidths.value_or(0)) << row;
}

TEST_F(Desk, WhatIsNotReadIsCountedButHiddenUntilAskedFor)
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

TEST_F(Desk, DirectionIsSaidBySignMarkAndWord)
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

TEST_F(Desk, EnterGoesToTheNote)
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

TEST_F(Desk, SaysThatNothingIsJudgedInsteadOfShowingAnEmptyTable)
{
    desk.show({}, {}, {}, false);
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
