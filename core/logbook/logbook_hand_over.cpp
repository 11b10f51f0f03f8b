#include "logbook/hand_over.h"
#include "logbook/inside/broken.h"
#include "logbook/inside/handed_order.h"
#include "logbook/inside/handed_reader.h"
#include "logbook/inside/handed_sale.h"
#include "logbook/inside/history.h"
#include "logbook/inside/pictures.h"
#include "logbook/inside/store.h"
#include "logbook/inside/subject_rows.h"
#include "logbook/inside/transaction.h"
#include "logbook/verify_instrument.h"

#include <algorithm>
#include <utility>

namespace hammerline::logbook {

namespace {

using inside::Cell;
using inside::Database;
using inside::Handed;
using inside::HandedDeed;
using inside::Names;
using inside::Row;
using instrument::InstrumentId;

/// The uids of the passes that the instrument ever had, by the first version of each.
void namePasses(Database &database, Names &names)
{
    const inside::Use query = database.use("SELECT pass, uid FROM pass WHERE instrument = ?1 AND version = 1");
    query->bind(1, names.instrument);
    while (query->step()) {
        const std::string uid = query->text(1);
        if (!names.passOfUid.emplace(uid, query->integer(0)).second)
            inside::throwDamaged(database.path(), "two passes of an instrument have the same uid");
        names.uidOfPass.emplace(query->integer(0), uid);
    }
}

std::vector<Deed> deedsOf(Database &database, InstrumentId instrument)
{
    const inside::Use query = database.use("SELECT deed FROM history WHERE instrument = ?1 ORDER BY deed");
    query->bind(1, instrument);
    std::vector<Deed> deeds;
    while (query->step())
        deeds.push_back(inside::findEntry(database, query->integer(0)).value());
    return deeds;
}

void keepPictures(Database &database, Handed &handed)
{
    for (const HandedDeed &deed : handed.deeds)
        for (const Row &row : deed.rows)
            if (row.table == &inside::photographTable() && !row.withdrawn()) {
                const auto &digest = std::get<std::string>(row.value(0));
                auto jpeg = inside::findPicture(database, digest);
                if (!jpeg)
                    inside::throwDamaged(database.path(), "picture " + digest + " is not there");
                handed.pictures[digest] = *std::move(jpeg);
            }
}

/// What the logbook holds of the instrument, and the names it is told by.
struct Gathered {
    Handed handed{};
    Names names{};
};

/// As a document can carry it.
Deed portable(Deed deed)
{
    for (std::string *text : {&deed.stamp.person, &deed.name, &deed.subject, &deed.reason})
        *text = inside::wholeUtf8(std::move(*text));
    return deed;
}

Gathered gather(Database &database, InstrumentId instrument, const std::string &uid)
{
    Gathered gathered;
    Names &names = gathered.names;
    names.instrument = instrument;
    names.instrumentUid = gathered.handed.instrument = uid;
    namePasses(database, names);
    inside::SubjectRows rows(database, inside::presentTables(database));
    for (Deed &deed : deedsOf(database, instrument)) {
        HandedDeed handed;
        auto wrote = rows.of(deed);
        const DeedId number = std::ssize(gathered.handed.deeds) + 1;
        for (Row &row : wrote)
            handed.rows.push_back(inside::portable(std::move(row), names, database.path()));
        names.numberOfDeed[deed.id] = number;
        names.deedOfNumber[number] = deed.id;
        if (deed.pass != 0)
            handed.pass = names.uidOfPass.at(deed.pass);
        if (deed.undoes)
            deed.undoes = names.numberOfDeed.at(*deed.undoes);
        deed.id = number;
        handed.deed = portable(std::move(deed));
        gathered.handed.deeds.push_back(std::move(handed));
    }
    keepPictures(database, gathered.handed);
    return gathered;
}

/// 0: no instrument with this uid was ever here.
InstrumentId findByUid(Database &database, const std::string &uid)
{
    const inside::Use query = database.use("SELECT min(instrument) FROM instrument WHERE uid = ?1 AND version = 1");
    query->bind(1, uid);
    return query->step() ? query->integer(0) : 0;
}

using PlaceOfRow = std::pair<const inside::VersionTable *, std::vector<Cell>>;

/// Table, key and version.
PlaceOfRow placeOf(const Row &row)
{
    const auto end = row.cells.begin() + static_cast<std::ptrdiff_t>(row.table->firstValue());
    return {row.table, {row.cells.begin(), end}};
}

bool changesStanding(const HandedDeed &deed)
{
    return std::ranges::any_of(deed.rows, [](const Row &row) { return row.table == &inside::passStandingTable(); });
}

/// Places that both wrote and that do not stand in a deed of both.
std::vector<Conflict> conflictsOf(const Handed &here, const std::vector<const HandedDeed *> &missing)
{
    std::map<PlaceOfRow, const HandedDeed *> written;
    for (const HandedDeed &deed : here.deeds)
        for (const Row &row : deed.rows)
            written[placeOf(row)] = &deed;
    std::vector<Conflict> conflicts;
    for (const HandedDeed *deed : missing) {
        for (const Row &row : deed->rows)
            if (const auto found = written.find(placeOf(row)); found != written.end()) {
                conflicts.push_back({row.table->name() + ' ' + deed->deed.subject, found->second->deed, deed->deed});
                break;
            }
    }
    return conflicts;
}

/// What each side did that the other does not know.
struct Apart {
    std::vector<const HandedDeed *> here{};
    std::vector<const HandedDeed *> there{}; ///< in the document
};

/// By content. Deeds of both get the number of the one here.
Apart apartOf(const Handed &document, const Handed &here, Names &names)
{
    std::map<std::string, std::size_t> known;
    const auto digestsHere = inside::contentDigests(here);
    for (std::size_t index = 0; index < digestsHere.size(); ++index)
        known[digestsHere[index]] = index;
    const auto numbersHere = std::exchange(names.deedOfNumber, {});
    Apart apart;
    std::vector<bool> shared(here.deeds.size());
    const auto digests = inside::contentDigests(document);
    for (std::size_t index = 0; index < digests.size(); ++index)
        if (const auto found = known.find(digests[index]); found != known.end()) {
            names.deedOfNumber[document.deeds[index].deed.id] = numbersHere.at(here.deeds[found->second].deed.id);
            shared[found->second] = true;
        } else {
            apart.there.push_back(&document.deeds[index]);
        }
    for (std::size_t index = 0; index < shared.size(); ++index)
        if (!shared[index])
            apart.here.push_back(&here.deeds[index]);
    return apart;
}

/// The first deed about each pass; one that signs it or opens it again comes before all others.
std::map<std::string, const HandedDeed *> tellingDeeds(const std::vector<const HandedDeed *> &deeds)
{
    std::map<std::string, const HandedDeed *> telling;
    for (const HandedDeed *deed : deeds) {
        if (deed->pass.empty())
            continue;
        const auto [place, isFirst] = telling.emplace(deed->pass, deed);
        if (!isFirst && changesStanding(*deed) && !changesStanding(*place->second))
            place->second = deed;
    }
    return telling;
}

/// Passes that one side signed, or opened again, while the other went on with them: who signed did not know.
void addSignedApart(const Apart &apart, std::vector<Conflict> &conflicts)
{
    const auto here = tellingDeeds(apart.here);
    for (const auto &[pass, there] : tellingDeeds(apart.there)) {
        const auto ours = here.find(pass);
        if (ours == here.end() || (!changesStanding(*ours->second) && !changesStanding(*there)))
            continue;
        const HandedDeed &signedIn = changesStanding(*there) ? *there : *ours->second;
        conflicts.push_back({"a pass and its signature, " + signedIn.deed.subject, ours->second->deed, there->deed});
    }
}

outcome::Fault passElsewhere(const std::string &file, const std::string &uid)
{
    return {file, 0, "pass " + uid + " belongs to another instrument of this logbook; nothing was taken over"};
}

outcome::Fault otherDocument(const std::string &file, const std::string &digest)
{
    if (digest.empty())
        return {file, 0, "it is of version 1, which has no digest to hold yours against; nothing was taken over"};
    return {file, 0,
            "its digest is " + digest +
                ", not the one you gave; it is another document, or it was altered and its "
                "digests with it; nothing was taken over"};
}

/// Every history of an instrument begins with the deed that took it in.
bool isAnother(const Handed &document, const Handed &here)
{
    const auto beginning = [](const Handed &of) {
        return inside::contentDigests({of.instrument, false, {of.deeds.front()}, {}}).front();
    };
    return !here.deeds.empty() && beginning(document) != beginning(here);
}

outcome::Fault uidOfAnother(const std::string &file, const Handed &document, InstrumentId known)
{
    return {file, 0,
            "\"" + document.deeds.front().deed.subject + "\" has the uid of instrument " + std::to_string(known) +
                " of this logbook and is another one: they were not taken in by the same deed; nothing was taken over"};
}

} // namespace

std::string Conflict::text() const
{
    const auto told = [](const Deed &deed) {
        return deed.name + " by " + (deed.stamp.person.empty() ? "nobody named" : deed.stamp.person) + " on " +
               readings::isoDate(deed.stamp.at);
    };
    return place + ": here " + told(here) + ", in the file " + told(there);
}

std::string digestIn(const std::string &document)
{
    constexpr std::string_view name = "\"digest\":\"";
    const auto at = document.find(name);
    return at == std::string::npos ? std::string() : document.substr(at + name.size(), 64);
}

bool tellsOfDelivery(const std::string &document)
{
    return document.find(R"("state":"delivered")") != std::string::npos; // a text in it would have \" for each "
}

outcome::Outcome<std::string> Logbook::handOver(InstrumentId instrument, HandedSale sale) const
{
    if (auto faults = historyFaults(path(), instrument); !faults.empty())
        return faults;
    Database &database = m_inside->database;
    const inside::Transaction reading(database, inside::Locking::Read);
    const auto found = m_inside->findInstrument(instrument);
    if (!found)
        return outcome::Fault{{}, 0, "there is no instrument " + std::to_string(instrument)};
    Handed handed = inside::inOrder(gather(database, instrument, found->uid).handed);
    if (sale == HandedSale::StaysHere)
        handed = inside::withoutSale(std::move(handed));
    std::string document = inside::textOf(handed);
    if (document.size() > mostHandOverBytes)
        return outcome::Fault{{}, 0, "the document would be larger than 256 MiB, which no logbook takes over"};
    return document;
}

namespace {

/// Writes the deeds of a document that are not here.
class TakingOver {
public:
    TakingOver(Logbook::Inside &inside, inside::DeedWriter &writer, Names &names)
        : m_inside(&inside), m_writer(&writer), m_names(&names)
    {
    }

