#include "logbook/inside/blob.h"

#include "logbook/inside/broken.h"

#include <sqlite3.h>

namespace hammerline::logbook::inside {

void Blob::Closer::operator()(sqlite3_blob *blob) const
{
    sqlite3_blob_close(blob); // what could not be written has been said by then
}

Blob::Blob(sqlite3 *database, const char *table, const char *column, std::int64_t row, const std::string &path)
    : m_path(&path)
{
    constexpr int toWrite = 1;
    sqlite3_blob *opened = nullptr;
    const int result = sqlite3_blob_open(database, "main", table, column, row, toWrite, &opened);
    m_blob.reset(opened);
    if (result != SQLITE_OK)
        throwBroken(result, path);
}

void Blob::write(std::string_view bytes)
{
    const int size = static_cast<int>(bytes.size());
    const int result = sqlite3_blob_write(m_blob.get(), bytes.data(), size, m_at);
    if (result != SQLITE_OK)
        throwBroken(result, *m_path);
    m_at += size;
}

} // namespace hammerline::logbook::inside
