#include "logbook/verify_instrument.h"

#include "logbook/inside/file_check.h"
#include "logbook/inside/history.h"
#include "logbook/inside/instrument_check.h"
#include "logbook/inside/sha256.h"
#include "logbook/inside/transaction.h"

#include <algorithm>

namespace hammerline::logbook {

namespace {

using inside::Database;
using instrument::InstrumentId;

/// What is the same for every instrument of the file.
struct FileCheck {
    HistoryCheck found{};
    bool readable = false; ///< the rows can be looked at
    DeedId newest = 0;
};

FileCheck checkFile(Database &database)
{
    FileCheck file;
    file.readable = inside::checkStructure(database, file.found.alterations);
    if (!file.readable)
        return file;
    file.newest = inside::newestDeedId(database);
    inside::checkNumbering(database, file.newest, file.found.alterations);
    if (const auto stored = inside::findDeed(database, file.newest))
        file.found.newestDigest = inside::hexOf(stored->digest);
    return file;
}

HistoryCheck checkOne(Database &database, const FileCheck &file, InstrumentId instrument)
{
    HistoryCheck check = file.found;
    if (file.readable)
        inside::InstrumentCheck(database, instrument, file.newest, check).run();
    std::ranges::stable_sort(check.alterations, {}, &Alteration::deed);
    if (check.alterations.size() > mostAlterations)
        check.alterations.resize(mostAlterations);
    return check;
}

} // namespace

std::vector<HistoryCheck> verifyInstruments(const std::string &path, const std::vector<InstrumentId> &instruments)
{
    Database database(path, Database::Mode::ReadOnly);
    const inside::Transaction reading(database, inside::Locking::Read);
    const FileCheck file = checkFile(database);
    std::vector<HistoryCheck> checks;
    for (const InstrumentId instrument : instruments)
        checks.push_back(checkOne(database, file, instrument));
    return checks;
}

HistoryCheck verifyInstrument(const std::string &path, InstrumentId instrument)
{
    return verifyInstruments(path, {instrument}).front();
}

std::string editedWords(const HistoryCheck &check)
{
    const auto count = check.alterations.size();
    return "was edited by another program, in " +
           (count < mostAlterations ? std::to_string(count) : "at least " + std::to_string(count)) +
           (count == 1 ? " place: " : " places, first: ") + check.alterations.front().text();
}

std::vector<outcome::Fault> historyFaults(const std::string &path, InstrumentId instrument)
{
    const HistoryCheck check = verifyInstrument(path, instrument);
    if (check.whole())
        return {};
    return {{.file = path,
             .problem = editedWords(check) +
                        "; nobody can vouch for it, so it is neither sealed nor handed over. hammerline verify tells "
                        "all of it; a backup from before would be right"}};
}

} // namespace hammerline::logbook
