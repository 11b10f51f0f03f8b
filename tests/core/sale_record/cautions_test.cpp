#include "sale_record/cautions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::sale_record {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::Not;

instrument::Instrument made(catalogue::ActionKind action, std::optional<int> year, std::optional<double> millimetres)
{
    instrument::Instrument instrument;
    instrument.action = action;
    instrument.year = year;
    if (millimetres)
        instrument.size = units::Length::millimetres(*millimetres);
    return instrument;
}

TEST(Cautions, ANewGrandIsSpokenOfForItsStringsAndItsClimateAlone)
{
    EXPECT_THAT(cautionsFor(made(catalogue::ActionKind::Grand, 2020, 1880)),
                ElementsAre(Caution::StringTension, Caution::ClimateMovesIt));
}

TEST(Cautions, AVerticalOfUnknownHeightCountsAsTall)
{
    EXPECT_THAT(cautionsFor(made(catalogue::ActionKind::Vertical, 2020, {})), Contains(Caution::TallUprightTips));
}

TEST(Cautions, OnlyATallVerticalIsSaidToTip)
{
    using catalogue::ActionKind;
    EXPECT_THAT(cautionsFor(made(ActionKind::Vertical, 2020, 1320)), Contains(Caution::TallUprightTips));
    EXPECT_THAT(cautionsFor(made(ActionKind::Vertical, 2020, 1200)), Contains(Caution::TallUprightTips));
    EXPECT_THAT(cautionsFor(made(ActionKind::Vertical, 2020, 1080)), Not(Contains(Caution::TallUprightTips)));
    EXPECT_THAT(cautionsFor(made(ActionKind::Grand, 2020, {})), Not(Contains(Caution::TallUprightTips)));
}

TEST(Cautions, AnUnknownYearCountsAsOld)
{
    EXPECT_THAT(cautionsFor(made(catalogue::ActionKind::Grand, {}, 1880)),
                ElementsAre(Caution::StringTension, Caution::LeadInKeys, Caution::IvoryLaw, Caution::Dust,
                            Caution::ClimateMovesIt));
}

TEST(Cautions, LeadIsSpokenOfLongerThanIvory)
{
    const auto cautions = cautionsFor(made(catalogue::ActionKind::Grand, 1995, 1880));
    EXPECT_THAT(cautions, Contains(Caution::LeadInKeys));
    EXPECT_THAT(cautions, Not(Contains(Caution::IvoryLaw)));
}

} // namespace
} // namespace hammerline::sale_record
