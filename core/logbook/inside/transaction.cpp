#include "logbook/inside/transaction.h"

#include "outcome/outcome.h"

namespace hammerline::logbook::inside {

Transaction::Transaction(Database &database, Locking locking) : m_database(&database)
{
    if (locking == Locking::Write)
        database.requireHold();
    database.use(locking == Locking::Write ? "BEGIN IMMEDIATE" : "BEGIN")->run();
}

Transaction::~Transaction()
{
    if (!m_open)
        return;
    try {
        m_database->use("ROLLBACK")->run();
    } catch (const outcome::BrokenWorld &) {
        // After a full disk or a lost drive SQLite has rolled back by itself, and then there is nothing to undo.
    }
}

void Transaction::commit()
{
    m_database->use("COMMIT")->run();
    m_open = false;
    m_database->requireHold(); // else what was committed lies in a log without a name
}

} // namespace hammerline::logbook::inside
