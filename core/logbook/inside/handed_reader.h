#pragma once
// Reads a hand-over and lets in nothing that was altered since it was written, as far as its digests tell, and nothing
// that a logbook could not hold: what comes out of here can be written to one and read from it again.

#include "logbook/inside/database.h"
#include "logbook/inside/handed.h"
#include "outcome/outcome.h"

#include <string>

namespace hammerline::logbook::inside {

struct Read {
    Handed handed{};
    std::string digest{}; ///< of the document; empty: it has none, and nothing vouches for it
};

/// `types` is any logbook of the newest structure: it says which columns are numbers and which texts. `file` is to
/// blame, `setFaults` knows tolerance sets. One fault: the first.
[[nodiscard]] outcome::Outcome<Read> readHanded(const std::string &text, const std::string &file, Database &types,
                                                const SetCheck &setFaults);

} // namespace hammerline::logbook::inside
