#include "wording/deed_text.h"

#include "wording/wording.h"

#include <QCoreApplication>
#include <QHash>
#include <QStringList>

namespace hammerline::wording {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("wording", text);
}

/// Ids of quantities and notes of a subject as people say them: "let_off C#4" -> "let-off, C♯4".
QString subjectText(const std::string &subject)
{
    QStringList words;
    for (const QString &word : QString::fromStdString(subject).split(' ', Qt::SkipEmptyParts)) {
        const std::string plain = word.toStdString();
        if (const auto quantity = catalogue::findQuantity(plain))
            words << nameOf(*quantity).toLower() + ',';
        else if (const auto note = keyboard::parseNote(plain); note && !word.at(0).isDigit())
            words << nameOf(note.value());
        else
            words << word;
    }
    return words.join(' ');
}

const QHash<QString, const char *> &sentences()
{
    static const QHash<QString, const char *> all{
        {"logbook-created", QT_TRANSLATE_NOOP("wording", "making the logbook")},
        {"instrument-added", QT_TRANSLATE_NOOP("wording", "taking in %1")},
        {"instrument-changed", QT_TRANSLATE_NOOP("wording", "changing %1")},
        {"pass-begun", QT_TRANSLATE_NOOP("wording", "beginning the pass")},
        {"pass-changed", QT_TRANSLATE_NOOP("wording", "changing the pass")},
        {"pass-imported", QT_TRANSLATE_NOOP("wording", "importing the pass")},
        {"reading-entered", QT_TRANSLATE_NOOP("wording", "reading of %1")},
        {"reading-corrected", QT_TRANSLATE_NOOP("wording", "correction of %1")},
        {"reading-withdrawn", QT_TRANSLATE_NOOP("wording", "withdrawal of %1")},
        {"fault-marked", QT_TRANSLATE_NOOP("wording", "fault on %1")},
        {"fault-cleared", QT_TRANSLATE_NOOP("wording", "clearing the fault on %1")},
        {"plan-kept", QT_TRANSLATE_NOOP("wording", "keeping the plan")},
        {"setup-chosen", QT_TRANSLATE_NOOP("wording", "the action's setup")},
        {"work-logged", QT_TRANSLATE_NOOP("wording", "work on %1")},
        {"work-taken-back", QT_TRANSLATE_NOOP("wording", "taking back work on %1")},
        {"work-written", QT_TRANSLATE_NOOP("wording", "work written down: %1")},
        {"work-changed", QT_TRANSLATE_NOOP("wording", "change of the work %1")},
        {"work-struck", QT_TRANSLATE_NOOP("wording", "striking out the work %1")},
        {"condition-said", QT_TRANSLATE_NOOP("wording", "condition of the %1")},
        {"photograph-added", QT_TRANSLATE_NOOP("wording", "photograph %1")},
        {"photograph-changed", QT_TRANSLATE_NOOP("wording", "words of the photograph %1")},
        {"photograph-removed", QT_TRANSLATE_NOOP("wording", "removing the photograph %1")},
        {"sale-noted", QT_TRANSLATE_NOOP("wording", "note of the sale")},
        {"instrument-taken-over", QT_TRANSLATE_NOOP("wording", "taking over an instrument")},
        {"route-chosen", QT_TRANSLATE_NOOP("wording", "the way through the pass")},
        {"slip-confirmed", QT_TRANSLATE_NOOP("wording", "an unlikely value confirmed")},
        {"items-accepted", QT_TRANSLATE_NOOP("wording", "accepting %1")},
        {"items-sent-back", QT_TRANSLATE_NOOP("wording", "sending back %1")},
        {"decision-taken-back", QT_TRANSLATE_NOOP("wording", "the decision about %1")},
        {"pass-signed", QT_TRANSLATE_NOOP("wording", "signing the pass")},
        {"pass-reopened", QT_TRANSLATE_NOOP("wording", "opening the pass again")},
        {"spot-check-begun", QT_TRANSLATE_NOOP("wording", "beginning a spot check")},
        {"gauge-study-planned", QT_TRANSLATE_NOOP("wording", "planning the gauge study of %1")},
        {"gauge-trial-entered", QT_TRANSLATE_NOOP("wording", "trial of the gauge study: %1")},
        {"gauge-study-struck", QT_TRANSLATE_NOOP("wording", "striking out the gauge study of %1")},
        {"tolerance-remembered", QT_TRANSLATE_NOOP("wording", "what the pass is judged by")},
    };
    return all;
}

} // namespace

QString deedText(const logbook::Deed &deed)
{
    const char *sentence = sentences().value(QString::fromStdString(deed.name), nullptr);
    if (sentence == nullptr)
        return QString::fromStdString(deed.subject.empty() ? deed.name : deed.name + " " + deed.subject);
    const QString text = tr(sentence);
    return text.contains("%1") ? text.arg(subjectText(deed.subject)) : text;
}

} // namespace hammerline::wording
