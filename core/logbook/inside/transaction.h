#pragma once
// All or nothing: begins where it is made, undoes where it is dropped, unless committed.

#include "logbook/inside/database.h"

namespace hammerline::logbook::inside {

enum class Locking { Read, Write };

class Transaction {
public:
    /// Write: waits for other writers, so that what is read inside is still so when it commits.
    explicit Transaction(Database &database, Locking locking = Locking::Write);
    Transaction(const Transaction &) = delete;
    Transaction &operator=(const Transaction &) = delete;
    ~Transaction();

    /// On disk when it returns.
    void commit();

private:
    Database *m_database;
    bool m_open = true;
};

} // namespace hammerline::logbook::inside
