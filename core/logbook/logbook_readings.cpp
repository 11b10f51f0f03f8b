#include "logbook/inside/reading_rows.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/store.h"

#include <algorithm>

namespace hammerline::logbook {

namespace {

using inside::readingTable;
using readings::Reading;

// Versions of a pass with who and when (see reading_rows.h), in the order of the key: versions of one place together.
constexpr std::string_view readingsSql = R"sql(
SELECT r.quantity, r.note, r.take, r.value, r.typed, r.remark,
       coalesce(r.person, p.person, h.person), coalesce(r.at, p.began, h.at)
FROM reading AS r
JOIN history AS h ON h.deed = coalesce(r.origin, r.deed)
LEFT JOIN pass AS p ON p.pass = r.pass AND p.deed = h.deed
WHERE r.pass = ?1 ORDER BY r.quantity, r.note, r.take, r.version)sql";

constexpr std::string_view versionsSql = R"sql(
SELECT r.value, r.typed, r.deed, h.person, h.at, h.reason
FROM reading AS r JOIN history AS h ON h.deed = r.deed
WHERE r.pass = ?1 AND r.quantity = ?2 AND r.note = ?3 AND r.take = ?4 ORDER BY r.version)sql";

constexpr std::string_view valuesSql =
    "SELECT 1 FROM reading WHERE pass = ?1 AND take_row(quantity, note, take, value) "
    "ORDER BY quantity, note, take, version";

constexpr std::string_view anyReadingSql = R"sql(
SELECT 1 FROM reading AS r
WHERE r.pass = ?1 AND r.value IS NOT NULL
  AND r.version = (SELECT max(n.version) FROM reading AS n WHERE n.pass = r.pass AND n.quantity = r.quantity
                   AND n.note = r.note AND n.take = r.take)
LIMIT 1)sql";

readings::Place placeOf(const inside::Statement &row, const std::string &path)
{
    return {inside::quantityOf(row.integer(0), path), inside::noteOf(row.integer(1), path),
            static_cast<int>(row.integer(2))};
}

units::Amount amountOf(catalogue::Quantity quantity, std::int64_t count)
{
    return {catalogue::infoOf(quantity).dimension, count};
}

std::string typedOf(const inside::Statement &row, int column, units::Amount value)
{
    return row.isNull(column) ? units::exactDecimal(value) : row.text(column);
}

Reading readingOf(const inside::Statement &row, const readings::Place &place, const std::string &path)
{
    Reading reading{.place = place, .value = amountOf(place.quantity, inside::countOf(row.integer(3), path))};
    reading.typed = typedOf(row, 4, reading.value);
    reading.remark = row.text(5);
    reading.person = row.text(6);
    reading.at = readings::Instant(std::chrono::milliseconds(row.integer(7)));
    return reading;
}

} // namespace

std::vector<Reading> Logbook::readings(readings::PassId pass) const
{
    const inside::Use query = m_inside->database.use(readingsSql);
    query->bind(1, pass);
    std::vector<Reading> found;
    while (query->step()) {
        const auto place = placeOf(*query, path());
        // A newer version of the same place takes the place of the older.
        if (!found.empty() && found.back().place == place)
            found.pop_back();
        if (!query->isNull(3))
            found.push_back(readingOf(*query, place, path()));
    }
    // The numbers of quantities in the file keep the order of the catalogue of their day.
    if (!std::ranges::is_sorted(found, {}, &Reading::place))
        std::ranges::sort(found, {}, &Reading::place);
    return found;
}

readings::ValueTable Logbook::values(readings::PassId pass) const
{
    const auto &rows = m_inside->database.take(valuesSql, pass);
    std::vector<readings::TakenValue> found;
    found.reserve(rows.size());
    for (auto row = rows.begin(); row != rows.end(); ++row) {
        // A newer version of the same place takes the place of the older.
        const bool superseded = std::next(row) != rows.end() && std::equal(row->cells, row->cells + 3, row[1].cells);
        if (!superseded && !row->lastIsNull)
            found.push_back({inside::quantityOf(row->cells[0], path()), inside::noteOf(row->cells[1], path()),
                             inside::countOf(row->cells[3], path())});
    }
    return readings::meansOfValues(std::move(found));
}

