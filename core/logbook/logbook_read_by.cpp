// Who read what in a pass. The person of a reading is its own, else that of the pass where one deed wrote both (an
// import), else that of the deed (see reading_rows.h); deeds are asked for once where readings of one follow each
// other.
#include "logbook/inside/reading_rows.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/store.h"

#include <algorithm>
#include <array>

namespace hammerline::logbook {

namespace {

constexpr std::string_view takesSql = "SELECT quantity, note, take, value, person, coalesce(origin, deed) FROM reading "
                                      "WHERE pass = ?1 ORDER BY quantity, note, take, version";
constexpr std::string_view personSql =
    "SELECT coalesce((SELECT p.person FROM pass AS p WHERE p.pass = ?1 AND p.deed = ?2), h.person) "
    "FROM history AS h WHERE h.deed = ?2";

/// The people of one pass, each with a number.
class Readers {
public:
    Readers(inside::Database &database, readings::PassId pass, std::vector<std::string> &people)
        : m_database(database), m_pass(pass), m_people(people)
    {
    }

    [[nodiscard]] std::size_t readerOf(const inside::Statement &row)
    {
        if (!row.isNull(4))
            return numberOf(row.text(4));
        if (const DeedId deed = row.integer(5); deed != m_deed) {
            m_deed = deed;
            m_ofDeed = numberOf(personOf(deed));
        }
        return m_ofDeed;
    }

private:
    [[nodiscard]] std::string personOf(DeedId deed)
    {
        const inside::Use query = m_database.use(personSql);
        query->bind(1, m_pass);
        query->bind(2, deed);
        return query->step() ? query->text(0) : std::string();
    }

    [[nodiscard]] std::size_t numberOf(const std::string &person)
    {
        const auto known = std::ranges::find(m_people, person);
        const auto number = static_cast<std::size_t>(known - m_people.begin());
        if (known == m_people.end())
            m_people.push_back(person);
        return number;
    }

    inside::Database &m_database;
    readings::PassId m_pass;
    std::vector<std::string> &m_people;
    DeedId m_deed = 0;
    std::size_t m_ofDeed = 0;
};

/// Quantity, note and take of the row stood on.
std::array<std::int64_t, 3> keyOf(const inside::Statement &row)
{
    return {row.integer(0), row.integer(1), row.integer(2)};
}

} // namespace

ReadBy Logbook::readBy(readings::PassId pass) const
{
    ReadBy read;
    Readers readers(m_inside->database, pass, read.people);
    const inside::Use query = m_inside->database.use(takesSql);
    query->bind(1, pass);
    std::array<std::int64_t, 3> before{};
    bool stands = false;
    while (query->step()) {
        // A newer version of the same place takes the place of the older.
        if (const auto key = keyOf(*query); stands && key == before)
            read.takes.pop_back();
        before = keyOf(*query);
        stands = !query->isNull(3);
        if (stands)
            read.takes.push_back(
                {{inside::quantityOf(query->integer(0), path()), inside::noteOf(query->integer(1), path()),
                  inside::countOf(query->integer(3), path())},
                 readers.readerOf(*query)});
    }
    return read;
}

} // namespace hammerline::logbook
