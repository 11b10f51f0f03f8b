#include "bench/fault_words.h"

#include <QStringList>

#include <algorithm>

namespace hammerline::bench {

namespace {

constexpr auto setting = "bench/faults";

} // namespace

std::vector<FaultWord> usualFaults()
{
    return {{'b', "blocking"}, {'d', "double striking"}, {'o', "bobbling"}, {'s', "sluggish return"}, {'c', "click"},
            {'r', "rub"},      {'w', "weak repetition"}};
}

QString textOf(const std::vector<FaultWord> &faults)
{
    QStringList entries;
    for (const FaultWord &fault : faults)
        entries << QString(fault.key) + ' ' + fault.word;
    return entries.join("; ");
}

std::vector<FaultWord> parseFaultWords(const QString &text)
{
    std::vector<FaultWord> faults;
    for (const QString &entry : text.split(';')) {
        const QString trimmed = entry.trimmed();
        const QString word = trimmed.mid(1).trimmed();
        const QChar key = trimmed.isEmpty() ? QChar() : trimmed.at(0).toLower();
        const bool taken = std::ranges::any_of(faults, [key](const FaultWord &one) { return one.key == key; });
        if (key.isLetter() && trimmed.size() > 2 && trimmed.at(1).isSpace() && !word.isEmpty() && !taken)
            faults.push_back({key, word});
    }
    return faults;
}

std::vector<FaultWord> faultWordsFrom(const QSettings &settings)
{
    return settings.contains(setting) ? parseFaultWords(settings.value(setting).toString()) : usualFaults();
}

void storeFaultWords(QSettings &settings, const std::vector<FaultWord> &faults)
{
    settings.setValue(setting, textOf(faults));
}

} // namespace hammerline::bench
