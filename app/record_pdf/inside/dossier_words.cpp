#include "record_pdf/inside/dossier_words.h"

#include "record_pdf/inside/record_words.h"

namespace hammerline::record_pdf {

QString nameOf(dossier::WorkKind kind)
{
    using dossier::WorkKind;
    switch (kind) {
    case WorkKind::PartsRenewed:
        return Record::tr("renewed");
    case WorkKind::Repinned:
        return Record::tr("repinned");
    case WorkKind::Cleaned:
        return Record::tr("cleaned");
    case WorkKind::Recovered:
        return Record::tr("recovered");
    case WorkKind::Refinished:
        return Record::tr("refinished");
    case WorkKind::Replated:
        return Record::tr("replated");
    case WorkKind::PedalTrapwork:
        return Record::tr("pedal trapwork");
    case WorkKind::Restrung:
        return Record::tr("restrung");
    case WorkKind::Repaired:
        return Record::tr("repaired");
    case WorkKind::FoundAltered:
        return Record::tr("found altered");
    case WorkKind::Other:
        break;
    }
    return Record::tr("other work");
}

QString nameOf(dossier::Area area)
{
    using dossier::Area;
    switch (area) {
    case Area::Case:
        return Record::tr("Case");
    case Area::Keys:
        return Record::tr("Keys");
    case Area::Action:
        return Record::tr("Action");
    case Area::Pedals:
        return Record::tr("Pedals");
    case Area::Strings:
        return Record::tr("Strings");
    case Area::Pinblock:
        return Record::tr("Pin block");
    case Area::Soundboard:
        break;
    }
    return Record::tr("Soundboard");
}

QString nameOf(dossier::Grade grade)
{
    using dossier::Grade;
    switch (grade) {
    case Grade::Unserviceable:
        return Record::tr("unserviceable");
    case Grade::Poor:
        return Record::tr("poor");
    case Grade::Serviceable:
        return Record::tr("serviceable");
    case Grade::Good:
        return Record::tr("good");
    case Grade::AsNew:
        break;
    }
    return Record::tr("as new");
}

QString nameOf(dossier::Moment moment)
{
    return moment == dossier::Moment::AsReceived ? Record::tr("As received") : Record::tr("As it leaves");
}

QString rangeText(const dossier::WorkEntry &entry)
{
    return entry.notes ? runText(entry.notes->first, entry.notes->last) : Record::tr("whole instrument");
}

QString workText(const dossier::WorkEntry &entry)
{
    return QStringLiteral("%1: %2").arg(nameOf(entry.kind), fromCore(entry.what));
}

namespace {

QString tookWords(std::int64_t minutes)
{
    if (minutes < 60)
        return Record::tr("%1 min").arg(minutes);
    if (minutes % 60 == 0)
        return Record::tr("%1 h").arg(minutes / 60);
    return Record::tr("%1 h %2 min").arg(minutes / 60).arg(minutes % 60);
}

} // namespace

/// A figure and its unit stay on one line.
QString tookText(const dossier::WorkEntry &entry)
{
    return entry.took ? tookWords(entry.took->count()).replace(QLatin1Char(' '), QChar(0x00a0)) : QString();
}

QString dayOf(const dossier::WorkEntry &entry, const QLocale &locale)
{
    return entry.day ? dayText(readings::Instant(*entry.day), locale) : QString();
}

} // namespace hammerline::record_pdf
