#pragma once
// Where the seal lies in the file, and the marks by which a record is known for one of ours even when it is damaged.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace hammerline::seal {

inline constexpr std::string_view pdfHead = "%PDF-1.6\n";
inline constexpr std::string_view pdfTail = "%%EOF\n";
/// Extra header line of every record.
inline constexpr std::string_view ourHeaderLine = "% Regulation record by Hammerline\n";
inline constexpr std::string_view rangeKey = "/ByteRange";
inline constexpr std::string_view subFilter = "/ETSI.CAdES.detached";
/// A P-256 seal is about 900 bytes, most of them the certificate, whose name may be up to four bytes a character.
inline constexpr std::size_t reservedBytes = 2300;
/// Stands where the offsets come to stand; as large as PDF/A-3 lets an integer be.
inline constexpr std::string_view rangePlaceholder = "[ 0 2147483647 2147483647 2147483647 ]";

/// The offsets of a whole-file signature: all but [open, close) is signed, and that is `<` hex digits `>`.
struct SealPlace {
    std::size_t open = 0;
    std::size_t close = 0;
    std::size_t size = 0; ///< of the file
};

/// `[0 a b c]`, padded with blanks to the length that was kept free.
[[nodiscard]] std::string rangeText(const SealPlace &place);
/// The only place where `needle` stands; absent where it stands nowhere or twice.
[[nodiscard]] std::optional<std::size_t> onlyPlaceOf(std::string_view needle, std::string_view text);
/// What is signed.
[[nodiscard]] std::string signedBytes(std::string_view file, const SealPlace &place);

} // namespace hammerline::seal
