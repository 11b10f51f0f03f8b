#include "exchange/csv_text.h"
#include "exchange/inside/csv_rows.h"

#include <gmock/gmock.h>

namespace hammerline::exchange {
namespace {

using Rows = std::vector<std::vector<std::string>>;

Rows rowsOf(std::string_view text)
{
    CsvRows rows(text);
    CsvRow row;
    Rows all;
    while (rows.next(row)) {
        EXPECT_TRUE(row.broken.empty()) << row.broken;
        all.emplace_back(row.fields.begin(), row.fields.end());
    }
    return all;
}

TEST(CsvRows, linesAreCountedThroughEveryKindOfLineEnd)
{
    CsvRows rows("a\r\n\"b\rc\r\nd\ne\"\n\rf");
    CsvRow row;
    std::vector<std::size_t> lines;
    while (rows.next(row))
        lines.push_back(row.line);
    EXPECT_EQ(lines, (std::vector<std::size_t>{1, 2, 6, 7}));
}

TEST(CsvRows, anEmptyTextHasNoRowAndALastCommaAnEmptyField)
{
    EXPECT_EQ(rowsOf(""), Rows{});
    EXPECT_EQ(rowsOf("\xEF\xBB\xBF"), Rows{});
    EXPECT_EQ(rowsOf("a,\n"), (Rows{{"a", ""}}));
    EXPECT_EQ(rowsOf("\"\"\n"), (Rows{{""}}));
    EXPECT_EQ(rowsOf("\n"), (Rows{{""}}));
}

TEST(CsvRows, fieldsStayValidWhileTheirRowIsHeld)
{
    EXPECT_EQ(rowsOf("\"a\"\"1\",\"b\"\"2\",\"c\"\"3\",\"\"\"\"\n"), (Rows{{"a\"1", "b\"2", "c\"3", "\""}}));
}

TEST(CsvRows, aWrittenFieldReadsBackWhateverItHolds)
{
    for (const std::string field :
         {"", "plain", " padded ", "a,b", "say \"so\"", "two\nlines", "cr\rhere", "\"", ",", "\r\n"})
        EXPECT_EQ(rowsOf(csvField(field) + ",x\n"), (Rows{{field, "x"}})) << field;
}

TEST(CsvRows, utf8IsTakenToTheLetter)
{
    EXPECT_TRUE(isCleanUtf8("A\xC2\x80\xE0\xA0\x80\xED\x9F\xBF\xEE\x80\x80\xF0\x90\x80\x80\xF4\x8F\xBF\xBF"));
    for (const std::string bad :
         {"\x80", "\xC1\xBF", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80", "\xC2"})
        EXPECT_FALSE(isCleanUtf8(bad));
    EXPECT_FALSE(isCleanUtf8(std::string(1, '\0')));
}

} // namespace
} // namespace hammerline::exchange
