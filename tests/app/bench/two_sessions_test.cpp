// Two windows at one pass: nothing is overwritten unseen.
#include "bench/entry_session.h"
#include "support/workshop_on_disk.h"

#include <gtest/gtest.h>

namespace hammerline::bench {
namespace {

using catalogue::Quantity;
using keyboard::Note;

class TwoAtOnePass : public ::testing::Test {
protected:
    TwoAtOnePass()
    {
        mine.follow({.quantities = {Quantity::LetOff}});
        theirs.follow({.quantities = {Quantity::LetOff}});
    }
    [[nodiscard]] Stamper stamper()
    {
        return [this] { return shop.stamp(); };
    }

    support::WorkshopOnDisk shop;
    logbook::Logbook otherBook = logbook::Logbook::open(shop.path());
    EntrySession mine{shop.book, shop.grand, shop.pass, support::plainSet(), stamper()};
    EntrySession theirs{otherBook, shop.grand, shop.pass, support::plainSet(), stamper()};
};

TEST_F(TwoAtOnePass, EachSeesTheOthersReadings)
{
    ASSERT_TRUE(theirs.enter("3.4"));
    EXPECT_TRUE(mine.refresh());
    EXPECT_FALSE(mine.refresh());
    EXPECT_DOUBLE_EQ(mine.valueOf(Quantity::LetOff, Note(1))->inDisplay(), 3.4);
}

TEST_F(TwoAtOnePass, AValueEnteredMeanwhileIsNotOverwrittenUnseen)
{
    ASSERT_TRUE(theirs.enter("3.4"));
    const auto refused = mine.enter("3.0");
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.fault().problem.find("3.4"), std::string::npos);
    EXPECT_DOUBLE_EQ(mine.valueOf(Quantity::LetOff, Note(1))->inDisplay(), 3.4);
    // Asked again with both values known, it is a correction like any other.
    const auto corrected = mine.enter("3.0");
    ASSERT_TRUE(corrected);
    EXPECT_TRUE(corrected.value().corrected);
    EXPECT_EQ(otherBook.versions(shop.pass.id, {Quantity::LetOff, Note(1), 1}).size(), 2u);
}

TEST_F(TwoAtOnePass, WorkOnDifferentNotesDoesNotHinder)
{
    ASSERT_TRUE(theirs.goTo(Quantity::LetOff, Note(60)));
    for (int i = 0; i < 5; ++i) {
        ASSERT_TRUE(mine.enter("3.1"));
        ASSERT_TRUE(theirs.enter("3.3"));
    }
    mine.refresh();
    EXPECT_EQ(mine.progress().read, 10);
}

} // namespace
} // namespace hammerline::bench
