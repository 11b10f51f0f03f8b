// Source: 1 in = 25.4 mm exactly (international yard and pound agreement of 1959; NIST SP 811); decimal equivalents of
// 64ths as in every workshop chart. The charts disagree on exact halves at four decimals (0.79375 is printed 0.7937 and
// 0.7938): ours are rounded half away from zero.
#include "check_data.h"

#include "units/parse_amount.h"

namespace hammerline::reference {
namespace {

using units::parseAmount;
using units::Unit;

TEST(InchChart, HasTheExactMillimetresOfEverySixtyFourth)
{
    const auto rows = rowsOf("inch64.csv");
    ASSERT_EQ(rows.size(), 64U);
    for (const auto &row : rows) {
        const auto typed = parseAmount(row[0] + "/64", {}).value().value;
        EXPECT_EQ(units::exactDecimal(typed), row[3]);
        EXPECT_EQ(parseAmount(row[2] + "in", {}).value().value, typed);
        EXPECT_EQ(parseAmount(row[3] + "mm", {}).value().value, typed);
    }
}

TEST(InchChart, ReadsReducedFractions)
{
    for (const auto &row : rowsOf("inch64.csv"))
        EXPECT_EQ(units::exactDecimal(parseAmount(row[1] + "\"", {}).value().value), row[3]) << row[1];
}

TEST(InchChart, RoundsExactHalvesUpNotToEven)
{
    int halves = 0;
    for (const auto &row : rowsOf("inch64.csv")) {
        const auto typed = parseAmount(row[0] + "/64", {}).value().value;
        EXPECT_EQ(units::fixedDecimal(typed, Unit::Millimetre, 4), row[5]);
        halves += row[4] != row[5] ? 1 : 0;
    }
    EXPECT_GT(halves, 0) << "the chart holds the trap";
}

} // namespace
} // namespace hammerline::reference
