#include "action/inside/residue_bound.h"

#include "action/inside/note_search.h"

#include <algorithm>
#include <cmath>

namespace hammerline::action {

using catalogue::Quantity;

namespace {

/// Residues that differ by less, in base units, are one: far below what closeness is compared to.
constexpr double sameResidue = 1e-5;

} // namespace

ResidueBounds::ResidueBounds(const std::vector<const NoteProblem *> &notes, double railRange)
{
    for (const NoteProblem *problem : notes) {
        Known known{.relaxed = *problem};
        if (Screw &screw = known.relaxed.screws[at(Quantity::LetOff)]; screw.most > 0) {
            screw.most = static_cast<int>(std::min(screw.most + std::ceil(railRange / screw.step) + 1, 1e9));
            screw.minutes = 0;
        }
        m_notes.push_back(std::move(known));
    }
}

std::optional<Score> ResidueBounds::find(std::size_t note, const Shift &shift)
{
    Known &known = m_notes[note];
    const Screw &screw = known.relaxed.screws[at(Quantity::LetOff)];
    if (screw.most == 0 || shift.letOffSlack != 0 || shift.blow != 0 || shift.blowSlack != 0)
        return std::nullopt;
    const double residue = shift.letOff - std::floor(shift.letOff / screw.step) * screw.step;
    const auto [found, isNew] = known.byResidue.try_emplace(std::llround(residue / sameResidue));
    if (isNew) // the slack makes it a bound for all that are called the same
        found->second = bestTied(known.relaxed, {.letOff = residue, .letOffSlack = 2 * sameResidue}, Aim::Target).score;
    return found->second;
}

} // namespace hammerline::action
