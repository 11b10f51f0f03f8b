#include "decisions/decisions.h"

#include <gtest/gtest.h>

namespace hammerline::decisions {
namespace {

using Change = StandingChange::Change;

Decision about(double millimetres, Kind kind)
{
    Decision decision;
    decision.quantity = catalogue::Quantity::LetOff;
    decision.note = keyboard::Note(40);
    decision.kind = kind;
    decision.value = units::Length::millimetres(millimetres);
    return decision;
}

std::optional<units::Amount> mm(double value)
{
    return units::Length::millimetres(value);
}

TEST(Decision, HoldsForItsValueOnly)
{
    EXPECT_TRUE(about(3.4, Kind::Out).holds(mm(3.4), Kind::Out));
    EXPECT_FALSE(about(3.4, Kind::Out).holds(mm(3.401), Kind::Out));
    EXPECT_FALSE(about(3.4, Kind::Out).holds(std::nullopt, Kind::Missing));
}

TEST(Decision, HoldsForALesserKindButNotForAGraverOne)
{
    EXPECT_TRUE(about(3.4, Kind::Out).holds(mm(3.4), Kind::Marginal));
    EXPECT_FALSE(about(3.4, Kind::Marginal).holds(mm(3.4), Kind::Out));
    EXPECT_FALSE(about(3.4, Kind::Uneven).holds(mm(3.4), Kind::Marginal));
}

TEST(Decision, OnAMissingReadingEndsWithTheFirstReading)
{
    Decision missing = about(0, Kind::Missing);
    missing.value.reset();
    EXPECT_TRUE(missing.holds(std::nullopt, Kind::Missing));
    EXPECT_FALSE(missing.holds(mm(3), Kind::Out));
}

TEST(Standing, IsOpenInRevisionOneFromTheStart)
{
    EXPECT_FALSE(isSigned({}));
    EXPECT_EQ(revisionOf({}), 1);
    EXPECT_EQ(signatureOf({}), nullptr);
}

TEST(Standing, FollowsTheNewestChange)
{
    Standing standing{{.change = Change::Signed, .revision = 1, .person = "Ada"}};
    ASSERT_NE(signatureOf(standing), nullptr);
    EXPECT_EQ(signatureOf(standing)->person, "Ada");
    standing.push_back({.change = Change::Reopened, .revision = 2});
    EXPECT_FALSE(isSigned(standing));
    EXPECT_EQ(revisionOf(standing), 2);
}

TEST(Ids, LeadBackToWhatTheyName)
{
    for (const Kind kind : {Kind::Out, Kind::Marginal, Kind::Uneven, Kind::Missing})
        EXPECT_EQ(findKind(idOf(kind)), kind);
    for (const Change change : {Change::Signed, Change::Reopened})
        EXPECT_EQ(findChange(idOf(change)), change);
    EXPECT_FALSE(findKind("in"));
    EXPECT_FALSE(findChange("open"));
}

} // namespace
} // namespace hammerline::decisions
