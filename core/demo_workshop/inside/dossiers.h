#pragma once
// What stands in the file of each invented instrument beside its readings.

#include "demo_workshop/inside/piano_plans.h"
#include "dossier/dossier.h"

namespace hammerline::demo_workshop {

/// By the instrument's name; empty where nobody wrote anything yet.
[[nodiscard]] dossier::Dossier dossierOf(const PianoPlan &plan);

} // namespace hammerline::demo_workshop
