// Trials of a gauge study: whatever is accepted is studied or refused, never more.
#include "analysis/gauge_study.h"
#include "exchange/trials_csv.h"

#include <cstdint>
#include <string_view>

using namespace hammerline;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char *>(data), size);
    if (const auto trials = exchange::readTrialsCsv(text, {.file = "fuzz.csv"}))
        (void)analysis::gaugeStudy(trials.value()).ok();
    return 0;
}
