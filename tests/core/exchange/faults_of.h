#pragma once
// What the tests of this room say about faults.

#include "outcome/outcome.h"

#include <string>
#include <vector>

namespace hammerline::exchange {

/// Every fault as it is shown, `FILE:LINE: problem`; empty where the outcome holds a value.
template <typename Value>
std::vector<std::string> faultTexts(const outcome::Outcome<Value> &outcome)
{
    std::vector<std::string> texts;
    if (!outcome.ok()) {
        for (const auto &fault : outcome.faults())
            texts.push_back(fault.text());
    }
    return texts;
}

} // namespace hammerline::exchange
