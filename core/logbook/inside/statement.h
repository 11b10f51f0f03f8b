#pragma once
// A prepared statement. Errors are thrown as BrokenWorld, never returned.
//
// Columns and parameters are Cells: a whole number, a text or nothing. The store holds no other kind but the digests,
// which are read and written as bytes.

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>

struct sqlite3;
struct sqlite3_stmt;

namespace hammerline::logbook::inside {

/// Monostate: NULL, that is, absent.
using Cell = std::variant<std::monostate, std::int64_t, std::string>;

class Statement {
public:
    /// `path` is for messages and must outlive the statement.
    Statement(sqlite3 *database, std::string_view sql, const std::string &path);

    /// Back to the start, parameters forgotten; so that a cached statement holds neither a read lock nor old texts.
    void reset();
    /// Back to the start, parameters kept: for one who binds all of them anew.
    void again();

    /// Parameters count from 1.
    Statement &bind(int parameter, std::int64_t value);
    Statement &bind(int parameter, std::string_view text);
    Statement &bindCell(int parameter, const Cell &cell);
    Statement &bindNull(int parameter);
    Statement &bindBytes(int parameter, std::string_view bytes);

    /// True: there is a row. False: done.
    bool step();
    /// For statements without rows.
    void run();

    /// Columns count from 0.
    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] std::optional<std::int64_t> optionalInteger(int column) const;
    [[nodiscard]] std::string text(int column) const; ///< NULL: empty
    [[nodiscard]] std::string bytes(int column) const;
    [[nodiscard]] Cell cell(int column) const;
    [[nodiscard]] int columns() const;

private:
    struct Finalizer {
        void operator()(sqlite3_stmt *statement) const;
    };
    void check(int resultCode) const;
    std::unique_ptr<sqlite3_stmt, Finalizer> m_statement;
    const std::string *m_path;
};

/// Use of a cached statement: resets it when done, come what may.
class Use {
public:
    explicit Use(Statement &statement) : m_statement(&statement) {}
    Use(Use &&other) noexcept : m_statement(std::exchange(other.m_statement, nullptr)) {}
    Use(const Use &) = delete;
    Use &operator=(const Use &) = delete;
    ~Use()
    {
        if (m_statement != nullptr)
            m_statement->reset();
    }
    Statement *operator->() const { return m_statement; }
    Statement &operator*() const { return *m_statement; }

private:
    Statement *m_statement;
};

} // namespace hammerline::logbook::inside
