// Readings files: what is accepted must survive being written and read again, to the last digit.
#include "exchange/readings_csv.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <string_view>

using namespace hammerline;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char *>(data), size);
    const exchange::CsvReadingOptions options{.file = "fuzz.csv"};
    auto read = exchange::readReadingsCsv(text, options);
    if (!read)
        return 0;
    auto first = std::move(read).value();
    auto again = exchange::readReadingsCsv(exchange::writeReadingsCsv(first), options);
    if (!again || again.value().size() != first.size())
        std::abort();
    const auto byPlace = [](const auto &a, const auto &b) { return a.place < b.place; };
    std::ranges::sort(first, byPlace);
    std::ranges::sort(again.value(), byPlace);
    for (std::size_t at = 0; at < first.size(); ++at)
        if (first[at].place != again.value()[at].place || first[at].value != again.value()[at].value ||
            first[at].remark != again.value()[at].remark)
            std::abort();
    return 0;
}
