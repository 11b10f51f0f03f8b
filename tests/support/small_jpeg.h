#pragma once
// A JPEG as far as its segments go: enough for whoever looks at the structure, nothing that a decoder would show.

#include <string>
#include <string_view>

namespace hammerline::support {

inline std::string segment(int marker, std::string_view content)
{
    const std::size_t length = content.size() + 2;
    return std::string{'\xff', static_cast<char>(marker), static_cast<char>(length >> 8), static_cast<char>(length)} +
           std::string(content);
}

/// `more`: segments behind the first.
inline std::string smallJpeg(int width, int height, const std::string &more = {})
{
    const std::string frame{'\x08',
                            static_cast<char>(height >> 8),
                            static_cast<char>(height),
                            static_cast<char>(width >> 8),
                            static_cast<char>(width),
                            '\x01',
                            '\x01',
                            '\x11',
                            '\0'};
    return "\xff\xd8" + segment(0xe0, "JFIF") + more + segment(0xdb, std::string(65, '\x01')) + segment(0xc0, frame) +
           segment(0xc4, std::string(19, '\0')) + segment(0xda, "scan") + std::string("coded\xff\0more\xff\xd9", 13);
}

} // namespace hammerline::support
