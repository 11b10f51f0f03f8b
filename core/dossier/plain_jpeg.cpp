#include "dossier/plain_jpeg.h"

#include <optional>
#include <string>

namespace hammerline::dossier {

namespace {

// Markers of T.81, table B.1, without their leading FF.
constexpr unsigned startOfImage = 0xd8, endOfImage = 0xd9, startOfScan = 0xda, quantization = 0xdb, restart = 0xdd;
constexpr unsigned huffman = 0xc4, baseline = 0xc0, progressive = 0xc2;
constexpr unsigned jfif = 0xe0, colourProfile = 0xe2, adobe = 0xee;

outcome::Fault fault(std::string problem)
{
    return {.problem = std::move(problem)};
}

class Walk {
public:
    explicit Walk(std::string_view bytes) : m_bytes(bytes) {}

    outcome::Outcome<PictureSize> walk()
    {
        if (m_bytes.size() > mostPictureBytes)
            return fault("the picture is larger than 4 MiB; make it smaller");
        if (marker() != startOfImage)
            return fault("the picture is no JPEG; give one as a camera makes it");
        while (const auto next = marker()) {
            if (*next == endOfImage)
                return finished();
            if (!mayStand(*next))
                return fault("the picture carries more than the image (camera data, a comment); make a plain copy");
            if (!segment(*next))
                break;
        }
        return fault("the picture is damaged: it breaks off or is no plain JPEG; make the copy again");
    }

private:
    static bool mayStand(unsigned marker)
    {
        return marker == quantization || marker == restart || marker == huffman || marker == baseline ||
               marker == progressive || marker == startOfScan || marker == jfif || marker == colourProfile ||
               marker == adobe;
    }

    outcome::Outcome<PictureSize> finished() const
    {
        if (m_at != m_bytes.size())
            return fault("the picture has bytes after its end; make a plain copy");
        if (m_size.width == 0 || m_size.height == 0)
            return fault("the picture is damaged: it has no size; make the copy again");
        return m_size;
    }

    [[nodiscard]] unsigned byteAt(std::size_t at) const { return static_cast<unsigned char>(m_bytes[at]); }
    [[nodiscard]] std::size_t pairAt(std::size_t at) const { return byteAt(at) << 8 | byteAt(at + 1); }

    std::optional<unsigned> marker()
    {
        if (m_at + 2 > m_bytes.size() || byteAt(m_at) != 0xff)
            return std::nullopt;
        m_at += 2;
        return byteAt(m_at - 1);
    }

    /// Steps over a segment; false where it does not fit.
    bool segment(unsigned marker)
    {
        if (m_at + 2 > m_bytes.size())
            return false;
        const std::size_t length = pairAt(m_at);
        if (length < 2 || m_at + length > m_bytes.size())
            return false;
        if (marker == baseline || marker == progressive) {
            if (length < 8)
                return false;
            m_size = {static_cast<int>(pairAt(m_at + 5)), static_cast<int>(pairAt(m_at + 3))};
        }
        m_at += length;
        return marker != startOfScan || entropyCoded();
    }

    /// Steps to the marker that ends the coded data: FF is followed by 00 or a restart within it (T.81, F.1.2.3).
    bool entropyCoded()
    {
        for (; m_at + 1 < m_bytes.size(); ++m_at) {
            const unsigned next = byteAt(m_at + 1);
            if (byteAt(m_at) == 0xff && next != 0 && (next < 0xd0 || next > 0xd7))
                return true;
        }
        return false;
    }

    std::string_view m_bytes;
    std::size_t m_at = 0;
    PictureSize m_size{};
};

} // namespace

outcome::Outcome<PictureSize> sizeOfPicture(std::string_view jpeg)
{
    return Walk(jpeg).walk();
}

} // namespace hammerline::dossier
