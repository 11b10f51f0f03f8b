// Photographs: what is accepted has a size, and nothing may stand in front of it, behind it or be cut off it.
#include "dossier/plain_jpeg.h"

#include <cstdint>
#include <cstdlib>
#include <string>

using namespace hammerline;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string jpeg(reinterpret_cast<const char *>(data), size);
    const auto found = dossier::sizeOfPicture(jpeg);
    if (!found)
        return 0;
    if (found.value().width <= 0 || found.value().height <= 0)
        std::abort();
    if (dossier::sizeOfPicture(jpeg + ' ') || dossier::sizeOfPicture(' ' + jpeg) ||
        dossier::sizeOfPicture(jpeg.substr(0, size - 1)))
        std::abort();
    return 0;
}
