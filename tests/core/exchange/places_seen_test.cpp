#include "exchange/inside/places_seen.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>
#include <vector>

namespace hammerline::exchange {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::Place;

TEST(PlacesSeen, namesTheFirstLineThatSpokeOfAPlace)
{
    PlacesSeen seen;
    const Place place{Quantity::LetOff, Note(40), 1};
    EXPECT_EQ(seen.before(place, 2), std::nullopt);
    EXPECT_EQ(seen.before(place, 7), 2u);
    EXPECT_EQ(seen.before(place, 9), 2u);
}

TEST(PlacesSeen, keepsQuantityNoteAndTakeApartUpToTheEndsOfEach)
{
    PlacesSeen seen;
    for (const Quantity quantity : {Quantity::KeyHeight, Quantity::UpWeight})
        for (const int note : {Note::lowest, 1, 88, Note::highest})
            for (const int take : {1, 2, 999'999})
                EXPECT_EQ(seen.before({quantity, Note(note), take}, 2), std::nullopt) << note << ' ' << take;
}

TEST(PlacesSeen, findsASecondRowInWhateverOrderTheTakesCome)
{
    std::mt19937 dice(7); // NOLINT(bugprone-random-generator-seed): the same rows every time
    std::uniform_int_distribution takes(1, 60);
    std::uniform_int_distribution notes(1, 3);
    PlacesSeen seen;
    std::map<Place, std::size_t> expected;
    for (std::size_t line = 2; line < 600; ++line) {
        const Place place{line % 2 == 0 ? Quantity::Dip : Quantity::Blow, Note(notes(dice)), takes(dice)};
        const auto [first, added] = expected.try_emplace(place, line);
        EXPECT_EQ(seen.before(place, line), added ? std::nullopt : std::optional(first->second)) << line;
    }
}

TEST(PlacesSeen, isNotSlowWhereTheTakesFall)
{
    // Were each put in its place among the others, this would take minutes.
    PlacesSeen seen;
    for (int take = 400'000; take >= 1; --take)
        ASSERT_EQ(seen.before({Quantity::Dip, Note(1), take}, 2), std::nullopt);
    EXPECT_EQ(seen.before({Quantity::Dip, Note(1), 1}, 3), 2u);
}

} // namespace
} // namespace hammerline::exchange
