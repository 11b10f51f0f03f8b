#pragma once
// What `verify` finds out about a record: is it as it was sealed, by whom, and do its verdicts follow from its
// readings.

#include "command_line/command.h"
#include "exchange/record_check.h"

#include <optional>
#include <string>

namespace hammerline::command_line {

struct RecordVerdict {
    Answer answer{};
    /// What is in the record; absent where it is not to be believed.
    std::optional<exchange::RecordCheck> check{};
};

/// `expected`: fingerprint of the one key that the record must be sealed by; absent: the one inside is taken.
[[nodiscard]] outcome::Outcome<RecordVerdict> judgeRecord(const std::string &path,
                                                          const std::optional<std::string> &expected);

} // namespace hammerline::command_line
