#include "analysis/before_after.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::analysis {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::Purpose;
using testing::ElementsAre;
using units::Length;

MeasuredPass pass(const std::vector<double> &letOff, double uncertainty = 0)
{
    MeasuredPass made;
    made.pass.gauge.expandedUncertainty = Length::millimetres(uncertainty);
    int note = 1;
    for (const double value : letOff)
        made.values.set(Quantity::LetOff, Note(note++), {Length::millimetres(value)});
    return made;
}

/// 3.2 ± 0.5 mm.
tolerance::ToleranceSet set()
{
    tolerance::ToleranceSet made;
    made.entries[Quantity::LetOff].both = {{.note = Note(1),
                                            .low = Length::millimetres(2.7),
                                            .target = Length::millimetres(3.2),
                                            .high = Length::millimetres(3.7)}};
    return made;
}

TEST(BeforeAfter, HasTheFiguresOfCompare)
{
    const auto before = pass({3.9, 3.8, 4.1, 3.2}), after = pass({3.2, 3.3, 3.3, 3.9});
    const auto one = beforeAndAfter(before, after, nullptr).at(0);
    const auto same = compare(before.values, after.values, nullptr).at(Quantity::LetOff);
    EXPECT_EQ(one.change.pairs, same.pairs);
    EXPECT_EQ(one.change.meanChange, same.meanChange);
    EXPECT_EQ(one.change.p, same.p);
    EXPECT_EQ(one.change.ci95Low, same.ci95Low);
}

TEST(BeforeAfter, NamesTheNotesThatItCounts)
{
    const auto limits = set();
    const auto one = beforeAndAfter(pass({3.9, 3.2, 4.1, 3.2}), pass({3.2, 3.3, 3.9, 3.9}), &limits).at(0);
    EXPECT_THAT(one.mended, ElementsAre(Note(1)));
    EXPECT_THAT(one.spoiled, ElementsAre(Note(4)));
    EXPECT_EQ(one.change.mended, std::ssize(one.mended));
    EXPECT_EQ(one.change.spoiled, std::ssize(one.spoiled));
}

TEST(BeforeAfter, ClaimsAChangeOnlyWhereTheIntervalLeavesNothingOut)
{
    EXPECT_EQ(beforeAndAfter(pass({3, 3, 3}), pass({3.5, 3.6, 3.4}), nullptr).at(0).claim, Claim::Larger);
    EXPECT_EQ(beforeAndAfter(pass({3, 3, 3}), pass({2.5, 2.4, 2.6}), nullptr).at(0).claim, Claim::Smaller);
    EXPECT_EQ(beforeAndAfter(pass({3, 3, 3}), pass({2.5, 3.5, 3.1}), nullptr).at(0).claim, Claim::NoChange);
    EXPECT_EQ(beforeAndAfter(pass({3}), pass({9}), nullptr).at(0).claim, Claim::TooFew);
    EXPECT_EQ(beforeAndAfter(pass({3, 3}), pass({3, 3}), nullptr).at(0).claim, Claim::NoChange);
}

TEST(BeforeAfter, AClaimThatTheGaugeMayHaveMadeIsMarked)
{
    // 0.3 and 0.4 mm together: 0.5 mm.
    EXPECT_TRUE(beforeAndAfter(pass({3, 3, 3}, 0.3), pass({3.4, 3.41, 3.39}, 0.4), nullptr).at(0).withinGauge());
    EXPECT_FALSE(beforeAndAfter(pass({3, 3, 3}, 0.3), pass({3.6, 3.61, 3.59}, 0.4), nullptr).at(0).withinGauge());
    EXPECT_FALSE(beforeAndAfter(pass({3, 3, 3}), pass({3.4, 3.41, 3.39}), nullptr).at(0).withinGauge());
}

TEST(BeforeAfter, MediansStandWhereOneNoteIsWildAndTheWildOneIsNamed)
{
    const auto one = beforeAndAfter(pass({3, 3, 3, 3, 3, 3}), pass({3.1, 3.2, 3.1, 3.2, 3.15, 40}), nullptr).at(0);
    EXPECT_NEAR(one.changes.median, 0.175, 1e-9);
    EXPECT_NEAR(one.before.median, 3, 1e-9);
    EXPECT_NEAR(one.after.mad, 0.05, 1e-9);
    ASSERT_EQ(one.outliers.size(), 1u);
    EXPECT_EQ(one.outliers[0].note, Note(6));
    EXPECT_NEAR(one.outliers[0].change, 37, 1e-9);
}

readings::Pass of(readings::PassId id, Purpose purpose, int day)
{
    return {.id = id, .purpose = purpose, .began = readings::Instant(std::chrono::hours(24 * day))};
}

TEST(UsualPair, IsTheFirstAsFoundAndTheNewestAsLeft)
{
    const std::vector passes{of(1, Purpose::AsFound, 1), of(2, Purpose::AsFound, 2), of(3, Purpose::AsLeft, 3),
                             of(4, Purpose::AsLeft, 4), of(5, Purpose::Recheck, 5)};
    EXPECT_EQ(usualPair(passes).before->id, 1);
    EXPECT_EQ(usualPair(passes).after->id, 4);
}

TEST(UsualPair, TakesFirstAndNewestWhereNothingWasLeft)
{
    const std::vector passes{of(1, Purpose::Setting, 1), of(2, Purpose::AsFound, 2), of(3, Purpose::Recheck, 3)};
    EXPECT_EQ(usualPair(passes).before->id, 2);
    EXPECT_EQ(usualPair(passes).after->id, 3);
    const std::vector foundLast{of(1, Purpose::Setting, 1), of(2, Purpose::AsFound, 2)};
    EXPECT_EQ(usualPair(foundLast).before->id, 1);
    EXPECT_EQ(usualPair(foundLast).after->id, 2);
    EXPECT_EQ(usualPair(std::vector{of(1, Purpose::AsFound, 1)}).before, nullptr);
}

} // namespace
} // namespace hammerline::analysis
