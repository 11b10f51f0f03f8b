#include "charts/inside/plotted.h"

#include "charts/inside/axis_title.h"
#include "wording/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace hammerline::charts {

namespace {

using tolerance::Status;
using tolerance::Verdict;

Kind kindOf(const Verdict &verdict)
{
    switch (verdict.status) {
    case Status::In:
        return Kind::Within;
    case Status::Marginal:
        return Kind::Doubt;
    case Status::Out:
        return verdict.deviation && verdict.deviation->baseCount() < 0 ? Kind::TooSmall : Kind::TooLarge;
    case Status::Missing:
    case Status::Unjudged:
        break;
    }
    return Kind::Unjudged;
}

std::optional<double> shown(const std::optional<units::Amount> &amount, const wording::NumberForm &form)
{
    return amount ? std::optional(wording::inUnit(*amount, form)) : std::nullopt;
}

Plotted plotted(const Verdict &verdict, const ChartData &data)
{
    Plotted point;
    point.note = verdict.note;
    point.kind = kindOf(verdict);
    point.now = shown(verdict.value, data.form);
    if (const Verdict *earlier = data.before ? data.before->find(data.quantity, verdict.note) : nullptr)
        point.before = shown(earlier->value, data.form);
    if (verdict.limits)
        point.target = wording::inUnit(verdict.limits->target, data.form);
    point.story = wording::keyStory(verdict, data.form);
    return point;
}

Rung rungOf(const Verdict &verdict, const wording::NumberForm &form)
{
    return {verdict.note.number(), shown(verdict.limits->low, form), wording::inUnit(verdict.limits->target, form),
            shown(verdict.limits->high, form)};
}

/// Between those of its neighbours, give or take rounding: no zigzag when drawn in one line.
bool runsBetween(double value, double below, double above)
{
    constexpr double rounding = 1e-4;
    return value >= std::min(below, above) - rounding && value <= std::max(below, above) + rounding;
}

bool fits(const Rung &below, const Rung &rung, const Rung &above)
{
    const auto fit = [](const auto &a, const auto &b, const auto &c) {
        return a.has_value() == b.has_value() && b.has_value() == c.has_value() && (!b || runsBetween(*b, *a, *c));
    };
    return runsBetween(rung.target, below.target, above.target) && fit(below.low, rung.low, above.low) &&
           fit(below.high, rung.high, above.high);
}

bool isSharp(const Rung &rung)
{
    return keyboard::Note(rung.note).colour() == keyboard::Colour::Sharp;
}

/// True where every sharp fits in between its neighbours.
bool runTogether(const Ladder &all)
{
    for (std::size_t i = 1; i + 1 < all.size(); ++i)
        if (isSharp(all[i]) && !fits(all[i - 1], all[i], all[i + 1]))
            return false;
    return true;
}

} // namespace

std::vector<Plotted> plottedOf(const ChartData &data)
{
    std::vector<Plotted> points;
    for (const Verdict &verdict : data.now.of(data.quantity))
        if (Plotted point = plotted(verdict, data); point.now || point.before)
            points.push_back(std::move(point));
    return points;
}

std::vector<Ladder> laddersOf(const ChartData &data)
{
    Ladder all;
    for (const Verdict &verdict : data.now.of(data.quantity))
        if (verdict.limits)
            all.push_back(rungOf(verdict, data.form));
    if (all.empty())
        return {};
    if (runTogether(all))
        return {all};
    std::vector<Ladder> byColour(2);
    for (const Rung &rung : all)
        byColour[isSharp(rung) ? 1 : 0].push_back(rung);
    std::erase_if(byColour, [](const Ladder &ladder) { return ladder.empty(); });
    return byColour;
}

QString nowName(const ChartData &data)
{
    return data.nowName.isEmpty() ? QCoreApplication::translate("charts", "Now") : data.nowName;
}

QString beforeName(const ChartData &data)
{
    return data.beforeName.isEmpty() ? QCoreApplication::translate("charts", "Before") : data.beforeName;
}

QString axisTitle(const ChartData &data)
{
    return axisTitle(wording::nameOf(data.quantity), data);
}

QString axisTitle(const QString &measure, const ChartData &data)
{
    return QCoreApplication::translate("charts", "%1 (%2)")
        .arg(measure, wording::unitText(catalogue::infoOf(data.quantity).dimension, data.form));
}

ChartData withShortNames(ChartData data, int most)
{
    for (QString *name : {&data.nowName, &data.beforeName, &data.subject, &data.nowPerson, &data.beforePerson})
        *name = shortName(*name, most);
    return data;
}

} // namespace hammerline::charts
