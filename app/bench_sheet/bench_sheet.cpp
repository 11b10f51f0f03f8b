#include "bench_sheet/bench_sheet.h"

#include "bench_sheet/inside/box_rows.h"
#include "bench_sheet/inside/paint_row.h"
#include "bench_sheet/inside/sheet_words.h"
#include "wording/wording.h"

#include <QPainter>

#include <algorithm>

namespace hammerline::bench_sheet {

namespace {

using paper::Sheet;
using paper::TextBlock;
using paper::TextStyle;

constexpr TextStyle titleText{16, true, 0, 1.25};
constexpr TextStyle passText{11, false, 0, 1.4};
constexpr TextStyle plainText{8, false, 0, 1.35};
constexpr TextStyle footText{8, false, 0, 1.4};
constexpr double lineHeight = 22; ///< from one line to write on to the next: 7.8 mm
constexpr double fieldGap = 10;
constexpr int fewestRemarkLines = 2;
constexpr int mostRemarkLines = 10;

struct Field {
    QString label{};
    QString known{};
    double share = 1; ///< of the row
};

QString known(const std::optional<double> &value, const wording::NumberForm &form)
{
    return value ? wording::numberText(*value, 0, form) : QString();
}

/// Label, then a line to write on; what is known stands on the line.
void paintField(QPainter &painter, const Field &field, QPointF topLeft, double width)
{
    const double base = topLeft.y() + lineHeight - 5;
    const TextBlock label(field.label, plainText, width);
    label.paint(painter, {topLeft.x(), base - label.height() + 2});
    const double from = topLeft.x() + (field.label.isEmpty() ? 0 : paper::widthOf(field.label, plainText) + 5);
    const double to = topLeft.x() + width;
    painter.setPen(QPen(Qt::black, 0.5));
    painter.drawLine(QPointF(from, base), QPointF(to, base));
    const QString shown = paper::elided(field.known, passText, to - from);
    const TextBlock text(shown, passText, to - from + 1);
    text.paint(painter, {from + 2, base - text.height() + 1});
}

void setFields(Sheet &sheet, const std::vector<Field> &fields)
{
    sheet.later([fields, y = sheet.y(), body = sheet.body()](QPainter &painter) {
        double shares = 0;
        for (const Field &field : fields)
            shares += field.share;
        double left = body.left();
        const double room = body.width() - fieldGap * static_cast<double>(fields.size() - 1);
        for (const Field &field : fields) {
            const double width = room * field.share / shares;
            paintField(painter, field, {left, y}, width);
            left += width + fieldGap;
        }
    });
    sheet.skip(lineHeight);
}

void setHead(Sheet &sheet, const BenchSheetInput &input)
{
    const readings::Pass &pass = input.details;
    sheet.paragraph(input.instrument, titleText);
    sheet.skip(-6);
    sheet.paragraph(words("Bench sheet: %1").arg(input.pass), passText);
    setFields(sheet, {{words("Date"), {}, 1}, {words("Person"), QString::fromStdString(pass.person), 2}});
    setFields(sheet, {{words("Gauge"), QString::fromStdString(pass.gauge.name), 2},
                      {words("Temperature, \u00b0C"), known(pass.climate.celsius, input.form), 1.2},
                      {words("Humidity, %"), known(pass.climate.relativeHumidityPercent, input.form), 1}});
    sheet.skip(4);
}

QString typingInText(const BenchSheetInput &input)
{
    QString text =
        words("Route: %1. Type the sheet in on this route: its %2 boxes stand in that order, row by row from "
              "the left; a row starts with the number of its first box.")
            .arg(routeText(input.choice))
            .arg(input.stops.size());
    text += QLatin1Char(' ') + words("White tab: natural; black tab: sharp.");
    if (input.set)
        text += QLatin1Char(' ') + words("Below a box: lower limit \u00b7 target \u00b7 upper limit (%1).")
                                       .arg(QString::fromStdString(input.set->name));
    return text;
}

/// Note by note every quantity is explained once, before the boxes.
void setExplanations(Sheet &sheet, const BenchSheetInput &input)
{
    if (input.choice.sweep == route::Sweep::AlongTheNotes)
        return;
    QStringList lines;
    for (const catalogue::Quantity quantity : input.choice.quantities)
        lines << QStringLiteral("%1, %2: %3")
                     .arg(headOf(quantity, input.form), wording::shortNameOf(quantity), howOf(quantity, input.details));
    sheet.paragraph(lines.join(QLatin1Char('\n')), {7, false, 0, 1.4});
}

void setQuantityHead(Sheet &sheet, catalogue::Quantity quantity, const BenchSheetInput &input)
{
    const TextBlock name(headOf(quantity, input.form), paper::headingText, sheet.body().width());
    const double nameWidth = paper::widthOf(headOf(quantity, input.form), paper::headingText) + 10;
    const TextBlock how(howOf(quantity, input.details), {7, false, 0, 1.4}, sheet.body().width() - nameWidth);
    const QPointF at(sheet.body().left(), sheet.y());
    const QPointF howAt(at.x() + nameWidth, at.y() + name.firstBaseline() - how.firstBaseline());
    sheet.later([name, how, at, howAt](QPainter &painter) {
        name.paint(painter, at);
        how.paint(painter, howAt);
    });
    sheet.skip(std::max(name.height(), howAt.y() - at.y() + how.height()) + 3);
}

double heightOf(const Block &block)
{
    double height = block.quantity ? 20 : 0;
    for (const Row &row : block.rows)
        height += heightOf(row, block);
    return height;
}

/// A quantity that a fresh page holds whole is not torn; one that is longer starts where it is.
void setBlock(Sheet &sheet, const Block &block, const BenchSheetInput &input)
{
    const double whole = heightOf(block);
    sheet.needRoom(whole <= sheet.fullRoom() ? whole : 20 + heightOf(block.rows.front(), block));
    if (block.quantity)
        setQuantityHead(sheet, *block.quantity, input);
    for (const Row &row : block.rows) {
        if (sheet.needRoom(heightOf(row, block)) && block.quantity)
            setQuantityHead(sheet, *block.quantity, input);
        const QPointF at(sheet.body().left(), sheet.y());
        sheet.later(paintedRow(row, block, input, at, sheet.body().width()));
        sheet.skip(heightOf(row, block));
    }
    sheet.skip(4);
}

void setRemarks(Sheet &sheet)
{
    sheet.needRoom(fewestRemarkLines * lineHeight);
    const int lines = std::clamp(static_cast<int>(sheet.room() / lineHeight), fewestRemarkLines, mostRemarkLines);
    setFields(sheet, {{words("Remarks, felt faults")}});
    for (int line = 1; line < lines; ++line)
        setFields(sheet, {Field{}});
}

/// Loose pages find back to their pass.
void paintFrame(QPainter &painter, const Sheet &sheet, int page, const BenchSheetInput &input)
{
    const QRectF body = sheet.body();
    const QPointF foot(body.left(), body.bottom() + 20);
    const QString name = QStringLiteral("%1, %2").arg(input.instrument, input.pass);
    const QString shown = paper::elided(name, footText, body.width());
    if (page > 1)
        TextBlock(shown, footText, body.width()).paint(painter, {body.left(), body.top() - 24});
    TextBlock(words("page %1 of %2").arg(page).arg(sheet.pageCount()), footText, body.width(), Qt::AlignRight)
        .paint(painter, foot);
}

} // namespace

QByteArray makeBenchSheet(const BenchSheetInput &input, const BenchSheetOptions &options)
{
    Sheet sheet(paper::pointsOf(options.size));
    setHead(sheet, input);
    if (input.stops.empty())
        sheet.paragraph(words("On this route there is nothing to measure: %1.").arg(routeText(input.choice)));
    else
        sheet.paragraph(typingInText(input), plainText);
    setExplanations(sheet, input);
    for (const Block &block : blocksOf(input.choice, input.stops, input.sections))
        setBlock(sheet, block, input);
    setRemarks(sheet);
    const auto frame = [&](QPainter &painter, int page) { paintFrame(painter, sheet, page, input); };
    return paper::paintedPages(sheet, options.size, frame,
                               words("Bench sheet: %1, %2").arg(input.instrument, input.pass));
}

} // namespace hammerline::bench_sheet
