#include "support/faulty_disk.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <new>

namespace hammerline::test_support {

namespace {

using Call = FaultyDisk::Call;

/// What SQLite sees of an open file; the real file follows in the same memory.
struct Shim {
    sqlite3_file head;
    FaultyDisk *disk;
    std::string *name; ///< SQLite hands out raw memory: nothing in it is destroyed but what xClose destroys
};

sqlite3_file *realOf(sqlite3_file *file)
{
    return reinterpret_cast<sqlite3_file *>(reinterpret_cast<Shim *>(file) + 1);
}
Shim &shimOf(sqlite3_file *file)
{
    return *reinterpret_cast<Shim *>(file);
}

/// Does the call on the real file unless the disk has another answer.
template <typename Act>
int guarded(sqlite3_file *file, Call call, const Act &act)
{
    const int answer = shimOf(file).disk->answerTo(call);
    sqlite3_file *real = realOf(file);
    return answer == SQLITE_OK ? act(real, *real->pMethods) : answer;
}

int closeFile(sqlite3_file *file)
{
    delete shimOf(file).name;
    sqlite3_file *real = realOf(file);
    return real->pMethods->xClose(real);
}

int readFile(sqlite3_file *file, void *into, int size, sqlite3_int64 at)
{
    return guarded(file, Call::Read, [&](auto *real, const auto &does) { return does.xRead(real, into, size, at); });
}

int put(sqlite3_file *file, const void *bytes, int size, sqlite3_int64 at)
{
    Shim &shim = shimOf(file);
    shim.disk->changed(*shim.name,
                       {.at = at, .bytes = {static_cast<const char *>(bytes), static_cast<std::size_t>(size)}});
    return realOf(file)->pMethods->xWrite(realOf(file), bytes, size, at);
}

int writeFile(sqlite3_file *file, const void *bytes, int size, sqlite3_int64 at)
{
    FaultyDisk &disk = *shimOf(file).disk;
    const int answer = disk.answerTo(Call::Write);
    if (answer == SQLITE_OK)
        return put(file, bytes, size, at);
    if (disk.writesShort())
        static_cast<void>(put(file, bytes, size / 2, at));
    return answer;
}

int truncateFile(sqlite3_file *file, sqlite3_int64 size)
{
    return guarded(file, Call::Truncate, [&](auto *real, const auto &does) {
        shimOf(file).disk->changed(*shimOf(file).name, {.truncates = true, .at = size, .bytes = {}});
        return does.xTruncate(real, size);
    });
}

int syncFile(sqlite3_file *file, int /*flags*/)
{
    // The real flush is left out: whether the program asks for it is what counts.
    return guarded(file, Call::Sync, [&](auto *, const auto &) {
        shimOf(file).disk->synced(*shimOf(file).name);
        return SQLITE_OK;
    });
}

int sizeOfFile(sqlite3_file *file, sqlite3_int64 *size)
{
    return guarded(file, Call::Size, [&](auto *real, const auto &does) { return does.xFileSize(real, size); });
}

int lockFile(sqlite3_file *file, int level)
{
    return guarded(file, Call::Lock, [&](auto *real, const auto &does) { return does.xLock(real, level); });
}

int mapShared(sqlite3_file *file, int region, int size, int extend, void volatile **into)
{
    return guarded(file, Call::Map,
                   [&](auto *real, const auto &does) { return does.xShmMap(real, region, size, extend, into); });
}

int lockShared(sqlite3_file *file, int offset, int count, int flags)
{
    // Giving a lock back cannot fail.
    if ((flags & SQLITE_SHM_UNLOCK) != 0)
        return realOf(file)->pMethods->xShmLock(realOf(file), offset, count, flags);
    return guarded(file, Call::Lock,
                   [&](auto *real, const auto &does) { return does.xShmLock(real, offset, count, flags); });
}

const sqlite3_io_methods &methods()
{
    static const sqlite3_io_methods all = [] {
        sqlite3_io_methods m{};
        m.iVersion = 2;
        m.xClose = closeFile;
        m.xRead = readFile;
        m.xWrite = writeFile;
        m.xTruncate = truncateFile;
        m.xSync = syncFile;
        m.xFileSize = sizeOfFile;
        m.xLock = lockFile;
        m.xUnlock = [](sqlite3_file *f, int level) { return realOf(f)->pMethods->xUnlock(realOf(f), level); };
        m.xCheckReservedLock = [](sqlite3_file *f, int *out) {
            return realOf(f)->pMethods->xCheckReservedLock(realOf(f), out);
        };
        m.xFileControl = [](sqlite3_file *f, int what, void *with) {
            return realOf(f)->pMethods->xFileControl(realOf(f), what, with);
        };
        m.xSectorSize = [](sqlite3_file *f) { return realOf(f)->pMethods->xSectorSize(realOf(f)); };
        m.xDeviceCharacteristics = [](sqlite3_file *f) {
            return realOf(f)->pMethods->xDeviceCharacteristics(realOf(f));
        };
        m.xShmMap = mapShared;
        m.xShmLock = lockShared;
        m.xShmBarrier = [](sqlite3_file *f) { realOf(f)->pMethods->xShmBarrier(realOf(f)); };
        m.xShmUnmap = [](sqlite3_file *f, int remove) { return realOf(f)->pMethods->xShmUnmap(realOf(f), remove); };
        return m;
    }();
    return all;
}

FaultyDisk &diskOf(sqlite3_vfs *vfs)
{
    return *static_cast<FaultyDisk *>(vfs->pAppData);
}

int openFile(sqlite3_vfs *vfs, const char *name, sqlite3_file *file, int flags, int *flagsOut)
{
    FaultyDisk &disk = diskOf(vfs);
    file->pMethods = nullptr;
    if (const int answer = disk.answerTo(Call::Open); answer != SQLITE_OK)
        return answer;
    const int result = disk.real()->xOpen(disk.real(), name, realOf(file), flags, flagsOut);
    if (result != SQLITE_OK)
        return result;
    Shim &shim = shimOf(file);
    shim.disk = &disk;
    shim.name = new std::string(name == nullptr ? "" : name);
    shim.head.pMethods = &methods();
    disk.opened(*shim.name);
    return SQLITE_OK;
}

int deleteFile(sqlite3_vfs *vfs, const char *name, int syncFolder)
{
    FaultyDisk &disk = diskOf(vfs);
    if (const int answer = disk.answerTo(Call::Delete); answer != SQLITE_OK)
        return answer;
    disk.deleted(name, syncFolder != 0);
    return disk.real()->xDelete(disk.real(), name, 0);
}

int accessFile(sqlite3_vfs *vfs, const char *name, int flags, int *out)
{
    FaultyDisk &disk = diskOf(vfs);
    const int answer = disk.answerTo(Call::Access);
    return answer == SQLITE_OK ? disk.real()->xAccess(disk.real(), name, flags, out) : answer;
}

void apply(std::string &content, const FaultyDisk::Change &change)
{
    const auto at = static_cast<std::size_t>(change.at);
    if (change.truncates)
        return content.resize(at);
    content.resize(std::max(content.size(), at + change.bytes.size()));
    content.replace(at, change.bytes.size(), change.bytes);
}

/// What a cut leaves of one write: all, nothing, or some of its sectors.
void applyTorn(std::string &content, const FaultyDisk::Change &change, std::mt19937 &dice)
{
    constexpr std::size_t sector = 512;
    const auto chance = dice() % 3;
    if (chance == 0)
        return;
    if (chance == 1 || change.truncates)
        return apply(content, change);
    for (std::size_t from = 0; from < change.bytes.size(); from += sector)
        if (dice() % 2 == 0)
            apply(content,
                  {.at = change.at + static_cast<std::int64_t>(from), .bytes = change.bytes.substr(from, sector)});
}

void store(const std::string &name, const std::string &content)
{
    std::ofstream(name, std::ios::binary | std::ios::trunc) << content;
}

int errorOf(Call call)
{
    switch (call) {
    case Call::Open:
        return SQLITE_CANTOPEN;
    case Call::Delete:
        return SQLITE_IOERR_DELETE;
    case Call::Access:
        return SQLITE_IOERR_ACCESS;
    case Call::Read:
        return SQLITE_IOERR_READ;
    case Call::Write:
        return SQLITE_IOERR_WRITE;
    case Call::Truncate:
        return SQLITE_IOERR_TRUNCATE;
    case Call::Sync:
        return SQLITE_IOERR_FSYNC;
    case Call::Size:
        return SQLITE_IOERR_FSTAT;
    case Call::Lock:
        return SQLITE_IOERR_LOCK;
    case Call::Map:
        break;
    }
    return SQLITE_IOERR_SHMMAP;
}

} // namespace

FaultyDisk::FaultyDisk() : m_real(sqlite3_vfs_find(nullptr)), m_vfs(*m_real)
{
    m_vfs.szOsFile = static_cast<int>(sizeof(Shim)) + m_real->szOsFile;
    m_vfs.zName = "faulty";
    m_vfs.pAppData = this;
    m_vfs.xOpen = openFile;
    m_vfs.xDelete = deleteFile;
    m_vfs.xAccess = accessFile;
    sqlite3_vfs_register(&m_vfs, 1);
}

FaultyDisk::~FaultyDisk()
{
    sqlite3_vfs_unregister(&m_vfs);
    sqlite3_vfs_register(m_real, 1);
}

void FaultyDisk::arm(DiskFault fault, std::int64_t atCall, bool lasting)
{
    m_fault = fault;
    m_at = atCall;
    m_lasting = lasting || fault == DiskFault::PowerCut;
    m_calls = 0;
    m_struck = false;
    m_files.clear();
    m_ghosts.clear();
}

void FaultyDisk::heal()
{
    m_fault = DiskFault::None;
}

int FaultyDisk::answerTo(Call call)
{
    ++m_calls;
    const bool now = m_fault != DiskFault::None && (m_lasting ? m_calls >= m_at : m_calls == m_at);
    const bool writes = call == Call::Write || call == Call::Map;
    if (!now || (m_fault == DiskFault::Full && !writes))
        return SQLITE_OK;
    m_struck = true;
    return m_fault == DiskFault::Full ? SQLITE_FULL : errorOf(call);
}

void FaultyDisk::opened(const std::string &name)
{
    m_ghosts.erase(name);
    if (m_files.contains(name))
        return;
    std::ifstream in(name, std::ios::binary);
    m_files[name].durable.assign(std::istreambuf_iterator<char>(in), {});
}

void FaultyDisk::synced(const std::string &name)
{
    if (!m_flushes)
        return;
    Content &content = m_files[name];
    for (const Change &change : content.pending)
        apply(content.durable, change);
    content.pending.clear();
}

void FaultyDisk::deleted(const std::string &name, bool forGood)
{
    if (!forGood && m_files.contains(name))
        m_ghosts[name] = m_files[name];
    m_files.erase(name);
}

void FaultyDisk::comeBack(std::mt19937 &dice)
{
    for (auto &[name, content] : m_files) {
        for (const Change &change : content.pending)
            applyTorn(content.durable, change, dice);
        store(name, content.durable);
        std::filesystem::remove(name + "-shm");
    }
    for (const auto &[name, content] : m_ghosts)
        if (dice() % 2 == 0)
            store(name, content.durable);
    m_files.clear();
    m_ghosts.clear();
    heal();
}

} // namespace hammerline::test_support
