// Names of things, in tables: one row a thing, in the order of its enum.
#include "wording/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace hammerline::wording {

namespace {

QString translated(const char *text)
{
    return QCoreApplication::translate("wording", text);
}

template <typename Table, typename Enum>
const auto &rowOf(const Table &table, Enum value)
{
    return table.at(static_cast<std::size_t>(value));
}

struct QuantityWords {
    const char *name;
    const char *shortName;
    const char *definition;
};

constexpr std::array<QuantityWords, catalogue::quantityCount> quantityWords{{
    {QT_TRANSLATE_NOOP("wording", "Key height"), QT_TRANSLATE_NOOP("wording", "height"),
     QT_TRANSLATE_NOOP("wording", "Top of the key at rest, above the key bed or the workshop's own reference line.")},
    {QT_TRANSLATE_NOOP("wording", "Blow"), QT_TRANSLATE_NOOP("wording", "blow"),
     QT_TRANSLATE_NOOP("wording", "From the crown of the hammer at rest to the string.")},
    {QT_TRANSLATE_NOOP("wording", "Lost motion"), QT_TRANSLATE_NOOP("wording", "lost mot."),
     QT_TRANSLATE_NOOP("wording", "Travel of the key at its front before the hammer moves.")},
    {QT_TRANSLATE_NOOP("wording", "Let-off"), QT_TRANSLATE_NOOP("wording", "let-off"),
     QT_TRANSLATE_NOOP(
         "wording",
         "From the crown of the hammer to the string at the point where it escapes, key moved very slowly.")},
    {QT_TRANSLATE_NOOP("wording", "Drop"), QT_TRANSLATE_NOOP("wording", "drop"),
     QT_TRANSLATE_NOOP("wording",
                       "How far the hammer falls below the let-off point, key held down after a slow stroke.")},
    {QT_TRANSLATE_NOOP("wording", "Dip"), QT_TRANSLATE_NOOP("wording", "dip"),
     QT_TRANSLATE_NOOP("wording", "Travel of the key at its front edge from rest to the bottom.")},
    {QT_TRANSLATE_NOOP("wording", "Aftertouch"), QT_TRANSLATE_NOOP("wording", "aftertch."),
     QT_TRANSLATE_NOOP("wording", "Travel of the key at its front from let-off to the bottom.")},
    {QT_TRANSLATE_NOOP("wording", "Checking"), QT_TRANSLATE_NOOP("wording", "checking"),
     QT_TRANSLATE_NOOP("wording", "From the crown of the caught hammer to the string.")},
    {QT_TRANSLATE_NOOP("wording", "Damper start"), QT_TRANSLATE_NOOP("wording", "dampers"),
     QT_TRANSLATE_NOOP("wording", "Travel of the hammer from rest at which the damper starts to move.")},
    {QT_TRANSLATE_NOOP("wording", "Down weight"), QT_TRANSLATE_NOOP("wording", "down wt"),
     QT_TRANSLATE_NOOP("wording", "Mass at the front of the key that just lowers it slowly, dampers off.")},
    {QT_TRANSLATE_NOOP("wording", "Up weight"), QT_TRANSLATE_NOOP("wording", "up wt"),
     QT_TRANSLATE_NOOP("wording", "Mass at the front of the key that the key just raises, dampers off.")},
}};

constexpr std::array actionNames{QT_TRANSLATE_NOOP("wording", "Vertical"), QT_TRANSLATE_NOOP("wording", "Grand")};
constexpr std::array purposeNames{QT_TRANSLATE_NOOP("wording", "As found"), QT_TRANSLATE_NOOP("wording", "Setting"),
                                  QT_TRANSLATE_NOOP("wording", "As left"), QT_TRANSLATE_NOOP("wording", "Recheck")};
constexpr std::array stateNames{QT_TRANSLATE_NOOP("wording", "Taken in"), QT_TRANSLATE_NOOP("wording", "In work"),
                                QT_TRANSLATE_NOOP("wording", "In review"), QT_TRANSLATE_NOOP("wording", "Signed off"),
                                QT_TRANSLATE_NOOP("wording", "Delivered")};
constexpr std::array statusNames{QT_TRANSLATE_NOOP("wording", "Within limits"),
                                 QT_TRANSLATE_NOOP("wording", "Close to a limit"), QT_TRANSLATE_NOOP("wording", "Out"),
                                 QT_TRANSLATE_NOOP("wording", "Not read"), QT_TRANSLATE_NOOP("wording", "Not judged")};
constexpr std::array ruleNames{QT_TRANSLATE_NOOP("wording", "Limits as they stand"),
                               QT_TRANSLATE_NOOP("wording", "Limits drawn in by the gauge's uncertainty")};
constexpr std::array dipDatumNames{QT_TRANSLATE_NOOP("wording", "At the front edge"),
                                   QT_TRANSLATE_NOOP("wording", "13 mm behind the front edge"),
                                   QT_TRANSLATE_NOOP("wording", "Over the front pin")};
constexpr std::array dropDatumNames{QT_TRANSLATE_NOOP("wording", "Below the let-off point"),
                                    QT_TRANSLATE_NOOP("wording", "From the string")};

} // namespace

QString nameOf(catalogue::Quantity quantity)
{
    return translated(rowOf(quantityWords, quantity).name);
}

QString shortNameOf(catalogue::Quantity quantity)
{
    return translated(rowOf(quantityWords, quantity).shortName);
}

QString definitionOf(catalogue::Quantity quantity)
{
    return translated(rowOf(quantityWords, quantity).definition);
}

QString nameOf(catalogue::ActionKind action)
{
    return translated(rowOf(actionNames, action));
}

QString nameOf(readings::Purpose purpose)
{
    return translated(rowOf(purposeNames, purpose));
}

QString nameOf(instrument::State state)
{
    return translated(rowOf(stateNames, state));
}

QString nameOf(tolerance::Status status)
{
    return translated(rowOf(statusNames, status));
}

QString nameOf(tolerance::Rule rule)
{
    return translated(rowOf(ruleNames, rule));
}

QString nameOf(readings::DipDatum datum)
{
    return translated(rowOf(dipDatumNames, datum));
}

QString nameOf(readings::DropDatum datum)
{
    return translated(rowOf(dropDatumNames, datum));
}

QString nameOf(keyboard::Note note)
{
    return QString::fromStdString(note.name()).replace(u'#', QChar(0x266F));
}

QString faultText(const outcome::Fault &fault)
{
    const QString problem = QString::fromStdString(fault.problem);
    if (fault.file.empty())
        return problem;
    const QString file = QString::fromStdString(fault.file);
    if (fault.line == 0)
        return QCoreApplication::translate("wording", "%1: %2").arg(file, problem);
    return QCoreApplication::translate("wording", "%1, line %2: %3").arg(file, QString::number(fault.line), problem);
}

QString faultsText(const std::vector<outcome::Fault> &faults, int most)
{
    QStringList lines;
    const auto shown = std::min(faults.size(), static_cast<std::size_t>(std::max(most, 1)));
    for (std::size_t i = 0; i < shown; ++i)
        lines << faultText(faults[i]);
    if (shown < faults.size())
        lines << QCoreApplication::translate("wording", "and %n more", nullptr,
                                             static_cast<int>(faults.size() - shown));
    return lines.join(u'\n');
}

} // namespace hammerline::wording
