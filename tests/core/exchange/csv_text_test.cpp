#include "exchange/csv_text.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace hammerline::exchange {
namespace {

/// The one cell of a row, as RFC 4180 has it.
std::string cellOf(std::string field)
{
    if (!field.starts_with('"'))
        return field;
    std::string cell;
    for (std::size_t at = 1; at + 1 < field.size(); ++at) {
        cell += field[at];
        at += field[at] == '"' ? 1u : 0u;
    }
    return cell;
}

TEST(CsvText, WhatASpreadsheetWouldTakeForAFormulaHasAnApostropheBeforeIt)
{
    for (const char *start : {"=", "+", "-", "@", "\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0",
                              "\xEF\xB9\xA6", "\xEF\xB9\xA2", "\xEF\xB9\xA3", "\xEF\xB9\xAB"})
        for (const char *before : {"",
                                   " ",
                                   "  ",
                                   "\t",
                                   "\r",
                                   "\n",
                                   "\xC2\xA0",
                                   "\xEF\xBB\xBF",
                                   "\xE2\x80\x8B",
                                   "\xE2\x80\x8C",
                                   "\xE2\x80\x8D",
                                   "\xE2\x81\xA0",
                                   "\xE3\x80\x80",
                                   "\xE2\x80\x83",
                                   "\xE2\x80\xAE",
                                   "\xE2\x80\xA8",
                                   "\xC2\xAD",
                                   "\xC2\x85",
                                   "\v",
                                   " \xC2\xA0\n"}) {
            const std::string text = std::string(before) + start + "1+1";
            EXPECT_EQ(cellOf(csvText(text)), '\'' + text);
        }
}

TEST(CsvText, OtherWordsGoOutAsTheyAre)
{
    for (const char *text :
         {"", "'", "''", "'tis sticky", "a=b", "1-2", " ' =1", "\xC2\xA0", "\xEF\xBC\x81=1", "O'Hara"})
        EXPECT_EQ(cellOf(csvText(text)), text);
}

TEST(CsvText, ComesBackOneToOne)
{
    for (const char *text : {"=1", "'=1", "''=1", "' =1",
                             "'\xC2\xA0\xEF\xBC\x9D"
                             "1",
                             " =1", "\t", "'\t", "'tis", "''", "'", "", "-", "'-", "\xEF\xBB\xBF@x", " '=1"}) {
        const std::string written = cellOf(csvText(text));
        EXPECT_EQ(plainText(written), text);
        EXPECT_LE(written.size(), std::string(text).size() + 1);
    }
    EXPECT_EQ(csvText("'=1"), "''=1");
}

} // namespace
} // namespace hammerline::exchange
