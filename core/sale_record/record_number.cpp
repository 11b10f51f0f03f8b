#include "sale_record/record_number.h"

#include <algorithm>

namespace hammerline::sale_record {

std::string numberOf(const SaleRecord &record)
{
    constexpr std::size_t uidDigits = 8;
    constexpr std::size_t dayEnds = sizeof "2026-03-04" - 1;
    constexpr std::size_t secondEnds = sizeof "2026-03-04T09:10:00" - 1;
    std::string second = readings::rfc3339(record.issued).substr(0, secondEnds);
    second[dayEnds] = '/';
    std::erase_if(second, [](char letter) { return letter == '-' || letter == ':'; });
    std::ranges::replace(second, '/', '-');
    const std::string head = record.instrument.uid.substr(0, uidDigits);
    return head.empty() ? second : head + '-' + second;
}

} // namespace hammerline::sale_record
