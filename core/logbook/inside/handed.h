#pragma once
// A hand-over as a value, between the document and the file of a logbook.
//
// Its rows are portable: where a row of the file has a number that means something in that file alone, a portable row
// has a name. Instrument and passes are named by their uids, quantities by their ids, deeds by their numbers within the
// document.

#include "logbook/inside/version_table.h"
#include "logbook/logbook.h"

#include <map>
#include <string>
#include <vector>

namespace hammerline::logbook::inside {

struct HandedDeed {
    Deed deed{};        ///< id and undoes are numbers within the document; instrument and pass are not used
    std::string pass{}; ///< uid; empty: the deed is about no pass
    std::vector<Row> rows{};
};

struct Handed {
    std::string instrument{};                      ///< uid
    bool saleLeftOut = false;                      ///< then none of the deeds is one of the sale
    std::vector<HandedDeed> deeds{};               ///< numbered from 1; they refer to earlier ones alone
    std::map<std::string, std::string> pictures{}; ///< JPEG by digest
};

/// What a column holds, as far as carrying it elsewhere is concerned.
enum class Carried { AsItIs, Instrument, Pass, Quantity, Deed };
[[nodiscard]] Carried carriedAs(const std::string &column);

/// The names of the document for the numbers of the file, and back.
struct Names {
    instrument::InstrumentId instrument = 0;
    std::string instrumentUid{};
    std::map<readings::PassId, std::string> uidOfPass{};
    std::map<std::string, readings::PassId> passOfUid{};
    std::map<DeedId, DeedId> numberOfDeed{}; ///< of the document, by that of the file
    std::map<DeedId, DeedId> deedOfNumber{};
};
/// Throws where the row names what the file does not have; `path` is for the message. Texts are as `wholeUtf8` has
/// them.
[[nodiscard]] Row portable(Row row, const Names &names, const std::string &path);
/// The text; bytes that are no UTF-8 (no text of ours has any) are U+FFFD, which JSON can carry.
[[nodiscard]] std::string wholeUtf8(std::string text);
/// Every name in the row is known.
[[nodiscard]] Row local(Row row, const Names &names);

/// For each deed a name of what it says and wrote: the same wherever it stands and however it is numbered. It is not
/// the digest that the document carries, which says where it stands too.
[[nodiscard]] std::vector<std::string> contentDigests(const Handed &handed);

/// Whether all that it wrote is about the sale. No deed writes about the sale and about something else, and none but
/// another one of the sale refers to one.
[[nodiscard]] bool isOfSale(const std::vector<Row> &rows);

/// The document, with its digests.
[[nodiscard]] std::string textOf(const Handed &handed);

} // namespace hammerline::logbook::inside
