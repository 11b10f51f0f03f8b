#include "seal/workshop_key.h"

#include <filesystem>

namespace hammerline::seal {

namespace {

/// A link that leads nowhere is something too.
bool isSomethingAt(const std::string &path)
{
    std::error_code unseen;
    return std::filesystem::exists(std::filesystem::symlink_status(path, unseen));
}

} // namespace

outcome::Outcome<SigningKey> workshopKey(const std::string &path, const std::string &name, readings::Instant now)
{
    if (path.empty())
        return outcome::Fault{.problem = "there is no place for the workshop's key; set HOME or name a file for it"};
    if (isSomethingAt(path))
        return loadKey(path, {});
    auto made = makeSigningKey(name.empty() ? "Hammerline workshop" : name, now);
    if (!made)
        return made;
    const auto stored = storeKey(path, made.value(), {});
    if (stored)
        return made;
    // Another process may have been faster: then its key is the workshop's.
    return isSomethingAt(path) ? loadKey(path, {}) : stored.faults();
}

} // namespace hammerline::seal
