#include "logbook/inside/file_check.h"

#include "logbook/inside/schema.h"

namespace hammerline::logbook::inside {

namespace {

void findImpossibleEntries(Database &database, std::vector<Alteration> &found)
{
    Statement entries = database.prepare("SELECT deed FROM history WHERE deed < 1");
    while (entries.step() && found.size() < mostAlterations)
        found.push_back({entries.integer(0), "history", {}, "the entry was added"});
}

/// SQLite itself keeps the largest number ever given to an entry.
void checkEnd(Database &database, DeedId newest, std::vector<Alteration> &found)
{
    Statement kept = database.prepare("SELECT name, iif(typeof(seq) = 'integer', seq, 0) FROM sqlite_sequence");
    int rows = 0;
    std::int64_t largest = 0;
    while (kept.step()) {
        ++rows;
        if (kept.text(0) == "history")
            largest = kept.integer(1);
    }
    if (largest > newest)
        found.push_back({newest + 1,
                         "history",
                         {},
                         "the end was removed: entries up to " + std::to_string(largest) + " had been written"});
    else if (largest < newest || rows != 1)
        found.push_back({0, "sqlite_sequence", {}, "was altered"});
}

} // namespace

bool checkStructure(Database &database, std::vector<Alteration> &found)
{
    const ShownStructure shown = shownStructure(database);
    for (const std::string &altered : shown.altered)
        found.push_back({0, {}, {}, altered});
    bool readable = true;
    for (const auto &difference : schemaDifferences(database, shown.number)) {
        found.push_back({0, difference.name, {}, "the " + difference.type + ' ' + difference.what});
        readable = readable && difference.what == "was added";
    }
    return readable;
}

void checkNumbering(Database &database, DeedId newest, std::vector<Alteration> &found)
{
    findImpossibleEntries(database, found);
    if (found.size() < mostAlterations)
        checkEnd(database, newest, found);
}

Alteration gap(DeedId first, DeedId last)
{
    const std::string until = first == last ? std::string() : " to " + std::to_string(last);
    return {first, "history", {}, "entry " + std::to_string(first) + until + " was removed"};
}

} // namespace hammerline::logbook::inside
