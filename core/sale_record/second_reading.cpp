#include "sale_record/second_reading.h"

namespace hammerline::sale_record {

SecondReading secondReadingOf(const SpotCheckPass &made, const readings::ValueTable &first,
                              const tolerance::ToleranceSet &set)
{
    const auto again = readings::meansOf(made.readings);
    auto findings = decisions::spotFindings(made.check, first, again, set, "0.95").value();
    std::erase_if(findings, [](const decisions::SpotFinding &finding) { return finding.readAgain() == 0; });
    return {.pass = made.pass, .check = made.check, .findings = std::move(findings)};
}

} // namespace hammerline::sale_record
