#include "logbook/inside/schema.h"

#include "logbook/inside/broken.h"
#include "logbook/inside/transaction.h"
#include "outcome/outcome.h"

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

Objects expectedObjects(Steps steps)
{
    Database sketch = Database::inMemory();
    makeSchema(sketch, steps);
    return objectsOf(sketch);
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
    if (database.number("PRAGMA application_id") != applicationId)
        throw outcome::BrokenWorld(database.path() + ": this file is not a Hammerline logbook. Nothing was changed. "
                                                     "Choose another file.");
    const std::int64_t number = database.number("PRAGMA user_version");
    if (number > static_cast<std::int64_t>(steps.size()))
        throwNewer(database, number, steps.size());
    if (number < 1)
        throwDamaged(database.path(), "its structure has the number " + std::to_string(number));
    return static_cast<int>(number);
}

std::vector<SchemaDifference> schemaDifferences(Database &database, int number, Steps steps)
{
    const Objects expected = expectedObjects(steps.first(static_cast<std::size_t>(number)));
    const Objects found = objectsOf(database);
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
