#pragma once
// Small sets and tables for the tests of judging; lengths in mm.

#include "readings/readings.h"
#include "tolerance/tolerance.h"

namespace hammerline::tolerance::samples {

using catalogue::Quantity;
using keyboard::Note;

inline units::Amount mm(double value)
{
    return units::Length::millimetres(value);
}

inline Point point(int note, double low, double target, double high)
{
    Point made;
    made.note = Note(note);
    made.low = mm(low);
    made.target = mm(target);
    made.high = mm(high);
    return made;
}

/// let_off 2.4 < 3.2 < 4.0 at note 1 down to 1.2 < 1.6 < 2.0 at note 88; dip by colour, flat.
inline ToleranceSet letOffAndDip()
{
    ToleranceSet set;
    set.name = "sample";
    auto &letOff = set.entries[Quantity::LetOff];
    letOff.both = {point(1, 2.4, 3.2, 4.0), point(88, 1.2, 1.6, 2.0)};
    letOff.step = mm(0.6);
    letOff.expandedUncertainty = mm(0.2);
    letOff.rule = Rule::Guarded;
    auto &dip = set.entries[Quantity::Dip];
    dip.naturals = {point(1, 9.8, 10.0, 10.4)};
    dip.sharps = {point(1, 9.4, 9.7, 10.2)};
    dip.step = mm(0.2);
    return set;
}

inline readings::ValueTable table(Quantity quantity, const std::vector<std::pair<int, double>> &values)
{
    readings::ValueTable made;
    for (const auto &[note, value] : values)
        made.set(quantity, Note(note), {mm(value), 1});
    return made;
}

} // namespace hammerline::tolerance::samples
