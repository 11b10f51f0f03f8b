#include "analysis/drift_stretch.h"

#include <algorithm>
#include <tuple>

namespace hammerline::analysis {

std::vector<readings::Pass> driftStretch(std::span<const readings::Pass> passes, const readings::Pass &chosen)
{
    using readings::Pass;
    using readings::Purpose;
    const auto moment = [](const Pass &pass) { return std::tuple(pass.began, pass.id); };
    std::vector<Pass> all(passes.begin(), passes.end());
    std::ranges::sort(all, {}, moment);
    std::vector<Pass> stretch;
    for (const Pass &pass : all) {
        if (pass.purpose == Purpose::AsLeft) {
            if (moment(pass) > moment(chosen))
                break;
            stretch.clear();
        }
        if (pass.purpose != Purpose::Setting)
            stretch.push_back(pass);
    }
    return stretch;
}

} // namespace hammerline::analysis
