#include "analysis/trend.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include <boost/math/distributions/students_t.hpp>

namespace hammerline::analysis {

namespace {

using catalogue::Quantity;
using keyboard::Note;

long double meanOf(std::span<const double> values)
{
    long double sum = 0;
    for (const double value : values)
        sum += value;
    return sum / static_cast<long double>(values.size());
}

/// The sum of (x - mean x) (y - mean y).
long double crossed(std::span<const double> x, std::span<const double> y)
{
    const long double meanX = meanOf(x), meanY = meanOf(y);
    long double sum = 0;
    for (std::size_t i = 0; i < x.size(); ++i)
        sum += (x[i] - meanX) * (y[i] - meanY);
    return sum;
}

void addInterval(std::span<const double> x, std::span<const double> y, long double slope, Line &line)
{
    const long double meanX = meanOf(x), meanY = meanOf(y);
    long double rest = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        const long double off = (y[i] - meanY) - slope * (x[i] - meanX);
        rest += off * off;
    }
    const auto degrees = static_cast<double>(x.size()) - 2;
    line.slopeSd = static_cast<double>(std::sqrt(rest / static_cast<long double>(degrees) / crossed(x, x)));
    const boost::math::students_t student(degrees);
    const double reach = quantile(student, 0.975) * *line.slopeSd;
    line.slopeLow = line.slope - reach;
    line.slopeHigh = line.slope + reach;
}

/// Passes that read the quantity on at least half as many notes as the fullest.
std::vector<const MeasuredPass *> fullPasses(const std::vector<MeasuredPass> &passes, Quantity quantity)
{
    std::size_t fullest = 0;
    for (const MeasuredPass &pass : passes)
        fullest = std::max(fullest, pass.values.column(quantity).size());
    std::vector<const MeasuredPass *> full;
    for (const MeasuredPass &pass : passes)
        if (const auto count = pass.values.column(quantity).size(); count > 0 && 2 * count >= fullest)
            full.push_back(&pass);
    return full;
}

std::vector<Note> notesInAll(const std::vector<const MeasuredPass *> &passes, Quantity quantity)
{
    std::vector<Note> notes;
    for (const auto &[note, value] : passes.front()->values.column(quantity))
        if (std::ranges::all_of(passes, [&, each = note](const MeasuredPass *pass) {
                return pass->values.column(quantity).contains(each);
            }))
            notes.push_back(note);
    return notes;
}

TrendPoint pointOf(const MeasuredPass &pass, const MeasuredPass &first, Quantity quantity,
                   const std::vector<Note> &notes)
{
    TrendPoint point{.pass = pass.pass, .most = notes.front()};
    std::vector<double> values, changes;
    for (const Note note : notes) {
        const auto value = *pass.values.value(quantity, note);
        const double change = (value - *first.values.value(quantity, note)).inDisplay();
        values.push_back(value.inDisplay());
        changes.push_back(change);
        if (std::abs(change) > std::abs(point.mostChange)) {
            point.most = note;
            point.mostChange = change;
        }
    }
    point.mean = meanSd(values).mean;
    if (&pass != &first)
        point.sinceFirst = pairedComparison(changes);
    return point;
}

void fit(Trend &trend)
{
    constexpr double millisecondsAYear = 365.25 * 24 * 60 * 60 * 1000;
    std::vector<double> years, means;
    for (const TrendPoint &point : trend.points) {
        const auto since = point.pass.began - trend.points.front().pass.began;
        years.push_back(static_cast<double>(since.count()) / millisecondsAYear);
        means.push_back(point.mean);
    }
    trend.perYear = fitLine(years, means);
    if (!trend.perYear || !trend.perYear->slopeLow)
        return;
    trend.claim = *trend.perYear->slopeHigh < 0  ? Claim::Smaller
                  : *trend.perYear->slopeLow > 0 ? Claim::Larger
                                                 : Claim::NoChange;
}

Trend trendOf(const std::vector<const MeasuredPass *> &passes, Quantity quantity, const std::vector<Note> &notes,
              const tolerance::ToleranceSet *set)
{
    Trend trend{.quantity = quantity, .notes = notes};
    for (const MeasuredPass *pass : passes)
        trend.points.push_back(pointOf(*pass, *passes.front(), quantity, notes));
    const auto first = uncertaintyOf(quantity, passes.front()->pass.gauge, set);
    const auto last = uncertaintyOf(quantity, passes.back()->pass.gauge, set);
    if (first && last)
        trend.toldApart = std::hypot(*first, *last);
    fit(trend);
    return trend;
}

} // namespace

std::optional<Line> fitLine(std::span<const double> x, std::span<const double> y)
{
    if (x.size() < 2 || x.size() != y.size())
        return std::nullopt;
    const long double spread = crossed(x, x);
    if (!(spread > 0))
        return std::nullopt;
    const long double slope = crossed(x, y) / spread;
    Line line{.intercept = static_cast<double>(meanOf(y) - slope * meanOf(x)), .slope = static_cast<double>(slope)};
    if (x.size() > 2)
        addInterval(x, y, slope, line);
    return line;
}

std::vector<Trend> trendsOf(std::vector<MeasuredPass> passes, const keyboard::Sections &sections,
                            const tolerance::ToleranceSet *set)
{
    std::ranges::sort(passes, {}, [](const MeasuredPass &each) { return std::tuple(each.pass.began, each.pass.id); });
    std::set<Quantity> quantities;
    for (const MeasuredPass &pass : passes)
        for (const Quantity quantity : pass.values.quantities())
            quantities.insert(quantity);
    std::vector<Trend> trends;
    for (const Quantity quantity : quantities) {
        const auto full = fullPasses(passes, quantity);
        const auto notes = full.size() < 2 ? std::vector<Note>{} : notesInAll(full, quantity);
        if (notes.empty())
            continue;
        trends.push_back(trendOf(full, quantity, notes, set));
        for (std::size_t index = 0; sections.size() > 1 && index < sections.size(); ++index) {
            std::vector<Note> inside;
            std::ranges::copy_if(notes, std::back_inserter(inside),
                                 [&](Note note) { return sections[index].notes.contains(note); });
            if (inside.empty())
                continue;
            trends.push_back(trendOf(full, quantity, inside, set));
            trends.back().section = sections[index].name;
        }
    }
    return trends;
}

} // namespace hammerline::analysis
