#include "charts/inside/change_words.h"

#include "charts/inside/changes.h"
#include "wording/counted.h"
#include "wording/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace hammerline::charts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("charts", text);
}

QString meanText(const analysis::Comparison &comparison, const ChartData &data)
{
    const QString mean = changeFigure(comparison.meanChange, data);
    if (!comparison.ci95Low)
        return tr("by %1").arg(mean);
    return tr("by %1 on the mean, between %2 and %3")
        .arg(mean, changeFigure(*comparison.ci95Low, data), changeFigure(*comparison.ci95High, data));
}

QString notesText(qlonglong count)
{
    return wording::counted(count, tr("1 note"), tr("%1 notes"));
}

QString movedAnswer(const ChartData &data)
{
    if (!data.before)
        return tr("There are no other readings to hold against these");
    const auto notes = changedNotes(data);
    const auto comparison = comparisonOf(notes);
    if (!comparison)
        return tr("No note was read both times");
    QString answer;
    if (data.toldApart) {
        const double told = shownFigure(*data.toldApart, data);
        const auto moved = std::ranges::count_if(
            notes, [told](const ChangedNote &note) { return std::abs(note.change) > told + 1e-9; });
        answer = tr("%1 of %2 moved by more than the gauges may be off (%3)")
                     .arg(moved)
                     .arg(notesText(std::ssize(notes)), changeFigure(told, data).mid(1));
    } else {
        answer = tr("%1 read both times; how well the gauge tells is not known").arg(notesText(std::ssize(notes)));
    }
    answer += "; " + meanText(*comparison, data);
    if (const auto apart = std::ranges::count(notes, true, &ChangedNote::apart); apart > 0)
        answer += tr("; unlike the rest: %1").arg(apart);
    return answer;
}

/// "; read on 2026-02-03 and 2026-02-04"; where more than some days lie between, that the time is in it too.
QString whenRead(const ChartData &data)
{
    constexpr std::chrono::hours day(24);
    constexpr int fewDays = 7;
    if (!data.nowBegan || !data.beforeBegan)
        return {};
    const auto dayOf = [](readings::Instant at) { return QString::fromStdString(readings::isoDate(at)); };
    const auto days = (*data.nowBegan - *data.beforeBegan) / day;
    const QString when = QCoreApplication::translate("desktop_charts", "; read on %1 and %2")
                             .arg(dayOf(*data.beforeBegan), dayOf(*data.nowBegan));
    if (days <= fewDays)
        return when;
    return QCoreApplication::translate("desktop_charts", "%1: %2 days lie between, so what drifted since is in it")
        .arg(when)
        .arg(days);
}

QString agreementAnswer(const ChartData &data)
{
    if (!data.before)
        return tr("There are no readings of another person to hold against these");
    const auto comparison = comparisonOf(changedNotes(data));
    if (!comparison)
        return tr("No note was read both times");
    if (!comparison->agreementLow)
        return tr("One note is too few to tell");
    return tr("%1 less %2: %3 on the mean; 19 of 20 differences lie between %4 and %5 (%6 notes)")
               .arg(nowParty(data), beforeParty(data), changeFigure(comparison->meanChange, data),
                    changeFigure(*comparison->agreementLow, data), changeFigure(*comparison->agreementHigh, data))
               .arg(comparison->pairs) +
           whenRead(data);
}

QString driftAnswer(const ChartData &data)
{
    if (data.trends.empty())
        return tr("Two passes since it was left, with the same notes, are needed");
    const analysis::Trend &whole = data.trends.front();
    const QString change = changeText(whole.lastChange(), data);
    if (!whole.perYear || !whole.perYear->slopeLow)
        return tr("Two passes tell a change, %1, but no drift; a third one would").arg(change);
    const QString between = tr("%1 a year, between %2 and %3")
                                .arg(changeText(whole.perYear->slope, data), changeText(*whole.perYear->slopeLow, data),
                                     changeText(*whole.perYear->slopeHigh, data));
    const bool claimed = whole.claim == analysis::Claim::Smaller || whole.claim == analysis::Claim::Larger;
    QString answer = (claimed ? tr("Yes: %1") : tr("No drift can be claimed: %1")).arg(between);
    if (claimed && whole.toldApart && std::abs(whole.lastChange()) <= *whole.toldApart)
        answer += tr("; all of it (%1) is within what the gauges may be off").arg(change);
    return answer;
}

} // namespace

QString changeText(double change, const ChartData &data)
{
    return changeFigure(shownFigure(change, data), data);
}

QString titleOfChange(const ChartData &data)
{
    const QString name = inSentence(data.quantity, data.form.locale);
    switch (data.question) {
    case Question::WhereAlongTheKeyboard:
    case Question::HowSpread:
        break;
    case Question::WhichNotesMoved:
        return tr("Which notes moved in %1?").arg(name);
    case Question::HasItDrifted:
        return tr("Has %1 drifted?").arg(name);
    case Question::DoTheyAgree:
        return twoPeople(data) ? tr("Do %1 and %2 agree on %3?").arg(data.beforePerson, data.nowPerson, name)
                               : tr("Do the two passes agree on %1?").arg(name);
    }
    return {};
}

QString answerOfChange(const ChartData &data)
{
    switch (data.question) {
    case Question::WhereAlongTheKeyboard:
    case Question::HowSpread:
        break;
    case Question::WhichNotesMoved:
        return movedAnswer(data);
    case Question::HasItDrifted:
        return driftAnswer(data);
    case Question::DoTheyAgree:
        return agreementAnswer(data);
    }
    return {};
}

} // namespace hammerline::charts
