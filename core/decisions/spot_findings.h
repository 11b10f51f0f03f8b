#pragma once
// What a spot check tells: the notes of the sample, read again by somebody else, say how many notes of the pass may be
// out in all, and how far the two people agree.

#include "analysis/analysis.h"
#include "analysis/spot_check.h"
#include "decisions/decisions.h"
#include "outcome/outcome.h"

#include <optional>
#include <string_view>
#include <vector>

namespace hammerline::decisions {

struct SpotFinding {
    catalogue::Quantity quantity{};
    int notes = 0;  ///< judged notes that the checked pass has a value of: what the sample was drawn from
    int sample = 0; ///< those of the sample that were read again and are judged
    std::vector<keyboard::Note> out{}; ///< found out when read again, rising
    /// As `spot-check` tells of the three numbers above; absent where no note was read again.
    std::optional<analysis::SpotCheck> proof{};
    /// Read again minus read before, as `compare` tells; absent where no note was read in both.
    std::optional<analysis::Comparison> agreement{};

    /// Notes of the sample that were read again, judged or not.
    [[nodiscard]] int readAgain() const { return agreement ? agreement->pairs : 0; }
};

/// One for each quantity of the check, in its order. A note of the sample that is not read yet counts as not sampled;
/// a note outside the sample that was read in the same pass is left out: it was chosen, not drawn.
/// Refused: a `confidence` that spotCheck refuses.
[[nodiscard]] outcome::Outcome<std::vector<SpotFinding>>
spotFindings(const SpotCheck &check, const readings::ValueTable &before, const readings::ValueTable &again,
             const tolerance::ToleranceSet &set, std::string_view confidence);

} // namespace hammerline::decisions
