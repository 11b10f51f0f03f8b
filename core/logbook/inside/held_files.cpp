#include "logbook/inside/held_files.h"

#include <sys/stat.h>

namespace hammerline::logbook::inside {

HeldFiles::HeldFiles(const std::string &path)
    : m_path(path),
      m_main(identityOf(path)),
      m_log(identityOf(path + "-wal"))
{
}

bool HeldFiles::stillThere() const
{
    return holds(m_main, m_path) && holds(m_log, m_path + "-wal");
}

std::optional<HeldFiles::Identity> HeldFiles::identityOf(const std::string &path)
{
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0)
        return std::nullopt;
    return Identity{status.st_dev, status.st_ino};
}

bool HeldFiles::holds(const std::optional<Identity> &noted, const std::string &path)
{
    return !noted || identityOf(path) == noted;
}

} // namespace hammerline::logbook::inside
