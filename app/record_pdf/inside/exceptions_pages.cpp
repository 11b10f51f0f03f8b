// Everything that is not as promised, worst first; what was promised and not measured in runs of notes.

#include "paper/table.h"
#include "record_pdf/inside/pages.h"

#include "wording/wording.h"

#include <algorithm>
#include <map>
#include <set>

namespace hammerline::record_pdf {

namespace {

using tolerance::Status;
using tolerance::Verdict;

/// One word; the sentence at the end of the row says the rest.
QString kindOf(const Verdict &verdict)
{
    if (verdict.status == Status::Out)
        return Record::tr("out");
    return verdict.status == Status::Marginal ? Record::tr("close") : Record::tr("uneven");
}

QString foundText(const Verdict &verdict, const Context &context)
{
    if (!context.hasBefore())
        return {};
    const auto value = context.record.asFound->values.value(verdict.quantity, verdict.note);
    return value ? wording::amountText(*value, context.form) : QStringLiteral("\u2013");
}

const sale_record::Concession *findConcession(const Context &context, const Verdict &verdict)
{
    const auto &all = context.record.concessions;
    const auto found = std::ranges::find_if(all, [&](const sale_record::Concession &one) {
        return one.quantity == verdict.quantity && one.note == verdict.note;
    });
    return found == all.end() ? nullptr : &*found;
}

void setMeasured(Sheet &sheet, const Context &context)
{
    std::vector<Column> columns{{Record::tr("note"), 34}, {Record::tr("measure"), 62}, {Record::tr("verdict"), 40}};
    if (context.hasBefore())
        columns.push_back({context.foundName(), 66, Qt::AlignRight});
    columns.push_back({context.leftName(), 66, Qt::AlignRight});
    columns.push_back({QString(), 6});
    columns.push_back({Record::tr("what it means"), 0});
    Table table(sheet, columns);
    for (const Verdict &verdict : context.record.exceptions) {
        if (verdict.status == Status::Missing)
            continue;
        QStringList cells{fromCore(verdict.note.name()), wording::nameOf(verdict.quantity), kindOf(verdict)};
        if (context.hasBefore())
            cells << foundText(verdict, context);
        QString sentence = wording::verdictSentence(verdict, context.form);
        if (findConcession(context, verdict))
            sentence += QStringLiteral(". ") + Record::tr("Accepted as it is");
        cells << wording::amountText(*verdict.value, context.form) << QString() << sentence;
        table.row(cells, {true, false, verdict.status == Status::Out});
    }
    table.rule();
    sheet.skip(10);
}

void setMissing(Sheet &sheet, const Context &context)
{
    std::map<catalogue::Quantity, std::vector<keyboard::Note>> missing;
    for (const Verdict &verdict : context.record.exceptions)
        if (verdict.status == Status::Missing)
            missing[verdict.quantity].push_back(verdict.note);
    if (missing.empty())
        return;
    sheet.heading(Record::tr("Promised by the tolerance set and not measured"));
    Table table(sheet, {{Record::tr("measure"), 100}, {Record::tr("how many"), 60}, {Record::tr("notes"), 0}});
    for (const auto &[quantity, notes] : missing)
        table.row({wording::nameOf(quantity), QString::number(notes.size()), noteRuns(notes)});
    table.rule();
}

/// Concessions of one measure by one person on one day for one reason.
using Alike = std::vector<const sale_record::Concession *>;

/// In the order of the first of each.
std::vector<Alike> alikeOf(const std::vector<sale_record::Concession> &concessions)
{
    const auto areAlike = [](const sale_record::Concession &one, const sale_record::Concession &other) {
        return one.quantity == other.quantity && one.reason == other.reason && one.person == other.person &&
               readings::isoDate(one.at) == readings::isoDate(other.at);
    };
    std::vector<Alike> groups;
    for (const sale_record::Concession &one : concessions) {
        const auto known =
            std::ranges::find_if(groups, [&](const Alike &group) { return areAlike(*group.front(), one); });
        if (known == groups.end())
            groups.push_back({&one});
        else
            known->push_back(&one);
    }
    return groups;
}

/// "C4 2.10, D4 missing": a note and what stood there.
QString notesAndValues(const Alike &group, const Context &context)
{
    QStringList notes;
    for (const sale_record::Concession *one : group)
        notes << fromCore(one->note.name()) + QChar(0x00a0) +
                     (one->value ? wording::bareText(*one->value, context.form) : Record::tr("missing"));
    return notes.join(QLatin1Char(context.form.locale.decimalPoint() == QLatin1String(",") ? ';' : ',') +
                      QStringLiteral(" "));
}

/// What is not as promised and was accepted, and why: a reader must not take silence for promise kept.
void setConcessions(Sheet &sheet, const Context &context)
{
    if (context.record.concessions.empty())
        return;
    sheet.heading(Record::tr("Accepted as they are"));
    Table table(sheet, {{Record::tr("measure"), 84},
                        {Record::tr("notes and values"), 150},
                        {QString(), 8},
                        {Record::tr("why"), 150},
                        {Record::tr("by whom, when"), 0}});
    for (const Alike &group : alikeOf(context.record.concessions)) {
        const sale_record::Concession &one = *group.front();
        table.row({context.headOf(one.quantity), notesAndValues(group, context), QString(), fromCore(one.reason),
                   QStringLiteral("%1, %2").arg(fromCore(one.person), dayText(one.at, context.options.locale))},
                  {true});
    }
    table.rule();
    sheet.skip(8);
}

using NotesOfFault = std::map<QString, std::vector<keyboard::Note>>;

NotesOfFault feltIn(const sale_record::PassPart &part)
{
    NotesOfFault notes;
    for (const sale_record::FeltFault &felt : part.felt)
        notes[fromCore(felt.fault)].push_back(felt.note);
    return notes;
}

/// A row a fault: on which notes as found, and on which as left.
void setFelt(Sheet &sheet, const Context &context)
{
    const NotesOfFault left = feltIn(context.record.asLeft);
    const NotesOfFault found = context.hasBefore() ? feltIn(*context.record.asFound) : NotesOfFault();
    std::set<QString> faults;
    for (const NotesOfFault *notes : {&left, &found})
        for (const auto &[fault, at] : *notes)
            faults.insert(fault);
    if (faults.empty())
        return;
    const auto runsOf = [](const NotesOfFault &notes, const QString &fault) {
        const auto at = notes.find(fault);
        return at == notes.end() ? QStringLiteral("\u2013") : noteRuns(at->second);
    };
    sheet.skip(10);
    sheet.heading(Record::tr("Felt and not measured"));
    std::vector<Column> columns{{Record::tr("fault"), 120}};
    if (context.hasBefore())
        columns.push_back({context.foundName(), 190});
    columns.push_back({context.leftName(), 0});
    Table table(sheet, columns);
    for (const QString &fault : faults) {
        QStringList cells{fault};
        if (context.hasBefore())
            cells << runsOf(found, fault);
        table.row(cells << runsOf(left, fault));
    }
    table.rule();
}

bool anyMeasured(const Context &context)
{
    for (const Verdict &verdict : context.record.exceptions)
        if (verdict.status != Status::Missing)
            return true;
    return false;
}

} // namespace

void setExceptions(Sheet &sheet, const Context &context)
{
    sheet.chapter(exceptionsChapter());
    if (context.record.exceptions.empty()) {
        sheet.paragraph(
            Record::tr("There are none: every measure that the tolerance set names was read, lies inside its limits "
                       "and is even with its neighbours."));
        setFelt(sheet, context);
        return;
    }
    sheet.paragraph(
        Record::tr("Out of limits, close to a limit, or uneven, worst first: ordered by the distance from target in "
                   "units of half the width between the limits."),
        quietText);
    if (anyMeasured(context))
        setMeasured(sheet, context);
    setMissing(sheet, context);
    setConcessions(sheet, context);
    setFelt(sheet, context);
}

} // namespace hammerline::record_pdf
