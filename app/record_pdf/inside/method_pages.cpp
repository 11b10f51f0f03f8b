// How, by whom, with what and in what climate it was measured; what was not measured; the cautions.

#include "paper/table.h"
#include "record_pdf/inside/pages.h"

#include "wording/wording.h"

#include <algorithm>

namespace hammerline::record_pdf {

namespace {

using readings::Pass;
using sale_record::PassPart;

QString orNotStated(const QString &text)
{
    return text.isEmpty() ? Record::tr("not stated") : text;
}

QString timeText(const Pass &pass)
{
    return fromCore(readings::rfc3339(std::chrono::floor<std::chrono::minutes>(pass.began)))
        .replace(QLatin1Char('T'), QLatin1Char(' '))
        .replace(QStringLiteral(":00Z"), QStringLiteral(" UTC"));
}

QString lengthText(units::Length length, const Context &context)
{
    if (length == units::Length())
        return Record::tr("not stated");
    wording::NumberForm fine = context.form;
    fine.lengthDecimals = std::max(fine.lengthDecimals, 3);
    return wording::amountText(length, fine);
}

void setPasses(Sheet &sheet, const Context &context)
{
    constexpr double labelWidth = 160;
    std::vector<const PassPart *> parts;
    if (context.hasBefore())
        parts.push_back(&*context.record.asFound);
    parts.push_back(&context.record.asLeft);
    if (context.record.recheck)
        parts.push_back(&*context.record.recheck);

    std::vector<Column> columns{{QString(), labelWidth}};
    for (const PassPart *part : parts)
        columns.push_back({wording::nameOf(part->pass.purpose),
                           (sheet.body().width() - labelWidth) / static_cast<double>(parts.size())});
    constexpr TextStyle style{8, false, 0, 1.4};
    Table table(sheet, columns, style);
    const auto line = [&](const QString &label, const std::function<QString(const PassPart &)> &say) {
        QStringList cells{label};
        for (const PassPart *part : parts)
            cells << say(*part);
        table.row(cells);
    };
    line(Record::tr("began"), [](const PassPart &part) { return timeText(part.pass); });
    line(Record::tr("measured by"), [](const PassPart &part) { return orNotStated(fromCore(part.pass.person)); });
    line(Record::tr("climate"), [&](const PassPart &part) { return climateText(part.pass, context); });
    line(Record::tr("gauge"), [](const PassPart &part) { return orNotStated(fromCore(part.pass.gauge.name)); });
    line(Record::tr("resolution of the gauge"),
         [&](const PassPart &part) { return lengthText(part.pass.gauge.resolution, context); });
    line(Record::tr("its expanded uncertainty, k = 2"),
         [&](const PassPart &part) { return lengthText(part.pass.gauge.expandedUncertainty, context); });
    line(Record::tr("dip measured at"), [](const PassPart &part) { return wording::nameOf(part.pass.dipDatum); });
    if (context.record.instrument.action == catalogue::ActionKind::Grand)
        line(Record::tr("drop measured"), [](const PassPart &part) { return wording::nameOf(part.pass.dropDatum); });
    line(Record::tr("readings, takes counted"),
         [](const PassPart &part) { return QString::number(part.readings.size()); });
    if (std::ranges::any_of(parts, [](const PassPart *part) { return !part->pass.remark.empty(); }))
        line(Record::tr("remark"), [](const PassPart &part) { return fromCore(part.pass.remark); });
    table.end();
    sheet.skip(8);
}

void setFittings(Table &table, const QString &label, const std::vector<instrument::Fitting> &fittings)
{
    QString head = label;
    for (const instrument::Fitting &fitting : fittings) {
        table.row({head, runText(fitting.notes.first, fitting.notes.last), fromCore(fitting.kind)});
        head.clear();
    }
}

void setSections(Table &table, const keyboard::Sections &sections)
{
    QString head = Record::tr("sections");
    for (const keyboard::Section &section : sections) {
        table.row({head, runText(section.notes.first, section.notes.last), fromCore(section.name)});
        head.clear();
    }
}

/// What the shop wrote down of the build; nothing where it wrote nothing.
void setBuild(Sheet &sheet, const Context &context)
{
    const auto &instrument = context.record.instrument;
    const bool known = !instrument.sections.empty() || !instrument.stringing.empty() || !instrument.dampers.empty();
    if (!known && instrument.condition.empty())
        return;
    sheet.heading(Record::tr("The instrument as received"));
    if (!instrument.condition.empty())
        sheet.paragraph(fromCore(instrument.condition));
    if (!known)
        return;
    constexpr TextStyle style{8, false, 0, 1.4};
    Table table(sheet, {{QString(), 90}, {Record::tr("notes"), 90}, {Record::tr("what stands there"), 0}}, style);
    setSections(table, instrument.sections);
    setFittings(table, Record::tr("stringing"), instrument.stringing);
    setFittings(table, Record::tr("dampers"), instrument.dampers);
    table.end();
    sheet.skip(8);
}

void setDefinitions(Sheet &sheet, const Context &context)
{
    sheet.heading(Record::tr("What each measure is"));
    constexpr TextStyle style{8, false, 0, 1.4};
    Table table(sheet, {{Record::tr("measure"), 90}, {Record::tr("how it is measured"), 0}}, style);
    for (const catalogue::Quantity quantity : quantitiesOf(context.record))
        table.row({wording::nameOf(quantity), wording::definitionOf(quantity)}, {true});
    table.end();
    sheet.skip(8);
}

void setNotMeasured(Sheet &sheet, const Context &context)
{
    sheet.heading(Record::tr("What was not measured"));
    QStringList names;
    for (const catalogue::Quantity quantity : context.record.notMeasured())
        names << wording::nameOf(quantity);
    if (!names.isEmpty())
        sheet.paragraph(Record::tr("On no note: %1.").arg(names.join(QStringLiteral(", "))));
    sheet.paragraph(Record::tr("Single notes that were promised and not read are listed under \u201c%1\u201d.")
                        .arg(exceptionsChapter()));
    sheet.paragraph(
        Record::tr("This record is about the regulation of the action. It says nothing of tuning, tone, strings, "
                   "soundboard, pin block, case or value."));
}

QString signatureText(const sale_record::Signature &signature, const QLocale &locale)
{
    const QString text = Record::tr("Signed by %1 on %2 (revision %3 of the pass).")
                             .arg(fromCore(signature.person), dayText(signature.at, locale))
                             .arg(signature.revision);
    return signature.reason.empty() ? text : text + QLatin1Char(' ') + fromCore(signature.reason);
}

/// Who stands for it.
void setSignatures(Sheet &sheet, const Context &context)
{
    if (context.record.signatures.empty())
        sheet.paragraph(Record::tr("Nobody has signed the newest pass in the logbook."));
    for (const sale_record::Signature &signature : context.record.signatures)
        sheet.paragraph(signatureText(signature, context.options.locale));
}

void setRevision(Sheet &sheet, const Context &context)
{
    const auto &replaces = context.record.replaces;
    if (!replaces)
        return;
    sheet.paragraph(Record::tr("This is revision %1 of the record. It takes the place of revision %2, issued on %3, "
                               "whose file has the digest (SHA-256)\n%4")
                        .arg(context.record.revision())
                        .arg(replaces->revision)
                        .arg(dayText(replaces->issued, context.options.locale),
                             fromCore(seal::groupedFingerprint(replaces->fileDigest))));
}

void setSale(Sheet &sheet, const Context &context)
{
    const auto &sale = context.record.dossier.sale;
    const auto &owner = context.record.owner;
    const auto line = [&sheet](const QString &label, const std::string &text) {
        if (!text.empty())
            sheet.paragraph(label.arg(fromCore(text)));
    };
    line(Record::tr("Owner: %1"), owner);
    line(Record::tr("Buyer: %1"), sale.buyer);
    line(Record::tr("Price: %1"), sale.price);
    line(Record::tr("Of the sale: %1"), sale.remark);
}

/// Where it was measured, and what the workshop answers for.
void setWorkshop(Sheet &sheet, const Context &context)
{
    const QString workshop = fromCore(context.record.workshop);
    sheet.paragraph(
        workshop.isEmpty()
            ? Record::tr("Name and place of the workshop are not stated.")
            : Record::tr("Workshop: %1. It was measured there, unless a remark on the readings names another "
                         "place.")
                  .arg(workshop));
    sheet.paragraph(
        Record::tr("The workshop answers for the readings and for what it did. Maker, serial number, year and history "
                   "are as they were read off the instrument or told by its owner. Of the gauges this record states "
                   "what the workshop states of them; it claims no calibration of theirs. It counts as a whole: a page "
                   "on its own is no record."));
}

QString issueSentence(const Context &context)
{
    const auto &record = context.record;
    const QString day = dayText(record.issued, context.options.locale);
    const QString version = fromCore(record.programVersion);
    if (record.issuedBy.empty())
        return Record::tr("Issued on %1 with Hammerline %2; by whom is not stated.").arg(day, version);
    return Record::tr("Issued on %1 by %2 with Hammerline %3.").arg(day, fromCore(record.issuedBy), version);
}

void setIssue(Sheet &sheet, const Context &context)
{
    sheet.heading(Record::tr("What this record is"));
    sheet.paragraph(
        Record::tr(
            "%1 It speaks of the instrument on the day it was measured and of no other day. The readings stand inside "
            "this document as files: record.json and readings.csv%2.")
            .arg(issueSentence(context), context.hasBefore()
                                             ? Record::tr(" (%1) and readings-as-found.csv").arg(context.leftName())
                                             : QString()) +
        (context.record.recheck ? QLatin1Char(' ') + Record::tr("Those of the recheck are readings-recheck.csv.")
                                : QString()));
    setSignatures(sheet, context);
    setWorkshop(sheet, context);
    setRevision(sheet, context);
    setSale(sheet, context);
}

/// The last lines of the last page: what shows a history that was written anew. Empty: it comes from no logbook.
QString historyText(const sale_record::HistoryPin &history)
{
    if (history.deed == 0)
        return {};
    return Record::tr("The logbook that this record was made from stood at entry %1 of its history, whose digest "
                      "(SHA-256) is\n%2\nWhoever keeps the logbook can be asked to show that it still holds this "
                      "entry.")
        .arg(history.deed)
        .arg(fromCore(seal::groupedFingerprint(history.digest)));
}

} // namespace

QString climateText(const Pass &pass, const Context &context)
{
    QStringList parts;
    if (pass.climate.celsius)
        parts << Record::tr("%1 °C").arg(wording::numberText(*pass.climate.celsius, 1, context.form));
    if (pass.climate.relativeHumidityPercent)
        parts << Record::tr("%1 % relative humidity")
                     .arg(wording::numberText(*pass.climate.relativeHumidityPercent, 0, context.form));
    // A figure and its unit stay on one line.
    for (QString &part : parts)
        part.replace(QStringLiteral(" %"), QStringLiteral("\u00a0%"))
            .replace(QStringLiteral(" °"), QStringLiteral("\u00a0°"));
    return orNotStated(parts.join(QStringLiteral(", ")));
}

void setMethod(Sheet &sheet, const Context &context)
{
    sheet.chapterHere(Record::tr("How it was measured"), roomOfAStart);
    setPasses(sheet, context);
    setBuild(sheet, context);
    setDefinitions(sheet, context);
    setNotMeasured(sheet, context);
    setIssue(sheet, context);
}

void setCautions(Sheet &sheet, const Context &context)
{
    std::vector<std::pair<QString, TextStyle>> paragraphs;
    for (const sale_record::Caution caution : context.record.cautions)
        paragraphs.emplace_back(cautionText(caution), bodyText);
    paragraphs.emplace_back(Record::tr("These are the usual cautions of the trade and no legal advice. The law of your "
                                       "country, local rules and licensed practice come before them."),
                            quietText);
    sheet.chapterHere(Record::tr("Cautions"), roomOfAShortStart);
    for (const auto &[text, style] : paragraphs)
        sheet.paragraph(text, style);
    if (const QString history = historyText(context.record.history); !history.isEmpty()) {
        sheet.heading(Record::tr("Where this record comes from"));
        sheet.paragraph(history, smallText);
    }
}

} // namespace hammerline::record_pdf
