#pragma once
// What `check` says to a person: a line a quantity, then what is out, worst first, then what is missing or uneven.

#include "analysis/analysis.h"
#include "tolerance/judge.h"

#include <string>

namespace hammerline::command_line {

struct CheckedFile {
    std::string file{};
    std::string setId{};
    keyboard::Compass compass{};
    tolerance::Judgement judgement{}; ///< doubt weighed, where it is to be told
    tolerance::ToleranceSet set{};
};

[[nodiscard]] std::string checkText(const CheckedFile &checked, const analysis::Summaries &summaries);

} // namespace hammerline::command_line
