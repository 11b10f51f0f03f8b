#pragma once
// The readings of the invented workshop as files that a person could have typed: wide or long, mm or inches, as typed.
// sample-data/ in the source tree holds them.

#include "analysis/gauge_study.h"
#include "demo_workshop/demo_workshop.h"

#include <string>
#include <vector>

namespace hammerline::demo_workshop {

struct SampleFile {
    std::string name{}; ///< below sample-data/: "readings/quillerby-131-as-found.csv"
    std::string text{};
};

/// One file a pass. Passes with repeated takes or remarks are long, the others wide.
[[nodiscard]] std::vector<SampleFile> readingFiles(const Workshop &workshop);

/// Trials of one let-off gauge that is read to 0.01 mm: ten notes, three people, three takes.
[[nodiscard]] std::vector<analysis::Trial> trials(std::uint64_t seed = usualSeed);
[[nodiscard]] SampleFile trialFile(std::uint64_t seed = usualSeed);

} // namespace hammerline::demo_workshop
