#include "logbook/inside/broken.h"

#include "outcome/outcome.h"

#include <sqlite3.h>

namespace hammerline::logbook::inside {

namespace {

std::string_view explanationOf(int primaryCode)
{
    switch (primaryCode) {
    case SQLITE_FULL:
        return "the disk is full. Everything stored before is safe; the last entry was not stored. Free some space, "
               "then enter it again";
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return "another program keeps it locked. Everything stored before is safe; the last entry was not stored. "
               "Close the other program or wait for it, then try again";
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_AUTH:
        return "it is read-only: the file, its folder or its disk may not be written. Everything stored before is "
               "safe. The window and whatever enters readings have to write: make it writable for them. The commands "
               "instruments, passes, review, export and verify read it as it is";
    case SQLITE_CANTOPEN:
        return "it cannot be opened. Nothing was changed. See that the file and its folder are there and that you may "
               "use them";
    case SQLITE_NOTADB:
        return "it is not a Hammerline logbook, or its first page is damaged. Nothing was changed. Choose another "
               "file, or restore a backup";
    case SQLITE_CORRUPT:
        return "the file is damaged. Nothing more was written to it. Keep a copy of it as it is, then go on with a "
               "backup";
    case SQLITE_IOERR:
        return "the disk reported an error. Everything stored before is safe as far as the disk kept it; the last "
               "entry was not stored. See that the disk is connected and sound, then try again";
    case SQLITE_TOOBIG:
        return "a text or picture is larger than a logbook takes. Nothing was stored of it. Shorten it, then try again";
    case SQLITE_NOMEM:
        return "the computer ran out of memory. Everything stored before is safe. Close other programs, then try again";
    default:
        return "the store refused. Everything stored before is safe; the last entry was not stored";
    }
}

} // namespace

void throwBroken(int resultCode, const std::string &path)
{
    throw outcome::BrokenWorld(path + ": " + std::string(explanationOf(resultCode & 0xff)) + " (" +
                               sqlite3_errstr(resultCode) + ", " + std::to_string(resultCode) + ").");
}

void throwDamaged(const std::string &path, std::string_view found)
{
    throw outcome::BrokenWorld(path +
                               ": the logbook is damaged or was edited by another program: " + std::string(found) +
                               ". Nothing was changed. Keep a copy of it as it is, then go on with a backup.");
}

void throwRefused(const std::string &path, std::string_view why)
{
    throw outcome::BrokenWorld(path + ": " + std::string(why) + ". Nothing was changed.");
}

} // namespace hammerline::logbook::inside
