#include "analysis/gauge_study.h"

#include "analysis/inside/crossed_layout.h"

#include <algorithm>
#include <cmath>

#include <boost/math/distributions/fisher_f.hpp>

namespace hammerline::analysis {

namespace {

using inside::CrossedLayout;
using inside::CrossedSums;

/// Above this p the interaction is taken for chance and pooled (the AIAG manual's own choice).
constexpr double poolingLimit = 0.25;

AnovaRow rowOf(const char *source, int degreesOfFreedom, double sumOfSquares)
{
    AnovaRow row{.source = source, .degreesOfFreedom = degreesOfFreedom, .sumOfSquares = sumOfSquares};
    row.meanSquare = sumOfSquares / degreesOfFreedom;
    return row;
}

void test(AnovaRow &row, double divisor, int divisorDegrees)
{
    if (divisor == 0)
        return;
    row.f = *row.meanSquare / divisor;
    const boost::math::fisher_f distribution(row.degreesOfFreedom, divisorDegrees);
    row.p = cdf(complement(distribution, *row.f));
}

struct Anova {
    AnovaRow note, person, interaction, repeatability, total;
    bool pooled = false;
    double divisor = 0; ///< mean square that notes and people are tested against
};

Anova rowsOf(const CrossedLayout &layout)
{
    const CrossedSums sums = inside::sumsOfSquares(layout);
    const int n = layout.notes, p = layout.people, r = layout.takes;
    Anova anova{.note = rowOf("note", n - 1, sums.note),
                .person = rowOf("person", p - 1, sums.person),
                .interaction = rowOf("interaction", (n - 1) * (p - 1), sums.interaction),
                .repeatability = rowOf("repeatability", n * p * (r - 1), sums.repeatability),
                .total = rowOf("total", n * p * r - 1, sums.total)};
    anova.total.meanSquare.reset();
    return anova;
}

void testRows(Anova &anova)
{
    auto &interaction = anova.interaction;
    const auto &repeatability = anova.repeatability;
    test(interaction, *repeatability.meanSquare, repeatability.degreesOfFreedom);
    anova.pooled = interaction.p && *interaction.p > poolingLimit;
    anova.divisor = *interaction.meanSquare;
    int degrees = interaction.degreesOfFreedom;
    if (anova.pooled) {
        degrees += repeatability.degreesOfFreedom;
        anova.divisor = (interaction.sumOfSquares + repeatability.sumOfSquares) / degrees;
    }
    test(anova.note, anova.divisor, degrees);
    test(anova.person, anova.divisor, degrees);
}

double component(double meanSquare, double below, int count)
{
    return std::max(0.0, (meanSquare - below) / count);
}

Components variancesOf(const Anova &anova, const CrossedLayout &layout)
{
    Components variance;
    variance.repeatability = anova.pooled ? anova.divisor : *anova.repeatability.meanSquare;
    variance.reproducibility = component(*anova.person.meanSquare, anova.divisor, layout.notes * layout.takes);
    if (!anova.pooled)
        variance.reproducibility +=
            component(*anova.interaction.meanSquare, *anova.repeatability.meanSquare, layout.takes);
    variance.gauge = variance.repeatability + variance.reproducibility;
    variance.note = component(*anova.note.meanSquare, anova.divisor, layout.people * layout.takes);
    variance.total = variance.gauge + variance.note;
    return variance;
}

template <typename Function>
Components each(const Components &from, Function function)
{
    return {.repeatability = function(from.repeatability),
            .reproducibility = function(from.reproducibility),
            .gauge = function(from.gauge),
            .note = function(from.note),
            .total = function(from.total)};
}

std::optional<int> categoriesOf(const Components &sd)
{
    if (sd.gauge == 0)
        return std::nullopt;
    constexpr double most = 1e9; // a gauge next to perfect must not overflow
    return std::max(1, static_cast<int>(std::min(most, std::floor(1.41 * sd.note / sd.gauge))));
}

void addComponents(const Anova &anova, const CrossedLayout &layout, GaugeStudy &study)
{
    study.variance = variancesOf(anova, layout);
    study.sd = each(study.variance, [](double variance) { return std::sqrt(variance); });
    if (study.sd.total > 0)
        study.percentOfTotalSd = each(study.sd, [&](double sd) { return 100 * sd / study.sd.total; });
    study.distinctCategories = categoriesOf(study.sd);
    study.expandedUncertainty = 2 * study.sd.gauge;
}

} // namespace

outcome::Outcome<GaugeStudy> gaugeStudy(const std::vector<Trial> &trials)
{
    const auto layout = inside::crossedLayout(trials);
    if (!layout)
        return layout.faults();
    Anova anova = rowsOf(layout.value());
    testRows(anova);
    GaugeStudy study{.notes = layout.value().notes, .people = layout.value().people, .takes = layout.value().takes};
    study.interactionPooled = anova.pooled;
    study.anova = {anova.note, anova.person, anova.interaction, anova.repeatability, anova.total};
    addComponents(anova, layout.value(), study);
    return study;
}

} // namespace hammerline::analysis
