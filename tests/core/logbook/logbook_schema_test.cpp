#include "core/logbook/logbook_fixture.h"
#include "logbook/inside/schema.h"
#include "logbook/inside/transaction.h"
#include "logbook/inside/undo_walk.h"
#include "logbook/inside/version_table.h"

#include <gmock/gmock.h>

namespace hammerline::logbook::inside {
namespace {

using testing::HasSubstr;

constexpr std::string_view twoSteps[] = {"CREATE TABLE a(x INTEGER) STRICT;", "CREATE TABLE b(y INTEGER) STRICT;"};
constexpr std::string_view badSteps[] = {twoSteps[0], "CREATE TABLE c(z INTEGER) STRICT; CREATE TABLE a(x);"};

class SchemaTest : public LogbookTest {
protected:
    SchemaTest()
    {
        EXPECT_TRUE(claimNewFile(file()));
        Database database(file(), Database::Mode::ReadWrite);
        Transaction transaction(database);
        makeSchema(database, Steps(twoSteps).first(1));
        database.run("INSERT INTO a VALUES (42)");
        transaction.commit();
    }
};

TEST_F(SchemaTest, AnOlderFileIsBackedUpAndSteppedUp)
{
    Database database(file(), Database::Mode::ReadWrite);
    bringUpToDate(database, twoSteps);
    EXPECT_EQ(schemaNumber(database, twoSteps), 2);
    EXPECT_TRUE(schemaDifferences(database, 2, twoSteps).empty());
    Database backup(file() + ".schema-1-backup", Database::Mode::ReadOnly);
    EXPECT_EQ(schemaNumber(backup, twoSteps), 1);
    EXPECT_EQ(backup.number("SELECT x FROM a"), 42);
}

TEST_F(SchemaTest, ABackupIsNeverOverwritten)
{
    RawDatabase(file() + ".schema-1-backup").run("CREATE TABLE precious(x)");
    Database database(file(), Database::Mode::ReadWrite);
    bringUpToDate(database, twoSteps);
    EXPECT_EQ(RawDatabase(file() + ".schema-1-backup").one("SELECT name FROM sqlite_schema"), "precious");
    EXPECT_EQ(RawDatabase(file() + ".schema-1-backup-2").one("SELECT x FROM a"), "42");
}

TEST_F(SchemaTest, AnUpToDateFileIsLeftAlone)
{
    Database database(file(), Database::Mode::ReadWrite);
    bringUpToDate(database, Steps(twoSteps).first(1));
    EXPECT_FALSE(std::filesystem::exists(file() + ".schema-1-backup"));
}

TEST_F(SchemaTest, AStepThatFailsLeavesTheFileAsItWas)
{
    Database database(file(), Database::Mode::ReadWrite);
    EXPECT_THROW(bringUpToDate(database, badSteps), outcome::BrokenWorld);
    EXPECT_EQ(schemaNumber(database, badSteps), 1);
    EXPECT_TRUE(schemaDifferences(database, 1, badSteps).empty());
}

TEST_F(SchemaTest, ANewerFileIsRefusedWithBothNumbers)
{
    RawDatabase(file()).run("CREATE TABLE of_tomorrow(x); PRAGMA user_version = 3");
    Database database(file(), Database::Mode::ReadOnly);
    const auto message = messageOf([&] { static_cast<void>(schemaNumber(database, twoSteps)); });
    EXPECT_THAT(message, HasSubstr("newer Hammerline"));
    EXPECT_THAT(message, HasSubstr("structure 3"));
    EXPECT_THAT(message, HasSubstr("up to 2"));
}

TEST_F(SchemaTest, ANumberThatTheTablesDoNotBearOutIsAnAlterationNotANewerProgram)
{
    RawDatabase(file()).run("PRAGMA user_version = 3");
    Database database(file(), Database::Mode::ReadOnly);
    EXPECT_THAT(messageOf([&] { static_cast<void>(schemaNumber(database, twoSteps)); }),
                HasSubstr("it is 3, its tables are those of 1"));
    EXPECT_EQ(shownStructure(database, twoSteps).number, 1);
}

TEST(VersionTables, AreDescribedAsTheStepsMakeThem)
{
    Database database = Database::inMemory();
    makeSchema(database);
    for (const VersionTable *table : versionTables()) {
        std::vector<std::string> made;
        Statement columns = database.prepare("SELECT name FROM pragma_table_info('" + table->name() + "')");
        while (columns.step())
            made.push_back(columns.text(0));
        auto described = table->columns();
        described.emplace_back("deed");
        EXPECT_EQ(made, described) << table->name();
    }
    // history, its sqlite_sequence, and the pictures
    EXPECT_EQ(database.number("SELECT count(*) FROM sqlite_schema WHERE type = 'table'"),
              std::ssize(versionTables()) + 3);
}

TEST(VersionTables, AreAllInTheFirstStructureThatIsReadWithoutBeingBroughtUpToDate)
{
    const auto tablesAt = [](std::size_t steps) {
        Database database = Database::inMemory();
        makeSchema(database, schemaSteps().first(steps));
        std::vector<std::string> made;
        Statement tables = database.prepare("SELECT sql FROM sqlite_schema WHERE type = 'table' ORDER BY name");
        while (tables.step())
            made.push_back(tables.text(0));
        return made;
    };
    EXPECT_EQ(tablesAt(firstReadableStructure), tablesAt(schemaSteps().size()));
    EXPECT_NE(tablesAt(firstReadableStructure - 1), tablesAt(schemaSteps().size()));
}

TEST(UndoWalk, RedoOfRedoGoesOnWithTheSameDeed)
{
    UndoWalk walk;
    walk.feed(1, {});
    walk.feed(2, {});
    walk.feed(3, 2);
    walk.feed(4, 3);
    walk.feed(5, 4);
    ASSERT_EQ(walk.undone().size(), 1u);
    EXPECT_EQ(walk.undone().back().first, 2);
    EXPECT_EQ(walk.undone().back().newest, 5);
    EXPECT_EQ(walk.done().back().first, 1);
}

TEST(UndoWalk, ADeedThatUndoesNothingKnownIsPassedOver)
{
    UndoWalk walk;
    walk.feed(1, {});
    walk.feed(9, 7);
    EXPECT_EQ(walk.done().size(), 1u);
    EXPECT_TRUE(walk.undone().empty());
}

} // namespace
} // namespace hammerline::logbook::inside
