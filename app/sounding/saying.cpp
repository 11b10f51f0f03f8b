#include "sounding/saying.h"

#include <QCoreApplication>

#include <array>

namespace hammerline::sounding {

namespace {

QString said(const char *text)
{
    return QCoreApplication::translate("saying", text);
}

/// By MIDI number modulo 12. %1 is the octave.
constexpr std::array noteWords{QT_TRANSLATE_NOOP("saying", "C %1"),       QT_TRANSLATE_NOOP("saying", "C sharp %1"),
                               QT_TRANSLATE_NOOP("saying", "D %1"),       QT_TRANSLATE_NOOP("saying", "D sharp %1"),
                               QT_TRANSLATE_NOOP("saying", "E %1"),       QT_TRANSLATE_NOOP("saying", "F %1"),
                               QT_TRANSLATE_NOOP("saying", "F sharp %1"), QT_TRANSLATE_NOOP("saying", "G %1"),
                               QT_TRANSLATE_NOOP("saying", "G sharp %1"), QT_TRANSLATE_NOOP("saying", "A %1"),
                               QT_TRANSLATE_NOOP("saying", "A sharp %1"), QT_TRANSLATE_NOOP("saying", "B %1")};

constexpr std::array digitWords{QT_TRANSLATE_NOOP("saying", "zero"),  QT_TRANSLATE_NOOP("saying", "one"),
                                QT_TRANSLATE_NOOP("saying", "two"),   QT_TRANSLATE_NOOP("saying", "three"),
                                QT_TRANSLATE_NOOP("saying", "four"),  QT_TRANSLATE_NOOP("saying", "five"),
                                QT_TRANSLATE_NOOP("saying", "six"),   QT_TRANSLATE_NOOP("saying", "seven"),
                                QT_TRANSLATE_NOOP("saying", "eight"), QT_TRANSLATE_NOOP("saying", "nine")};

QString digitSaying(QChar digit)
{
    return said(digitWords.at(static_cast<std::size_t>(digit.digitValue())));
}

QString decimalsSaying(QString decimals)
{
    while (decimals.endsWith(u'0'))
        decimals.chop(1);
    QStringList words;
    for (const QChar digit : decimals)
        words << digitSaying(digit);
    return words.join(u' ');
}

/// Numbers above nine are left to the voice, which knows how its language counts.
QString wholeSaying(const QString &whole)
{
    return whole.size() == 1 ? digitSaying(whole.front()) : whole;
}

QString numberSaying(const QString &plain)
{
    const QString whole = wholeSaying(plain.section(u'.', 0, 0));
    const QString decimals = decimalsSaying(plain.section(u'.', 1));
    return decimals.isEmpty() ? whole : said("%1 point %2").arg(whole, decimals);
}

QString outSaying(const tolerance::Verdict &verdict, bool low)
{
    constexpr double aLittle = 2;
    const auto halfWidths = verdict.halfWidths();
    if (halfWidths && *halfWidths <= aLittle)
        return low ? said("a little low") : said("a little high");
    return low ? said("too low") : said("too high");
}

QString marginalSaying(std::int64_t side)
{
    if (side == 0)
        return said("in, within the gauge's doubt");
    return side < 0 ? said("close to the lower limit") : said("close to the upper limit");
}

} // namespace

QString noteSaying(keyboard::Note note)
{
    constexpr int octaveOfMidiZero = -1;
    const int midi = note.midi();
    const int octave = midi / 12 + octaveOfMidiZero;
    const QString number = octave < 0 ? said("minus %1").arg(-octave) : QString::number(octave);
    return said(noteWords.at(static_cast<std::size_t>(midi % 12))).arg(number);
}

QString valueSaying(units::Amount value, const wording::NumberForm &form)
{
    const auto dimension = value.dimension();
    const QString plain =
        QString::fromStdString(units::fixedDecimal(value, form.unitFor(dimension), form.decimalsFor(dimension)));
    if (!plain.startsWith(u'-'))
        return numberSaying(plain);
    const QString number = numberSaying(plain.mid(1));
    return number == digitSaying(u'0') ? number : said("minus %1").arg(number);
}

QString verdictSaying(const tolerance::Verdict &verdict)
{
    const std::int64_t side = verdict.deviation ? verdict.deviation->baseCount() : 0;
    switch (verdict.status) {
    case tolerance::Status::In:
        return said("in");
    case tolerance::Status::Marginal:
        return marginalSaying(side);
    case tolerance::Status::Out:
        return outSaying(verdict, side < 0);
    case tolerance::Status::Missing:
        return said("not read");
    case tolerance::Status::Unjudged:
        break;
    }
    return {};
}

QString readingSaying(const tolerance::Verdict &verdict, const wording::NumberForm &form)
{
    QStringList parts{noteSaying(verdict.note)};
    if (verdict.value)
        parts << valueSaying(*verdict.value, form);
    parts << verdictSaying(verdict);
    parts.removeAll(QString());
    return parts.join(said(", "));
}

QString askedSaying(keyboard::Note note, std::optional<catalogue::Quantity> quantity)
{
    const QString name = noteSaying(note);
    return quantity ? said("%1, %2").arg(name, wording::nameOf(*quantity)) : name;
}

} // namespace hammerline::sounding
