#pragma once
// The sets met so far, ready to judge by; most instruments share one. Belongs to one thread.

#include "tolerance/judge.h"

#include <map>
#include <optional>
#include <string>

namespace hammerline::shop {

class Judges {
public:
    /// `name` for the messages of one that cannot be read. Null: it cannot, or `text` is empty. Stands until the next
    /// call.
    [[nodiscard]] const tolerance::Judge *judgeFor(const std::string &text, const std::string &name);

private:
    std::map<std::string, std::optional<tolerance::Judge>> m_judges{};
};

} // namespace hammerline::shop
