// Trials of a gauge study: whatever is accepted is studied or refused, never more; and what is studied must survive
// being written and read again, to the last digit.
#include "analysis/gauge_study.h"
#include "exchange/trials_csv.h"

#include <cstdint>
#include <cstdlib>
#include <string_view>

using namespace hammerline;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char *>(data), size);
    const exchange::TrialsCsvOptions options{.file = "fuzz.csv"};
    const auto trials = exchange::readTrialsCsv(text, options);
    if (!trials || !analysis::gaugeStudy(trials.value()))
        return 0;
    const auto again = exchange::readTrialsCsv(exchange::writeTrialsCsv(trials.value()), options);
    if (!again || again.value() != trials.value())
        std::abort();
    return 0;
}
