#pragma once
// One connection to one file, set up so that a crafted file runs nothing and a power cut loses nothing:
// write-ahead log with a flush at every commit, foreign keys on, no double-quoted strings, no writing to the schema,
// no functions called from the schema, small limits, every page's cells checked.
//
// A connection belongs to one thread at a time.

#include "logbook/inside/blob.h"
#include "logbook/inside/held_files.h"
#include "logbook/inside/statement.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace hammerline::logbook::inside {

/// Four whole numbers of one row.
struct TakenRow {
    std::int64_t cells[4];
    bool lastIsNull; ///< then it counts as 0
};

class Database {
public:
    enum class Mode { ReadWrite, ReadOnly };

    /// An existing file (an empty one is an empty database). A connection for reading only leaves no file beside it
    /// that was not there; where none can be made, on a read-only disk, it does without.
    Database(const std::string &path, Mode mode);
    /// A database in memory, with the same settings.
    [[nodiscard]] static Database inMemory();

    Database(Database &&) noexcept = default;
    Database &operator=(Database &&) noexcept = default;
    ~Database();

    [[nodiscard]] const std::string &path() const { return *m_path; }

    /// From now on the logbook's files are watched (held_files.h).
    void hold();
    /// Where the files are no longer those that are open here: nothing may be written any more, and nothing is.
    void requireHold();

    /// One or more statements without rows and parameters.
    void run(const std::string &sql);
    /// Prepared once, kept as long as the connection. `sql` is one of the store's own texts, never made from data.
    [[nodiscard]] Use use(std::string_view sql);
    /// A statement used once.
    [[nodiscard]] Statement prepare(std::string_view sql);
    /// Bytes of a column, which are there already, to be written anew piece by piece.
    [[nodiscard]] Blob blob(const char *table, const char *column, std::int64_t row);
    /// First column of the first row of a query without parameters; 0 where there is none.
    [[nodiscard]] std::int64_t number(std::string_view sql);

    /// All rows of a query that selects nothing and calls take_row(a, b, c, d), which is never true, in its WHERE; in
    /// the order in which the query walks. Handed out one by one through step() they would take half as long again.
    /// `?1` is the one parameter. The rows stay until the next call.
    [[nodiscard]] const std::vector<TakenRow> &take(std::string_view sql, std::int64_t parameter);

    /// Copies the whole database, as it stands at this moment, into a new file. Something there already: false.
    /// Where it fails no file is left.
    [[nodiscard]] bool copyTo(const std::string &newPath);

private:
    void copyInto(const std::string &claimed);

    struct Closer {
        void operator()(sqlite3 *connection) const;
    };
    struct Hash : std::hash<std::string_view> {
        using is_transparent = void;
    };
    explicit Database(std::unique_ptr<std::string> path) : m_path(std::move(path)) {}
    void connect(const std::string &name, int flags);
    void connectToRead();
    void secure(); ///< before the file is looked at
    void choose(); ///< what SQLite takes only once it can read the file
    void check(int resultCode) const;
    [[nodiscard]] bool readableAsItIs();
    [[nodiscard]] bool holds(); ///< where not, closing will write nothing

    std::unique_ptr<std::string> m_path; ///< behind a pointer: statements refer to it when the connection moves
    std::unique_ptr<sqlite3, Closer> m_connection;
    std::optional<HeldFiles> m_held;
    std::unique_ptr<std::vector<TakenRow>> m_taken = std::make_unique<std::vector<TakenRow>>(); ///< SQLite points there
    std::unordered_map<std::string, Statement, Hash, std::equal_to<>> m_statements;
};

/// Whether a write-ahead log with entries lies beside the file.
[[nodiscard]] bool hasUnfinishedLog(const std::string &path);

/// Of a file that we made and could not fill, with those beside it: better nothing than half a logbook.
void removeUnfinished(const std::string &path);

/// Makes the file, which must not be there yet; false where it is.
[[nodiscard]] bool claimNewFile(const std::string &path);

} // namespace hammerline::logbook::inside
