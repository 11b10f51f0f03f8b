#include "exchange/inside/place_bits.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

namespace hammerline::exchange {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::Place;

TEST(PlaceBits, keepsQuantityNoteAndTakeApartUpToTheEndsOfEach)
{
    PlaceBits seen;
    for (int round = 0; round < 2; ++round)
        for (const Quantity quantity : {Quantity::KeyHeight, Quantity::UpWeight})
            for (const int note : {Note::lowest, 1, 88, Note::highest})
                for (const int take : {1, 2, 64, 65, 128, 129, 999'999})
                    EXPECT_EQ(seen.again({quantity, Note(note), take}), round == 1) << note << ' ' << take;
}

TEST(PlaceBits, findsASecondRowInWhateverOrderTheyCome)
{
    std::mt19937 dice(7); // NOLINT(bugprone-random-generator-seed): the same rows every time
    std::uniform_int_distribution takes(1, 200);
    std::uniform_int_distribution notes(1, 3);
    PlaceBits seen;
    std::set<Place> expected;
    for (int row = 0; row < 2'000; ++row) {
        const Place place{row % 2 == 0 ? Quantity::Dip : Quantity::Blow, Note(notes(dice)), takes(dice)};
        EXPECT_EQ(seen.again(place), !expected.insert(place).second) << row;
    }
}

TEST(PlaceBits, growsByTheSixtyFourTakesWhateverTheirOrder)
{
    std::vector<int> takes(6'400);
    std::ranges::generate(takes, [take = 0]() mutable { return ++take; });
    std::ranges::shuffle(takes, std::mt19937(3)); // NOLINT(bugprone-random-generator-seed): the same order every time
    PlaceBits seen;
    for (const int take : takes)
        ASSERT_FALSE(seen.again({Quantity::Dip, Note(1), take}));
    EXPECT_EQ(seen.further(), 99u);
}

} // namespace
} // namespace hammerline::exchange
