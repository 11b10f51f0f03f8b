#include "logbook/inside/base64.h"

#include <openssl/evp.h>

#include <vector>

namespace hammerline::logbook::inside {

namespace {

std::vector<unsigned char> unsignedBytes(std::string_view text)
{
    return {text.begin(), text.end()};
}

} // namespace

std::string base64Of(std::string_view bytes)
{
    const auto in = unsignedBytes(bytes);
    std::vector<unsigned char> out(4 * ((in.size() + 2) / 3) + 1);
    const int length = EVP_EncodeBlock(out.data(), in.data(), static_cast<int>(in.size()));
    return {out.begin(), out.begin() + length};
}

std::optional<std::string> fromBase64(std::string_view text)
{
    const auto in = unsignedBytes(text);
    std::vector<unsigned char> out(3 * (in.size() / 4) + 3);
    const int length = EVP_DecodeBlock(out.data(), in.data(), static_cast<int>(in.size()));
    const int padding = text.ends_with("==") ? 2 : text.ends_with('=') ? 1 : 0;
    if (length < padding)
        return std::nullopt;
    const std::string bytes(out.begin(), out.begin() + length - padding);
    return base64Of(bytes) == text ? std::optional(bytes) : std::nullopt;
}

} // namespace hammerline::logbook::inside
