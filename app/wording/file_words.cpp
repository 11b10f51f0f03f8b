#include "wording/file_words.h"

#include "wording/wording.h"

#include <QCoreApplication>
#include <QStringList>

#include <array>
#include <cmath>

namespace hammerline::wording {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("wording", text);
}

template <std::size_t count, typename Enum>
QString named(const std::array<const char *, count> &names, Enum value)
{
    return tr(names.at(static_cast<std::size_t>(value)));
}

constexpr std::array kindNames{
    QT_TRANSLATE_NOOP("wording", "Parts renewed"),  QT_TRANSLATE_NOOP("wording", "Repinned"),
    QT_TRANSLATE_NOOP("wording", "Cleaned"),        QT_TRANSLATE_NOOP("wording", "Recovered"),
    QT_TRANSLATE_NOOP("wording", "Refinished"),     QT_TRANSLATE_NOOP("wording", "Replated"),
    QT_TRANSLATE_NOOP("wording", "Pedal trapwork"), QT_TRANSLATE_NOOP("wording", "Restrung"),
    QT_TRANSLATE_NOOP("wording", "Repaired"),       QT_TRANSLATE_NOOP("wording", "Found altered"),
    QT_TRANSLATE_NOOP("wording", "Other work")};
constexpr std::array areaNames{QT_TRANSLATE_NOOP("wording", "Case"),      QT_TRANSLATE_NOOP("wording", "Keys"),
                               QT_TRANSLATE_NOOP("wording", "Action"),    QT_TRANSLATE_NOOP("wording", "Pedals"),
                               QT_TRANSLATE_NOOP("wording", "Strings"),   QT_TRANSLATE_NOOP("wording", "Pinblock"),
                               QT_TRANSLATE_NOOP("wording", "Soundboard")};
constexpr std::array momentNames{QT_TRANSLATE_NOOP("wording", "As received"),
                                 QT_TRANSLATE_NOOP("wording", "As it leaves")};
constexpr std::array gradeNames{"",
                                QT_TRANSLATE_NOOP("wording", "1, unserviceable"),
                                QT_TRANSLATE_NOOP("wording", "2, poor"),
                                QT_TRANSLATE_NOOP("wording", "3, serviceable"),
                                QT_TRANSLATE_NOOP("wording", "4, good"),
                                QT_TRANSLATE_NOOP("wording", "5, as new")};

} // namespace

QString nameOf(dossier::WorkKind kind)
{
    return named(kindNames, kind);
}
QString nameOf(dossier::Area area)
{
    return named(areaNames, area);
}
QString nameOf(dossier::Moment moment)
{
    return named(momentNames, moment);
}
QString nameOf(dossier::Grade grade)
{
    return named(gradeNames, grade);
}

QString notesText(const std::optional<keyboard::NoteRange> &notes)
{
    if (!notes)
        return tr("whole");
    if (notes->first == notes->last)
        return nameOf(notes->first);
    return tr("%1 to %2").arg(nameOf(notes->first), nameOf(notes->last));
}

QString timeText(const std::optional<std::chrono::minutes> &time)
{
    if (!time)
        return {};
    const auto hours = time->count() / 60;
    const auto minutes = time->count() % 60;
    QStringList parts;
    if (hours > 0)
        parts << tr("%1 h").arg(hours);
    if (minutes > 0 || hours == 0)
        parts << tr("%1 min").arg(minutes);
    return parts.join(' ');
}

QString climateText(const readings::Climate &climate)
{
    QStringList parts;
    if (climate.celsius)
        parts << tr("%1 °C").arg(*climate.celsius, 0, 'f', 1);
    if (climate.relativeHumidityPercent)
        parts << tr("%1 % r.h.").arg(*climate.relativeHumidityPercent, 0, 'f', 0);
    return parts.isEmpty() ? tr("climate not noted") : parts.join(QStringLiteral(", "));
}

QString driftText(const analysis::Drift &drift, const NumberForm &form)
{
    const auto dimension = catalogue::infoOf(drift.quantity).dimension;
    const double mean = drift.change.meanChange;
    const QString amount = amountText(units::Amount::fromDisplay(dimension, std::abs(mean)), form);
    switch (drift.way) {
    case analysis::Way::NotToldApart:
        return tr("no change that the gauge can tell");
    case analysis::Way::Smaller:
        return tr("%1 smaller").arg(amount);
    case analysis::Way::Larger:
        return tr("%1 larger").arg(amount);
    case analysis::Way::Unknown:
        break;
    }
    return tr("%1 %2; how well the gauge tells is not known").arg(amount, mean < 0 ? tr("smaller") : tr("larger"));
}

} // namespace hammerline::wording
