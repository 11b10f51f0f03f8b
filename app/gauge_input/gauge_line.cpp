#include "gauge_input/gauge_line.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace hammerline::gauge_input {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("gauge_input", text);
}

outcome::Fault fault(const QString &problem)
{
    return outcome::Fault{.problem = problem.toStdString()};
}

/// "+00003.175" -> "3.175", "-0.2" stays: gauges pad to a fixed width, people do not.
QString withoutPadding(QString number)
{
    if (number.startsWith(u'+'))
        number.remove(0, 1);
    const bool negative = number.startsWith(u'-');
    int first = negative ? 1 : 0;
    while (first + 1 < number.size() && number[first] == u'0' && number[first + 1].isDigit())
        number.remove(first, 1);
    return number;
}

} // namespace

QString LinePattern::defaultExpression()
{
    return QStringLiteral(
        R"((?:(?<![\w.,+-])|(?<![\d.,])(?<!\de)(?=[+-]))(?<value>[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+))[ \t]*(?<unit>mm|in|mil|g|")?(?![\w.,]))");
}

namespace {

QString faultOf(const QRegularExpression &expression)
{
    if (!expression.isValid())
        return tr("The pattern can't be read: %1 (at character %2)")
            .arg(expression.errorString())
            .arg(expression.patternErrorOffset() + 1);
    if (!expression.namedCaptureGroups().contains(QStringLiteral("value")))
        return tr("The pattern needs a group that catches the number: (?<value>…)");
    return {};
}

QRegularExpression expressionOf(const LinePattern &pattern)
{
    return QRegularExpression(pattern.expression, QRegularExpression::CaseInsensitiveOption);
}

} // namespace

QString faultOf(const LinePattern &pattern)
{
    return faultOf(expressionOf(pattern));
}

outcome::Outcome<GaugeReading> readGaugeLine(const QByteArray &line, const LinePattern &pattern,
                                             const units::TypedForm &form)
{
    const QRegularExpression expression = expressionOf(pattern);
    if (const QString problem = faultOf(expression); !problem.isEmpty())
        return fault(problem);
    const QRegularExpressionMatch match = expression.match(QString::fromLatin1(line));
    if (!match.hasMatch())
        return fault(tr("no number in the gauge's line “%1”").arg(visibleText(line)));

    const QString unit = match.captured(QStringLiteral("unit")).trimmed();
    // With its unit, always: a caliper's bare 3.175 is no mass because a mass is asked for.
    const QString typed = withoutPadding(match.captured(QStringLiteral("value"))) +
                          (unit.isEmpty() ? QString(units::symbolOf(pattern.bareUnit)) : unit);
    auto parsed = units::parseAmount(typed.toStdString(), form);
    if (!parsed)
        return parsed.faults();
    return GaugeReading{.raw = visibleText(line), .typed = typed, .parsed = parsed.value()};
}

QString visibleText(const QByteArray &line)
{
    QString text;
    text.reserve(line.size());
    for (const char byte : line)
        text += byte >= 0x20 && byte < 0x7f ? QLatin1Char(byte) : QChar(0x00B7);
    return text;
}

} // namespace hammerline::gauge_input
