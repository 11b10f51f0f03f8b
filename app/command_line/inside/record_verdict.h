#pragma once
// What `verify` finds out about a record: is it as it was sealed, by whom, and do its verdicts follow from its
// readings.

#include "command_line/command.h"
#include "exchange/record_check.h"
#include "seal/trusted_keys.h"

#include <optional>
#include <string>
#include <vector>

namespace hammerline::command_line {

struct RecordVerdict {
    Answer answer{};
    /// What is in the record; absent where it is not to be believed.
    std::optional<exchange::RecordCheck> check{};
};

/// By whom a record may be sealed.
struct ExpectedKeys {
    std::optional<std::string> pinned{};     ///< fingerprint of the one key that it must be sealed by
    std::vector<seal::TrustedKey> trusted{}; ///< those that are known here; asked where none is pinned
};

/// Where no key is pinned, the one inside is taken, unless it goes by the name of another that is trusted.
[[nodiscard]] outcome::Outcome<RecordVerdict> judgeRecord(const std::string &path, const ExpectedKeys &expected);

} // namespace hammerline::command_line
