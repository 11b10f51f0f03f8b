#include "record_pdf/inside/record_words.h"

#include "wording/wording.h"

#include <QDateTime>

namespace hammerline::record_pdf {

namespace {

QString sizeText(const instrument::Instrument &instrument, const QLocale &locale)
{
    const QString size = locale.toString(instrument.size->inMillimetres() / 10, 'f', 0);
    return instrument.action == catalogue::ActionKind::Grand ? Record::tr("%1 cm long").arg(size)
                                                             : Record::tr("%1 cm high").arg(size);
}

QString nameOfMake(const instrument::Instrument &instrument)
{
    QStringList make;
    for (const std::string *part : {&instrument.maker, &instrument.model})
        if (!part->empty())
            make << fromCore(*part);
    return make.join(QLatin1Char(' '));
}

} // namespace

QString plainMeaningOf(catalogue::Quantity quantity)
{
    using catalogue::Quantity;
    switch (quantity) {
    case Quantity::KeyHeight:
        return Record::tr("The keys lie level");
    case Quantity::Blow:
        return Record::tr("The hammers wait at the right distance from the strings");
    case Quantity::LostMotion:
        return Record::tr("The key takes hold of the hammer without slack");
    case Quantity::LetOff:
        return Record::tr("The hammer is let go close to the string, for soft playing");
    case Quantity::Drop:
        return Record::tr("The hammer sinks back a little once it is let go");
    case Quantity::Dip:
        return Record::tr("The keys go down equally deep");
    case Quantity::Aftertouch:
        return Record::tr("The end of the key's way feels alike");
    case Quantity::Checking:
        return Record::tr("The hammer is caught after its blow, for fast repeats");
    case Quantity::DamperStart:
        return Record::tr("The dampers lift at the right moment");
    case Quantity::DownWeight:
        return Record::tr("The keys ask for a like weight of hand");
    case Quantity::UpWeight:
        break;
    }
    return Record::tr("The keys come back with a like strength");
}

QString pianoKind(catalogue::ActionKind action)
{
    return action == catalogue::ActionKind::Grand ? Record::tr("Grand piano") : Record::tr("Upright piano");
}

QString describe(const instrument::Instrument &instrument, const QLocale &locale)
{
    QStringList parts{pianoKind(instrument.action)};
    if (const QString make = nameOfMake(instrument); !make.isEmpty())
        parts << make;
    if (!instrument.serial.empty())
        parts << Record::tr("serial number %1").arg(fromCore(instrument.serial));
    if (instrument.year)
        parts << Record::tr("built %1").arg(*instrument.year);
    if (instrument.size)
        parts << sizeText(instrument, locale);
    parts << Record::tr("%1 notes, %2")
                 .arg(instrument.compass.count())
                 .arg(runText(instrument.compass.first, instrument.compass.last));
    // Lines break between the parts and not inside them.
    for (QString &part : parts)
        part.replace(QLatin1Char(' '), QChar::Nbsp);
    return parts.join(QStringLiteral(" \u00b7 "));
}

QString cautionText(sale_record::Caution caution)
{
    using sale_record::Caution;
    switch (caution) {
    case Caution::StringTension:
        return Record::tr(
            "Strings. The strings of a piano pull with many tonnes together. A string or a pin that lets go can "
            "hurt badly. Leave strings, pins and frame to a trained technician.");
    case Caution::TallUprightTips:
        return Record::tr(
            "Tipping. A tall upright is heavy at its back and can fall over backwards. Nobody stands behind it "
            "while it is moved; have it moved by people who do this for a living, and keep it on level floor.");
    case Caution::LeadInKeys:
        return Record::tr(
            "Lead. The keys of this instrument may hold lead weights, and old lead sheds a pale dust. Keep "
            "children from it, wipe moist rather than brush, wash hands. Local rules on lead come first.");
    case Caution::IvoryLaw:
        return Record::tr(
            "Ivory. The keys of this instrument may be covered with ivory; this record does not say whether they "
            "are. Many countries restrict its sale, hire or carriage across a border: ask the law of your "
            "country before you sell, lend or move the instrument.");
    case Caution::Dust:
        return Record::tr(
            "Dust. Old pianos hold dust that may carry moth poison, mould or old finish. Have it cleaned with "
            "suction and a mask by somebody who knows it; local rules come first.");
    case Caution::ClimateMovesIt:
        break;
    }
    return Record::tr(
        "Climate. Wood and felt move with the seasons, and the distances in this record with them. A steady "
        "room, neither dry nor damp, keeps the instrument closest to the state written here.");
}

QString ruleText(tolerance::Rule rule)
{
    if (rule == tolerance::Rule::Guarded)
        return Record::tr(
            "Guarded: a value counts as in only where it lies inside its limits by at least the expanded "
            "uncertainty W. Nearer to a limit than that, it is called close to the limit; beyond the limit, out.");
    return Record::tr(
        "Simple: a value counts as in where it lies inside its limits or on one of them, and as out beyond. "
        "Close to a limit, the uncertainty of the gauge may put the true value on the other side; buyer and "
        "shop share that risk.");
}

QString runText(keyboard::Note first, keyboard::Note last)
{
    const QString from = fromCore(first.name());
    if (first == last)
        return from;
    return Record::tr("%1 to %2").arg(from, fromCore(last.name()));
}

QString noteRuns(const std::vector<keyboard::Note> &rising)
{
    QStringList runs;
    for (std::size_t first = 0; first < rising.size();) {
        std::size_t last = first;
        while (last + 1 < rising.size() && rising[last + 1].number() == rising[last].number() + 1)
            ++last;
        runs << runText(rising[first], rising[last]);
        first = last + 1;
    }
    return runs.join(QStringLiteral(", "));
}

QString dayText(readings::Instant instant, const QLocale &locale)
{
    const auto since = instant.time_since_epoch().count();
    //: A day in a record, as QLocale::toString spells a format: "d. MMMM yyyy" in German.
    const QString form = Record::tr("d MMMM yyyy");
    return locale.toString(QDateTime::fromMSecsSinceEpoch(since, Qt::UTC).date(), form);
}

QString fromCore(const std::string &text)
{
    return QString::fromStdString(text);
}

} // namespace hammerline::record_pdf
