// Tolerance sets: what is accepted has no fault and is the same set when written and read again.
#include "exchange/tolerance_json.h"

#include <cstdint>
#include <cstdlib>
#include <string_view>

using namespace hammerline;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char *>(data), size);
    const auto read = exchange::readToleranceSet(text, "fuzz.json");
    if (!read)
        return 0;
    const auto again = exchange::readToleranceSet(exchange::writeToleranceSet(read.value()), "fuzz.json");
    if (!again || again.value() != read.value() || !tolerance::faultsOf(read.value()).empty())
        std::abort();
    return 0;
}
