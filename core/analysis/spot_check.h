#pragma once
// What a sample proves: some notes of an instrument were checked, some of them found out; how many may be out in all?
//
// Hypergeometric, computed exactly in whole numbers: the answer never hangs on the rounding of a double.

#include "outcome/outcome.h"

#include <string_view>
#include <vector>

namespace hammerline::analysis {

struct SampleToProve {
    int atMostOut = 0;
    int sample = 0; ///< least sample that proves it when none is found out; 0 where there is nothing to prove
    bool operator==(const SampleToProve &) const = default;
};

struct SpotCheck {
    /// Largest M with P(at most `found` in the sample | M out among all) > 1 - confidence.
    int mostOut = 0;
    std::vector<SampleToProve> sampleToProve{}; ///< for 0, 1, 2, 4 and 8 out
};

/// `confidence` is the decimal as typed, above 0 and below 1: "0.95" is 95/100, not the double nearest to it.
/// Refused: notes outside 1-10000, more sampled than there are, more found than sampled, negative counts.
[[nodiscard]] outcome::Outcome<SpotCheck> spotCheck(int notes, int sample, int found, std::string_view confidence);

} // namespace hammerline::analysis
