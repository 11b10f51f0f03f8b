#include "command_line/inside/plain_table.h"

#include <gtest/gtest.h>

namespace hammerline::command_line {
namespace {

TEST(PlainTable, ColumnsAreAsWideAsTheirWidestCell)
{
    PlainTable table({{"note", Align::Left}, {"mm", Align::Right}});
    table.add({"A0", "3.25"});
    table.add({"C#4 and on", "12.5"});
    EXPECT_EQ(table.text(), "note          mm\n"
                            "A0          3.25\n"
                            "C#4 and on  12.5\n");
}

TEST(PlainTable, CountsCharactersAndNotBytes)
{
    PlainTable table({{"", Align::Left}, {"", Align::Left}});
    table.add({"Flügel", "x"});
    table.add({"Grands", "y"});
    EXPECT_EQ(table.text(), "Flügel  x\nGrands  y\n");
}

TEST(PlainTable, ANameCannotSteerTheTerminal)
{
    PlainTable table({{"", Align::Left}});
    table.add({"bell\a\x1b[2J\nnext"});
    table.add({"\xC2\x9B"
               "2J \xE2\x80\xAEright \xE2\x81\xA6left\xE2\x80\xA9"});
    table.add({"Fl\xC3\xBCgel \xE2\x80\x93 \xD7\xA9"});
    EXPECT_EQ(table.text(), "bell??[2J?next\n?2J ?right ?left?\nFl\xC3\xBCgel \xE2\x80\x93 \xD7\xA9\n");
}

TEST(PlainTable, WithoutRowsIsNothing)
{
    EXPECT_EQ(PlainTable({{"note", Align::Left}}).text(), "");
}

} // namespace
} // namespace hammerline::command_line
