#include "seal/inside/seal_form.h"

namespace hammerline::seal {

std::string rangeText(const SealPlace &place)
{
    std::string text = "[0 " + std::to_string(place.open) + ' ' + std::to_string(place.close) + ' ' +
                       std::to_string(place.size - place.close);
    text.resize(rangePlaceholder.size() - 1, ' ');
    return text + ']';
}

std::optional<std::size_t> onlyPlaceOf(std::string_view needle, std::string_view text)
{
    const std::size_t first = text.find(needle);
    if (first == std::string_view::npos || text.find(needle, first + 1) != std::string_view::npos)
        return std::nullopt;
    return first;
}

std::string signedBytes(std::string_view file, const SealPlace &place)
{
    std::string bytes(file.substr(0, place.open));
    bytes += file.substr(place.close);
    return bytes;
}

} // namespace hammerline::seal
