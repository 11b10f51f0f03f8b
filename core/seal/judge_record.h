#pragma once
// Everything that can be found out about a record from its bytes and the keys that are known here: is it as it was
// sealed, by whom, and do its verdicts follow from the readings inside. The command line and the desktop say it in
// their own words.

#include "exchange/record_check.h"
#include "seal/seal.h"
#include "seal/trusted_keys.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::seal {

/// By whom a record may be sealed.
struct ExpectedKeys {
    std::optional<std::string> pinned{}; ///< fingerprint of the one key that it must be sealed by
    std::vector<TrustedKey> trusted{};   ///< those that are known here; asked where none is pinned
};

enum class Finding {
    True,          ///< sealed and unaltered, and its verdicts follow
    DoesNotFollow, ///< sealed and unaltered, but its verdicts are not what its readings give
    Unreadable,    ///< sealed and unaltered, but the data inside is no record's
    AnotherKey,    ///< unaltered, by a key that is not the one pinned
    NameOfAnother, ///< unaltered, by a key that goes by the name of another that is trusted
    Altered,
    NotOurs,
};

struct RecordJudgement {
    Finding finding = Finding::NotOurs;
    std::string reason{};      ///< one line of plain English without a full stop
    std::string signer{};      ///< name in the certificate; empty where the seal does not hold
    std::string fingerprint{}; ///< of that certificate
    Standing standing = Standing::Unlisted;
    /// What is in the record; absent where it is not to be believed.
    std::optional<exchange::RecordCheck> check{};

    /// It is, byte for byte, what that key sealed.
    [[nodiscard]] bool sealHolds() const { return !fingerprint.empty(); }
};

/// Where no key is pinned, the one inside is taken, unless it goes by the name of another that is trusted.
[[nodiscard]] RecordJudgement judgeRecord(std::string_view file, const ExpectedKeys &expected);

} // namespace hammerline::seal
