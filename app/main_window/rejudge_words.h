#pragma once
// What another set would say of the shop, in words and as a chart.

#include "charts/bars.h"
#include "main_window/rejudge_model.h"

namespace hammerline::main_window {

/// "Out by “Full upright”: 1,234 of 5,678 notes (21.7 %); as it stands: 800 of 5,678 (14.1 %). …"
[[nodiscard]] QString rejudgedText(const std::string &set, const shop::ShopJudged &judged, const QLocale &locale);
/// What part of each row's notes is out, now and then. `csv`: the figures behind it.
[[nodiscard]] charts::BarsData rejudgedBars(const std::vector<RejudgeModel::Row> &rows, const shop::ShopJudged &judged,
                                            std::string csv, const QLocale &locale);

} // namespace hammerline::main_window
