// The data of a record: whatever is read is judged to an end, with a bounded list of disagreements, and the same list
// every time.
#include "exchange/record_check.h"

#include <cstdint>
#include <cstdlib>
#include <string_view>

using namespace hammerline;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char *>(data), size);
    const auto check = exchange::checkRecord({.recordJson = text});
    if (!check)
        return 0;
    const auto again = exchange::checkRecord({.recordJson = text});
    if (!again || again.value().disagreements != check.value().disagreements ||
        check.value().disagreements.size() > exchange::mostDisagreements)
        std::abort();
    return 0;
}
