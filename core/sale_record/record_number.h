#pragma once
// The number that tells one record from every other: a report needs one, on each of its pages (ISO/IEC 17025:2017,
// 7.8.2.1 d).

#include "sale_record/sale_record.h"

#include <string>

namespace hammerline::sale_record {

/// The head of the instrument's uid and the second of issue in UTC: "b53b7f5f-20260304-091000". Without a uid the
/// second alone. Nobody issues two records of one instrument in one second.
[[nodiscard]] std::string numberOf(const SaleRecord &record);

} // namespace hammerline::sale_record
