// What is asked about all instruments and passes at once, without what lies behind it in their rows.
#include "logbook/inside/broken.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/store.h"

#include <unordered_map>

namespace hammerline::logbook {

namespace {

// The columns of an instrument up to its sections; of each the newest version comes last. Its long texts lie behind.
constexpr std::string_view keyboardsSql =
    "SELECT instrument, version, uid, name, action, first_note, last_note, sections "
    "FROM instrument ORDER BY instrument, version";
constexpr std::string_view passesSql =
    "SELECT pass, instrument, purpose, began FROM pass WHERE NOT EXISTS "
    "(SELECT 1 FROM spot_check AS s WHERE s.pass = pass.pass) ORDER BY pass, version";
constexpr std::string_view setsSql =
    "SELECT instrument, tolerance_id, tolerance_text FROM instrument ORDER BY instrument, version";

PassOf passOf(const inside::Statement &row, const std::string &path)
{
    const auto purpose = readings::findPurpose(row.text(2));
    if (!purpose)
        inside::throwDamaged(path, "pass " + std::to_string(row.integer(0)) + ": its purpose is none that is known");
    return {row.integer(0), row.integer(1), *purpose, readings::Instant(std::chrono::milliseconds(row.integer(3)))};
}

/// Each text once.
class Texts {
public:
    explicit Texts(std::vector<PassTolerance> &sets) : m_sets(sets) {}

    std::size_t numberOf(PassTolerance set)
    {
        const auto [known, isNew] = m_numbers.try_emplace(set.text, m_sets.size());
        if (isNew)
            m_sets.push_back(std::move(set));
        return known->second;
    }

private:
    std::vector<PassTolerance> &m_sets;
    std::unordered_map<std::string, std::size_t> m_numbers{};
};

} // namespace

std::vector<Keyboard> Logbook::keyboards() const
{
    const inside::Use query = m_inside->database.use(keyboardsSql);
    std::vector<Keyboard> found;
    while (query->step()) {
        inside::Row row{&inside::instrumentTable(),
                        std::vector<inside::Cell>(inside::instrumentTable().columns().size())};
        for (int column = 0; column < query->columns(); ++column)
            row.cells[static_cast<std::size_t>(column)] = query->cell(column);
        if (!found.empty() && found.back().instrument == query->integer(0))
            found.pop_back();
        if (!row.withdrawn())
            found.push_back(inside::keyboardOf(row, path()));
    }
    return found;
}

std::vector<PassOf> Logbook::passesOfAll() const
{
    const inside::Use query = m_inside->database.use(passesSql);
    std::vector<PassOf> found;
    while (query->step()) {
        if (!found.empty() && found.back().pass == query->integer(0))
            found.pop_back();
        if (!query->isNull(1))
            found.push_back(passOf(*query, path()));
    }
    return found;
}

SetsInUse Logbook::setsInUse() const
{
    const inside::Use query = m_inside->database.use(setsSql);
    SetsInUse found;
    Texts texts(found.sets);
    instrument::InstrumentId instrument = 0;
    PassTolerance newest;
    const auto settle = [&] {
        if (!newest.text.empty())
            found.of.emplace(instrument, texts.numberOf(std::move(newest)));
    };
    while (query->step()) {
        if (query->integer(0) != instrument)
            settle();
        instrument = query->integer(0);
        newest = {query->text(1), query->text(2)};
    }
    settle();
    return found;
}

} // namespace hammerline::logbook
