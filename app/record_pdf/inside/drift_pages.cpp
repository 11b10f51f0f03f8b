// What moved since the instrument was left: a table by measure and section, under the climate of both days.

#include "paper/table.h"
#include "record_pdf/inside/pages.h"

#include "wording/wording.h"

#include <cmath>

namespace hammerline::record_pdf {

namespace {

using analysis::Drift;
using analysis::Way;

QString figure(double display, catalogue::Quantity quantity, const Context &context)
{
    const auto dimension = catalogue::infoOf(quantity).dimension;
    const double shown = wording::inUnit(units::Amount::fromDisplay(dimension, display), context.form);
    return wording::numberText(shown, context.form.decimalsFor(dimension) + 1, context.form);
}

QString signedFigure(double display, catalogue::Quantity quantity, const Context &context)
{
    const QString text = figure(display, quantity, context);
    return display > 0 ? QLatin1Char('+') + text : text;
}

QString wayText(Way way)
{
    switch (way) {
    case Way::NotToldApart:
        return Record::tr("no change told apart");
    case Way::Smaller:
        return Record::tr("has become smaller");
    case Way::Larger:
        return Record::tr("has become larger");
    case Way::Unknown:
        break;
    }
    return Record::tr("doubt of the gauge not known");
}

/// The head of the measure on the line of the whole instrument, in bold; the section on the lines below it.
QString labelOf(const Drift &drift, const Context &context)
{
    return drift.section.empty() ? context.headOf(drift.quantity) : fromCore(drift.section);
}

QString mostText(const Drift &drift, const Context &context)
{
    return Record::tr("%1: %2").arg(fromCore(drift.most.name()),
                                    signedFigure(drift.mostChange, drift.quantity, context));
}

void setTable(Sheet &sheet, const Context &context, const QString &note)
{
    const QString none = QStringLiteral("\u2013");
    Table table(sheet, {{QString(), 96},
                        {Record::tr("notes"), 36, Qt::AlignRight},
                        {Record::tr("mean change"), 56, Qt::AlignRight},
                        {Record::tr("told apart\nfrom"), 58, Qt::AlignRight},
                        {Record::tr("notes\nmoved"), 50, Qt::AlignRight},
                        {Record::tr("most"), 72, Qt::AlignRight},
                        {QString(), 8},
                        {Record::tr("which way"), 0}});
    for (const Drift &drift : context.record.since->changes)
        table.row({labelOf(drift, context), QString::number(drift.change.pairs),
                   signedFigure(drift.change.meanChange, drift.quantity, context),
                   drift.toldApart ? figure(*drift.toldApart, drift.quantity, context) : none,
                   drift.moved ? QString::number(*drift.moved) : none, mostText(drift, context), QString(),
                   wayText(drift.way)},
                  {drift.section.empty()});
    table.end({note});
}

/// What a recheck of a part found: how much is still in, and each that is not.
void setRechecked(Sheet &sheet, const Context &context)
{
    const sale_record::PassPart &part = *context.record.recheck;
    sheet.paragraph(recheckSentence(context));
    Table table(sheet, {{Record::tr("note"), 34},
                        {Record::tr("measure"), 90},
                        {context.leftName(), 70, Qt::AlignRight},
                        {wording::nameOf(part.pass.purpose), 70, Qt::AlignRight},
                        {QString(), 6},
                        {Record::tr("what it means"), 0}});
    for (const tolerance::Verdict &verdict : part.judgement.verdicts) {
        if (!verdict.value || verdict.status == tolerance::Status::In || verdict.status == tolerance::Status::Unjudged)
            continue;
        const auto before = context.record.asLeft.values.value(verdict.quantity, verdict.note);
        table.row({fromCore(verdict.note.name()), wording::nameOf(verdict.quantity),
                   before ? wording::amountText(*before, context.form) : QStringLiteral("\u2013"),
                   wording::amountText(*verdict.value, context.form), QString(),
                   wording::verdictSentence(verdict, context.form)},
                  {true});
    }
    table.end();
    sheet.skip(6);
    QStringList felt;
    for (const sale_record::FeltFault &each : part.felt)
        felt << QStringLiteral("%1 %2").arg(fromCore(each.note.name()), fromCore(each.fault));
    if (!felt.isEmpty())
        sheet.paragraph(Record::tr("Felt and not measured") + QStringLiteral(": ") + felt.join(QStringLiteral(", ")));
}

} // namespace

QString recheckSentence(const Context &context)
{
    const sale_record::PassPart &part = *context.record.recheck;
    return Record::tr("Read again on %1: %2 of the measures. Of these %3 are where they should be.")
        .arg(dayText(part.pass.began, context.options.locale).replace(QLatin1Char(' '), QChar::Nbsp))
        .arg(sale_record::judgedPairsOf(part))
        .arg(sale_record::pairsInOf(part));
}

void setDrift(Sheet &sheet, const Context &context)
{
    const auto &since = context.record.since;
    if (!since)
        return;
    const auto day = [&](const readings::Pass &pass) {
        return Record::tr("%1: %2.").arg(dayText(pass.began, context.options.locale), climateText(pass, context));
    };
    sheet.heading(Record::tr("What moved since it was left"));
    sheet.paragraph(
        Record::tr("Climate on both days. %1 %2").arg(day(since->before), day(context.record.newest().pass)));
    if (context.record.recheck)
        setRechecked(sheet, context);
    else if (!since->before.remark.empty())
        sheet.paragraph(Record::tr("Remark on the readings of %1: %2")
                            .arg(dayText(since->before.began, context.options.locale), fromCore(since->before.remark)));
    if (since->changes.empty()) {
        sheet.paragraph(Record::tr("No note was read on both days."));
        return;
    }
    setTable(sheet, context,
             Record::tr("A change is told apart from none where it is larger than the expanded uncertainty "
                        "(k = 2) of a difference of two readings, which stands under \u201ctold apart from\u201d. "
                        "The mean of many notes is held against the same figure: what a gauge has wrong, it has "
                        "wrong on every note alike."));
}

} // namespace hammerline::record_pdf
