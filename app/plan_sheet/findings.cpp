#include "plan_sheet/findings.h"

#include "wording/counted.h"
#include "wording/wording.h"

#include <QCoreApplication>

#include <cmath>

namespace hammerline::plan_sheet {

namespace {

using action::Impossibility;
using action::Remedy;

constexpr int leastOutside = 4; // fewer are single notes, whatever they look like

QString tr(const char *text)
{
    return QCoreApplication::translate("plan_sheet", text);
}

QString impossibleText(Impossibility what)
{
    switch (what) {
    case Impossibility::LetOffBeyondBlow:
        return tr("the hammer is let off no nearer to the string than it rests");
    case Impossibility::DropBelowRest:
        return tr("let-off and drop together are more than the blow");
    case Impossibility::CheckBeyondBlow:
        return tr("the hammer is caught further from the string than it rests");
    case Impossibility::CheckBeforeLetOff:
        return tr("the hammer is caught nearer to the string than it is let off");
    case Impossibility::DamperAfterString:
        return tr("the damper starts later than the hammer can travel");
    case Impossibility::AftertouchBeyondDip:
        return tr("aftertouch and lost motion leave no travel of the key");
    case Impossibility::RatioOutOfReach:
        return tr("blow, let-off, dip and aftertouch ask for a ratio that no action has");
    case Impossibility::UpWeightAboveDownWeight:
        break;
    }
    return tr("the up weight is more than the down weight");
}

QString remedyText(Remedy remedy)
{
    switch (remedy) {
    case Remedy::SingleNotes:
        return tr("It looks like single notes.");
    case Remedy::Shift:
        return tr("It looks like one rail, moved as a whole.");
    case Remedy::Line:
        return tr("It looks like a tilt of the rail.");
    case Remedy::ShiftBySection:
        return tr("It looks like a step at the breaks.");
    case Remedy::LineBySection:
        break;
    }
    return tr("It looks like a tilt in each section.");
}

QString remedyName(Remedy remedy)
{
    switch (remedy) {
    case Remedy::Shift:
        return tr("one change for all");
    case Remedy::Line:
        return tr("a straight line");
    case Remedy::ShiftBySection:
        return tr("one change a section");
    case Remedy::LineBySection:
        return tr("a line a section");
    case Remedy::SingleNotes:
        break;
    }
    return {};
}

QString patternLine(catalogue::Quantity quantity, const action::Pattern &pattern)
{
    QStringList remedies;
    for (const action::RemedyOutcome &outcome : pattern.remedies)
        if (outcome.remedy != Remedy::SingleNotes)
            remedies << tr("%1 would make it %2").arg(remedyName(outcome.remedy)).arg(outcome.inside);
    return tr("%1: %2 of %3 inside; %4. %5")
        .arg(wording::nameOf(quantity))
        .arg(pattern.inside)
        .arg(pattern.read)
        .arg(remedies.join(QStringLiteral(", ")), remedyText(pattern.likely));
}

QString percent(double gain)
{
    return QString::number(std::lround(gain * 100));
}

QString learnedLine(const action::Learned &learned, const wording::NumberForm &form)
{
    const QString what =
        learned.rail.empty() ? wording::nameOf(learned.adjust) : QString::fromStdString(learned.rail).replace('_', ' ');
    const QString where = learned.section.empty() ? tr("whole action") : QString::fromStdString(learned.section);
    QString line = tr("%1, %2: does %3 % of what is asked").arg(what, where, percent(learned.gain));
    const QString trials = wording::counted(learned.trials, tr("1 trial"), tr("%1 trials"));
    if (learned.low && learned.high)
        line += tr(" (%1 to %2 %, %3)").arg(percent(*learned.low), percent(*learned.high), trials);
    else
        line += tr(" (%1, too few to say how surely)").arg(trials);
    if (learned.displayPerTurn)
        line += tr("; %1 a turn").arg(wording::numberText(*learned.displayPerTurn, 2, form));
    return line;
}

} // namespace

Findings findingsOf(const readings::ValueTable &values, const tolerance::ToleranceSet &set,
                    const keyboard::Compass &compass, const keyboard::Sections &sections,
                    units::Length gaugeUncertainty)
{
    action::GaugeUncertainty uncertainty;
    if (gaugeUncertainty != units::Length())
        for (const catalogue::QuantityInfo &info : catalogue::all())
            if (info.dimension == units::Dimension::Length)
                uncertainty.emplace(info.quantity, gaugeUncertainty);
    Findings findings;
    findings.contradictions = action::contradictionsIn(values, compass, set.action, uncertainty);
    findings.ratiosApart = action::ratiosApart(values, compass, sections, uncertainty);
    for (const auto &[quantity, entry] : set.entries)
        if (const auto pattern = action::patternOf(values, quantity, set, compass, sections))
            findings.patterns.emplace(quantity, *pattern);
    return findings;
}

QStringList doubtLines(const Findings &findings, const wording::NumberForm &form)
{
    QStringList lines;
    for (const action::Contradiction &one : findings.contradictions)
        lines << wording::nameOf(one.note) + QStringLiteral(": ") + impossibleText(one.what);
    for (const action::RatioApart &one : findings.ratiosApart)
        lines << tr("%1: ratio %2 among %3; a reading to repeat, or a part to look at")
                     .arg(wording::nameOf(one.note), wording::numberText(one.ratio, 2, form),
                          wording::numberText(one.neighbours, 2, form));
    return lines;
}

QStringList patternLines(const Findings &findings, const wording::NumberForm &)
{
    QStringList lines;
    for (const auto &[quantity, pattern] : findings.patterns)
        if (pattern.read - pattern.inside >= leastOutside)
            lines << patternLine(quantity, pattern);
    return lines;
}

QStringList learnedLines(const Findings &findings, const wording::NumberForm &form)
{
    QStringList lines;
    for (const action::Learned &learned : findings.learned)
        lines << learnedLine(learned, form);
    return lines;
}

} // namespace hammerline::plan_sheet
