#include "main_window/seal_words.h"

#include "wording/palette.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace hammerline::main_window {

namespace {

constexpr qsizetype longestName = 80;
constexpr qsizetype longestLine = 160;
constexpr std::size_t mostLines = 6;
constexpr std::size_t mostLinesInLargeType = 2; ///< so that a small screen holds them all

QString tr(const char *text)
{
    return QCoreApplication::translate("SealWords", text);
}

/// Text out of a file that nobody vouches for: control and direction characters could make it say something else.
QString plainLine(const std::string &text, qsizetype longest)
{
    QString line = QString::fromStdString(text);
    for (QChar &letter : line)
        if (letter.category() == QChar::Other_Control || letter.category() == QChar::Other_Format ||
            letter.category() == QChar::Separator_Line || letter.category() == QChar::Separator_Paragraph)
            letter = QChar(0xfffd);
    line = line.simplified();
    return line.size() > longest ? line.left(longest) + QChar(0x2026) : line;
}

QString aboutText(const exchange::RecordCheck &check)
{
    return tr("Of: %1, revision %2, issued %3.")
        .arg(plainName(check.instrumentName))
        .arg(check.revision)
        .arg(QString::fromStdString(readings::isoDate(check.issued)));
}

QString disagreementText(const exchange::RecordCheck &check)
{
    QStringList lines{tr("Where they differ:")};
    const std::size_t most = wording::textScale() > 1.5 ? mostLinesInLargeType : mostLines;
    for (std::size_t i = 0; i < std::min(most, check.disagreements.size()); ++i)
        lines << plainLine(check.disagreements[i], longestLine);
    if (check.disagreements.size() > most)
        lines << tr("and %1 more.").arg(check.disagreements.size() - most);
    return lines.join('\n');
}

QString standingText(seal::Standing standing)
{
    return standing == seal::Standing::Trusted
               ? tr("The key is on your list of trusted keys.")
               : tr("The key is not on your list: anybody can make one under any name. Compare the fingerprint with "
                    "one that the workshop gave you itself.");
}

QString headline(seal::Finding finding, seal::Standing standing)
{
    using seal::Finding;
    switch (finding) {
    case Finding::True:
        return standing == seal::Standing::Trusted ? tr("Sealed and unaltered.")
                                                   : tr("Sealed and unaltered, by a key that you do not know yet.");
    case Finding::DoesNotFollow:
        return tr("Unaltered since it was sealed, but its verdicts do not follow from its readings.");
    case Finding::Unreadable:
        return tr("Unaltered since it was sealed, but the data inside cannot be read.");
    case Finding::AnotherKey:
        return tr("Sealed by another key than the one expected.");
    case Finding::NameOfAnother:
        return tr("Sealed by another key under a name that you trust.");
    case Finding::Altered:
        return tr("This record was altered.");
    case Finding::NotOurs:
        break;
    }
    return tr("This is no record made by Hammerline.");
}

QStringList detailOf(const seal::RecordJudgement &judged)
{
    using seal::Finding;
    if (judged.finding == Finding::NotOurs)
        return {tr("Nothing in the file tells that it ever was one. It was not judged any further.")};
    if (judged.finding == Finding::Altered)
        return {tr("It no longer says what was sealed, or its seal is gone. Do not rely on anything in it; ask the "
                   "workshop for the record again.")};
    QStringList parts{keyWords(judged.signer, judged.fingerprint)};
    if (judged.finding == Finding::NameOfAnother)
        return parts << tr(
                   "The key of that name on your list has another fingerprint. Ask the workshop, by another way "
                   "than this file, whether this key is theirs too.");
    parts << standingText(judged.standing);
    if (judged.finding == Finding::Unreadable)
        return parts << plainLine(judged.reason, longestLine);
    if (judged.check)
        parts << aboutText(*judged.check);
    if (judged.finding == Finding::True)
        return parts << tr("Judged anew: all %1 verdicts follow from the readings inside.").arg(judged.check->verdicts);
    return judged.check ? parts << disagreementText(*judged.check) : parts;
}

} // namespace

QString plainName(const std::string &name)
{
    const QString line = plainLine(name, longestName);
    return line.isEmpty() ? tr("(without a name)") : line;
}

QString keyWords(const std::string &name, const std::string &fingerprint)
{
    const QString groups = QString::fromStdString(seal::groupedFingerprint(fingerprint));
    // Sixteen groups of four: two lines of eight are read aloud and compared without losing the place.
    const qsizetype half = groups.size() / 2;
    return tr("The key of %1 has the fingerprint").arg(plainName(name)) + '\n' + groups.left(half).trimmed() + '\n' +
           groups.mid(half).trimmed();
}

prompts::Question questionOf(const seal::RecordJudgement &judged, const QString &file, bool hasList)
{
    const bool good = judged.finding == seal::Finding::True;
    prompts::Question question{.title = tr("Check a record: %1").arg(file),
                               .text = headline(judged.finding, judged.standing),
                               .detail = detailOf(judged).join(QStringLiteral("\n\n")),
                               .weight = good ? prompts::Weight::Question : prompts::Weight::Warning};
    if (!judged.sealHolds() || judged.standing == seal::Standing::Trusted || !hasList)
        return question;
    question.choices = QStringList{tr("Trust this key…"), tr("Close")};
    question.preferred = 1;
    return question;
}

} // namespace hammerline::main_window
