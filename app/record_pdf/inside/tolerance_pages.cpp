// The promise: target and limits of each measure with the source of each number, and the rule that turns a value into a
// verdict.

#include "paper/table.h"
#include "record_pdf/inside/pages.h"
#include "record_pdf/inside/trade_words.h"

#include "wording/wording.h"

#include <set>

namespace hammerline::record_pdf {

namespace {

using tolerance::Entry;
using tolerance::Point;

const QString none = QStringLiteral("\u2013");

/// A promise is printed exactly, not with the digits of the gauge: 3.175 mm shown as 3.2 would seem to let 3.2 in.
QString exactText(units::Amount amount, const Context &context)
{
    const auto unit = context.form.unitFor(amount.dimension());
    if (unit != units::Unit::Millimetre && unit != units::Unit::Gram) {
        wording::NumberForm fine = context.form;
        fine.lengthDecimals = unit == units::Unit::Inch ? 4 : 1;
        return wording::bareText(amount, fine);
    }
    return fromCore(units::exactDecimal(amount)).replace(QLatin1Char('.'), context.form.locale.decimalPoint());
}

QString limitText(const std::optional<units::Amount> &limit, const Context &context)
{
    return limit ? exactText(*limit, context) : none;
}

/// The nearest source that is given: of the point, of the measure, of the set.
QString sourceOf(const Point &point, const Entry &entry, const Context &context)
{
    if (!point.source.empty())
        return sourceWords(point.source);
    if (!entry.source.empty())
        return sourceWords(entry.source);
    if (!context.record.set.source.empty())
        return Record::tr("as the set");
    return Record::tr("no source");
}

QString sourceAndRemark(const Point &point, const Entry &entry, const Context &context)
{
    const QString source = sourceOf(point, entry, context);
    return point.remark.empty() ? source : source + QStringLiteral(". ") + fromCore(point.remark);
}

void setPoints(Table &table, const tolerance::Points &points, const QString &keys, const Entry &entry, QString head,
               const Context &context)
{
    QString whichKeys = keys;
    for (const Point &point : points) {
        table.row({head, whichKeys, fromCore(point.note.name()), limitText(point.low, context),
                   exactText(point.target, context), limitText(point.high, context),
                   sourceAndRemark(point, entry, context)},
                  {true});
        head.clear();
        whichKeys.clear();
    }
}

void setLimits(Sheet &sheet, const Context &context)
{
    Table table(sheet, {{Record::tr("measure"), 84},
                        {Record::tr("keys"), 46},
                        {Record::tr("at note"), 34},
                        {Record::tr("lowest"), 50, Qt::AlignRight},
                        {Record::tr("target"), 48, Qt::AlignRight},
                        {Record::tr("highest"), 46, Qt::AlignRight},
                        {Record::tr("source"), 0}});
    for (const auto &[quantity, entry] : context.record.set.entries) {
        const QString head = context.headOf(quantity);
        setPoints(table, entry.both, Record::tr("all"), entry, head, context);
        setPoints(table, entry.naturals, Record::tr("naturals"), entry, head, context);
        setPoints(table, entry.sharps, Record::tr("sharps"), entry, entry.naturals.empty() ? head : QString(), context);
        table.rule();
    }
    table.end({Record::tr(
        "Between two notes named here the values lie on a straight line by note number; beyond the outermost "
        "they stay.")});
}

QString uncertaintyText(const Entry &entry, const Context &context)
{
    if (entry.expandedUncertainty.baseCount() == 0)
        return Record::tr("not counted in");
    return Record::tr("%1, k = %2")
        .arg(wording::amountText(entry.expandedUncertainty, context.form),
             wording::numberText(entry.coverageFactor, 1, context.form));
}

void setRules(Sheet &sheet, const Context &context)
{
    sheet.heading(Record::tr("Decision rule"));
    Table table(sheet, {{Record::tr("measure"), 92},
                        {Record::tr("rule"), 190},
                        {Record::tr("expanded uncertainty W"), 110},
                        {Record::tr("largest step that is even"), 0}});
    std::set<tolerance::Rule> rules;
    for (const auto &[quantity, entry] : context.record.set.entries) {
        rules.insert(entry.rule);
        table.row({wording::nameOf(quantity), wording::nameOf(entry.rule), uncertaintyText(entry, context),
                   entry.step ? wording::amountText(*entry.step, context.form) : none},
                  {true});
    }
    QStringList notes;
    for (const tolerance::Rule rule : rules)
        notes << ruleText(rule);
    notes << Record::tr("A step is the difference from the nearest lower note that was read, at most four notes below, "
                        "of the same colour where keys are compared, and not across a section break.");
    table.end(notes);
}

} // namespace

void setTolerances(Sheet &sheet, const Context &context)
{
    const auto &set = context.record.set;
    sheet.chapter(Record::tr("What was promised"));
    sheet.paragraph(Record::tr("Tolerance set: %1.").arg(fromCore(set.name)));
    sheet.paragraph(set.source.empty() ? Record::tr("The set names no source.")
                                       : Record::tr("Source of the set: %1").arg(fromCore(set.source)),
                    quietText);
    if (!set.remark.empty())
        sheet.paragraph(fromCore(set.remark), quietText);
    sheet.paragraph(Record::tr("Where the maker's manual gives other values, the manual outranks these."), quietText);
    sheet.skip(4);
    setLimits(sheet, context);
    setRules(sheet, context);
}

} // namespace hammerline::record_pdf
