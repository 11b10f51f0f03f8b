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

/// The sentence at the end of the row says the rest.
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

/// In this pass; or before, and what was accepted is what stands now.
bool isAccepted(const Context &context, const Verdict &verdict)
{
    const auto isIt = [&](const sale_record::Concession &made) {
        return made.quantity == verdict.quantity && made.note == verdict.note;
    };
    const auto stands = [&](const sale_record::EarlierConcession &earlier) {
        const bool asAccepted = !earlier.valueNow || earlier.valueNow == earlier.made.value;
        return earlier.fate == sale_record::Fate::Stands && asAccepted && isIt(earlier.made);
    };
    return std::ranges::any_of(context.record.concessions, isIt) ||
           std::ranges::any_of(context.record.earlierConcessions, stands);
}

QString verdictText(const Context &context, const Verdict &verdict)
{
    return isAccepted(context, verdict) ? kindOf(verdict) + QStringLiteral(", ") + Record::tr("accepted")
                                        : kindOf(verdict);
}

void setMeasured(Sheet &sheet, const Context &context)
{
    std::vector<Column> columns{{Record::tr("note"), 34}, {Record::tr("measure"), 58}, {Record::tr("verdict"), 64}};
    if (context.hasBefore())
        columns.push_back({context.foundName(), 66, Qt::AlignRight});
    columns.push_back({context.leftName(), 66, Qt::AlignRight});
    columns.push_back({QString(), 6});
    columns.push_back({Record::tr("what it means"), 0});
    Table table(sheet, columns);
    for (const Verdict &verdict : context.record.exceptions) {
        if (verdict.status == Status::Missing)
            continue;
        QStringList cells{fromCore(verdict.note.name()), wording::nameOf(verdict.quantity),
                          verdictText(context, verdict)};
        if (context.hasBefore())
            cells << foundText(verdict, context);
        cells << wording::amountText(*verdict.value, context.form) << QString()
              << wording::verdictSentence(verdict, context.form);
        table.row(cells, {true, false, verdict.status == Status::Out});
    }
    table.end();
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
    table.end();
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
    table.end();
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
    sheet.chapterHere(exceptionsChapter(), roomOfAStart);
    if (context.record.exceptions.empty()) {
        sheet.paragraph(
            Record::tr("There are none: every measure that the tolerance set names was read, lies inside its limits "
                       "and is even with its neighbours."));
        setConcessions(sheet, context);
        setFelt(sheet, context);
        return;
    }
    sheet.paragraph(
        Record::tr("Out of limits, close to a limit, or uneven, worst first: ordered by the distance from target in "
                   "units of half the width between the limits."),
        quietText);
    sheet.skip(4);
    if (anyMeasured(context))
        setMeasured(sheet, context);
    setMissing(sheet, context);
    setConcessions(sheet, context);
    setFelt(sheet, context);
}

} // namespace hammerline::record_pdf
