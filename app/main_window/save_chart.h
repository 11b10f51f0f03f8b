#pragma once
// A chart into a file of the user's choice.

#include "charts/charts.h"
#include "instrument/instrument.h"
#include "prompts/prompts.h"

namespace hammerline::main_window {

/// Asks where to; a file that can't be written is told. BrokenWorld passes through.
void saveChart(QWidget *window, prompts::Prompts &prompts, const charts::ChartData &chart,
               const instrument::Instrument &instrument);

} // namespace hammerline::main_window
