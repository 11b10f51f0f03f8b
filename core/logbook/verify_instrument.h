#pragma once
// Was what a logbook says of one instrument edited by another program? For whoever vouches for that instrument, by a
// seal or by handing it on, and for whoever shows it to the lead: it takes milliseconds in a logbook of any size, where
// verify_history.h goes through all of it.
//
// Looked at: the structure of the file; its numbering from below one to the largest number ever given; every deed
// about the instrument or one of its passes, its digest computed anew from its entry, its rows and the digest that
// stands in the entry directly before it; that the entries directly before and after each are there; every row of the
// instrument and its passes in every table, whether a deed wrote it that is about them; every picture that its
// photographs name; and the newest entry of the file, whoever it is about, since a record pins its digest.
//
// Not seen, and left to verifyHistory:
// - what was altered at other instruments, in gauge studies, and pictures that no photograph names: that does not bar
//   this instrument;
// - a digest forged to fit an altered deed of the instrument, unless the deed directly after it is about the instrument
//   too: the deed after one is not computed where it is about something else;
// - a deed whose rows of the instrument were all removed and whose entry was made to name another instrument and pass;
// - damage to the pages of the file that no row of the instrument lies on, an index of SQLite's that says otherwise
// than
//   its table among it.
// Nor is seen what verifyHistory itself cannot see.

#include "logbook/verify_history.h"

#include <string>
#include <vector>

namespace hammerline::logbook {

/// `deeds` and `rows` count what was looked at. Of an instrument that is not there: what was found about the file.
/// Opens the file for reading only. Throws as verifyHistory does.
[[nodiscard]] HistoryCheck verifyInstrument(const std::string &path, instrument::InstrumentId instrument);

/// Of several, in their order; quicker than one by one.
[[nodiscard]] std::vector<HistoryCheck> verifyInstruments(const std::string &path,
                                                          const std::vector<instrument::InstrumentId> &instruments);

/// `was edited by another program, in 2 places, first: deed 12, …`; the check must not be whole.
[[nodiscard]] std::string editedWords(const HistoryCheck &check);

/// Nothing where verifyInstrument finds nothing; else one fault that counts the alterations and names the first.
[[nodiscard]] std::vector<outcome::Fault> historyFaults(const std::string &path, instrument::InstrumentId instrument);

} // namespace hammerline::logbook
