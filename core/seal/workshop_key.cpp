#include "seal/workshop_key.h"

#include "seal/trusted_keys.h"

#include <filesystem>

namespace hammerline::seal {

namespace {

/// A link that leads nowhere is something too.
bool isSomethingAt(const std::string &path)
{
    std::error_code unseen;
    return std::filesystem::exists(std::filesystem::symlink_status(path, unseen));
}

constexpr std::size_t longestName = 64; ///< bytes: what makeSigningKey takes

bool continuesLetter(char byte)
{
    return (static_cast<unsigned char>(byte) & 0xc0U) == 0x80U;
}

} // namespace

std::string keyNameOf(const std::string &workshop, const std::string &person)
{
    std::string name = workshop.substr(0, workshop.find_first_of(",;\r\n"));
    if (name.size() > longestName) {
        std::size_t end = longestName;
        while (end > 0 && continuesLetter(name[end]))
            --end;
        name.resize(end);
    }
    return name.find_first_not_of(' ') == std::string::npos ? person : name;
}

outcome::Outcome<SigningKey> workshopKey(const std::string &path, const std::string &name, readings::Instant now,
                                         const std::string &passphrase)
{
    if (path.empty())
        return outcome::Fault{.problem = "there is no place for the workshop's key; set HOME or name a file for it"};
    if (isSomethingAt(path))
        return loadKey(path, passphrase);
    auto made = makeSigningKey(name.empty() ? "Hammerline workshop" : name, now);
    if (!made)
        return made;
    const auto stored = storeKey(path, made.value(), passphrase);
    if (stored) {
        const auto listed =
            trustKey(trustedKeysFile(path), {made.value().fingerprint(), made.value().name(), readings::isoDate(now)});
        return listed ? made : listed.faults();
    }
    // Another process may have been faster: then its key is the workshop's.
    return isSomethingAt(path) ? loadKey(path, passphrase) : stored.faults();
}

} // namespace hammerline::seal
