// What is not as promised and was accepted, and why: a reader must not take silence for a promise kept. Those of the
// pass itself first, then those of earlier passes that still stand, then in brief those that do no more.

#include "paper/table.h"
#include "record_pdf/inside/pages.h"

#include "wording/wording.h"

#include <algorithm>

namespace hammerline::record_pdf {

namespace {

using sale_record::Concession;
using sale_record::EarlierConcession;
using sale_record::Fate;

/// Runs of what belongs together, each in the order of its first.
template <typename One, typename AreAlike>
std::vector<std::vector<const One *>> grouped(const std::vector<One> &all, AreAlike areAlike)
{
    std::vector<std::vector<const One *>> groups;
    for (const One &one : all) {
        const auto known =
            std::ranges::find_if(groups, [&](const auto &group) { return areAlike(*group.front(), one); });
        if (known == groups.end())
            groups.push_back({&one});
        else
            known->push_back(&one);
    }
    return groups;
}

/// Of one measure, by one person, on one day.
bool areMadeAlike(const Concession &one, const Concession &other)
{
    return one.quantity == other.quantity && one.person == other.person &&
           readings::isoDate(one.at) == readings::isoDate(other.at);
}

QString valueText(const std::optional<units::Amount> &value, const Context &context)
{
    return value ? wording::bareText(*value, context.form) : Record::tr("missing");
}

/// "C4 2.10": a note and what stood there.
QString noteAndValue(const Concession &one, const Context &context)
{
    return fromCore(one.note.name()) + QChar::Nbsp + valueText(one.value, context);
}

/// "C4 2.10 → 2.25": and what stands there now, where it was read since.
QString thenAndNow(const EarlierConcession &one, const Context &context)
{
    const QString then = noteAndValue(one.made, context);
    if (!one.valueNow)
        return then;
    return then + QStringLiteral("\u00a0\u2192\u00a0") + valueText(one.valueNow, context);
}

/// A decimal comma asks for another sign between the values.
QString listOf(const QStringList &notes, const Context &context)
{
    const bool decimalComma = context.form.locale.decimalPoint() == QLatin1String(",");
    return notes.join(decimalComma ? QStringLiteral("; ") : QStringLiteral(", "));
}

QString byWhom(const Concession &one, const Context &context)
{
    return QStringLiteral("%1\n%2").arg(fromCore(one.person), dayText(one.at, context.options.locale));
}

QString passText(const readings::Pass &pass, const Context &context)
{
    return QStringLiteral("%1, %2").arg(wording::nameOf(pass.purpose), dayText(pass.began, context.options.locale));
}

void setOfThisPass(Sheet &sheet, const Context &context)
{
    if (context.record.concessions.empty())
        return;
    sheet.heading(Record::tr("Accepted as they are"));
    Table table(sheet, {{Record::tr("measure"), 78},
                        {Record::tr("notes and values"), 160},
                        {QString(), 8},
                        {Record::tr("why"), 130},
                        {Record::tr("by whom, when"), 0}});
    const auto groups = grouped(context.record.concessions, [](const Concession &one, const Concession &other) {
        return areMadeAlike(one, other) && one.reason == other.reason;
    });
    for (const auto &group : groups) {
        const Concession &one = *group.front();
        QStringList notes;
        for (const Concession *each : group)
            notes << noteAndValue(*each, context);
        table.row({context.headOf(one.quantity), listOf(notes, context), QString(), fromCore(one.reason),
                   byWhom(one, context)},
                  {true});
    }
    table.end();
    sheet.skip(8);
}

void setStanding(Sheet &sheet, const Context &context)
{
    const auto standing = context.record.earlierThatStand();
    if (standing.empty())
        return;
    sheet.heading(Record::tr("Accepted in an earlier pass and not mended since"));
    Table table(sheet, {{Record::tr("measure"), 78},
                        {Record::tr("notes and values"), 170},
                        {QString(), 8},
                        {Record::tr("why"), 120},
                        {Record::tr("in which pass, by whom, when"), 0}});
    const auto groups = grouped(standing, [](const EarlierConcession &one, const EarlierConcession &other) {
        return areMadeAlike(one.made, other.made) && one.made.reason == other.made.reason &&
               one.pass.id == other.pass.id;
    });
    for (const auto &group : groups) {
        const EarlierConcession &one = *group.front();
        QStringList notes;
        for (const EarlierConcession *each : group)
            notes << thenAndNow(*each, context);
        table.row({context.headOf(one.made.quantity), listOf(notes, context), QString(), fromCore(one.made.reason),
                   passText(one.pass, context) + QLatin1Char('\n') + byWhom(one.made, context)},
                  {true});
    }
    table.end({Record::tr("Each value is the one that was accepted; the arrow leads to the newest reading since, "
                          "where there is one.")});
}

QString fateText(Fate fate)
{
    return fate == Fate::Mended ? Record::tr("mended since") : Record::tr("accepted again in a later pass");
}

/// In brief: nobody has to weigh these any more.
void setSettled(Sheet &sheet, const Context &context)
{
    std::vector<EarlierConcession> settled;
    std::ranges::copy_if(context.record.earlierConcessions, std::back_inserter(settled),
                         [](const EarlierConcession &one) { return one.fate != Fate::Stands; });
    if (settled.empty())
        return;
    sheet.heading(Record::tr("Accepted in an earlier pass and settled since"));
    Table table(sheet, {{Record::tr("measure"), 78},
                        {Record::tr("notes"), 170},
                        {QString(), 8},
                        {Record::tr("since then"), 120},
                        {Record::tr("in which pass, by whom, when"), 0}});
    const auto groups = grouped(settled, [](const EarlierConcession &one, const EarlierConcession &other) {
        return areMadeAlike(one.made, other.made) && one.fate == other.fate && one.pass.id == other.pass.id;
    });
    for (const auto &group : groups) {
        const EarlierConcession &one = *group.front();
        std::vector<keyboard::Note> notes;
        for (const EarlierConcession *each : group)
            if (notes.empty() || notes.back() != each->made.note)
                notes.push_back(each->made.note);
        table.row({wording::nameOf(one.made.quantity), noteRuns(notes), QString(), fateText(one.fate),
                   passText(one.pass, context) + QLatin1Char('\n') + byWhom(one.made, context)},
                  {true});
    }
    table.end();
    sheet.skip(8);
}

} // namespace

void setConcessions(Sheet &sheet, const Context &context)
{
    setOfThisPass(sheet, context);
    setStanding(sheet, context);
    setSettled(sheet, context);
}

} // namespace hammerline::record_pdf