    /// Absent where a pass belongs to another instrument.
    [[nodiscard]] std::optional<std::string> namePasses(const Handed &document)
    {
        auto next = m_inside->nextId("SELECT max(pass) FROM pass");
        for (const HandedDeed &deed : document.deeds) {
            if (deed.pass.empty() || m_names->passOfUid.contains(deed.pass))
                continue;
            if (isElsewhere(deed.pass))
                return deed.pass;
            m_names->passOfUid[deed.pass] = next++;
        }
        return std::nullopt;
    }

    void write(const Handed &document, const std::vector<const HandedDeed *> &missing, const Stamp &stamp)
    {
        const std::string count = std::to_string(missing.size()) + (missing.size() == 1 ? " deed" : " deeds");
        const Deed entry{
            .stamp = stamp, .name = "instrument-taken-over", .subject = document.instrument + ", " + count};
        static_cast<void>(m_writer->write(entry, std::vector<Row>()));
        for (const auto &[digest, jpeg] : document.pictures)
            inside::keepPicture(m_inside->database, digest, jpeg);
        for (const HandedDeed *deed : missing)
            write(*deed);
        m_writer->commitAll();
    }

private:
    bool isElsewhere(const std::string &uid)
    {
        const inside::Use query = m_inside->database.use("SELECT 1 FROM pass WHERE uid = ?1");
        query->bind(1, uid);
        return query->step();
    }

