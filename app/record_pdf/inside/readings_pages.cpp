// Every reading of every note: as found and as left side by side for each measure, as many measures to a page as can be
// read, and the notes of the keyboard split evenly over pages.

#include "paper/table.h"
#include "record_pdf/inside/pages.h"

#include "wording/wording.h"

#include <algorithm>
#include <cmath>

namespace hammerline::record_pdf {

namespace {

using tolerance::Status;
using tolerance::Verdict;

constexpr double noteWidth = 46;
/// Room for "missing", or for two marks and five digits; what is left over is shared out.
constexpr double leastValueWidth = 46;
constexpr TextStyle cellText{7, false, 0, 1.3};

/// The mark behind a value; words stand in the legend, so that no mark speaks by itself.
QString markOf(const Verdict &verdict)
{
    QString mark;
    if (verdict.status == Status::Out)
        mark = verdict.deviation && verdict.deviation->baseCount() < 0 ? QStringLiteral("\u25bc")
                                                                       : QStringLiteral("\u25b2");
    if (verdict.status == Status::Marginal)
        mark = QStringLiteral("~");
    if (verdict.uneven)
        mark += QStringLiteral("u");
    return mark;
}

struct Cell {
    QString text;
    bool bold = false;
};

Cell cellOf(const sale_record::PassPart &part, catalogue::Quantity quantity, keyboard::Note note,
            const Context &context)
{
    const Verdict *verdict = part.judgement.find(quantity, note);
    if (!verdict)
        return {};
    if (!verdict->value)
        return {Record::tr("missing")};
    QString text = wording::bareText(*verdict->value, context.form);
    if (verdict->takes > 1)
        text += QStringLiteral("*");
    if (const QString mark = markOf(*verdict); !mark.isEmpty())
        text = mark + QLatin1Char(' ') + text; // before the number, so that the digits stand below each other
    return {text, verdict->status == Status::Out};
}

std::vector<Column> columnsFor(const Sheet &sheet, const std::vector<catalogue::Quantity> &group,
                               const Context &context)
{
    std::vector<Column> columns{{Record::tr("note"), noteWidth}};
    const double values = static_cast<double>(group.size()) * (context.hasBefore() ? 2 : 1);
    const double width = std::min((sheet.body().width() - noteWidth) / values, 1.6 * leastValueWidth);
    for (const catalogue::Quantity quantity : group) {
        const QString name = wording::shortNameOf(quantity) + QLatin1Char('\n') +
                             wording::unitText(catalogue::infoOf(quantity).dimension, context.form) + QLatin1Char('\n');
        if (context.hasBefore())
            columns.push_back({name + Record::tr("found"), width, Qt::AlignRight});
        columns.push_back({name + Record::tr("left"), width, Qt::AlignRight});
    }
    return columns;
}

void setNote(Table &table, const std::vector<catalogue::Quantity> &group, keyboard::Note note, const Context &context)
{
    QStringList cells{QStringLiteral("%1  %2").arg(note.number()).arg(fromCore(note.name()))};
    std::vector<bool> bold{false};
    const auto put = [&](const Cell &cell) {
        cells << cell.text;
        bold.push_back(cell.bold);
    };
    for (const catalogue::Quantity quantity : group) {
        if (context.hasBefore())
            put(cellOf(*context.record.asFound, quantity, note, context));
        put(cellOf(context.record.asLeft, quantity, note, context));
    }
    table.row(cells, bold);
}

bool sectionEndsAt(const Context &context, keyboard::Note note)
{
    return std::ranges::any_of(context.record.instrument.sections,
                               [note](const keyboard::Section &section) { return section.notes.last == note; });
}

void setGroup(Sheet &sheet, const std::vector<catalogue::Quantity> &group, const Context &context)
{
    const keyboard::Compass compass = context.record.instrument.compass;
    constexpr double rowHeight = cellText.size * cellText.leading + 3;
    // Notes split evenly over the pages they need, head and chapter left out.
    const int most = static_cast<int>((sheet.fullRoom() - 84) / rowHeight);
    const int pages = (compass.count() + most - 1) / most;
    const int each = (compass.count() + pages - 1) / pages;
    for (int first = compass.first.number(); first <= compass.last.number(); first += each) {
        if (first != compass.first.number())
            sheet.newPage();
        Table table(sheet, columnsFor(sheet, group, context), cellText);
        for (int note = first; note < std::min(first + each, compass.last.number() + 1); ++note) {
            setNote(table, group, keyboard::Note(note), context);
            if (sectionEndsAt(context, keyboard::Note(note)))
                table.rule();
        }
        table.rule();
    }
}

/// Quantities split evenly into groups that fit the width of the paper.
std::vector<std::vector<catalogue::Quantity>> groupsFor(const Sheet &sheet, const Context &context)
{
    std::vector<catalogue::Quantity> quantities;
    for (const catalogue::Quantity quantity : quantitiesOf(context.record))
        if (!context.record.asLeft.values.column(quantity).empty() ||
            (context.hasBefore() && !context.record.asFound->values.column(quantity).empty()))
            quantities.push_back(quantity);
    const auto most = static_cast<std::size_t>((sheet.body().width() - noteWidth) /
                                               ((context.hasBefore() ? 2 : 1) * leastValueWidth));
    const std::size_t count = (quantities.size() + most - 1) / most;
    std::vector<std::vector<catalogue::Quantity>> groups(count);
    for (std::size_t i = 0; i < quantities.size(); ++i)
        groups[i * count / quantities.size()].push_back(quantities[i]);
    return groups;
}

} // namespace

void setReadings(Sheet &sheet, const Context &context)
{
    sheet.chapter(readingsChapter());
    sheet.paragraph(
        Record::tr(
            "\u25b2 out, above the upper limit \u00b7 \u25bc out, below the lower limit \u00b7 ~ inside, but close to "
            "a "
            "limit \u00b7 u uneven with its lower neighbour \u00b7 * mean of more than one take \u00b7 missing: "
            "promised "
            "and not read. A thin line marks a section break. Every take stands in the files inside this document."),
        quietText);
    bool first = true;
    for (const auto &group : groupsFor(sheet, context)) {
        if (!first)
            sheet.newPage();
        first = false;
        setGroup(sheet, group, context);
    }
}

} // namespace hammerline::record_pdf