int Logbook::readingCount(readings::PassId pass) const
{
    const inside::Use query = m_inside->database.use("SELECT count(value) FROM (SELECT value, max(version) FROM "
                                                     "reading WHERE pass = ?1 GROUP BY quantity, note, take)");
    query->bind(1, pass);
    return query->step() ? static_cast<int>(query->integer(0)) : 0;
}

bool Logbook::hasReadings(readings::PassId pass) const
{
    const inside::Use query = m_inside->database.use(anyReadingSql);
    query->bind(1, pass);
    return query->step();
}

DeedId Logbook::Inside::enter(inside::DeedWriter &writer, readings::PassId pass, const Reading &reading,
                              const Stamp &stamp, const std::string &reason, const std::string &confirmed)
{
    const auto instrument = requireOpen(pass);
    const auto keys = inside::keysOf(pass, reading.place);
    const bool stood = writer.add(readingTable(), keys, inside::valuesOf(reading, stamp));
    if (!confirmed.empty())
        writer.add(inside::confirmedSlipTable(), keys, {reading.value.baseCount(), confirmed});
    return writer
        .commit({.stamp = stamp,
                 .name = stood ? "reading-corrected" : "reading-entered",
                 .subject = inside::subjectOf(reading.place),
                 .reason = reason,
                 .instrument = instrument,
                 .pass = pass})
        .id;
}

DeedId Logbook::enter(readings::PassId pass, const Reading &reading, const Stamp &stamp, const std::string &reason,
                      const std::string &confirmed)
{
    auto writer = m_inside->writer();
    return m_inside->enter(writer, pass, reading, stamp, reason, confirmed);
}

std::optional<DeedId> Logbook::enterOver(const std::optional<units::Amount> &standing, readings::PassId pass,
                                         const Reading &reading, const Stamp &stamp, const std::string &reason,
                                         const std::string &confirmed)
{
    auto writer = m_inside->writer();
    const auto newest = inside::newestVersion(m_inside->database, readingTable(), inside::keysOf(pass, reading.place));
    const inside::Cell expected = standing ? inside::Cell(standing->baseCount()) : inside::Cell();
    if ((newest ? newest->value(0) : inside::Cell()) != expected)
        return std::nullopt;
    return m_inside->enter(writer, pass, reading, stamp, reason, confirmed);
}

bool Logbook::withdraw(readings::PassId pass, const readings::Place &place, const Stamp &stamp,
                       const std::string &reason)
{
    auto writer = m_inside->writer();
    const auto instrument = m_inside->requireOpen(pass);
    if (!writer.add(readingTable(), inside::keysOf(pass, place), {}))
        return false;
    static_cast<void>(writer.commit({.stamp = stamp,
                                     .name = "reading-withdrawn",
                                     .subject = inside::subjectOf(place),
                                     .reason = reason,
                                     .instrument = instrument,
                                     .pass = pass}));
    return true;
}

std::vector<ReadingVersion> Logbook::versions(readings::PassId pass, const readings::Place &place) const
{
    const inside::Use query = m_inside->database.use(versionsSql);
    int parameter = 0;
    for (const inside::Cell &key : inside::keysOf(pass, place))
        query->bindCell(++parameter, key);
    std::vector<ReadingVersion> found;
    while (query->step()) {
        ReadingVersion version;
        if (!query->isNull(0)) {
            version.value = amountOf(place.quantity, inside::countOf(query->integer(0), path()));
            version.typed = typedOf(*query, 1, *version.value);
        }
        version.deed = query->integer(2);
        version.stamp = {readings::Instant(std::chrono::milliseconds(query->integer(4))), query->text(3)};
        version.reason = query->text(5);
        found.push_back(std::move(version));
    }
    return found;
}

} // namespace hammerline::logbook
