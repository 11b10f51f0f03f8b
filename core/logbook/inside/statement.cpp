#include "logbook/inside/statement.h"

#include "logbook/inside/broken.h"

#include <sqlite3.h>

namespace hammerline::logbook::inside {

namespace {

/// SQLite takes a null pointer for NULL; an empty view may have one.
const char *solid(std::string_view view)
{
    return view.empty() ? "" : view.data();
}

} // namespace

void Statement::Finalizer::operator()(sqlite3_stmt *statement) const
{
    sqlite3_finalize(statement);
}

Statement::Statement(sqlite3 *database, std::string_view sql, const std::string &path) : m_path(&path)
{
    sqlite3_stmt *prepared = nullptr;
    const int result = sqlite3_prepare_v3(database, sql.data(), static_cast<int>(sql.size()), SQLITE_PREPARE_PERSISTENT,
                                          &prepared, nullptr);
    m_statement.reset(prepared);
    check(result);
}

void Statement::check(int resultCode) const
{
    if (resultCode != SQLITE_OK)
        throwBroken(resultCode, *m_path);
}

void Statement::reset()
{
    // The result repeats the error of the last step, which was thrown already.
    sqlite3_reset(m_statement.get());
    sqlite3_clear_bindings(m_statement.get());
}

void Statement::again()
{
    sqlite3_reset(m_statement.get());
}

Statement &Statement::bind(int parameter, std::int64_t value)
{
    check(sqlite3_bind_int64(m_statement.get(), parameter, value));
    return *this;
}

Statement &Statement::bind(int parameter, std::string_view text)
{
    check(sqlite3_bind_text64(m_statement.get(), parameter, solid(text), text.size(), SQLITE_TRANSIENT, SQLITE_UTF8));
    return *this;
}

Statement &Statement::bindCell(int parameter, const Cell &cell)
{
    if (const auto *number = std::get_if<std::int64_t>(&cell))
        return bind(parameter, *number);
    if (const auto *text = std::get_if<std::string>(&cell))
        return bind(parameter, std::string_view(*text));
    return bindNull(parameter);
}

Statement &Statement::bindNull(int parameter)
{
    check(sqlite3_bind_null(m_statement.get(), parameter));
    return *this;
}

Statement &Statement::bindBytes(int parameter, std::string_view bytes)
{
    check(sqlite3_bind_blob64(m_statement.get(), parameter, solid(bytes), bytes.size(), SQLITE_TRANSIENT));
    return *this;
}

bool Statement::step()
{
    const int result = sqlite3_step(m_statement.get());
    if (result == SQLITE_ROW)
        return true;
    if (result != SQLITE_DONE)
        throwBroken(result, *m_path);
    return false;
}

void Statement::run()
{
    while (step()) {
    }
}

bool Statement::isNull(int column) const
{
    return sqlite3_column_type(m_statement.get(), column) == SQLITE_NULL;
}

std::int64_t Statement::integer(int column) const
{
    return sqlite3_column_int64(m_statement.get(), column);
}

std::optional<std::int64_t> Statement::optionalInteger(int column) const
{
    return isNull(column) ? std::nullopt : std::optional(integer(column));
}

std::string Statement::text(int column) const
{
    const void *text = sqlite3_column_text(m_statement.get(), column);
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_statement.get(), column));
    return text == nullptr ? std::string() : std::string(static_cast<const char *>(text), size);
}

std::string Statement::bytes(int column) const
{
    const void *bytes = sqlite3_column_blob(m_statement.get(), column);
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_statement.get(), column));
    return bytes == nullptr ? std::string() : std::string(static_cast<const char *>(bytes), size);
}

Cell Statement::cell(int column) const
{
    switch (sqlite3_column_type(m_statement.get(), column)) {
    case SQLITE_NULL:
        return {};
    case SQLITE_INTEGER:
        return integer(column);
    default:
        return text(column);
    }
}

int Statement::columns() const
{
    return sqlite3_column_count(m_statement.get());
}

} // namespace hammerline::logbook::inside
