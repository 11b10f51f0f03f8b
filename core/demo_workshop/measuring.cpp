#include "demo_workshop/inside/measuring.h"

#include "units/parse_amount.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace hammerline::demo_workshop {
namespace {

using catalogue::Quantity;

std::string sixtyFourths(double mm)
{
    const int count = static_cast<int>(std::lround(mm / 25.4 * 64));
    const int whole = count / 64;
    const int rest = count % 64;
    if (rest == 0)
        return std::to_string(whole);
    const int common = std::gcd(rest, 64);
    const std::string fraction = std::to_string(rest / common) + "/" + std::to_string(64 / common);
    return whole == 0 ? fraction : std::to_string(whole) + " " + fraction;
}

std::string inSteps(double value, double step, int decimals)
{
    const units::Length rounded = units::Length::millimetres(static_cast<double>(std::llround(value / step)) * step);
    return units::fixedDecimal(rounded, units::Unit::Millimetre, decimals);
}

/// Standard deviation of one reading with such a gauge, mm or g (invented).
double noiseOf(units::Dimension dimension, Writing writing)
{
    if (dimension == units::Dimension::Mass)
        return 0.6;
    switch (writing) {
    case Writing::TwentiethsOfMillimetre:
        return 0.03;
    case Writing::TenthsOfMillimetre:
        return 0.04;
    case Writing::SixtyFourthsOfInch:
        return 0.1;
    case Writing::ThousandthsOfInch:
        return 0.02;
    }
    return 0;
}

bool isInches(Writing writing)
{
    return writing == Writing::SixtyFourthsOfInch || writing == Writing::ThousandthsOfInch;
}

readings::Gauge gaugeFor(Writing writing)
{
    switch (writing) {
    case Writing::TwentiethsOfMillimetre:
        return {"sliding gauge, 0.05 mm", units::Length::nanometres(50'000), units::Length::nanometres(80'000)};
    case Writing::TenthsOfMillimetre:
        return {"step gauges, 0.1 mm", units::Length::nanometres(100'000), units::Length::nanometres(120'000)};
    case Writing::SixtyFourthsOfInch:
        return {"steel rule, 1/64 in", units::Length::nanometres(396'875), units::Length::nanometres(400'000)};
    case Writing::ThousandthsOfInch:
        return {"dial gauge, 0.001 in", units::Length::nanometres(25'400), units::Length::nanometres(50'000)};
    }
    return {};
}

std::string heardAt(const PianoPlan &plan, const PassPlan &pass, const readings::Place &place)
{
    if (pass.purpose != readings::Purpose::AsFound || place.quantity != Quantity::LetOff || place.take != 1)
        return {};
    const auto found = std::ranges::find(plan.heard, place.note, &HeardFault::note);
    return found == plan.heard.end() ? std::string() : found->words;
}

std::vector<Quantity> quantitiesOf(const PassPlan &pass, const tolerance::ToleranceSet &set)
{
    std::vector<Quantity> quantities = pass.quantities;
    if (quantities.empty())
        for (const auto &[quantity, entry] : set.entries)
            quantities.push_back(quantity);
    std::ranges::sort(quantities);
    return quantities;
}

readings::Pass emptyPass(const PassPlan &plan, Dice &dice)
{
    return {.id = 0,
            .uid = dice.hexDigits(32),
            .instrument = 0,
            .purpose = plan.purpose,
            .began = readings::parseRfc3339(plan.began).value(),
            .person = plan.person,
            .climate = plan.climate,
            .gauge = gaugeFor(plan.writing),
            .dipDatum = readings::DipDatum::FrontEdge,
            .dropDatum = readings::DropDatum::BelowLetOff,
            .unit = isInches(plan.writing) ? units::Unit::Inch : units::Unit::Millimetre,
            .remark = plan.remark};
}

} // namespace

std::string written(double value, units::Dimension dimension, Writing writing)
{
    if (dimension == units::Dimension::Mass)
        return std::to_string(std::lround(value));
    switch (writing) {
    case Writing::TwentiethsOfMillimetre:
        return inSteps(value, 0.05, 2);
    case Writing::TenthsOfMillimetre:
        return inSteps(value, 0.1, 1);
    case Writing::SixtyFourthsOfInch:
        return sixtyFourths(value);
    case Writing::ThousandthsOfInch:
        return inSteps(value / 25.4, 0.001, 3);
    }
    return {};
}

bool isGap(const PianoPlan &plan, Quantity quantity, keyboard::Note note, const std::string &moment)
{
    return std::ranges::any_of(plan.gaps, [&](const Gap &gap) {
        return gap.note == note && (gap.until.empty() || moment < gap.until) &&
               (gap.quantities.empty() || std::ranges::find(gap.quantities, quantity) != gap.quantities.end());
    });
}

readings::Reading readOnce(double truth, const readings::Place &place, const PassPlan &pass, Dice &dice)
{
    const auto &info = catalogue::infoOf(place.quantity);
    double shown = truth + dice.normal(noiseOf(info.dimension, pass.writing));
    if (!info.mayBeNegative)
        shown = std::max(shown, 0.0);
    const std::string typed = written(shown, info.dimension, pass.writing);
    const units::TypedForm form{.dimension = info.dimension,
                                .bareUnit = isInches(pass.writing) ? units::Unit::Inch : units::Unit::Millimetre,
                                .allowNegative = info.mayBeNegative};
    return {.place = place,
            .value = units::parseAmount(typed, form).value().value,
            .typed = typed,
            .remark = {},
            .person = pass.person,
            .at = {}};
}

MadePass measure(const ActionState &state, const PianoPlan &plan, const PassPlan &pass,
                 const tolerance::ToleranceSet &set, Dice &dice)
{
    MadePass made{.pass = emptyPass(pass, dice), .readings = {}, .deeds = {}};
    readings::Instant at = made.pass.began;
    const keyboard::Compass &compass = plan.instrument.compass;
    for (const Quantity quantity : quantitiesOf(pass, set)) {
        for (int number = compass.first.number(); number <= compass.last.number(); ++number) {
            const keyboard::Note note(number);
            const auto truth = state.value(quantity, note);
            if (!truth || isGap(plan, quantity, note, pass.began))
                continue;
            for (int take = 1; take <= pass.takes; ++take) {
                const readings::Place place{.quantity = quantity, .note = note, .take = take};
                readings::Reading reading = readOnce(*truth, place, pass, dice);
                at += std::chrono::seconds(dice.between(3, 9));
                reading.at = at;
                reading.remark = heardAt(plan, pass, place);
                made.readings.push_back(std::move(reading));
            }
        }
    }
    return made;
}

} // namespace hammerline::demo_workshop
