#pragma once
// What a Logbook holds: its connection, and the questions that more than one of its parts ask.

#include "logbook/inside/database.h"
#include "logbook/inside/deed_writer.h"
#include "logbook/logbook.h"

#include <string>

namespace hammerline::logbook {

struct Logbook::Inside {
    inside::Database database;
    Access access;

    /// For writing; throws where the logbook was opened for reading only.
    [[nodiscard]] inside::DeedWriter writer();
    /// The instrument of a pass; throws where there is no such pass.
    [[nodiscard]] instrument::InstrumentId requirePass(readings::PassId id);
    /// The same; throws where the pass is signed besides.
    [[nodiscard]] instrument::InstrumentId requireOpen(readings::PassId id);
    [[nodiscard]] decisions::Standing standing(readings::PassId id);
    [[nodiscard]] std::optional<readings::Pass> findPass(readings::PassId id);
    [[nodiscard]] std::optional<instrument::Instrument> findInstrument(instrument::InstrumentId id);
    /// Throws where it is not there.
    [[nodiscard]] instrument::Instrument requireInstrument(instrument::InstrumentId id);
    /// The pass with a number and a uid; throws where its instrument is not there.
    [[nodiscard]] readings::Pass numbered(readings::Pass pass);
    /// Writes the reading, with the suspicion that was confirmed (empty: none), and commits.
    DeedId enter(inside::DeedWriter &writer, readings::PassId pass, const readings::Reading &reading,
                 const Stamp &stamp, const std::string &reason, const std::string &confirmed);
    /// Where decisions are written, what they take the place of, and the name of the deed.
    struct Decided {
        const inside::VersionTable &table;
        const inside::VersionTable &instead;
        std::string deed;
    };
    outcome::Outcome<DeedId> decide(readings::PassId pass, const std::vector<decisions::Decision> &made,
                                    const Decided &into, const Stamp &stamp, const Logbook &book);
    /// One more than the number the query gives.
    [[nodiscard]] std::int64_t nextId(std::string_view newestSql);
    /// 32 hex digits out of SQLite's random numbers.
    [[nodiscard]] std::string newUid();
};

} // namespace hammerline::logbook
