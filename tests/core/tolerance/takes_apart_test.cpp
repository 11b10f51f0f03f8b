#include "core/tolerance/sample_sets.h"
#include "tolerance/takes_apart.h"

#include <gtest/gtest.h>

namespace hammerline::tolerance {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using samples::mm;

readings::Reading take(Quantity quantity, int note, int number, double value)
{
    readings::Reading reading;
    reading.place = {quantity, Note(note), number};
    reading.value = mm(value);
    return reading;
}

const readings::Gauge unstated{};
const readings::Gauge fine{"dial", units::Length::millimetres(0.01), units::Length::millimetres(0.04)};

TEST(TakesApart, ASpreadUpToTheUncertaintyIsExcused)
{
    const std::vector takes{take(Quantity::LetOff, 40, 1, 3.1), take(Quantity::LetOff, 40, 2, 3.14)};
    EXPECT_TRUE(takesApart(takes, fine, nullptr).empty());
}

TEST(TakesApart, ALargerSpreadIsToldWithBothFigures)
{
    const std::vector takes{take(Quantity::LetOff, 40, 1, 3.14), take(Quantity::LetOff, 40, 2, 3.09),
                            take(Quantity::LetOff, 40, 3, 3.1)};
    const PairsApart apart = takesApart(takes, fine, nullptr);
    ASSERT_EQ(apart.size(), 1u);
    EXPECT_EQ(apart.at({Quantity::LetOff, Note(40)}), (TakesApart{mm(0.05), mm(0.04)}));
}

TEST(TakesApart, SingleTakesOfNeighboursAreNotHeldAgainstEachOther)
{
    const std::vector takes{take(Quantity::LetOff, 40, 1, 3.1), take(Quantity::LetOff, 41, 1, 3.9),
                            take(Quantity::Dip, 40, 1, 10)};
    EXPECT_TRUE(takesApart(takes, fine, nullptr).empty());
}

TEST(TakesApart, TheSetSpeaksWhereTheGaugeOfThePassStatesNothing)
{
    const ToleranceSet set = samples::letOffAndDip();
    EXPECT_EQ(statedUncertainty(Quantity::LetOff, unstated, &set), mm(0.2));
    EXPECT_EQ(statedUncertainty(Quantity::LetOff, fine, &set), mm(0.04));
    EXPECT_EQ(statedUncertainty(Quantity::Dip, unstated, &set), std::nullopt);
    EXPECT_EQ(statedUncertainty(Quantity::LetOff, unstated, nullptr), std::nullopt);
}

TEST(TakesApart, AGaugeOfLengthsSaysNothingAboutMasses)
{
    EXPECT_EQ(statedUncertainty(Quantity::DownWeight, fine, nullptr), std::nullopt);
}

TEST(TakesApart, WithoutAStatedUncertaintyNothingIsSaid)
{
    const std::vector takes{take(Quantity::LetOff, 40, 1, 3.1), take(Quantity::LetOff, 40, 2, 9)};
    EXPECT_TRUE(takesApart(takes, unstated, nullptr).empty());
}

} // namespace
} // namespace hammerline::tolerance
