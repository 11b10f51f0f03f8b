#include "readings/readings.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::readings {
namespace {

using catalogue::Quantity;
using keyboard::Note;

Reading reading(Quantity quantity, int note, int take, units::Amount value)
{
    Reading one;
    one.place = {quantity, Note(note), take};
    one.value = value;
    return one;
}

units::Amount nm(std::int64_t count)
{
    return units::Length::nanometres(count);
}

TEST(MeansOf, RoundsHalfANanometreAwayFromZero)
{
    const auto table =
        meansOf({reading(Quantity::LetOff, 1, 1, nm(3)), reading(Quantity::LetOff, 1, 2, nm(4)),
                 reading(Quantity::KeyHeight, 1, 1, nm(-3)), reading(Quantity::KeyHeight, 1, 2, nm(-4))});
    EXPECT_EQ(table.value(Quantity::LetOff, Note(1)), nm(4));
    EXPECT_EQ(table.value(Quantity::KeyHeight, Note(1)), nm(-4));
}

TEST(MeansOf, CountsTakesInAnyOrder)
{
    const auto table = meansOf({reading(Quantity::Dip, 40, 3, nm(10)), reading(Quantity::Dip, 41, 1, nm(7)),
                                reading(Quantity::Dip, 40, 1, nm(11)), reading(Quantity::Dip, 40, 2, nm(13))});
    EXPECT_EQ(table.column(Quantity::Dip).at(Note(40)), (NoteValue{nm(11), 3}));
    EXPECT_EQ(table.column(Quantity::Dip).at(Note(41)), (NoteValue{nm(7), 1}));
}

TEST(MeansOf, KeepsMassesMasses)
{
    const auto table = meansOf({reading(Quantity::DownWeight, 5, 1, units::Mass::milligrams(52'000)),
                                reading(Quantity::DownWeight, 5, 2, units::Mass::milligrams(53'001))});
    EXPECT_EQ(table.value(Quantity::DownWeight, Note(5)), units::Amount(units::Mass::milligrams(52'501)));
}

TEST(MeansOf, IsEmptyWithoutReadings)
{
    EXPECT_TRUE(meansOf({}).empty());
}

TEST(ValueTable, HasAbsenceNotZeroForNoReading)
{
    ValueTable table;
    EXPECT_FALSE(table.value(Quantity::Blow, Note(1)));
    EXPECT_TRUE(table.column(Quantity::Blow).empty());
    table.set(Quantity::Blow, Note(1), {nm(0), 1});
    EXPECT_EQ(table.value(Quantity::Blow, Note(1)), nm(0));
    EXPECT_FALSE(table.value(Quantity::Blow, Note(2)));
}

TEST(ValueTable, ListsQuantitiesInTheOrderOfTheCatalogue)
{
    ValueTable table;
    table.set(Quantity::Dip, Note(1), {nm(1), 1});
    table.set(Quantity::KeyHeight, Note(1), {nm(1), 1});
    table.set(Quantity::LetOff, Note(1), {nm(1), 1});
    EXPECT_THAT(table.quantities(), testing::ElementsAre(Quantity::KeyHeight, Quantity::LetOff, Quantity::Dip));
}

TEST(ValueTable, ForgetsAColumnWhoseLastValueIsCleared)
{
    ValueTable table;
    table.set(Quantity::Dip, Note(1), {nm(1), 1});
    table.clear(Quantity::Dip, Note(1));
    table.clear(Quantity::Blow, Note(1));
    EXPECT_TRUE(table.empty());
    EXPECT_EQ(table, ValueTable());
}

TEST(Place, IsOrderedByQuantityThenNoteThenTake)
{
    EXPECT_LT((Place{Quantity::Blow, Note(88), 2}), (Place{Quantity::Dip, Note(1), 1}));
    EXPECT_LT((Place{Quantity::Dip, Note(1), 9}), (Place{Quantity::Dip, Note(2), 1}));
    EXPECT_LT((Place{Quantity::Dip, Note(2), 1}), (Place{Quantity::Dip, Note(2), 2}));
}

TEST(DropBelowLetOff, IsTheWayFromTheLetOffPoint)
{
    using units::Length;
    EXPECT_EQ(dropBelowLetOff(Length::millimetres(3.2), Length::millimetres(1.6)).value(), nm(1'600'000));
    EXPECT_EQ(dropBelowLetOff(Length::millimetres(1.6), Length::millimetres(1.6)).value(), nm(0));
}

TEST(DropBelowLetOff, RefusesAHammerThatRises)
{
    const auto drop = dropBelowLetOff(units::Length::millimetres(1.5), units::Length::millimetres(1.6));
    ASSERT_FALSE(drop.ok());
    EXPECT_THAT(drop.fault().problem, testing::AllOf(testing::HasSubstr("1.5 mm"), testing::HasSubstr("1.6 mm")));
}

TEST(Ids, FindEveryPurposeAndDatum)
{
    for (const auto purpose : {Purpose::AsFound, Purpose::Setting, Purpose::AsLeft, Purpose::Recheck})
        EXPECT_EQ(findPurpose(idOf(purpose)), purpose);
    for (const auto datum : {DipDatum::FrontEdge, DipDatum::Back13mm, DipDatum::OverFrontPin})
        EXPECT_EQ(findDipDatum(idOf(datum)), datum);
    for (const auto datum : {DropDatum::BelowLetOff, DropDatum::FromString})
        EXPECT_EQ(findDropDatum(idOf(datum)), datum);
    EXPECT_EQ(idOf(Purpose::AsFound), "as-found");
    EXPECT_FALSE(findPurpose("as_found"));
}

} // namespace
} // namespace hammerline::readings
