#pragma once
// What was found out about a record, in plain words for the person who holds it.

#include "prompts/prompts.h"
#include "seal/judge_record.h"

namespace hammerline::main_window {

/// `file` is its name. The choices are left to whoever asks.
[[nodiscard]] prompts::Question wordsOf(const seal::RecordJudgement &judged, const QString &file);

/// A name out of a certificate or a file, on one line and of bounded length: whoever made it chose the letters.
[[nodiscard]] QString plainName(const std::string &name);
/// "Sample Workshop" and its fingerprint in groups, on two lines.
[[nodiscard]] QString keyWords(const std::string &name, const std::string &fingerprint);

} // namespace hammerline::main_window
