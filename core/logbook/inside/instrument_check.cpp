#include "logbook/inside/instrument_check.h"

#include "logbook/inside/deed_digest.h"
#include "logbook/inside/file_check.h"
#include "logbook/inside/pictures.h"

#include <algorithm>
#include <iterator>

namespace hammerline::logbook::inside {

namespace {

std::vector<std::int64_t> numbersOf(Database &database, std::string_view sql, std::int64_t parameter)
{
    const Use query = database.use(sql);
    query->bind(1, parameter);
    std::vector<std::int64_t> numbers;
    while (query->step())
        numbers.push_back(query->integer(0));
    return numbers;
}

/// Also those that only an older version of the pass, or only the entry of a deed, gives to the instrument.
constexpr std::string_view passesSql = R"sql(
SELECT pass FROM pass WHERE instrument = ?1
UNION SELECT pass FROM history WHERE instrument = ?1 AND pass IS NOT NULL)sql";

bool isAbout(const Deed &deed, const Subject &subject)
{
    return (subject.scope == Scope::Instrument ? deed.instrument : deed.pass) == subject.id;
}

} // namespace

InstrumentCheck::InstrumentCheck(Database &database, instrument::InstrumentId instrument, DeedId newest,
                                 HistoryCheck &check)
    : m_database(&database),
      m_rows(database, presentTables(database)),
      m_instrument(instrument),
      m_newest(newest),
      m_check(&check)
{
}

void InstrumentCheck::run()
{
    gatherDeeds();
    for (const auto &[id, wrote] : m_deeds) {
        if (m_check->alterations.size() >= mostAlterations)
            return;
        take(id, wrote);
    }
    checkPicturesOf();
    if (!m_deeds.contains(m_newest))
        checkNewest();
}

void InstrumentCheck::gatherDeeds()
{
    for (const DeedId id : numbersOf(*m_database, "SELECT deed FROM history WHERE instrument = ?1", m_instrument))
        m_deeds[id];
    gatherDeedsOf({Scope::Instrument, m_instrument});
    for (const readings::PassId pass : numbersOf(*m_database, passesSql, m_instrument))
        gatherDeedsOf({Scope::Pass, pass});
}

void InstrumentCheck::gatherDeedsOf(const Subject &subject)
{
    for (const auto &[deed, rows] : m_rows.ofSubject(subject))
        m_deeds[deed].push_back(subject);
}

void InstrumentCheck::take(DeedId id, const std::vector<Subject> &wrote)
{
    const auto stored = findDeed(*m_database, id);
    for (const Subject &subject : wrote)
        if (!stored || !isAbout(stored->deed, subject))
            reportStrayed(id, subject);
    if (!stored)
        return;
    const auto rows = m_rows.of(stored->deed);
    auto found = held(*stored, rows);
    std::ranges::move(found, std::back_inserter(m_check->alterations));
    m_last = {id, stored->digest};
    m_check->deeds += 1;
    m_check->rows += std::ssize(rows);
    if (id < m_newest && !m_deeds.contains(id + 1))
        requireEntry(id + 1);
}

void InstrumentCheck::reportStrayed(DeedId id, const Subject &subject)
{
    for (const Row &row : m_rows.ofSubject(subject).at(id))
        m_check->alterations.push_back(strayed(id, row));
}

std::vector<Alteration> InstrumentCheck::held(const StoredDeed &stored, const std::vector<Row> &rows)
{
    const DeedId before = stored.deed.id - 1;
    const std::string digest = storedDigest(before);
    std::vector<Alteration> found;
    static_cast<void>(checkDeed(stored, rows, {digest, digest}, found));
    if (found.empty() || digest.empty() || before < 1)
        return found;
    // Perhaps it is the entry before that was altered; then this one has the digest that its content makes.
    std::vector<Alteration> foundAgain;
    static_cast<void>(checkDeed(stored, rows, computedBefore(before), foundAgain));
    return foundAgain;
}

DigestsBefore InstrumentCheck::computedBefore(DeedId id)
{
    const auto stored = findDeed(*m_database, id).value();
    const std::string digest = storedDigest(id - 1);
    std::vector<Alteration> none;
    return checkDeed(stored, m_rows.of(stored.deed), {digest, digest}, none);
}

/// Empty, and told, where the entry is not there.
std::string InstrumentCheck::storedDigest(DeedId id)
{
    if (id == 0)
        return beforeTheFirst().stored;
    if (id == m_last.first)
        return m_last.second;
    const Use query = m_database->use("SELECT digest FROM history WHERE deed = ?1");
    query->bind(1, id);
    if (query->step())
        return query->bytes(0);
    requireEntry(id);
    return {};
}

void InstrumentCheck::requireEntry(DeedId id)
{
    const Use query = m_database->use("SELECT 1 FROM history WHERE deed = ?1");
    query->bind(1, id);
    if (!query->step() && m_gone.insert(id).second)
        m_check->alterations.push_back(gap(id, id));
}

/// Its entry only: what was altered of another instrument's rows is not ours to tell.
void InstrumentCheck::checkNewest()
{
    const auto stored = findDeed(*m_database, m_newest);
    if (!stored)
        return;
    for (Alteration &found : held(*stored, m_rows.of(stored->deed)))
        if (found.table == "history")
            m_check->alterations.push_back(std::move(found));
}

void InstrumentCheck::checkPicturesOf()
{
    std::map<std::string, DeedId> named;
    for (const auto &[deed, rows] : m_rows.ofSubject({Scope::Instrument, m_instrument}))
        for (const Row &row : rows)
            if (row.table == &photographTable() && !row.withdrawn())
                named.emplace(std::get<std::string>(row.value(0)), deed);
    for (const auto &[digest, deed] : named)
        checkPicture(*m_database, digest, deed, m_check->alterations);
}

} // namespace hammerline::logbook::inside
