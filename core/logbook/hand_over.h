#pragma once
// Handing an instrument from one logbook to another, in one JSON document (resources/schemas/hand-over.schema.json).
//
// What travels is the whole history of the instrument: every deed about it and its passes, with the rows it wrote, and
// the photographs. Gauge studies stay: they are about a gauge, not about an instrument. So nothing is lost, corrections
// and withdrawn readings included, and taking back still works at the other end. Instruments, passes, work and
// photographs are named by their uids, quantities by their ids; deeds are numbered from 1 within the document. The same
// deeds give the same bytes, whichever logbook they come out of and in whichever order they came into it: a document
// tells them by their moments, then by their people, each behind those that it builds upon (inside/handed_order.h).
//
// The sale (buyer, price, remark) may be left out: then no deed of it is in the document, which says so ("without") and
// shows neither whether there was one nor a digest that a guess at a price could be tried on. Left out with it is that
// the instrument was delivered: it comes as it stood before. Where more was written of the instrument since its
// delivery, that stays in its history, which would have a gap without (`tellsOfDelivery`). The owner's name is one of
// the instrument's particulars and goes along. A whole document taken over later brings what was left out, and is in no
// conflict for it.
//
// The document vouches for itself, for the logbook that takes it over does not know the instrument:
//   * each deed has a "digest": SHA-256 over the canonical form (RFC 8785) of the deed without that member and with a
//     member "previous", the digest of the deed before (64 zeros before the first);
//   * the document has a "digest": SHA-256 over the canonical form of all of it without that member;
//   * each photograph is named by the SHA-256 of its JPEG;
//   * and the text has one form alone: a head, then each deed and each photograph on a line of its own.
// So a byte changed, a deed taken out, put in or moved is found and named, and nothing is written. This is no
// signature: who alters the document AND makes every digest anew is not found by it. Against that the digest of the
// document is told when it is handed over and when it is taken over, to be compared by another way (by telephone), or
// given to `takeOver`. Documents of version 1 had no digests; they are taken over all the same, nothing vouches for
// them, and `TakenOver` says so. Handing over writes version 2.
//
// What a digest cannot tell is looked at besides, and refused with its place: a reading, a mark, a decision or work on
// a note that the instrument does not have, a quantity that its action does not have, a tolerance set that cannot be
// read. A logbook may lawfully hold what fitted once: compass and action can be corrected after readings were taken. So
// whatever fits one of the versions of the instrument in the document is taken over.
//
// Taking over adds the deeds that are not here yet, with who did them and when, behind one deed "instrument-taken-over"
// that says who brought them in; a document whose deeds are all here adds nothing. Two logbooks that went on with one
// instrument apart from each other are brought together as long as they did not write to the same place, and neither
// signed a pass, or opened it again, that the other went on with: each of these is a conflict, and where there is one,
// nothing is written; the choice is the user's. Another instrument under the uid of one that is here is refused.

#include "instrument/instrument.h"
#include "logbook/logbook.h"

#include <string>
#include <vector>

namespace hammerline::logbook {

/// A place that this logbook and the document each went on with in a way of their own.
struct Conflict {
    std::string place{}; ///< "reading let_off C#4": what kind of row, and the subject of the deed
    Deed here{};         ///< what was done to it here
    Deed there{};        ///< what was done to it in the document; its id is the number within the document
    /// `reading let_off C#4: here reading-corrected by Ada on 2026-03-02, in the file … by Ben on 2026-03-05`.
    [[nodiscard]] std::string text() const;
};

struct TakenOver {
    instrument::InstrumentId instrument = 0; ///< 0 where there are conflicts and the instrument is not here
    bool isNew = false;                      ///< the instrument was not in this logbook before
    std::size_t added = 0;                   ///< deeds; 0: everything was here already
    std::vector<Conflict> conflicts{};       ///< where there are any, nothing was added
    std::string digest{};                    ///< of the document, 64 hexadecimal digits; empty: nothing vouches for it
    bool saleLeftOut = false;                ///< the document is without the sale
};

/// The digest that stands in a document of `Logbook::handOver`.
[[nodiscard]] std::string digestIn(const std::string &document);

/// Whether the document shows that the instrument was delivered at one time.
[[nodiscard]] bool tellsOfDelivery(const std::string &document);

/// A larger document is neither handed over nor taken over.
inline constexpr std::size_t mostHandOverBytes = 256u << 20;

} // namespace hammerline::logbook
