#include "tolerance/found_uncertainty.h"

#include "core/tolerance/sample_sets.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::tolerance {
namespace {

using samples::mm;
using samples::Note;
using samples::Quantity;
using testing::HasSubstr;

FoundUncertainty found(double uncertainty, const std::string &day = "2026-03-02")
{
    return {Quantity::LetOff, mm(uncertainty), "rule 3", day};
}

TEST(FoundUncertainty, BecomesTheDoubtOfTheStudiedQuantityAlone)
{
    ToleranceSet before = samples::letOffAndDip();
    before.entries[Quantity::LetOff].coverageFactor = 3;
    const ToleranceSet set = countingWith(before, found(0.124), Rule::Guarded).value();
    const Entry &entry = set.entries.at(Quantity::LetOff);
    EXPECT_EQ(entry.expandedUncertainty, mm(0.124));
    EXPECT_EQ(entry.coverageFactor, 2);
    EXPECT_EQ(entry.rule, Rule::Guarded);
    EXPECT_EQ(entry.both, before.entries[Quantity::LetOff].both) << "limits and targets stay";
    EXPECT_EQ(set.entries.at(Quantity::Dip), before.entries[Quantity::Dip]);
    EXPECT_TRUE(faultsOf(set).empty());
}

TEST(FoundUncertainty, IsNamedInTheSourceBesideWhatStoodThere)
{
    ToleranceSet before = samples::letOffAndDip();
    before.source = "The shop's own book.";
    const ToleranceSet set = countingWith(before, found(0.124), Rule::Simple).value();
    EXPECT_EQ(set.source, "The shop's own book.\n"
                          "Uncertainty of let-off: 0.124 mm (k = 2), from the gauge study of \"rule 3\", 2026-03-02.");
    EXPECT_EQ(set.name, "sample (rule 3)");
}

TEST(FoundUncertainty, LendsItsSourceToNoLimit)
{
    const ToleranceSet set = countingWith(samples::letOffAndDip(), found(0.124), Rule::Simple).value();
    EXPECT_THAT(set.source, testing::StartsWith("Limits and targets: no source."));
    EXPECT_TRUE(set.entries.at(Quantity::LetOff).source.empty());
}

TEST(FoundUncertainty, OfANewerStudyTakesThePlaceOfTheOlder)
{
    auto set = countingWith(samples::letOffAndDip(), found(0.124), Rule::Guarded).value();
    set = countingWith(set, {Quantity::Dip, mm(0.05), "depth gauge", "2026-03-03"}, Rule::Simple).value();
    set = countingWith(set, found(0.2, "2026-04-01"), Rule::Simple).value();
    EXPECT_THAT(set.source, testing::Not(HasSubstr("0.124")));
    EXPECT_THAT(set.source, HasSubstr("2026-04-01"));
    EXPECT_THAT(set.source, HasSubstr("Uncertainty of dip: 0.05 mm"));
    EXPECT_EQ(set.entries.at(Quantity::LetOff).rule, Rule::Simple);
}

TEST(FoundUncertainty, IsRefusedWhereTheSetDoesNotJudgeOrNothingWasFound)
{
    EXPECT_THAT(
        countingWith(samples::letOffAndDip(), {Quantity::Blow, mm(0.1), "g", "d"}, Rule::Simple).fault().problem,
        HasSubstr("blow"));
    EXPECT_FALSE(countingWith(samples::letOffAndDip(), found(0), Rule::Simple));
}

TEST(LeavesNothingIn, WhereTwiceTheDoubtReachesFromLimitToLimit)
{
    Entry entry = samples::letOffAndDip().entries.at(Quantity::LetOff); // narrowest at note 88: 1.2 to 2.0
    entry.expandedUncertainty = mm(0.4);
    EXPECT_FALSE(leavesNothingIn(entry)) << "the middle is still in";
    entry.expandedUncertainty = mm(0.400001);
    EXPECT_TRUE(leavesNothingIn(entry));
    entry.rule = Rule::Simple;
    EXPECT_FALSE(leavesNothingIn(entry));
    for (Point &point : entry.both)
        point.low.reset();
    entry.rule = Rule::Guarded;
    EXPECT_FALSE(leavesNothingIn(entry)) << "one-sided limits are never too narrow";
}

} // namespace
} // namespace hammerline::tolerance
