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
    const bool isRecheck = context.record.asLeft.pass.purpose == readings::Purpose::Recheck;
    const QString leftHead = isRecheck ? Record::tr("again") : Record::tr("left");
    for (const catalogue::Quantity quantity : group) {
        const QString name = wording::shortNameOf(quantity) + QLatin1Char('\n') +
                             wording::unitText(catalogue::infoOf(quantity).dimension, context.form) + QLatin1Char('\n');
        if (context.hasBefore())
            columns.push_back({name + Record::tr("found"), width, Qt::AlignRight});
        columns.push_back({name + leftHead, width, Qt::AlignRight});
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

constexpr double rowHeight = cellText.size * cellText.leading + 3;
constexpr double headHeight = 36;

int notesOnAFullPage(const Sheet &sheet)
{
    return static_cast<int>((sheet.fullRoom() - 84) / rowHeight); // head and chapter left out
}

int dividedUp(int count, int by)
{
    return (count + by - 1) / by;
}

/// How many notes stand on each of the pages that they need, the first of which may be begun already: split evenly.
std::vector<int> sharesOf(const Sheet &sheet, int notes)
{
    const int pages = dividedUp(notes, notesOnAFullPage(sheet));
    std::vector<int> shares{
        std::min(dividedUp(notes, pages), static_cast<int>((sheet.room() - headHeight) / rowHeight))};
    for (int left = notes - shares.front(), more = pages - 1; left > 0; --more) {
        shares.push_back(more > 0 ? dividedUp(left, more) : left);
        left -= shares.back();
    }
    return shares;
}

void setGroup(Sheet &sheet, const std::vector<catalogue::Quantity> &group, const Context &context)
{
    const keyboard::Compass compass = context.record.instrument.compass;
    int note = compass.first.number();
    for (const int share : sharesOf(sheet, compass.count())) {
        if (note != compass.first.number())
            sheet.newPage();
        Table table(sheet, columnsFor(sheet, group, context), cellText);
        for (const int end = note + share; note < end; ++note) {
            setNote(table, group, keyboard::Note(note), context);
            if (sectionEndsAt(context, keyboard::Note(note)))
                table.rule();
        }
        table.end();
    }
}

/// What the chapter needs of a page to begin there: so many notes that it takes no more pages than on a fresh one.
double roomToBegin(const Sheet &sheet, const QString &legend, const Context &context)
{
    const int notes = context.record.instrument.compass.count();
    const int most = notesOnAFullPage(sheet);
    const int first = notes - (dividedUp(notes, most) - 1) * most;
    constexpr double heading = 70;
    return heading + TextBlock(legend, quietText, sheet.body().width()).height() + headHeight + first * rowHeight;
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

/// What was remarked on single readings: the files inside say it, so the pages do.
void setRemarks(Sheet &sheet, const Context &context)
{
    std::vector<std::pair<QString, const sale_record::PassPart *>> parts{{context.leftName(), &context.record.asLeft}};
    if (context.hasBefore())
        parts.insert(parts.begin(), {context.foundName(), &*context.record.asFound});
    if (const auto &recheck = context.record.recheck)
        parts.emplace_back(wording::nameOf(recheck->pass.purpose), &*recheck);
    std::vector<QStringList> rows;
    for (const auto &[name, part] : parts)
        for (const readings::Reading &reading : part->readings)
            if (!reading.remark.empty())
                rows.push_back({fromCore(reading.place.note.name()), wording::nameOf(reading.place.quantity), name,
                                wording::amountText(reading.value, context.form), QString(), fromCore(reading.remark)});
    if (rows.empty())
        return;
    sheet.heading(Record::tr("Remarks on single readings"));
    Table table(sheet, {{Record::tr("note"), 34},
                        {Record::tr("measure"), 90},
                        {Record::tr("pass"), 74},
                        {Record::tr("value"), 60, Qt::AlignRight},
                        {QString(), 6},
                        {Record::tr("remark"), 0}});
    for (const QStringList &row : rows)
        table.row(row, {true});
    table.end();
}

} // namespace

void setReadings(Sheet &sheet, const Context &context)
{
    const QString legend = Record::tr(
        "\u25b2 out, above the upper limit \u00b7 \u25bc out, below the lower limit \u00b7 ~ inside, but close to "
        "a "
        "limit \u00b7 u uneven with its lower neighbour \u00b7 * mean of more than one take \u00b7 missing: "
        "promised "
        "and not read. A thin line marks a section break. Every take stands in the files inside this document.");
    sheet.chapterHere(readingsChapter(), roomToBegin(sheet, legend, context));
    sheet.paragraph(legend, quietText);
    bool first = true;
    for (const auto &group : groupsFor(sheet, context)) {
        if (!first)
            sheet.newPage();
        first = false;
        setGroup(sheet, group, context);
    }
    setRemarks(sheet, context);
}

} // namespace hammerline::record_pdf
