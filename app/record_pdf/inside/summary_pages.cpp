// Before and after in figures, and the same as charts.

#include "paper/table.h"
#include "record_pdf/inside/pages.h"

#include "charts/charts.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QPainter>

#include <algorithm>

namespace hammerline::record_pdf {

namespace {

using analysis::QuantitySummary;

const QString noFigure = QStringLiteral("\u2013");

const QuantitySummary *summaryOf(const sale_record::PassPart &part, catalogue::Quantity quantity)
{
    const auto found = part.summaries.find(quantity);
    return found == part.summaries.end() ? nullptr : &found->second;
}

/// A mean or spread in the unit of the form; one digit more than a reading has, as a mean deserves.
QString figure(const std::optional<double> &display, catalogue::Quantity quantity, const Context &context)
{
    if (!display)
        return noFigure;
    const auto dimension = catalogue::infoOf(quantity).dimension;
    const double shown = wording::inUnit(units::Amount::fromDisplay(dimension, *display), context.form);
    return wording::numberText(shown, context.form.decimalsFor(dimension) + 1, context.form);
}

QString judgedCount(const QuantitySummary *summary, int QuantitySummary::*count)
{
    return summary && summary->judged ? QString::number(summary->*count) : noFigure;
}

QStringList passCells(const sale_record::PassPart &part, catalogue::Quantity quantity, const Context &context)
{
    const QuantitySummary *summary = summaryOf(part, quantity);
    if (!summary)
        return {noFigure, noFigure, noFigure, noFigure, noFigure, noFigure, noFigure};
    return {QString::number(summary->count),
            judgedCount(summary, &QuantitySummary::missing),
            judgedCount(summary, &QuantitySummary::out),
            judgedCount(summary, &QuantitySummary::marginal),
            judgedCount(summary, &QuantitySummary::uneven),
            figure(summary->mean, quantity, context),
            figure(summary->sd, quantity, context)};
}

std::vector<Column> passColumns()
{
    return {{QString(), 92},
            {Record::tr("pass"), 62},
            {Record::tr("notes\nread"), 44, Qt::AlignRight},
            {Record::tr("not\nread"), 46, Qt::AlignRight},
            {Record::tr("out"), 40, Qt::AlignRight},
            {Record::tr("close to\na limit"), 46, Qt::AlignRight},
            {Record::tr("uneven"), 44, Qt::AlignRight},
            {Record::tr("mean"), 52, Qt::AlignRight},
            {Record::tr("standard\ndeviation"), 0, Qt::AlignRight}};
}

void setStates(Sheet &sheet, const Context &context)
{
    Table table(sheet, passColumns());
    for (const catalogue::Quantity quantity : quantitiesOf(context.record)) {
        QString head = context.headOf(quantity);
        if (context.hasBefore()) {
            table.row(QStringList{head, context.foundName()} + passCells(*context.record.asFound, quantity, context),
                      {true});
            head.clear();
        }
        table.row(QStringList{head, context.leftName()} + passCells(context.record.asLeft, quantity, context), {true});
        table.rule();
    }
    table.end();
    sheet.skip(8);
}

using tolerance::Verdict;

/// Does the doubt hold anything but how finely the readings were read off?
bool gaugeIsKnown(const sale_record::PassPart &part)
{
    return std::ranges::any_of(part.judgement.verdicts,
                               [](const Verdict &verdict) { return verdict.doubt && verdict.doubt->gauge > 0; });
}

/// Median over the readings, 0 to 1; absent where nothing is known of any.
std::optional<double> shareOfReadingOff(const sale_record::PassPart &part)
{
    std::vector<double> shares;
    for (const Verdict &verdict : part.judgement.verdicts)
        if (verdict.doubt)
            shares.push_back(verdict.doubt->shareOfResolution());
    return shares.empty() ? std::nullopt : std::optional(analysis::medianOf(std::move(shares)));
}

/// What the doubt is made of.
QString doubtWords(const sale_record::PassPart &part, const Context &context)
{
    if (!gaugeIsKnown(part))
        return Record::tr("Neither the gauge nor the set states an uncertainty, so that only how finely the readings "
                          "were read off is counted.");
    const double share = shareOfReadingOff(part).value_or(0);
    return Record::tr("How finely they were read off makes up %1 % of that doubt (of its variance, the median of the "
                      "readings); the rest is gauge and people.")
        .arg(wording::numberText(100 * share, 0, context.form));
}

/// In plain words: what is inside, and could yet be outside by the doubt of the measuring.
void setDoubt(Sheet &sheet, const Context &context)
{
    const int doubtful = sale_record::pairsInDoubtOf(context.record.asLeft);
    sheet.paragraph(doubtful == 0 ? Record::tr("No reading that is inside its limits lies so near to one that "
                                               "the doubt of the measuring could put it outside.")
                                  : Record::tr("Readings that are inside their limits, but nearer to one than "
                                               "the doubt of the measuring (gauge, people, reading off): %1.")
                                        .arg(doubtful));
    sheet.paragraph(doubtWords(context.record.asLeft, context), quietText);
    sheet.skip(4);
}

QString signedFigure(double display, catalogue::Quantity quantity, const Context &context)
{
    const QString text = figure(display, quantity, context);
    return display > 0 ? QLatin1Char('+') + text : text;
}

QString interval(const analysis::Comparison &change, catalogue::Quantity quantity, const Context &context)
{
    if (!change.ci95Low || !change.ci95High)
        return noFigure;
    return Record::tr("%1 to %2")
        .arg(signedFigure(*change.ci95Low, quantity, context), signedFigure(*change.ci95High, quantity, context));
}

QString counted(const std::optional<int> &count)
{
    return count ? QString::number(*count) : noFigure;
}

void setChanges(Sheet &sheet, const Context &context)
{
    sheet.heading(Record::tr("What changed, over the notes read in both passes"));
    Table table(sheet, {{QString(), 112},
                        {Record::tr("notes"), 40, Qt::AlignRight},
                        {Record::tr("mean change"), 70, Qt::AlignRight},
                        {Record::tr("95 % of the mean change"), 120, Qt::AlignRight},
                        {Record::tr("mended"), 56, Qt::AlignRight},
                        {Record::tr("spoiled"), 0, Qt::AlignRight}});
    for (const auto &[quantity, change] : context.record.change)
        table.row({context.headOf(quantity), QString::number(change.pairs),
                   signedFigure(change.meanChange, quantity, context), interval(change, quantity, context),
                   counted(change.mended), counted(change.spoiled)},
                  {true});
    table.end(
        {Record::tr("Mended: out before and no longer out. Spoiled: the reverse. The interval is that of a paired "
                    "comparison (Student, two-sided).")});
}

charts::ChartData chartOf(catalogue::Quantity quantity, const Context &context)
{
    charts::ChartData data;
    data.quantity = quantity;
    data.compass = context.record.instrument.compass;
    data.sections = context.record.instrument.sections;
    data.now = context.record.asLeft.judgement;
    if (context.hasBefore())
        data.before = context.record.asFound->judgement;
    data.form = context.form;
    data.nowName = context.leftName();
    data.beforeName = context.foundName();
    return data;
}

/// The margins of a chart are made for a screen: drawn twice as large and at half scale they suit the paper.
void paintChart(QPainter &painter, const QRectF &rect, const charts::ChartData &data)
{
    constexpr double half = 0.5;
    painter.translate(rect.topLeft());
    painter.scale(half, half);
    charts::renderChart(painter, {QPointF(), rect.size() / half}, data, wording::printPalette(), 15);
}

bool wasRead(const Context &context, catalogue::Quantity quantity)
{
    const auto &record = context.record;
    return !record.asLeft.values.column(quantity).empty() ||
           (record.asFound && !record.asFound->values.column(quantity).empty());
}

} // namespace

void setSummary(Sheet &sheet, const Context &context)
{
    sheet.chapterHere(context.hasBefore() ? Record::tr("Before and after") : Record::tr("The state in figures"),
                      roomOfAStart);
    setStates(sheet, context);
    setDoubt(sheet, context);
    if (!context.record.change.empty())
        setChanges(sheet, context);
    setDrift(sheet, context);
    setSecondReadings(sheet, context);
}

void setCharts(Sheet &sheet, const Context &context)
{
    // Three to a page, whatever the paper.
    const double height = (sheet.fullRoom() - 60) / 3;
    sheet.chapterHere(Record::tr("Along the keyboard"), height + 60);
    for (const catalogue::Quantity quantity : quantitiesOf(context.record)) {
        if (!wasRead(context, quantity))
            continue;
        sheet.needRoom(height - 1);
        const QRectF rect(sheet.body().left(), sheet.y(), sheet.body().width(), height - 8);
        sheet.later([data = chartOf(quantity, context), rect](QPainter &painter) { paintChart(painter, rect, data); });
        sheet.skip(height);
    }
}

} // namespace hammerline::record_pdf
