#include "bench_sheet/inside/paint_row.h"

#include "bench_sheet/inside/sheet_words.h"
#include "wording/wording.h"

#include <QPainter>

#include <algorithm>

namespace hammerline::bench_sheet {

namespace {

using paper::TextBlock;
using paper::TextStyle;

constexpr double gutter = 20;       ///< for the number of the row's first box
constexpr double tabWidth = 23;     ///< holds "A♯4"
constexpr double boxGap = 4;        ///< before the next tab
constexpr double labelHeight = 7.5; ///< above a box, where something is written there
constexpr double emptyHeight = 4;   ///< above a box, else
constexpr double limitsHeight = 8;  ///< below a box
constexpr double captionHeight = 12;
constexpr double namesHeight = 5; ///< more air above boxes that name their quantity

constexpr TextStyle captionText{9, true, 0, 1.3};
constexpr TextStyle numberText{6, false, 0, 1.3};
constexpr TextStyle labelText{6, false, 0, 1.3};

struct Label {
    TextBlock text{};
    QPointF at{};
};

struct LaidBox {
    QRectF tab{};
    QRectF box{};
    bool sharp = false;
    bool bar = false;
};

/// One line, in the largest size up to `style`'s that keeps to `width`; elided below 4 points.
Label fitted(const QString &text, TextStyle style, const QRectF &area, Qt::Alignment alignment)
{
    constexpr int smallest = 4;
    while (style.size > smallest && paper::widthOf(text, style) > area.width())
        --style.size;
    const TextBlock block(paper::elided(text, style, area.width()), style, area.width() + 1, alignment);
    return {block, {area.left(), area.center().y() - block.height() / 2}};
}

/// Everything of a row that is painted, in the order of the route: text that is searched or copied keeps it.
struct LaidRow {
    std::vector<Label> labels{};
    std::vector<LaidBox> boxes{};
    double captionTop = 0;
    bool captioned = false;
    QRectF area{};
};

/// From the top of a row, its caption left out, to its boxes.
double heightAbove(const Row &row, const Block &block)
{
    if (!block.quantity)
        return namesHeight + labelHeight;
    return std::ranges::any_of(row.boxes, &Box::bar) ? labelHeight : emptyHeight;
}

TextStyle noteStyle(bool sharp)
{
    return {9, true, sharp ? 255 : 0, 1.3};
}

/// `cell`: tab and box together.
void layBox(LaidRow &laid, const Box &box, const Block &block, const BenchSheetInput &input, const QRectF &cell)
{
    const bool sharp = box.stop.note.colour() == keyboard::Colour::Sharp;
    const QRectF tab(cell.topLeft(), QSizeF(tabWidth, boxHeight));
    const QRectF field(tab.topRight(), cell.bottomRight());
    laid.boxes.push_back({tab, field, sharp, box.bar});
    laid.labels.push_back(
        fitted(wording::nameOf(box.stop.note), noteStyle(sharp), tab.adjusted(1, 0, -1, 0), Qt::AlignHCenter));
    const QRectF above(cell.left(), cell.top() - labelHeight, cell.width(), labelHeight);
    if (!box.barBefore.isEmpty())
        laid.labels.push_back(fitted(box.barBefore, labelText,
                                     block.quantity ? above : QRectF(above.topLeft(), QSizeF(tabWidth, labelHeight)),
                                     Qt::AlignLeft));
    if (!block.quantity)
        laid.labels.push_back(fitted(wording::shortNameOf(box.stop.quantity), labelText,
                                     QRectF(field.left(), above.top(), field.width(), labelHeight), Qt::AlignLeft));
    const QRectF below(cell.left(), cell.bottom(), cell.width(), limitsHeight);
    laid.labels.push_back(fitted(limitsLine(input, box.stop), labelText, below, Qt::AlignRight));
}

LaidRow laidRow(const Row &row, const Block &block, const BenchSheetInput &input, QPointF topLeft, double width)
{
    LaidRow laid;
    laid.area = QRectF(topLeft, QSizeF(width, heightOf(row, block)));
    laid.captioned = row.caption.has_value();
    double top = topLeft.y() + heightAbove(row, block); // of the boxes
    if (row.caption) {
        laid.labels.push_back(
            {TextBlock(*row.caption, captionText, width - gutter), {topLeft.x() + gutter, topLeft.y() + 4}});
        top += captionHeight;
    }
    const double step = (width - gutter) / block.columns;
    const QRectF number(topLeft.x(), top, gutter - 4, boxHeight);
    laid.labels.push_back(fitted(QString::number(row.boxes.front().number), numberText, number, Qt::AlignRight));
    double left = topLeft.x() + gutter;
    for (const Box &box : row.boxes) {
        layBox(laid, box, block, input, {left, top, step - boxGap, boxHeight});
        left += step;
    }
    return laid;
}

void paintBox(QPainter &painter, const LaidBox &box)
{
    painter.setPen(QPen(Qt::black, 0.7));
    painter.setBrush(box.sharp ? QBrush(Qt::black) : QBrush(Qt::NoBrush));
    painter.drawRect(box.tab);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(box.box);
    if (!box.bar)
        return;
    painter.setPen(QPen(Qt::black, 2, Qt::SolidLine, Qt::FlatCap));
    const double x = box.tab.left() - boxGap / 2;
    painter.drawLine(QPointF(x, box.tab.top() - labelHeight + 1), QPointF(x, box.tab.bottom() + limitsHeight - 1));
}

} // namespace

double heightOf(const Row &row, const Block &block)
{
    return (row.caption ? captionHeight : 0) + heightAbove(row, block) + boxHeight + limitsHeight;
}

paper::Sheet::Deed paintedRow(const Row &row, const Block &block, const BenchSheetInput &input, QPointF topLeft,
                              double width)
{
    return [laid = laidRow(row, block, input, topLeft, width)](QPainter &painter) {
        if (laid.captioned) {
            painter.setPen(QPen(Qt::black, 2, Qt::SolidLine, Qt::FlatCap));
            painter.drawLine(laid.area.topLeft() + QPointF(gutter, 2), laid.area.topRight() + QPointF(-boxGap, 2));
        }
        for (const LaidBox &box : laid.boxes)
            paintBox(painter, box);
        for (const Label &label : laid.labels)
            label.text.paint(painter, label.at);
    };
}

} // namespace hammerline::bench_sheet
