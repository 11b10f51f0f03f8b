// Files that are written.
#include "exchange/exchange.h"

#include "exchange/inside/descriptor.h"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <optional>
#include <sys/stat.h>
#include <unistd.h>

namespace hammerline::exchange {
namespace {

using outcome::BrokenWorld;
using outcome::Fault;

/// A file that is gone again unless it was kept.
class Draft {
public:
    explicit Draft(std::string path) : m_path(std::move(path)) {}
    ~Draft()
    {
        if (!m_kept)
            ::unlink(m_path.c_str());
    }
    Draft(const Draft &) = delete;
    Draft &operator=(const Draft &) = delete;
    [[nodiscard]] const std::string &path() const { return m_path; }
    void keep() { m_kept = true; }

private:
    std::string m_path;
    bool m_kept = false;
};

Fault faultOf(const std::string &path, const std::string &problem)
{
    return Fault{path, 0, problem};
}

std::string reason(int error)
{
    return std::strerror(error);
}

BrokenWorld broken(const std::string &path, int error)
{
    return BrokenWorld(path + ": could not be written (" + reason(error) +
                       "); nothing of it was kept; make room or choose another place and try again");
}

/// Errors that a different path would mend; all else is the world's.
bool isPathsFault(int error)
{
    return error == ENOENT || error == ENOTDIR || error == EACCES || error == EPERM || error == EROFS ||
           error == ENAMETOOLONG || error == EISDIR || error == ELOOP || error == EINVAL;
}

outcome::Outcome<bool> refusedOrBroken(const std::string &path, int error)
{
    if (!isPathsFault(error))
        throw broken(path, error);
    return faultOf(path, "cannot be written here (" + reason(error) +
                             "); name a file in a folder that exists and "
                             "that you may write to");
}

void writeAll(int descriptor, std::string_view content, const std::string &path)
{
    while (!content.empty()) {
        const ssize_t count = ::write(descriptor, content.data(), content.size());
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0)
            throw broken(path, errno);
        content.remove_prefix(static_cast<std::size_t>(count));
    }
}

void flush(int descriptor, const std::string &path)
{
    // Devices and pipes have nothing to flush and say EINVAL.
    if (::fsync(descriptor) != 0 && errno != EINVAL && errno != EROFS)
        throw broken(path, errno);
}

std::optional<struct stat> statusOf(const std::string &path)
{
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0)
        return std::nullopt;
    return status;
}

/// Where a rename must land so that a symbolic link stays one.
std::string resolved(const std::string &path)
{
    std::error_code ignored;
    const auto canonical = std::filesystem::weakly_canonical(path, ignored);
    return ignored ? path : canonical.string();
}

std::string draftPath(const std::string &target, int attempt)
{
    const std::filesystem::path path(target);
    const std::string name = "." + path.filename().string().substr(0, 200) + "." + std::to_string(::getpid()) + "-" +
                             std::to_string(attempt) + ".part";
    return (path.parent_path() / name).string();
}

/// Creates a draft beside the target; its descriptor is -1 with errno set where that fails.
std::pair<int, std::string> createDraft(const std::string &target, mode_t mode)
{
    for (int attempt = 0;; ++attempt) {
        const std::string path = draftPath(target, attempt);
        const int descriptor = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode);
        if (descriptor >= 0 || errno != EEXIST || attempt == 1000)
            return {descriptor, path};
    }
}

void flushFolderOf(const std::string &path)
{
    const std::string folder = std::filesystem::path(path).parent_path().string();
    const Descriptor descriptor(::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (descriptor.open())
        ::fsync(descriptor.number()); // some file systems cannot; the file itself is safe by then
}

/// 0, or the error. Without overwriting, a target that appeared in the meantime stays.
int moveInto(const std::string &from, const std::string &to, Overwrite overwrite)
{
    const unsigned flags = overwrite == Overwrite::No ? RENAME_NOREPLACE : 0u;
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), flags) == 0)
        return 0;
    if (errno != EINVAL && errno != ENOSYS)
        return errno;
    if (overwrite == Overwrite::No && statusOf(to))
        return EEXIST;
    return ::rename(from.c_str(), to.c_str()) == 0 ? 0 : errno;
}

Fault alreadyThere(const std::string &path)
{
    return faultOf(path, "is there already; choose another name or allow overwriting (--force)");
}

/// A device or a pipe takes the bytes as they come; there is nothing to replace.
outcome::Outcome<bool> writeThrough(const std::string &path, std::string_view content)
{
    const Descriptor descriptor(::open(path.c_str(), O_WRONLY | O_CLOEXEC));
    if (!descriptor.open())
        return refusedOrBroken(path, errno);
    writeAll(descriptor.number(), content, path);
    flush(descriptor.number(), path);
    return true;
}

outcome::Outcome<bool> writeAndMove(const std::string &path, std::string_view content, Overwrite overwrite,
                                    const std::optional<struct stat> &old)
{
    const std::string target = old ? resolved(path) : path;
    const auto [number, draftName] = createDraft(target, old ? old->st_mode & 0777u : 0666u);
    if (number < 0)
        return refusedOrBroken(path, errno);
    const Descriptor descriptor(number);
    Draft draft(draftName);
    writeAll(number, content, path);
    flush(number, path);
    const int error = moveInto(draft.path(), target, overwrite);
    if (error == EEXIST)
        return alreadyThere(path);
    if (error != 0)
        return refusedOrBroken(path, error);
    draft.keep();
    flushFolderOf(target);
    return true;
}

} // namespace

outcome::Outcome<bool> writeFile(const std::string &path, std::string_view content, Overwrite overwrite)
{
    const auto old = statusOf(path);
    if (old && S_ISDIR(old->st_mode))
        return faultOf(path, "is a folder; name a file");
    if (old && overwrite == Overwrite::No)
        return alreadyThere(path);
    if (path.empty() || path.back() == '/')
        return faultOf(path, "is no file name; name a file in a folder that exists");
    return old && !S_ISREG(old->st_mode) ? writeThrough(path, content) : writeAndMove(path, content, overwrite, old);
}

} // namespace hammerline::exchange
