#include "logbook/inside/database.h"

#include "logbook/inside/broken.h"
#include "outcome/outcome.h"

#include <sqlite3.h>

#include <fcntl.h>
#include <filesystem>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <iterator>
#include <new>
#include <string>

namespace hammerline::logbook::inside {

namespace {

/// How long one waits for another program's entry to be done.
constexpr int patienceMilliseconds = 3000;

struct Limit {
    int which;
    int most;
};
/// Far above what a logbook needs, far below what a crafted file would like.
constexpr Limit limits[] = {
    {SQLITE_LIMIT_LENGTH, 64 * 1024 * 1024}, {SQLITE_LIMIT_SQL_LENGTH, 100'000}, {SQLITE_LIMIT_COLUMN, 100},
    {SQLITE_LIMIT_EXPR_DEPTH, 50},           {SQLITE_LIMIT_COMPOUND_SELECT, 20}, {SQLITE_LIMIT_VDBE_OP, 25'000},
    {SQLITE_LIMIT_FUNCTION_ARG, 8},          {SQLITE_LIMIT_ATTACHED, 0},         {SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 50},
    {SQLITE_LIMIT_VARIABLE_NUMBER, 60},      {SQLITE_LIMIT_TRIGGER_DEPTH, 5},
};

struct Setting {
    int which;
    int on;
};
constexpr Setting settings[] = {
    {SQLITE_DBCONFIG_DEFENSIVE, 1},      {SQLITE_DBCONFIG_ENABLE_FKEY, 1},
    {SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0}, {SQLITE_DBCONFIG_ENABLE_TRIGGER, 0},
    {SQLITE_DBCONFIG_ENABLE_VIEW, 0},    {SQLITE_DBCONFIG_DQS_DML, 0},
    {SQLITE_DBCONFIG_DQS_DDL, 0},        {SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0},
};

/// A name that SQLite takes for a file whatever it looks like ("file:x?mode=memory", ":memory:", "").
std::string fileName(const std::string &path)
{
    return path.starts_with('/') ? path : "./" + path;
}

/// SQLite's URI of a file nobody writes to: it is read without a lock and without files beside it.
std::string immutableUri(const std::string &path)
{
    constexpr char digits[] = "0123456789ABCDEF";
    std::string uri = "file:";
    for (const char letter : std::filesystem::absolute(path).string()) {
        const auto byte = static_cast<unsigned char>(letter);
        const bool plain = std::isalnum(byte) != 0 || letter == '/' || letter == '.' || letter == '-' || letter == '_';
        uri += plain ? std::string(1, letter) : std::string{'%', digits[byte >> 4], digits[byte & 0xf]};
    }
    return uri + "?immutable=1";
}

bool hasFile(const std::string &path)
{
    std::error_code none;
    return std::filesystem::exists(path, none);
}

/// By its permissions, for everybody.
bool isWriteProtected(const std::string &path)
{
    using std::filesystem::perms;
    constexpr auto toWrite = perms::owner_write | perms::group_write | perms::others_write;
    std::error_code failed;
    const auto status = std::filesystem::status(path, failed);
    return !failed && (status.permissions() & toWrite) == perms::none;
}

/// Never lets an exception through: SQLite is C.
void takeRow(sqlite3_context *context, int count, sqlite3_value **values) noexcept
{
    auto &taken = *static_cast<std::vector<TakenRow> *>(sqlite3_user_data(context));
    try {
        TakenRow &row = taken.emplace_back();
        for (int column = 0; column < count; ++column)
            row.cells[column] = sqlite3_value_int64(values[column]);
        row.lastIsNull = sqlite3_value_type(values[count - 1]) == SQLITE_NULL;
    } catch (const std::bad_alloc &) {
        sqlite3_result_error_nomem(context);
    }
}

} // namespace

void Database::Closer::operator()(sqlite3 *connection) const
{
    sqlite3_close_v2(connection);
}

Database::Database(const std::string &path, Mode mode) : Database(std::make_unique<std::string>(path))
{
    if (mode == Mode::ReadWrite)
        connect(fileName(path), SQLITE_OPEN_READWRITE);
    else
        connectToRead();
    choose();
    if (mode == Mode::ReadWrite && sqlite3_db_readonly(m_connection.get(), "main") == 1)
        throwBroken(SQLITE_READONLY, path);
}

Database::~Database()
{
    if (m_connection)
        static_cast<void>(holds());
}

void Database::hold()
{
    m_held.emplace(*m_path);
}

bool Database::holds()
{
    if (!m_held || m_held->stillThere())
        return true;
    // A log without a name must not be brought into a file that has gone on without it.
    sqlite3_db_config(m_connection.get(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    return false;
}

void Database::requireHold()
{
    if (!holds())
        throw outcome::BrokenWorld(*m_path +
                                   ": another program moved the logbook or took its working files away while it was "
                                   "open here. What was stored before is safe; nothing more is written from here. "
                                   "Close all windows of Hammerline, start it again and look at the last entry.");
}

Database Database::inMemory()
{
    Database database(std::make_unique<std::string>("memory"));
    database.connect(":memory:", SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE);
    database.choose();
    return database;
}

void Database::connect(const std::string &name, int flags)
{
    sqlite3 *connection = nullptr;
    const int result =
        sqlite3_open_v2(name.c_str(), &connection, flags | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE, nullptr);
    m_statements.clear();
    m_connection.reset(connection);
    check(result);
    secure();
}

// A write-ahead log wants two files beside the logbook. SQLite takes them away again when the last connection closes,
// but not if that one may only read. So a logbook that is as it should be, with no log to bring in, is opened as if for
// writing and then told to refuse every write: closing it finds nothing to do but to clear away. One that nobody can
// write to, or whose folder takes no files, is read without them.
void Database::connectToRead()
{
    const bool settled = !hasUnfinishedLog(path()) && !hasFile(path() + "-journal");
    if (settled && isWriteProtected(path())) {
        connect(immutableUri(path()), SQLITE_OPEN_READONLY | SQLITE_OPEN_URI);
        return;
    }
    connect(fileName(path()), settled ? SQLITE_OPEN_READWRITE : SQLITE_OPEN_READONLY);
    if (!readableAsItIs() && !hasUnfinishedLog(path()))
        connect(immutableUri(path()), SQLITE_OPEN_READONLY | SQLITE_OPEN_URI);
    run("PRAGMA query_only = ON");
}

void Database::secure()
{
    sqlite3 *connection = m_connection.get();
    for (const Limit &limit : limits)
        sqlite3_limit(connection, limit.which, limit.most);
    for (const Setting &setting : settings)
        check(sqlite3_db_config(connection, setting.which, setting.on, nullptr));
    check(sqlite3_busy_timeout(connection, patienceMilliseconds));
    constexpr int cells = std::size(TakenRow{}.cells);
    check(sqlite3_create_function_v2(connection, "take_row", cells, SQLITE_UTF8 | SQLITE_DIRECTONLY, m_taken.get(),
                                     &takeRow, nullptr, nullptr, nullptr));
}

void Database::choose()
{
    // EXTRA: a new logbook's rollback journal, gone without a trace before the write-ahead log begins. Come back after
    // a power cut it would roll everything back.
    run("PRAGMA synchronous = EXTRA; PRAGMA cell_size_check = ON; PRAGMA temp_store = MEMORY; PRAGMA mmap_size = 0;");
}

void Database::check(int resultCode) const
{
    if (resultCode != SQLITE_OK)
        throwBroken(resultCode, *m_path);
}

bool Database::readableAsItIs()
{
    const int result =
        sqlite3_exec(m_connection.get(), "SELECT count(*) FROM sqlite_schema", nullptr, nullptr, nullptr) & 0xff;
    return result != SQLITE_CANTOPEN && result != SQLITE_READONLY;
}

void Database::run(const std::string &sql)
{
    check(sqlite3_exec(m_connection.get(), sql.c_str(), nullptr, nullptr, nullptr));
}

Use Database::use(std::string_view sql)
{
    const auto found = m_statements.find(sql);
    if (found != m_statements.end())
        return Use(found->second);
    return Use(m_statements.emplace(std::string(sql), prepare(sql)).first->second);
}

const std::vector<TakenRow> &Database::take(std::string_view sql, std::int64_t parameter)
{
    m_taken->clear();
    const Use query = use(sql);
    query->bind(1, parameter);
    query->run();
    return *m_taken;
}

Statement Database::prepare(std::string_view sql)
{
    return Statement(m_connection.get(), sql, *m_path);
}

Blob Database::blob(const char *table, const char *column, std::int64_t row)
{
    return Blob(m_connection.get(), table, column, row, *m_path);
}

std::int64_t Database::number(std::string_view sql)
{
    Statement statement = prepare(sql);
    return statement.step() ? statement.integer(0) : 0;
}

bool Database::copyTo(const std::string &newPath)
{
    if (!claimNewFile(newPath))
        return false;
    try {
        copyInto(newPath);
    } catch (const outcome::BrokenWorld &) {
        removeUnfinished(newPath);
        throw;
    }
    return true;
}

void Database::copyInto(const std::string &claimed)
{
    Database copy(claimed, Mode::ReadWrite);
    sqlite3_backup *backup = sqlite3_backup_init(copy.m_connection.get(), "main", m_connection.get(), "main");
    if (backup == nullptr)
        throwBroken(sqlite3_extended_errcode(copy.m_connection.get()), claimed);
    const int stepped = sqlite3_backup_step(backup, -1);
    const int finished = sqlite3_backup_finish(backup);
    if (stepped != SQLITE_DONE)
        throwBroken(finished == SQLITE_OK ? stepped : finished, claimed);
}

bool hasUnfinishedLog(const std::string &path)
{
    std::error_code none;
    const auto size = std::filesystem::file_size(path + "-wal", none);
    return !none && size > 0;
}

void removeUnfinished(const std::string &path)
{
    for (const char *end : {"", "-wal", "-shm", "-journal"})
        std::remove((path + end).c_str());
}

bool claimNewFile(const std::string &path)
{
    const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644);
    if (file >= 0) {
        ::close(file);
        return true;
    }
    if (errno == EEXIST)
        return false;
    throwBroken(errno == EROFS ? SQLITE_READONLY : errno == ENOSPC ? SQLITE_FULL : SQLITE_CANTOPEN, path);
}

} // namespace hammerline::logbook::inside
