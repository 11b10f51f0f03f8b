// Verdicts as sentences.
#include "wording/probability.h"
#include "wording/wording.h"

#include <QCoreApplication>

namespace hammerline::wording {

namespace {

constexpr double littleUpTo = 2; ///< half-widths off target; beyond that it is no little turn
constexpr int finestExtraDigits = 6;

QString translated(const char *text)
{
    return QCoreApplication::translate("wording", text);
}

/// A deviation too small for the gauge's digits gets more of them rather than "0.0 mm too far".
QString sizeText(units::Amount deviation, NumberForm form)
{
    const units::Amount size = deviation.magnitude();
    const units::Unit unit = form.unitFor(size.dimension());
    int &decimals = size.dimension() == units::Dimension::Length ? form.lengthDecimals : form.massDecimals;
    for (int extra = 0; extra < finestExtraDigits; ++extra, ++decimals)
        if (units::fixedDecimal(size, unit, decimals).find_first_of("123456789") != std::string::npos)
            break;
    return amountText(size, form);
}

/// True where nothing of the deviation is left at the gauge's digits.
bool looksOnTarget(units::Amount deviation, const NumberForm &form)
{
    const auto dimension = deviation.dimension();
    const std::string shown =
        units::fixedDecimal(deviation.magnitude(), form.unitFor(dimension), form.decimalsFor(dimension));
    return shown.find_first_of("123456789") == std::string::npos;
}

QString outSentence(const tolerance::Verdict &verdict, const NumberForm &form)
{
    const Direction direction = directionOf(*verdict.deviation);
    const auto halfWidths = verdict.halfWidths();
    const bool little = halfWidths && *halfWidths <= littleUpTo;
    const QString pattern = little ? translated("%1 %2; a little %3") : translated("%1 %2; %3");
    const QString sentence = pattern.arg(sizeText(*verdict.deviation, form), directionText(verdict.quantity, direction),
                                         remedyText(verdict.quantity, direction));
    return verdict.withinDoubt() ? translated("%1; out, but within the gauge's doubt").arg(sentence) : sentence;
}

QString insideSentence(const tolerance::Verdict &verdict, const NumberForm &form)
{
    const bool doubtful = verdict.status == tolerance::Status::Marginal || verdict.withinDoubt();
    if (looksOnTarget(*verdict.deviation, form))
        return doubtful ? translated("On target, but the limits are too narrow for this gauge to be sure")
                        : translated("On target");
    const bool marginal = verdict.status == tolerance::Status::Marginal;
    const bool above = verdict.deviation->baseCount() > 0;
    const QString where =
        (above ? translated("%1 above target") : translated("%1 below target")).arg(sizeText(*verdict.deviation, form));
    if (marginal)
        return translated("%1; too close to the limit for this gauge to be sure").arg(where);
    return (doubtful ? translated("%1, in, but within the gauge's doubt") : translated("%1, within limits")).arg(where);
}

QString statusSentence(const tolerance::Verdict &verdict, const NumberForm &form)
{
    using tolerance::Status;
    if (verdict.status == Status::Missing || !verdict.value)
        return translated("Not read yet");
    if (verdict.status == Status::Unjudged || !verdict.deviation)
        return translated("Not judged by this set");
    return verdict.status == Status::Out ? outSentence(verdict, form) : insideSentence(verdict, form);
}

QString unevenClause(const tolerance::Verdict &verdict, const NumberForm &form)
{
    if (!verdict.stepFromBelow)
        return translated("uneven");
    return translated("uneven, a step of %1 from the note below").arg(sizeText(*verdict.stepFromBelow, form));
}

QString valueClause(const tolerance::Verdict &verdict, const NumberForm &form)
{
    const QString note = nameOf(verdict.note);
    const QString quantity = nameOf(verdict.quantity);
    if (!verdict.value)
        return translated("%1, %2").arg(note, quantity);
    const QString value = amountText(*verdict.value, form);
    if (verdict.takes > 1)
        return translated("%1, %2 %3 (mean of %4 takes)").arg(note, quantity, value, QString::number(verdict.takes));
    return translated("%1, %2 %3").arg(note, quantity, value);
}

} // namespace

QString verdictSentence(const tolerance::Verdict &verdict, const NumberForm &form)
{
    const QString sentence = statusSentence(verdict, form);
    return verdict.uneven ? translated("%1; %2").arg(sentence, unevenClause(verdict, form)) : sentence;
}

QString limitsText(const tolerance::Limits &limits, const NumberForm &form)
{
    const QString target = bareText(limits.target, form);
    if (limits.low && limits.high)
        return translated("%1 to %2, target %3")
            .arg(bareText(*limits.low, form), amountText(*limits.high, form), target);
    if (limits.low)
        return translated("at least %1, target %2").arg(amountText(*limits.low, form), target);
    if (limits.high)
        return translated("at most %1, target %2").arg(amountText(*limits.high, form), target);
    return translated("target %1").arg(amountText(limits.target, form));
}

QString probabilityText(double probability, const NumberForm &form)
{
    constexpr double least = 0.01;
    if (probability < least)
        return translated("less than 1 %");
    if (probability > 1 - least)
        return translated("more than 99 %");
    return translated("%1 %").arg(form.locale.toString(100 * probability, 'f', 0));
}

QString doubtSentence(const tolerance::Verdict &verdict, const NumberForm &form)
{
    if (!verdict.doubt || !verdict.value)
        return {};
    const units::Amount expanded = units::Amount::fromDisplay(verdict.value->dimension(), verdict.doubt->expanded());
    const QString share = form.locale.toString(100 * verdict.doubt->shareOfResolution(), 'f', 0);
    const QString doubt = translated("Doubt: %1 either way, %2 % of its variance from how finely it was read off")
                              .arg(sizeText(expanded, form), share);
    if (!verdict.conformanceProbability)
        return translated("%1.").arg(doubt);
    return translated("%1; truly inside with a probability of %2.")
        .arg(doubt, probabilityText(*verdict.conformanceProbability, form));
}

QString keyStory(const tolerance::Verdict &verdict, const NumberForm &form)
{
    QString story = translated("%1: %2.").arg(valueClause(verdict, form), verdictSentence(verdict, form));
    if (verdict.limits)
        story = translated("%1 Set: %2.").arg(story, limitsText(*verdict.limits, form));
    const QString doubt = doubtSentence(verdict, form);
    return doubt.isEmpty() ? story : translated("%1 %2").arg(story, doubt);
}

} // namespace hammerline::wording
