#pragma once
// Bytes of one column of one row, written piece by piece, so that they need not be held whole.

#include <memory>
#include <string>
#include <string_view>

struct sqlite3;
struct sqlite3_blob;

namespace hammerline::logbook::inside {

class Blob {
public:
    /// The row is there and has as many bytes there as will be written. `path` is for messages and must outlive the
    /// blob. To be dropped before the transaction is committed.
    Blob(sqlite3 *database, const char *table, const char *column, std::int64_t row, const std::string &path);
    /// Behind what was written before.
    void write(std::string_view bytes);

private:
    struct Closer {
        void operator()(sqlite3_blob *blob) const;
    };
    std::unique_ptr<sqlite3_blob, Closer> m_blob;
    int m_at = 0;
    const std::string *m_path;
};

} // namespace hammerline::logbook::inside
