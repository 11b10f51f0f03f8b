#include "analysis/draw_sample.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <set>

namespace hammerline::analysis {
namespace {

using keyboard::Note;

std::vector<Note> notes(int count)
{
    std::vector<Note> all;
    for (int number = 1; number <= count; ++number)
        all.emplace_back(number);
    return all;
}

TEST(DrawSample, IsRisingWithoutRepeatsAndOfTheSizeAskedFor)
{
    const auto drawn = drawSample(notes(88), 20, 12345);
    EXPECT_EQ(drawn.size(), 20u);
    EXPECT_TRUE(std::is_sorted(drawn.begin(), drawn.end()));
    EXPECT_EQ(std::set<Note>(drawn.begin(), drawn.end()).size(), 20u);
}

TEST(DrawSample, FollowsFromTheSeedAloneForEver)
{
    // Written down once: a sample in an old logbook must be drawn again by every later program.
    EXPECT_THAT(drawSample(notes(88), 5, 1), testing::ElementsAreArray(drawSample(notes(88), 5, 1)));
    EXPECT_NE(drawSample(notes(88), 5, 1), drawSample(notes(88), 5, 2));
}

TEST(DrawSample, TakesAllWhereMoreAreAskedForAndNoneBelowOne)
{
    EXPECT_EQ(drawSample(notes(5), 9, 3), notes(5));
    EXPECT_TRUE(drawSample(notes(5), 0, 3).empty());
    EXPECT_TRUE(drawSample(notes(5), -1, 3).empty());
}

TEST(DrawSample, TakesEveryNoteAboutAsOftenAsTheOthers)
{
    std::map<Note, int> often;
    constexpr int draws = 8800;
    for (std::uint32_t seed = 0; seed < draws; ++seed)
        for (const Note note : drawSample(notes(88), 10, seed))
            ++often[note];
    // 1000 expected each, standard deviation 30: six of them either way.
    for (const Note note : notes(88)) {
        EXPECT_GT(often[note], 820) << note.name();
        EXPECT_LT(often[note], 1180) << note.name();
    }
}

} // namespace
} // namespace hammerline::analysis
