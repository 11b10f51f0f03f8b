#include "logbook/inside/schema.h"

#include "logbook/inside/broken.h"
#include "logbook/inside/transaction.h"
#include "outcome/outcome.h"

#include <algorithm>
#include <map>
#include <utility>

namespace hammerline::logbook::inside {

namespace {

using Objects = std::map<std::pair<std::string, std::string>, std::string>;

Objects objectsOf(Database &database)
{
    Objects objects;
    Statement schema = database.prepare("SELECT type, name, tbl_name, sql FROM sqlite_schema");
    while (schema.step())
        objects[{schema.text(0), schema.text(1)}] = schema.text(2) + ": " + schema.text(3);
    return objects;
}

/// Made once for each thread: a sketch takes milliseconds, and a check of a logbook asks several times.
const Objects &expectedObjects(Steps steps)
{
    thread_local std::map<std::string, Objects> known;
    std::string text;
    for (const std::string_view step : steps)
        text.append(step).append(1, '\0');
    if (const auto found = known.find(text); found != known.end())
        return found->second;
    Database sketch = Database::inMemory();
    makeSchema(sketch, steps);
    return known[text] = objectsOf(sketch);
}

void setNumber(Database &database, std::size_t number)
{
    // PRAGMA takes no parameters; the number is the program's own.
    database.run("PRAGMA user_version = " + std::to_string(number));
}

void backUp(Database &database, int number)
{
    const std::string name = database.path() + ".schema-" + std::to_string(number) + "-backup";
    constexpr int mostBackups = 100;
    for (int copy = 1; copy <= mostBackups; ++copy)
        if (database.copyTo(copy == 1 ? name : name + "-" + std::to_string(copy)))
            return;
    throwRefused(database.path(), "no backup could be made before bringing it up to date, since " +
                                      std::to_string(mostBackups) + " are there already. Move them elsewhere");
}

[[noreturn]] void throwNewer(Database &database, std::int64_t number, std::size_t known)
{
    throwRefused(database.path(), "the logbook was made by a newer Hammerline (structure " + std::to_string(number) +
                                      "; this program knows up to " + std::to_string(known) +
                                      "). It is safe. Open it with the newer program");
}

std::vector<SchemaDifference> differencesOf(const Objects &found, const Objects &expected)
{
    std::vector<SchemaDifference> differences;
    for (const auto &[key, sql] : expected) {
        const auto it = found.find(key);
        if (it == found.end())
            differences.push_back({key.first, key.second, "was removed"});
        else if (it->second != sql)
            differences.push_back({key.first, key.second, "was altered"});
    }
    for (const auto &[key, sql] : found)
        if (!expected.contains(key))
            differences.push_back({key.first, key.second, "was added"});
    return differences;
}

/// What the file says of itself.
struct Head {
    bool isOurs = false; ///< the mark of a logbook stands there
    std::int64_t number = 0;
    bool isKnown = false; ///< the number is that of a step
};

Head headOf(Database &database, Steps steps)
{
    Head head{.isOurs = database.number("PRAGMA application_id") == applicationId,
              .number = database.number("PRAGMA user_version")};
    head.isKnown = head.number >= 1 && head.number <= std::ssize(steps);
    return head;
}

/// Of those that are as close as each other the newest.
int closestStep(const Objects &found, Steps steps)
{
    int closest = 0;
    std::size_t least = 0;
    for (std::size_t number = steps.size(); number >= 1; --number) {
        const std::size_t differences = differencesOf(found, expectedObjects(steps.first(number))).size();
        if (closest != 0 && differences >= least)
            continue;
        closest = static_cast<int>(number);
        least = differences;
    }
    return closest;
}

/// Of a file whose tables are those of no step. A newer program never takes a table away: a file that merely lacks
/// something is none of its.
void requireOurs(Database &database, const Head &head, const Objects &found, const Objects &expected, std::size_t known)
{
    const std::pair<std::string, std::string> history("table", "history");
    const auto table = found.find(history);
    const bool holdsHistory =
        table != found.end() && expected.contains(history) && table->second == expected.at(history);
    const auto differences = differencesOf(found, expected);
    const bool merelyLacks =
        std::ranges::all_of(differences, [](const auto &difference) { return difference.what == "was removed"; });
    if (!head.isOurs && !holdsHistory)
        throw outcome::BrokenWorld(database.path() + ": this file is not a Hammerline logbook. Nothing was changed. "
                                                     "Choose another file.");
    if (head.isOurs && head.number > static_cast<std::int64_t>(known) && !(holdsHistory && merelyLacks))
        throwNewer(database, head.number, known);
    if (!head.isKnown && !holdsHistory)
        throwDamaged(database.path(), "its structure has the number " + std::to_string(head.number));
}

} // namespace

void makeSchema(Database &database, Steps steps)
{
    for (const std::string_view step : steps)
        database.run(std::string(step));
    database.run("PRAGMA application_id = " + std::to_string(applicationId));
    setNumber(database, steps.size());
}

int schemaNumber(Database &database, Steps steps)
{
    const Head head = headOf(database, steps);
    if (head.isOurs && head.isKnown)
        return static_cast<int>(head.number);
    const ShownStructure shown = shownStructure(database, steps);
    throwDamaged(database.path(), shown.altered.at(0));
}

ShownStructure shownStructure(Database &database, Steps steps)
{
    const Head head = headOf(database, steps);
    const Objects found = objectsOf(database);
    const int closest = closestStep(found, steps);
    const Objects &expected = expectedObjects(steps.first(static_cast<std::size_t>(closest)));
    if (found != expected)
        requireOurs(database, head, found, expected, steps.size());
    ShownStructure shown{found != expected && head.isKnown ? static_cast<int>(head.number) : closest};
    if (!head.isOurs)
        shown.altered.emplace_back("the mark of a logbook in the file's head (application_id) was altered");
    if (head.number != shown.number)
        shown.altered.push_back("the number of the structure in the file's head (user_version) was altered: it is " +
                                std::to_string(head.number) + ", its tables are those of " +
                                std::to_string(shown.number));
    return shown;
}

std::vector<SchemaDifference> schemaDifferences(Database &database, int number, Steps steps)
{
    return differencesOf(objectsOf(database), expectedObjects(steps.first(static_cast<std::size_t>(number))));
}

void requireSchema(Database &database, int number, Steps steps)
{
    const auto differences = schemaDifferences(database, number, steps);
    if (!differences.empty())
        throwDamaged(database.path(), differences[0].type + " \"" + differences[0].name + "\" " + differences[0].what);
}

void bringUpToDate(Database &database, Steps steps)
{
    const int before = schemaNumber(database, steps);
    if (static_cast<std::size_t>(before) == steps.size())
        return;
    backUp(database, before);
    Transaction transaction(database);
    // Another program may have done it while the copy was made.
    const auto number = static_cast<std::size_t>(schemaNumber(database, steps));
    for (const std::string_view step : steps.subspan(number))
        database.run(std::string(step));
    setNumber(database, steps.size());
    transaction.commit();
}

} // namespace hammerline::logbook::inside
