#pragma once
// The keys that a workshop trusts: a text file beside its own key, a line each, `FINGERPRINT DAY NAME`; the day may be
// missing. A certificate is signed by nobody but itself, and its name is what somebody wrote into it: another key under
// a name that is on the list is told apart by this list alone. Empty lines and lines that begin with # are for people.

#include "outcome/outcome.h"

#include <string>
#include <string_view>
#include <vector>

namespace hammerline::seal {

struct TrustedKey {
    std::string fingerprint{}; ///< see fingerprintOf
    std::string name{};
    std::string since{}; ///< `2026-03-02`, the day it was put on the list; empty: nobody noted it
    bool operator==(const TrustedKey &) const = default;
};

/// Where the list of the workshop lies whose key is at `keyFile`; empty where that is.
[[nodiscard]] std::string trustedKeysFile(const std::string &keyFile);
/// As they stand in the file; none where there is no file. The faults of lines that are no key.
[[nodiscard]] outcome::Outcome<std::vector<TrustedKey>> trustedKeys(const std::string &path);
/// Puts a key on the list, whose folder is made where it is missing. False where it stands there already. Throws
/// outcome::BrokenWorld where the disk fails.
[[nodiscard]] outcome::Outcome<bool> trustKey(const std::string &path, const TrustedKey &key);
/// Takes the key with the fingerprint off the list; every other line stays as it is. False where it stands not there.
/// Throws outcome::BrokenWorld where the disk fails.
[[nodiscard]] outcome::Outcome<bool> distrustKey(const std::string &path, const std::string &fingerprint);

enum class Standing {
    Trusted,
    NameOfAnother, ///< not on the list, under a name that is
    Unlisted,      ///< neither key nor name is known
};
[[nodiscard]] Standing standingOf(const TrustedKey &key, const std::vector<TrustedKey> &trusted);

} // namespace hammerline::seal
