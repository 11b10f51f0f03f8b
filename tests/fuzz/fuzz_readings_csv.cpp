// Readings files: what is accepted must survive being written and read again, to the last digit; and a text that comes
// in pieces says the same as the whole.
#include "exchange/readings_csv.h"

#include "core/exchange/cut_text.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <string_view>

using namespace hammerline;

namespace {

using Read = outcome::Outcome<std::vector<readings::Reading>>;

const exchange::CsvReadingOptions options{.file = "fuzz.csv"};

Read inPieces(std::string_view text, std::size_t first, std::size_t piece)
{
    exchange::CsvReadings file(std::make_unique<exchange::CutText>(std::string(text), first, piece), options);
    std::vector<readings::Reading> all;
    std::vector<readings::Reading> batch;
    for (;;) {
        const auto more = file.next(batch);
        if (!more)
            return file.faults();
        if (!more.value())
            return all;
        all.insert(all.end(), batch.begin(), batch.end());
    }
}

void requireSame(const Read &pieces, const Read &whole)
{
    if (pieces.ok() != whole.ok())
        std::abort();
    if (whole ? pieces.value() != whole.value() : pieces.faults() != whole.faults())
        std::abort();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char *>(data), size);
    auto read = exchange::readReadingsCsv(text, options);
    const std::size_t cut = size == 0 ? 1 : data[size / 2] % size + 1;
    requireSame(inPieces(text, cut, size + 1), read);
    requireSame(inPieces(text, 0, cut % 7 + 1), read);
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
