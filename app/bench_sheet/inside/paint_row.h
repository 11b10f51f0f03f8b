#pragma once
// Painting one row of boxes: the number of its first box in the gutter, then tab, box and limits of each.

#include "bench_sheet/bench_sheet.h"
#include "bench_sheet/inside/box_rows.h"

namespace hammerline::bench_sheet {

/// 7.5 mm: room for a figure in pencil.
inline constexpr double boxHeight = 7.5 / 25.4 * 72;

[[nodiscard]] double heightOf(const Row &row, const Block &block);

/// A row laid out for paper; it holds all it needs and may outlive the row and the input.
[[nodiscard]] paper::Sheet::Deed paintedRow(const Row &row, const Block &block, const BenchSheetInput &input,
                                            QPointF topLeft, double width);

} // namespace hammerline::bench_sheet
