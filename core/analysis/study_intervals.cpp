#include "analysis/study_intervals.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace hammerline::analysis {

namespace {

using boost::math::chi_squared;
using boost::math::fisher_f;

/// A mean square with its share of the sum, which may be negative.
struct Term {
    double share = 0;
    double meanSquare = 0;
    double degrees = 0;
    [[nodiscard]] double part() const { return share * meanSquare; }
};

/// The value that a chi-squared over its degrees exceeds with probability `tail`.
double scaled(double degrees, double tail)
{
    return quantile(complement(chi_squared(degrees), tail)) / degrees;
}

double exceeded(double degrees, double belowDegrees, double tail)
{
    return quantile(complement(fisher_f(degrees, belowDegrees), tail));
}

/// Of a term on its own: how far its limit lies from it, as a part of it; towards 0 and away from it.
double inwards(const Term &term, double tail)
{
    return 1 - 1 / scaled(term.degrees, tail);
}
double outwards(const Term &term, double tail)
{
    return 1 / scaled(term.degrees, 1 - tail) - 1;
}

double square(double value)
{
    return value * value;
}

/// What the term above and the one below have in common, for the lower and the upper limit.
double crossedLow(const Term &above, const Term &below, double tail)
{
    const double f = exceeded(above.degrees, below.degrees, tail);
    return (square(f - 1) - square(inwards(above, tail) * f) - square(outwards(below, tail))) / f;
}
double crossedHigh(const Term &above, const Term &below, double tail)
{
    const double f = exceeded(above.degrees, below.degrees, 1 - tail);
    return (square(1 - f) - square(outwards(above, tail) * f) - square(inwards(below, tail))) / f;
}

struct Variances {
    double low = 0, high = 0;
};

Variances limitsOf(const std::vector<Term> &terms, double tail)
{
    double sum = 0, low = 0, high = 0;
    for (const Term &term : terms) {
        const bool above = term.share >= 0;
        sum += term.part();
        low += square((above ? inwards(term, tail) : outwards(term, tail)) * term.part());
        high += square((above ? outwards(term, tail) : inwards(term, tail)) * term.part());
        for (const Term &below : terms) {
            if (!above || below.share >= 0)
                continue;
            low += crossedLow(term, below, tail) * term.part() * -below.part();
            high += crossedHigh(term, below, tail) * term.part() * -below.part();
        }
    }
    return {sum - std::sqrt(std::max(0.0, low)), sum + std::sqrt(std::max(0.0, high))};
}

const AnovaRow &rowOf(const GaugeStudy &study, const char *source)
{
    return *std::ranges::find(study.anova, std::string(source), &AnovaRow::source);
}

Term termOf(const AnovaRow &row, double share)
{
    return {share, row.meanSquare.value_or(0), static_cast<double>(row.degreesOfFreedom)};
}

/// The mean squares of a study, repeatability pooled where the study pooled it.
class Terms {
public:
    explicit Terms(const GaugeStudy &study)
        : m_study(study),
          m_interaction(termOf(rowOf(study, "interaction"), 1)),
          m_repeatability(termOf(rowOf(study, "repeatability"), 1))
    {
        if (study.interactionPooled) {
            m_repeatability.meanSquare = study.variance.repeatability;
            m_repeatability.degrees += m_interaction.degrees;
        }
    }

    [[nodiscard]] std::vector<Term> repeatability() const { return {m_repeatability}; }

    /// Another person, and the same again where `withRepeatability`.
    [[nodiscard]] std::vector<Term> people(bool withRepeatability) const
    {
        const double n = m_study.notes, r = m_study.takes, own = withRepeatability ? 1 : 0;
        const Term person = termOf(rowOf(m_study, "person"), 1 / (n * r));
        if (m_study.interactionPooled)
            return {person, with(m_repeatability, own - 1 / (n * r))};
        return {person, with(m_interaction, (n - 1) / (n * r)), with(m_repeatability, own - 1 / r)};
    }

    [[nodiscard]] std::vector<Term> note() const
    {
        const double share = 1.0 / (m_study.people * m_study.takes);
        const Term &divisor = m_study.interactionPooled ? m_repeatability : m_interaction;
        return {termOf(rowOf(m_study, "note"), share), with(divisor, -share)};
    }

    [[nodiscard]] std::vector<Term> total() const
    {
        const double n = m_study.notes, p = m_study.people, r = m_study.takes;
        const Term note = termOf(rowOf(m_study, "note"), 1 / (p * r));
        const Term person = termOf(rowOf(m_study, "person"), 1 / (n * r));
        if (m_study.interactionPooled)
            return {note, person, with(m_repeatability, 1 - 1 / (n * r) - 1 / (p * r))};
        return {note, person, with(m_interaction, (n * p - n - p) / (n * p * r)), with(m_repeatability, 1 - 1 / r)};
    }

private:
    [[nodiscard]] static Term with(Term term, double share)
    {
        term.share = share;
        return term;
    }

    const GaugeStudy &m_study;
    Term m_interaction, m_repeatability;
};

SdInterval about(double variance, const std::vector<Term> &terms, double tail)
{
    const Variances limits = limitsOf(terms, tail);
    return {std::sqrt(std::clamp(limits.low, 0.0, variance)), std::sqrt(std::max(limits.high, variance))};
}

} // namespace

StudyIntervals intervalsOf(const GaugeStudy &study, double confidence)
{
    const Terms terms(study);
    const double tail = (1 - confidence) / 2;
    return {.confidence = confidence,
            .repeatability = about(study.variance.repeatability, terms.repeatability(), tail),
            .reproducibility = about(study.variance.reproducibility, terms.people(false), tail),
            .gauge = about(study.variance.gauge, terms.people(true), tail),
            .note = about(study.variance.note, terms.note(), tail),
            .total = about(study.variance.total, terms.total(), tail)};
}

std::optional<double> shareOfResolution(const GaugeStudy &study, double halfStep)
{
    if (study.variance.gauge == 0)
        return std::nullopt;
    return halfStep * halfStep / 3 / study.variance.gauge;
}

double uncertaintyToJudgeBy(const GaugeStudy &study, std::optional<double> halfStep)
{
    return std::max(study.expandedUncertainty, 2 * halfStep.value_or(0) / std::numbers::sqrt3);
}

} // namespace hammerline::analysis
