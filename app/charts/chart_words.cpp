// Title and answer of the charts of one pass; those of several are in inside/change_words.cpp.
#include "charts/charts.h"

#include "charts/inside/change_words.h"
#include "wording/wording.h"

#include <QCoreApplication>

namespace hammerline::charts {

namespace {

struct Tally {
    int judged = 0, tooSmall = 0, tooLarge = 0, doubtful = 0, missing = 0, read = 0;
};

Tally tallyOf(const ChartData &data)
{
    Tally tally;
    for (const tolerance::Verdict &verdict : data.now.of(data.quantity)) {
        tally.read += verdict.value ? 1 : 0;
        tally.judged += verdict.value && verdict.limits ? 1 : 0;
        tally.missing += verdict.status == tolerance::Status::Missing ? 1 : 0;
        tally.doubtful += verdict.status == tolerance::Status::Marginal ? 1 : 0;
        if (verdict.status == tolerance::Status::Out && verdict.deviation)
            ++(verdict.deviation->baseCount() < 0 ? tally.tooSmall : tally.tooLarge);
    }
    return tally;
}

/// Each number of notes in a sentence of its own: languages differ in how they say one.
QString outAnswer(const Tally &tally)
{
    const int out = tally.tooSmall + tally.tooLarge;
    if (out == 0 && tally.judged == 1)
        return QCoreApplication::translate("charts", "The one note read is not out");
    if (out == 0)
        return QCoreApplication::translate("charts", "None of %1 notes read is out").arg(tally.judged);
    if (tally.judged == 1)
        return tally.tooLarge == 1 ? QCoreApplication::translate("charts", "The one note read is out: too large")
                                   : QCoreApplication::translate("charts", "The one note read is out: too small");
    if (out == 1)
        return (tally.tooLarge == 1 ? QCoreApplication::translate("charts", "1 of %1 notes read is out: too large")
                                    : QCoreApplication::translate("charts", "1 of %1 notes read is out: too small"))
            .arg(tally.judged);
    return QCoreApplication::translate("charts", "%1 of %2 notes read are out: %3 too large, %4 too small")
        .arg(out)
        .arg(tally.judged)
        .arg(tally.tooLarge)
        .arg(tally.tooSmall);
}

QString judgedAnswer(const Tally &tally)
{
    QString answer = outAnswer(tally);
    if (tally.doubtful > 0)
        answer += QCoreApplication::translate("charts", "; %1 close to a limit").arg(tally.doubtful);
    return answer;
}

} // namespace

QString inSentence(catalogue::Quantity quantity, const QLocale &locale)
{
    const QString name = wording::nameOf(quantity);
    return locale.language() == QLocale::German ? name : name.left(1).toLower() + name.mid(1);
}

QString titleOf(const ChartData &data)
{
    if (const QString title = titleOfChange(data); !title.isEmpty())
        return title;
    const bool judged = tallyOf(data).judged > 0;
    const QString name = inSentence(data.quantity, data.form.locale);
    if (data.question == Question::HowSpread)
        return (judged ? QCoreApplication::translate("charts", "How far from its target is %1?")
                       : QCoreApplication::translate("charts", "How widely is %1 spread?"))
            .arg(name);
    return (judged ? QCoreApplication::translate("charts", "Where along the keyboard is %1 outside its limits?")
                   : QCoreApplication::translate("charts", "How does %1 run along the keyboard?"))
        .arg(name);
}

QString answerOf(const ChartData &data)
{
    if (const QString answer = answerOfChange(data); !answer.isEmpty())
        return answer;
    const Tally tally = tallyOf(data);
    if (tally.read == 0)
        return QCoreApplication::translate("charts", "Nothing read yet");
    QString answer = tally.judged > 0
                         ? judgedAnswer(tally)
                         : QCoreApplication::translate("charts", "Notes read: %1, none judged").arg(tally.read);
    if (tally.missing > 0)
        answer += QCoreApplication::translate("charts", "; %1 not read").arg(tally.missing);
    return answer;
}

} // namespace hammerline::charts
