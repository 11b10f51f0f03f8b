#pragma once
// The digest of a deed: SHA-256 over the canonical JSON (RFC 8785) of its entry, the digest of the deed before and
// every row it wrote, in the order of `before`:
//
//   {"at":…,"deed":…,"instrument":…,"name":…,"pass":…,"person":…,"previous":"<64 hex digits>","reason":…,
//    "rows":[{…,"table":"reading",…}],"subject":…,"undoes":…}
//
// Members that are absent in the file are absent here. The marks, the first four bytes of the SHA-256 of each row,
// stand beside the digest so that a check can name the row; they prove nothing by themselves.

#include "logbook/inside/sha256.h"
#include "logbook/inside/version_table.h"
#include "logbook/logbook.h"

#include <string>
#include <string_view>

namespace hammerline::logbook::inside {

inline constexpr std::size_t digestSize = 32;
inline constexpr std::size_t markSize = 4;

class DeedDigest {
public:
    /// `previous`: digest of the deed before, 32 bytes; zeros before the first.
    DeedDigest(const Deed &entry, std::string_view previous);
    void add(const Row &row);

    struct Result {
        std::string digest{};
        std::string marks{};
    };
    [[nodiscard]] Result finish();
    /// The marks so far, which `finish` then leaves out: for one who does not want to hold those of a million rows.
    [[nodiscard]] std::string takeMarks();

private:
    Sha256 m_whole;
    Sha256 m_one;
    std::string m_buffer;
    std::string m_tail;
    std::string m_marks;
    bool m_any = false;
};

} // namespace hammerline::logbook::inside
