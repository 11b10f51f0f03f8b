#pragma once
// An invented pass with a bit of everything: in, marginal, out both ways, far off, missing, uneven. Always the same.

#include "tolerance/judge.h"

#include <cmath>

namespace hammerline::support {

inline units::Amount mm(double value)
{
    return units::Amount::fromDisplay(units::Dimension::Length, value);
}

/// Let-off falling from 3.2 ± 0.8 mm to 1.6 ± 0.4 mm, guarded by 0.15 mm; dip 10 mm -0.2 +0.4 for naturals alone.
inline tolerance::ToleranceSet livelySet()
{
    tolerance::ToleranceSet set;
    set.name = "Invented";
    tolerance::Entry letOff;
    letOff.both = {{.note = keyboard::Note(1), .low = mm(2.4), .target = mm(3.2), .high = mm(4.0)},
                   {.note = keyboard::Note(88), .low = mm(1.2), .target = mm(1.6), .high = mm(2.0)}};
    letOff.step = mm(0.6);
    letOff.expandedUncertainty = mm(0.15);
    letOff.rule = tolerance::Rule::Guarded;
    set.entries[catalogue::Quantity::LetOff] = letOff;
    tolerance::Entry dip;
    dip.naturals = {{.note = keyboard::Note(1), .low = mm(9.8), .target = mm(10), .high = mm(10.4)}};
    set.entries[catalogue::Quantity::Dip] = dip;
    return set;
}

inline keyboard::Sections livelySections()
{
    return {{"bass", {keyboard::Note(1), keyboard::Note(28)}},
            {"tenor", {keyboard::Note(29), keyboard::Note(52)}},
            {"treble", {keyboard::Note(53), keyboard::Note(88)}}};
}

/// `spread` 1: as found, wild; about 0.3: as left.
inline readings::ValueTable livelyValues(double spread, keyboard::Compass compass = {})
{
    readings::ValueTable values;
    const auto set = livelySet();
    for (int number = compass.first.number(); number <= compass.last.number(); ++number) {
        const keyboard::Note note(number);
        if (number % 29 == 7)
            continue;
        const double n = number;
        const double swing = std::sin(n * 0.35) * 0.7 + std::sin(n * 1.7) * 0.5 + (number % 17 == 0 ? 2.4 : 0.0) -
                             (number % 23 == 0 ? 3.4 : 0.0);
        for (const auto quantity : {catalogue::Quantity::LetOff, catalogue::Quantity::Dip})
            if (const auto limits = tolerance::limitsAt(set, quantity, note)) {
                const double value = limits->target.inDisplay() + swing * spread * limits->halfWidth().value_or(0.2);
                values.set(quantity, note, {mm(std::max(value, 0.0)), 1});
            }
    }
    return values;
}

inline tolerance::Judgement livelyJudgement(double spread, keyboard::Compass compass = {})
{
    return tolerance::judge(livelyValues(spread, compass), livelySet(), compass, livelySections());
}

} // namespace hammerline::support