    void write(const HandedDeed &handed)
    {
        Deed deed = handed.deed;
        deed.instrument = m_names->instrument;
        deed.pass = handed.pass.empty() ? 0 : m_names->passOfUid.at(handed.pass);
        if (deed.undoes)
            deed.undoes = m_names->deedOfNumber.at(*deed.undoes);
        std::vector<Row> rows;
        for (const Row &row : handed.rows)
            rows.push_back(inside::local(row, *m_names));
        m_names->deedOfNumber[handed.deed.id] = m_writer->write(std::move(deed), std::move(rows)).id;
    }

    Logbook::Inside *m_inside;
    inside::DeedWriter *m_writer;
    Names *m_names;
};

} // namespace

outcome::Outcome<TakenOver> Logbook::takeOver(const std::string &text, const std::string &file, const Stamp &stamp,
                                              const SetCheck &setFaults, const std::string &digest)
{
    const auto read = inside::readHanded(text, file, m_inside->database, setFaults);
    if (!read)
        return read.faults();
    if (!digest.empty() && digest != read.value().digest)
        return otherDocument(file, read.value().digest);
    auto writer = m_inside->writer(); // not before: nobody need wait while a large document is read
    const Handed &document = read.value().handed;
    const InstrumentId known = findByUid(m_inside->database, document.instrument);
    Gathered here;
    if (known != 0)
        here = gather(m_inside->database, known, document.instrument);
    if (isAnother(document, here.handed))
        return uidOfAnother(file, document, known);
    const Apart apart = apartOf(document, here.handed, here.names);
    const auto &missing = apart.there;
    TakenOver taken{.instrument = known,
                    .isNew = known == 0,
                    .added = missing.size(),
                    .digest = read.value().digest,
                    .saleLeftOut = document.saleLeftOut};
    taken.conflicts = conflictsOf(here.handed, missing);
    addSignedApart(apart, taken.conflicts);
    if (missing.empty() || !taken.conflicts.empty())
        return taken;
    if (known == 0)
        taken.instrument = m_inside->nextId("SELECT max(instrument) FROM instrument");
    here.names.instrument = taken.instrument;
    TakingOver taking(*m_inside, writer, here.names);
    if (const auto elsewhere = taking.namePasses(document))
        return passElsewhere(file, *elsewhere);
    taking.write(document, missing, stamp);
    return taken;
}

} // namespace hammerline::logbook
