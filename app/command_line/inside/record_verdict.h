#pragma once
// What `verify` says about a record, and with which status it ends.

#include "command_line/command.h"
#include "seal/judge_record.h"

#include <optional>
#include <string>

namespace hammerline::command_line {

struct RecordVerdict {
    Answer answer{};
    /// What is in the record; absent where it is not to be believed.
    std::optional<exchange::RecordCheck> check{};
};

/// The faults of a file that cannot be read or is no record.
[[nodiscard]] outcome::Outcome<RecordVerdict> recordVerdict(const std::string &path,
                                                            const seal::ExpectedKeys &expected);

} // namespace hammerline::command_line
