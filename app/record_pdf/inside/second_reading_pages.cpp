// Spot checks: what a second person found on a drawn sample, and how far the two people agree.

#include "paper/table.h"
#include "record_pdf/inside/pages.h"

#include "wording/wording.h"

namespace hammerline::record_pdf {

namespace {

using decisions::SpotFinding;
using sale_record::SecondReading;

const QString none = QStringLiteral("\u2013");

QString signedFigure(const std::optional<double> &display, catalogue::Quantity quantity, const Context &context)
{
    if (!display)
        return none;
    const auto dimension = catalogue::infoOf(quantity).dimension;
    const double shown = wording::inUnit(units::Amount::fromDisplay(dimension, *display), context.form);
    const QString text = wording::numberText(shown, context.form.decimalsFor(dimension) + 1, context.form);
    return *display > 0 ? QLatin1Char('+') + text : text;
}

QString agreementText(const SpotFinding &finding, const Context &context)
{
    if (!finding.agreement->agreementLow || !finding.agreement->agreementHigh)
        return none;
    return Record::tr("%1 to %2")
        .arg(signedFigure(finding.agreement->agreementLow, finding.quantity, context),
             signedFigure(finding.agreement->agreementHigh, finding.quantity, context));
}

void setFindings(Sheet &sheet, const Context &context, const SecondReading &told)
{
    Table table(sheet, {{Record::tr("measure"), 100},
                        {Record::tr("read\nagain"), 58, Qt::AlignRight},
                        {Record::tr("out of\nlimits"), 50, Qt::AlignRight},
                        {Record::tr("at most out\nof all"), 70, Qt::AlignRight},
                        {Record::tr("mean\ndifference"), 70, Qt::AlignRight},
                        {Record::tr("19 of 20 differences"), 0, Qt::AlignRight}});
    for (const SpotFinding &finding : told.findings)
        table.row({context.headOf(finding.quantity), QString::number(finding.readAgain()),
                   finding.proof ? QString::number(finding.out.size()) : none,
                   finding.proof ? Record::tr("%1 of %2").arg(finding.proof->mostOut).arg(finding.notes) : none,
                   signedFigure(finding.agreement->meanChange, finding.quantity, context),
                   agreementText(finding, context)},
                  {true});
    table.end();
    sheet.skip(6);
}

} // namespace

void setSecondReadings(Sheet &sheet, const Context &context)
{
    if (context.record.secondReadings.empty())
        return;
    sheet.heading(Record::tr("Read again by a second person"));
    for (const SecondReading &told : context.record.secondReadings) {
        sheet.paragraph(Record::tr("%1 read %2 notes again on %3, drawn at random (seed %4): %5.")
                            .arg(fromCore(told.pass.person))
                            .arg(told.check.notes.size())
                            .arg(dayText(told.pass.began, context.options.locale))
                            .arg(told.check.seed)
                            .arg(noteRuns(told.check.notes)));
        setFindings(sheet, context, told);
        if (!told.pass.remark.empty())
            sheet.paragraph(Record::tr("Remark: %1").arg(fromCore(told.pass.remark)));
    }
    sheet.paragraph(
        Record::tr(
            "“At most out of all” holds with 95 % confidence for all notes that were read and are judged, and is "
            "worked out from the sample alone (hypergeometric). Differences are second reading less first; the "
            "range is their mean ± 1.96 standard deviations."),
        quietText);
}

} // namespace hammerline::record_pdf
