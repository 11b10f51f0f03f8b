#pragma once
// The JSON answers of the two studies, in the manner of answers_json.h. Their figures carry no unit:
// lengths count in mm, masses in g.

#include "analysis/gauge_study.h"
#include "analysis/spot_check.h"

#include <string>

namespace hammerline::exchange {

/// "hammerline-gauge-study", version 1.
[[nodiscard]] std::string gaugeStudyJson(const analysis::GaugeStudy &study);
/// "hammerline-spot-check", version 1.
[[nodiscard]] std::string spotCheckJson(const analysis::SpotCheck &check);

} // namespace hammerline::exchange
