#include "wording/claim_words.h"

#include "wording/wording.h"

#include <QCoreApplication>

namespace hammerline::wording {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("wording", text);
}

units::Amount amountOf(double figure, catalogue::Quantity quantity)
{
    return units::Amount::fromDisplay(catalogue::infoOf(quantity).dimension, figure);
}

QString gaugeText(const analysis::QuantityChange &change, const NumberForm &form)
{
    if (change.claim != analysis::Claim::Smaller && change.claim != analysis::Claim::Larger)
        return {};
    if (!change.toldApart)
        return tr(
            " How well the gauges tell is not known: a change that they make on every note alike is not ruled out.");
    const QString told = amountText(amountOf(*change.toldApart, change.quantity), form);
    return change.withinGauge()
               ? tr(" But the gauges may be off by %1 on every note alike: the change may be theirs.").arg(told)
               : tr(" That is more than the gauges may be off (%1).").arg(told);
}

} // namespace

QString figureText(double change, catalogue::Quantity quantity, const NumberForm &form)
{
    return changeText(amountOf(change, quantity), form);
}

QString spanText(std::optional<double> low, std::optional<double> high, catalogue::Quantity quantity,
                 const NumberForm &form)
{
    if (!low || !high)
        return QStringLiteral("\u2013");
    const auto unit = unitText(catalogue::infoOf(quantity).dimension, form).size() + 1;
    QString from = figureText(*low, quantity, form), to = figureText(*high, quantity, form);
    from.chop(unit);
    to.chop(unit);
    return tr("%1 to %2").arg(from, to);
}

QString testText(const analysis::Comparison &comparison, const NumberForm &form)
{
    if (!comparison.t || !comparison.p)
        return QStringLiteral("\u2013");
    const QString p = *comparison.p < 0.001 ? tr("p < %1").arg(numberText(0.001, 3, form))
                                            : tr("p %1").arg(numberText(*comparison.p, 3, form));
    return tr("t %1, %2").arg(numberText(*comparison.t, 2, form), p);
}

QString claimText(const analysis::QuantityChange &change, const NumberForm &form)
{
    const auto figure = [&](double value) { return figureText(value, change.quantity, form); };
    const analysis::Comparison &made = change.change;
    switch (change.claim) {
    case analysis::Claim::TooFew:
        return tr("One note was read both times, which changed by %1: no change of the mean can be claimed.")
            .arg(figure(made.meanChange));
    case analysis::Claim::NoChange:
        return tr("No change can be claimed: the mean moved by something between %1 and %2 (95 % confidence), which "
                  "may "
                  "be nothing.")
            .arg(figure(*made.ci95Low), figure(*made.ci95High));
    case analysis::Claim::Smaller:
    case analysis::Claim::Larger:
        break;
    }
    return tr("The mean moved by %1; with 95 % confidence between %2 and %3.")
               .arg(figure(made.meanChange), figure(*made.ci95Low), figure(*made.ci95High)) +
           gaugeText(change, form);
}

} // namespace hammerline::wording
