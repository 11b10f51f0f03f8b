#include "bench_sheet/inside/box_rows.h"

#include "bench_sheet/inside/paint_row.h"

#include <gtest/gtest.h>

namespace hammerline::bench_sheet {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using route::Order;
using route::Sweep;

const keyboard::Sections threeSections{{.name = "bass", .notes = {Note(1), Note(28)}},
                                       {.name = "tenor", .notes = {Note(29), Note(64)}},
                                       {.name = "treble", .notes = {Note(65), Note(88)}}};

std::vector<Block> blocksFor(const route::Choice &choice, const keyboard::Sections &sections = threeSections)
{
    return blocksOf(choice, route::stopsOf(choice, {.compass = {}, .sections = sections}), sections);
}

TEST(BoxRows, NumberTheStopsFromOneWithoutAGap)
{
    int expected = 1;
    for (const Block &block : blocksFor({.quantities = {Quantity::LetOff, Quantity::Dip}}))
        for (const Row &row : block.rows)
            for (const Box &box : row.boxes)
                EXPECT_EQ(box.number, expected++);
    EXPECT_EQ(expected, 177);
}

TEST(BoxRows, BeginALongSectionOnARowOfItsOwnBelowItsName)
{
    const auto blocks = blocksFor({.quantities = {Quantity::LetOff}});
    ASSERT_EQ(blocks.size(), 1U);
    std::vector<std::pair<QString, Note>> begins;
    for (const Row &row : blocks[0].rows)
        if (row.caption)
            begins.emplace_back(*row.caption, row.boxes.front().stop.note);
    const std::vector<std::pair<QString, Note>> expected{
        {QStringLiteral("bass"), Note(1)}, {QStringLiteral("tenor"), Note(29)}, {QStringLiteral("treble"), Note(65)}};
    EXPECT_EQ(begins, expected);
    EXPECT_EQ(blocks[0].rows.size(), 4U + 5U + 3U);
}

TEST(BoxRows, MarkQuickChangesOfSectionWithABar)
{
    const auto blocks = blocksFor({.order = Order::SamplesFirst, .quantities = {Quantity::LetOff}});
    const Row &samples = blocks[0].rows.front();
    ASSERT_EQ(samples.boxes.size(), 6U) << "the rest of the bass begins a row";
    for (std::size_t i = 0; i < samples.boxes.size(); ++i)
        EXPECT_EQ(samples.boxes[i].bar, i % 2 == 0);
    EXPECT_EQ(samples.boxes[2].barBefore, "tenor");
}

TEST(BoxRows, MarkNothingWhereSectionsAreNotKnown)
{
    const auto blocks = blocksFor({.quantities = {Quantity::LetOff}}, {});
    for (const Row &row : blocks[0].rows) {
        EXPECT_FALSE(row.caption);
        for (const Box &box : row.boxes)
            EXPECT_FALSE(box.bar);
    }
}

TEST(BoxRows, KeepTheBoxesOfANoteInOneRow)
{
    for (std::size_t count = 1; count <= 8; ++count) {
        std::vector<Quantity> quantities;
        for (std::size_t i = 0; i < count; ++i)
            quantities.push_back(static_cast<Quantity>(i));
        const auto blocks = blocksFor({.sweep = Sweep::NoteByNote, .quantities = quantities});
        ASSERT_EQ(blocks.size(), 1U);
        for (const Row &row : blocks[0].rows) {
            EXPECT_EQ(row.boxes.size() % count, 0U);
            EXPECT_LE(row.boxes.size(), 8U);
            EXPECT_EQ(row.boxes.front().stop.quantity, quantities.front());
        }
    }
}

TEST(BoxRows, SpreadMoreQuantitiesThanARowHoldsEvenly)
{
    std::vector<Quantity> all;
    for (const catalogue::QuantityInfo &info : catalogue::all())
        all.push_back(info.quantity);
    const auto blocks = blocksFor({.sweep = Sweep::NoteByNote, .quantities = all});
    EXPECT_EQ(blocks[0].columns, 6);
    EXPECT_EQ(blocks[0].rows[0].boxes.size(), 6U);
    EXPECT_EQ(blocks[0].rows[1].boxes.size(), 5U);
    EXPECT_EQ(blocks[0].rows[2].boxes.front().stop.note, Note(2));
}

TEST(BoxRows, AreNeverEmpty)
{
    for (const Order order : {Order::Chromatic, Order::NaturalsThenSharps, Order::SamplesFirst})
        for (const Sweep sweep : {Sweep::AlongTheNotes, Sweep::NoteByNote})
            for (const Block &block : blocksFor({.order = order, .sweep = sweep, .quantities = {Quantity::Dip}}))
                for (const Row &row : block.rows)
                    EXPECT_FALSE(row.boxes.empty());
    EXPECT_TRUE(blocksFor({}).empty());
}

TEST(BoxRows, AreHighEnoughForAPencil)
{
    EXPECT_GE(boxHeight / 72 * 25.4, 7);
    EXPECT_GT(heightOf({}, {}), boxHeight);
}

} // namespace
} // namespace hammerline::bench_sheet
