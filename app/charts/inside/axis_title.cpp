#include "charts/inside/axis_title.h"

#include <QFontMetricsF>
#include <QTextBoundaryFinder>

#include <algorithm>

namespace hammerline::charts {

namespace {

QString filled(const QString &text, const QStringList &names)
{
    if (names.size() == 2) // both at once: a name may itself hold a percent sign
        return text.arg(names[0], names[1]);
    return names.size() == 1 ? text.arg(names[0]) : text;
}

/// The brackets at the end are one word, whatever they hold.
QStringList wordsOf(const QString &text)
{
    const qsizetype unit = text.endsWith(')') ? text.lastIndexOf(QStringLiteral(" (")) : -1;
    QStringList words = text.left(unit).split(' ', Qt::SkipEmptyParts);
    if (unit >= 0)
        words << text.mid(unit + 1);
    return words;
}

bool stands(const QStringList &lines, const QFontMetricsF &metrics, double length)
{
    constexpr qsizetype most = 3;
    return lines.size() <= most &&
           std::ranges::all_of(lines, [&](const QString &line) { return metrics.horizontalAdvance(line) <= length; });
}

} // namespace

QString AxisTitle::whole() const
{
    return filled(text, names);
}

QStringList wordLines(const QStringList &words, const QFontMetricsF &metrics, double width)
{
    QStringList lines;
    for (const QString &word : words)
        if (lines.isEmpty() || metrics.horizontalAdvance(lines.back() + ' ' + word) > width)
            lines << word;
        else
            lines.back() += ' ' + word;
    return lines;
}

QStringList axisLines(const AxisTitle &title, const QFontMetricsF &metrics, double length)
{
    constexpr double narrower = 0.8;
    const auto linesAt = [&](double room) {
        QStringList names;
        for (const QString &name : title.names)
            names << metrics.elidedText(shortName(name), Qt::ElideRight, room);
        return wordLines(wordsOf(filled(title.text, names)), metrics, length);
    };
    double room = 2 * length;
    QStringList lines = linesAt(room);
    for (; !stands(lines, metrics, length) && !title.names.isEmpty() && room > 2 * metrics.height(); room *= narrower)
        lines = linesAt(room * narrower);
    return lines;
}

QString shortName(const QString &name, int most)
{
    constexpr int longestLetter = 16; // in units of the text; of a name with longer ones less is shown
    const QString begin = name.left(qsizetype{most} * longestLetter);
    QTextBoundaryFinder letters(QTextBoundaryFinder::Grapheme, begin);
    qsizetype kept = 0;
    int letter = 0;
    for (; letter < most && letters.toNextBoundary() >= 0; ++letter)
        if (letter < most - 1)
            kept = letters.position();
    const bool isWhole = begin.size() == name.size() && (letters.position() < 0 || letters.position() == name.size());
    return isWhole ? name : begin.left(kept).trimmed() + QChar(0x2026);
}

} // namespace hammerline::charts
