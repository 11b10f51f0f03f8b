#include "sale_record/record_number.h"

#include <gtest/gtest.h>

namespace hammerline::sale_record {
namespace {

TEST(RecordNumber, IsTheHeadOfTheUidAndTheSecondOfIssue)
{
    SaleRecord record;
    record.issued = readings::parseRfc3339("2026-03-04T09:10:05Z").value();
    EXPECT_EQ(numberOf(record), "20260304-091005");
    record.instrument.uid = "b53b7f5fac602f897a87d95ff0086120";
    EXPECT_EQ(numberOf(record), "b53b7f5f-20260304-091005");
    record.issued += std::chrono::seconds(1);
    EXPECT_EQ(numberOf(record), "b53b7f5f-20260304-091006");
}

} // namespace
} // namespace hammerline::sale_record
