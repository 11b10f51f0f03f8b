#pragma once
// What goes onto paper: text laid out once (text_block.h), a run of pages set block by block (sheet.h), tables that
// break between rows (table.h), and the painting of all that as a PDF. Vector, fonts embedded, measures in points (1/72
// in).

#include "paper/sheet.h"
#include "paper/table.h"

#include <QByteArray>

#include <functional>

namespace hammerline::paper {

enum class Size { A4, Letter };
[[nodiscard]] QSizeF pointsOf(Size size);

/// Paints what stands on every page beside its body: page numbers, a running head.
using Frame = std::function<void(QPainter &, int page)>;

/// The pages as PDF 1.6, in points, without margins of its own. Needs a QApplication. Throws outcome::BrokenWorld where
/// Qt gives no document.
[[nodiscard]] QByteArray paintedPages(const Sheet &sheet, Size size, const Frame &frame, const QString &title = {});

} // namespace hammerline::paper
