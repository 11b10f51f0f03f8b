#pragma once
// Handing an instrument from one logbook to another, in one JSON document (resources/schemas/hand-over.schema.json).
//
// What travels is the whole history of the instrument: every deed about it and its passes, with the rows it wrote, and
// the photographs. Gauge studies stay: they are about a gauge, not about an instrument. So nothing is lost, corrections
// and withdrawn readings included, and taking back still works at the other end. Instruments, passes, work and
// photographs are named by their uids, quantities by their ids; deeds are numbered from 1 within the document. The same
// content gives the same bytes, whichever logbook it comes out of.
//
// Taking over adds the deeds that are not here yet, with who did them and when, behind one deed "instrument-taken-over"
// that says who brought them in; a document whose deeds are all here adds nothing. Two logbooks that went on with one
// instrument apart from each other are brought together as long as they did not write to the same place, and neither
// signed a pass, or opened it again, that the other went on with: each of these is a conflict, and where there is one,
// nothing is written; the choice is the user's.

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
};

/// A document larger than this is refused.
inline constexpr std::size_t mostHandOverBytes = 256u << 20;

} // namespace hammerline::logbook
