#pragma once
// Was the logbook edited by another program? Every row is covered by the digest of the deed that wrote it, every deed
// by that of the next, and the largest number ever given stands apart; so any row altered, added or removed, a changed
// entry, a gap, a cut end and a changed structure are found and named. What this cannot see is a whole history written
// anew with all its digests, nor its end cut off together with the number that stands apart: against both, compare a
// digest that left the house with what Logbook::digest says of the same deed now.
//
// It goes through the whole file, a minute for ten thousand instruments; of one instrument see verify_instrument.h.

#include "logbook/logbook.h"

#include <cstdint>
#include <string>
#include <vector>

namespace hammerline::logbook {

/// One thing that is not as the program wrote it.
struct Alteration {
    DeedId deed = 0;     ///< the deed it belongs to; 0 where it belongs to none
    std::string table{}; ///< empty where it is no table's
    std::string row{};   ///< which row, by its key; empty where it is no single row
    std::string what{};  ///< what is wrong, plain English without a full stop
    /// `deed 12, reading pass 1, quantity 4, note 40, take 1, version 1: was altered`.
    [[nodiscard]] std::string text() const;
};

struct HistoryCheck {
    std::vector<Alteration> alterations{}; ///< by deed; at most `mostAlterations`
    DeedId deeds = 0;                      ///< entries looked at
    std::int64_t rows = 0;                 ///< rows looked at, entries not counted
    std::string newestDigest{};            ///< 64 hex digits; empty where there is no entry
    [[nodiscard]] bool whole() const { return alterations.empty(); }
};
inline constexpr std::size_t mostAlterations = 1000;

/// Opens the file for reading only. Throws BrokenWorld where it cannot be read at all: not a logbook, made by a newer
/// program, locked. An altered mark or number in the file's head is an alteration like others, where the tables are
/// those of a logbook that is known.
[[nodiscard]] HistoryCheck verifyHistory(const std::string &path);

} // namespace hammerline::logbook
