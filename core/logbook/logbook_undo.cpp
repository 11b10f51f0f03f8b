#include "logbook/gauge_studies.h"
#include "logbook/inside/broken.h"
#include "logbook/inside/history.h"
#include "logbook/inside/store.h"
#include "logbook/inside/undo_walk.h"

#include <algorithm>
#include <set>

namespace hammerline::logbook {

namespace {

using inside::Cell;
using inside::Database;
using inside::Row;
using inside::Scope;
using inside::UndoWalk;
using inside::VersionTable;

/// An instrument, a pass or a gauge study.
struct Subject {
    Scope scope;
    std::int64_t id;
};

Subject subjectOf(Database &database, const Deed &deed)
{
    if (deed.pass != 0)
        return {Scope::Pass, deed.pass};
    if (deed.instrument != 0)
        return {Scope::Instrument, deed.instrument};
    for (const VersionTable *table : {&inside::gaugeStudyTable(), &inside::gaugeTrialTable()}) {
        const inside::Use query = database.use(table->byDeedSql());
        query->bind(1, deed.id);
        if (query->step())
            return {Scope::Study, query->integer(0)};
    }
    return {Scope::Instrument, 0};
}

std::vector<const VersionTable *> tablesOf(Scope scope)
{
    std::vector<const VersionTable *> tables;
    for (const VersionTable *table : inside::versionTables())
        if (table->scope() == scope)
            tables.push_back(table);
    return tables;
}

/// Whoever signs a pass, or opens it again, speaks of the instrument as it was then, whether or not its state moved.
void addStandingsOf(Database &database, std::int64_t instrument, std::set<DeedId> &deeds)
{
    const inside::Use query =
        database.use("SELECT deed FROM pass_standing WHERE pass IN (SELECT pass FROM pass WHERE instrument = ?1)");
    query->bind(1, instrument);
    while (query->step())
        deeds.insert(query->integer(0));
}

/// A deed wrote at least one row of its subject, so they are found by the rows.
std::set<DeedId> deedsOf(Database &database, Subject subject)
{
    std::set<DeedId> deeds;
    for (const VersionTable *table : tablesOf(subject.scope)) {
        const inside::Use query = database.use(table->deedsSql());
        query->bind(1, subject.id);
        while (query->step())
            deeds.insert(query->integer(0));
    }
    if (subject.scope == Scope::Instrument)
        addStandingsOf(database, subject.id, deeds);
    return deeds;
}

/// A signature is not taken back silently: reopening is the way.
bool standsForGood(const std::string &nameOfDeed)
{
    return nameOfDeed == "pass-signed" || nameOfDeed == "pass-reopened";
}

UndoWalk walk(Database &database, Subject subject)
{
    UndoWalk walked;
    for (const DeedId id : deedsOf(database, subject)) {
        const inside::Use query = database.use("SELECT undoes, name FROM history WHERE deed = ?1");
        query->bind(1, id);
        if (!query->step())
            continue;
        if (standsForGood(query->text(1)))
            walked.bar();
        else
            walked.feed(id, query->optionalInteger(0));
    }
    return walked;
}

std::optional<Deed> lastOf(Database &database, const std::vector<UndoWalk::Step> &steps)
{
    if (steps.empty())
        return std::nullopt;
    return inside::findEntry(database, steps.back().first);
}

std::vector<Row> rowsOf(Database &database, Subject subject, DeedId deed)
{
    std::vector<Row> rows;
    for (const VersionTable *table : tablesOf(subject.scope)) {
        const inside::Use query = database.use(table->ofDeedSql());
        query->bind(1, subject.id).bind(2, deed);
        while (query->step())
            rows.push_back(inside::rowOf(*table, *query));
    }
    return rows;
}

/// The newest deed of all, where it is a fresh one of the subject: that can be taken back and nothing done again,
/// whatever lies before. Asked after each reading, when a long pass need not be walked.
std::optional<Deed> freshestOf(Database &database, Subject subject)
{
    auto newest = inside::findEntry(database, inside::newestDeedId(database));
    if (!newest || newest->undoes || standsForGood(newest->name))
        return std::nullopt;
    const Subject of = subjectOf(database, *newest);
    if (of.scope != subject.scope || of.id != subject.id || rowsOf(database, subject, newest->id).empty())
        return std::nullopt;
    return newest;
}

std::optional<Deed> undoableOf(Database &database, Subject subject)
{
    if (auto fresh = freshestOf(database, subject))
        return fresh;
    return lastOf(database, walk(database, subject).done());
}

std::optional<Deed> redoableOf(Database &database, Subject subject)
{
    if (freshestOf(database, subject))
        return std::nullopt;
    return lastOf(database, walk(database, subject).undone());
}

/// The values, with the deed whose stamp they stand for; none where the version is withdrawn.
std::vector<Cell> content(Row row, DeedId deed)
{
    if (row.withdrawn())
        return {};
    if (const auto origin = row.table->originColumn();
        origin && std::holds_alternative<std::monostate>(row.cells[*origin]))
        row.cells[*origin] = deed;
    return {row.cells.begin() + static_cast<std::ptrdiff_t>(row.table->firstValue()), row.cells.end()};
}

/// Values of the version before; none where there was none or it was withdrawn.
std::vector<Cell> valuesBefore(Database &database, const Row &row)
{
    const VersionTable &table = *row.table;
    const inside::Use query = database.use(table.versionSql());
    int parameter = 0;
    for (const Cell &key : row.keys())
        query->bindCell(++parameter, key);
    query->bind(++parameter, row.version() - 1);
    if (!query->step())
        return {};
    return content(inside::rowOf(table, *query), query->integer(static_cast<int>(table.columns().size())));
}

/// Content of the newest version.
std::vector<Cell> standingContent(Database &database, const Row &row)
{
    const VersionTable &table = *row.table;
    const inside::Use query = database.use(table.newestSql());
    int parameter = 0;
    for (const Cell &key : row.keys())
        query->bindCell(++parameter, key);
    if (!query->step())
        return {};
    return content(inside::rowOf(table, *query), query->integer(static_cast<int>(table.columns().size())));
}

/// Later versions do not matter where they were taken back themselves, so that the same stands again.
void takeBack(Database &database, inside::DeedWriter &writer, const Row &row, DeedId deed)
{
    if (standingContent(database, row) != content(row, deed))
        inside::throwRefused(database.path(), "it cannot be taken back, since it was changed again later (" +
                                                  inside::describe(row) + "). Take the later change back first");
    writer.add(*row.table, {row.keys().begin(), row.keys().end()}, valuesBefore(database, row));
}

/// Takes back the newest deed of the step that `deed` was first, out of `steps`.
Deed takeBack(Database &database, inside::DeedWriter &writer, const Deed &deed,
              const std::vector<UndoWalk::Step> &steps, Deed entry)
{
    const auto step = std::ranges::find(steps, deed.id, &UndoWalk::Step::first);
    const auto stored = inside::findEntry(database, deed.id);
    if (step == steps.end() || !stored)
        inside::throwRefused(database.path(), "deed " + std::to_string(deed.id) + " cannot be " + entry.name);
    entry.subject = stored->subject;
    entry.undoes = step->newest;
    entry.instrument = stored->instrument;
    entry.pass = stored->pass;
    for (const Row &row : rowsOf(database, subjectOf(database, *stored), step->newest))
        takeBack(database, writer, row, step->newest);
    return writer.commit(std::move(entry));
}

} // namespace

std::optional<Deed> Logbook::undoable(readings::PassId pass) const
{
    return undoableOf(m_inside->database, {Scope::Pass, pass});
}

std::optional<Deed> Logbook::redoable(readings::PassId pass) const
{
    return redoableOf(m_inside->database, {Scope::Pass, pass});
}

std::optional<Deed> Logbook::undoableOfInstrument(instrument::InstrumentId instrument) const
{
    return undoableOf(m_inside->database, {Scope::Instrument, instrument});
}

std::optional<Deed> Logbook::redoableOfInstrument(instrument::InstrumentId instrument) const
{
    return redoableOf(m_inside->database, {Scope::Instrument, instrument});
}

std::optional<Deed> GaugeStudies::undoable(StudyId study) const
{
    return undoableOf(m_inside->database, {Scope::Study, study});
}

std::optional<Deed> GaugeStudies::redoable(StudyId study) const
{
    return redoableOf(m_inside->database, {Scope::Study, study});
}

Deed Logbook::undo(const Deed &deed, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto walked = walk(m_inside->database, subjectOf(m_inside->database, deed));
    return takeBack(m_inside->database, writer, deed, walked.done(), {.stamp = stamp, .name = "undone"});
}

Deed Logbook::redo(const Deed &deed, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto walked = walk(m_inside->database, subjectOf(m_inside->database, deed));
    return takeBack(m_inside->database, writer, deed, walked.undone(), {.stamp = stamp, .name = "redone"});
}

} // namespace hammerline::logbook
