#pragma once
// The rows of the shop's view in words, and its two charts.

#include "charts/bars.h"
#include "shop/shop.h"

#include <QLocale>
#include <QStringList>

namespace hammerline::main_window {

/// The person, the quantity's name, the month; what stands where there is none.
[[nodiscard]] QString shopRowName(shop::By by, const shop::Row &row);
/// Name and figures, in the order of `shopHeads`.
[[nodiscard]] QStringList shopRowTexts(shop::By by, const shop::Row &row, const QLocale &locale);
[[nodiscard]] QStringList shopHeads(shop::By by);
/// What a column is sorted by; 0 for the name.
[[nodiscard]] double shopSortKey(const shop::Figures &figures, int column);
/// "12 instruments, 40 passes, 28,160 readings; out as found 31.2 %, as left 4.0 %; 12.5 h planned, 11.0 h taken".
[[nodiscard]] QString shopTotalText(const shop::Figures &total, const QLocale &locale);

enum class ShopQuestion { HowMuchIsOut, DoTheHoursHold, WhatIfByAnotherSet };
/// Of the first two questions.
[[nodiscard]] charts::BarsData shopBars(ShopQuestion question, shop::By by, const std::vector<shop::Row> &rows,
                                        const shop::Figures &total, const QLocale &locale);

} // namespace hammerline::main_window
