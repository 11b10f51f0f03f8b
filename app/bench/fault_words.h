#pragma once
// Faults that are felt and not measured, each with the letter that marks it at the bench. The list is the user's: kept
// in the settings as one text, `b blocking; d double striking; …`. Letters cannot begin a number, so the number field
// and the fault keys never get in each other's way; with Shift the same letter clears the mark.

#include <QChar>
#include <QSettings>
#include <QString>

#include <vector>

namespace hammerline::bench {

struct FaultWord {
    QChar key{};
    QString word{};
    bool operator==(const FaultWord &) const = default;
};

/// Words of the trade; common practice, no source.
[[nodiscard]] std::vector<FaultWord> usualFaults();
[[nodiscard]] QString textOf(const std::vector<FaultWord> &faults);
/// Entries without a letter or a word, and second uses of a letter, are left out.
[[nodiscard]] std::vector<FaultWord> parseFaultWords(const QString &text);
/// The usual ones where nothing was ever stored; an emptied list stays empty.
[[nodiscard]] std::vector<FaultWord> faultWordsFrom(const QSettings &settings);
void storeFaultWords(QSettings &settings, const std::vector<FaultWord> &faults);

} // namespace hammerline::bench
