#include "catalogue/catalogue.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <vector>

namespace hammerline::catalogue {
namespace {

TEST(Catalogue, ListsQuantitiesInTheOrderOfOutput)
{
    std::vector<std::string_view> ids;
    for (const auto &info : all())
        ids.push_back(info.id);
    EXPECT_THAT(ids, testing::ElementsAre("key_height", "blow", "lost_motion", "let_off", "drop", "dip", "aftertouch",
                                          "checking", "damper_start", "down_weight", "up_weight"));
}

TEST(Catalogue, FindsEveryRowByItsQuantityAndItsId)
{
    for (const auto &info : all()) {
        EXPECT_EQ(&infoOf(info.quantity), &info);
        EXPECT_EQ(findQuantity(info.id), info.quantity);
        EXPECT_EQ(idOf(info.quantity), info.id);
    }
}

TEST(Catalogue, FindsNothingByAnotherSpelling)
{
    for (const char *id : {"", "Let_off", "let-off", "let_off ", "lever_ratio"})
        EXPECT_FALSE(findQuantity(id)) << id;
}

TEST(Catalogue, KeepsDropForGrands)
{
    EXPECT_FALSE(has(ActionKind::Vertical, Quantity::Drop));
    EXPECT_TRUE(has(ActionKind::Grand, Quantity::Drop));
    EXPECT_TRUE(has(std::nullopt, Quantity::Drop));
    for (const auto &info : all())
        EXPECT_EQ(has(ActionKind::Vertical, info.quantity), info.quantity != Quantity::Drop);
}

TEST(Catalogue, WeighsOnlyTheTwoWeights)
{
    for (const auto &info : all()) {
        const bool weight = info.quantity == Quantity::DownWeight || info.quantity == Quantity::UpWeight;
        EXPECT_EQ(info.dimension == units::Dimension::Mass, weight) << info.id;
    }
}

TEST(Catalogue, LetsOnlyKeyHeightBeNegative)
{
    for (const auto &info : all())
        EXPECT_EQ(info.mayBeNegative, info.quantity == Quantity::KeyHeight) << info.id;
}

TEST(Catalogue, ComparesKeyHeightDipAndAftertouchWithinAColour)
{
    std::vector<Quantity> withinColour;
    for (const auto &info : all())
        if (info.comparesWithinColour)
            withinColour.push_back(info.quantity);
    EXPECT_THAT(withinColour, testing::ElementsAre(Quantity::KeyHeight, Quantity::Dip, Quantity::Aftertouch));
}

TEST(Catalogue, FindsActionsByTheirIds)
{
    EXPECT_EQ(findAction("vertical"), ActionKind::Vertical);
    EXPECT_EQ(findAction("grand"), ActionKind::Grand);
    EXPECT_FALSE(findAction("Grand"));
    EXPECT_EQ(idOf(ActionKind::Grand), "grand");
}

} // namespace
} // namespace hammerline::catalogue
