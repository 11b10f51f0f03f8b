#pragma once
// Goes along the deeds about one instrument, as verify_instrument.h says.

#include "logbook/inside/database.h"
#include "logbook/inside/deed_check.h"
#include "logbook/inside/subject_rows.h"
#include "logbook/verify_history.h"

#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace hammerline::logbook::inside {

class InstrumentCheck {
public:
    /// `newest`: number of the file's newest entry.
    InstrumentCheck(Database &database, instrument::InstrumentId instrument, DeedId newest, HistoryCheck &check);
    /// Within the caller's transaction; once.
    void run();

private:
    void gatherDeeds();
    void gatherDeedsOf(const Subject &subject);
    void take(DeedId id, const std::vector<Subject> &wrote);
    void reportStrayed(DeedId id, const Subject &subject);
    /// What is wrong with the deed, given the entry before it.
    [[nodiscard]] std::vector<Alteration> held(const StoredDeed &stored, const std::vector<Row> &rows);
    [[nodiscard]] DigestsBefore computedBefore(DeedId id);
    [[nodiscard]] std::string storedDigest(DeedId id);
    void requireEntry(DeedId id);
    void checkNewest();
    void checkPicturesOf();

    Database *m_database;
    SubjectRows m_rows;
    instrument::InstrumentId m_instrument;
    DeedId m_newest;
    HistoryCheck *m_check;
    std::map<DeedId, std::vector<Subject>> m_deeds{}; ///< by number, with those of our subjects that have rows of it
    std::set<DeedId> m_gone{};                        ///< entries that are not there, each told once
    std::pair<DeedId, std::string> m_last{0, {}};     ///< the deed looked at last and its digest as stored
};

} // namespace hammerline::logbook::inside
