#include "analysis/drift_stretch.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::analysis {
namespace {

using readings::Purpose;

readings::Pass of(readings::PassId id, Purpose purpose)
{
    return {.id = id, .purpose = purpose, .began = readings::Instant(std::chrono::hours(24 * id))};
}

/// Found, set and left; rechecked twice; left again after more work, and rechecked.
const std::vector passes{of(1, Purpose::AsFound), of(2, Purpose::Setting), of(3, Purpose::AsLeft),
                         of(4, Purpose::Recheck), of(5, Purpose::AsFound), of(6, Purpose::Setting),
                         of(7, Purpose::AsLeft),  of(8, Purpose::Recheck)};

std::vector<readings::PassId> idsFor(readings::PassId chosen)
{
    std::vector<readings::PassId> ids;
    for (const readings::Pass &pass : driftStretch(passes, passes.at(static_cast<std::size_t>(chosen - 1))))
        ids.push_back(pass.id);
    return ids;
}

TEST(DriftStretch, GoesFromOneRegulationToTheNext)
{
    EXPECT_THAT(idsFor(3), testing::ElementsAre(3, 4, 5));
    EXPECT_THAT(idsFor(5), testing::ElementsAre(3, 4, 5));
    EXPECT_THAT(idsFor(8), testing::ElementsAre(7, 8));
}

TEST(DriftStretch, BeginsWithTheFirstPassWhereNothingWasLeftBefore)
{
    EXPECT_THAT(idsFor(1), testing::ElementsAre(1));
}

TEST(DriftStretch, LeavesOutWhatWasReadDuringTheWork)
{
    EXPECT_THAT(idsFor(6), testing::ElementsAre(3, 4, 5));
}

} // namespace
} // namespace hammerline::analysis
