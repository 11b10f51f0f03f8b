// Files that are read: whole, or piece by piece.
#include "exchange/exchange.h"

#include "exchange/inside/descriptor.h"

#include <cerrno>
#include <cstdint>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>

namespace hammerline::exchange {
namespace {

using outcome::Fault;

constexpr std::size_t piece = 1u << 16;

std::string reason(int error)
{
    return std::strerror(error);
}

bool isDatabase(int descriptor)
{
    constexpr std::string_view head("SQLite format 3\0", 16);
    char bytes[head.size()]{};
    return ::pread(descriptor, bytes, sizeof bytes, 0) == static_cast<ssize_t>(sizeof bytes) &&
           std::string_view(bytes, sizeof bytes) == head;
}

/// A file from its beginning to its end.
class OpenFile {
public:
    static outcome::Outcome<OpenFile> open(const std::string &path, std::size_t mostBytes)
    {
        OpenFile file(path, mostBytes);
        if (!file.m_descriptor.open())
            return file.fault("cannot be read (" + reason(errno) + "); name a file that is there and may be read");
        if (::fstat(file.m_descriptor.number(), &file.m_before) == 0 && S_ISDIR(file.m_before.st_mode))
            return file.fault("is a folder; name a file");
        if (isDatabase(file.m_descriptor.number())) {
            file.m_descriptor.neverClose();
            return file.fault("is a logbook or another database; name a file of the kind that is asked for");
        }
        if (file.isRegular() && static_cast<std::uint64_t>(file.m_before.st_size) > mostBytes)
            return file.tooLarge();
        return file;
    }

    /// Devices and pipes are not: they give what somebody sends, when they send it.
    [[nodiscard]] bool isRegular() const { return S_ISREG(m_before.st_mode); }

    /// The next bytes; how many, 0 at the end.
    outcome::Outcome<std::size_t> read(std::span<char> into)
    {
        for (;;) {
            const ssize_t count = ::read(m_descriptor.number(), into.data(), into.size());
            if (count < 0 && errno == EINTR)
                continue;
            if (count < 0)
                return fault("cannot be read (" + reason(errno) + ")");
            if (count == 0 && hasChanged())
                return fault("was changed while it was read; try again when nobody writes to it any more");
            m_bytes += static_cast<std::size_t>(count);
            if (m_bytes > m_mostBytes)
                return tooLarge();
            return static_cast<std::size_t>(count);
        }
    }

    outcome::Outcome<std::string> readAll()
    {
        std::string content;
        char buffer[piece];
        for (;;) {
            const auto count = read(buffer);
            if (!count)
                return count.faults();
            if (count.value() == 0)
                return content;
            content.append(buffer, count.value());
        }
    }

    /// Reads a regular file through and goes back to its beginning: from then on its bytes come out of the system's
    /// memory and not from a slow disk.
    void lookThrough()
    {
        char buffer[piece];
        while (::read(m_descriptor.number(), buffer, sizeof buffer) > 0) {
        }
        rewind();
    }

    void rewind()
    {
        ::lseek(m_descriptor.number(), 0, SEEK_SET);
        m_bytes = 0;
    }

private:
    OpenFile(const std::string &path, std::size_t mostBytes)
        : m_descriptor(::open(path.c_str(), O_RDONLY | O_CLOEXEC)), m_path(path), m_mostBytes(mostBytes)
    {
    }

    /// As far as size and time of change tell.
    [[nodiscard]] bool hasChanged() const
    {
        struct stat now {};
        if (!isRegular() || ::fstat(m_descriptor.number(), &now) != 0)
            return false;
        return now.st_size != m_before.st_size || now.st_mtim.tv_sec != m_before.st_mtim.tv_sec ||
               now.st_mtim.tv_nsec != m_before.st_mtim.tv_nsec;
    }

    [[nodiscard]] Fault fault(const std::string &problem) const { return Fault{m_path, 0, problem}; }
    [[nodiscard]] Fault tooLarge() const
    {
        return fault("is larger than " + std::to_string(m_mostBytes >> 20) + " MiB; is this the right file?");
    }

    Descriptor m_descriptor;
    std::string m_path;
    std::size_t m_mostBytes;
    struct stat m_before {};
    std::size_t m_bytes = 0;
};

/// A regular file, as it is read.
class FileText : public TextSource {
public:
    explicit FileText(OpenFile file) : m_file(std::move(file)) {}
    outcome::Outcome<std::size_t> read(std::span<char> into) override { return m_file.read(into); }
    void rewind() override { m_file.rewind(); }

private:
    OpenFile m_file;
};

/// What was read whole already.
class HeldText : public TextSource {
public:
    explicit HeldText(std::string text) : m_text(std::move(text)) {}
    outcome::Outcome<std::size_t> read(std::span<char> into) override
    {
        const std::size_t count = m_text.copy(into.data(), into.size(), m_at);
        m_at += count;
        return count;
    }
    void rewind() override { m_at = 0; }

private:
    std::string m_text;
    std::size_t m_at = 0;
};

} // namespace

outcome::Outcome<std::string> readFile(const std::string &path, std::size_t mostBytes)
{
    auto file = OpenFile::open(path, mostBytes);
    if (!file)
        return file.faults();
    return file.value().readAll();
}

outcome::Outcome<std::unique_ptr<TextSource>> openText(const std::string &path, std::size_t mostBytes)
{
    auto file = OpenFile::open(path, mostBytes);
    if (!file)
        return file.faults();
    if (file.value().isRegular()) {
        file.value().lookThrough();
        return std::unique_ptr<TextSource>(std::make_unique<FileText>(std::move(file).value()));
    }
    auto text = file.value().readAll();
    if (!text)
        return text.faults();
    return std::unique_ptr<TextSource>(std::make_unique<HeldText>(std::move(text).value()));
}

} // namespace hammerline::exchange
