#pragma once
// What was found out about a record, in plain words for the person who holds it.

#include "prompts/prompts.h"
#include "seal/judge_record.h"

namespace hammerline::main_window {

/// `file` is its name. With the choice to trust the key, where the seal holds, the key is not trusted yet and
/// `hasList`: there is a list to put it on; of a record that was altered no key is offered. Without choices it is
/// merely told.
[[nodiscard]] prompts::Question questionOf(const seal::RecordJudgement &judged, const QString &file, bool hasList);

/// A name out of a certificate or a file, on one line and of bounded length: whoever made it chose the letters.
[[nodiscard]] QString plainName(const std::string &name);
/// "Sample Workshop" and its fingerprint in groups, on two lines.
[[nodiscard]] QString keyWords(const std::string &name, const std::string &fingerprint);

} // namespace hammerline::main_window
