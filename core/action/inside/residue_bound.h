#pragma once
// A sharp bound for one position of a rail that moves what a screw on every note also sets (let-off, Aim::Target).
//
// Rail and screw add up: what closeness a note can have depends on where the rail stands only by what is left of its
// shift after whole steps of the screw, as long as the screw has range to make up for the rest. Positions share most of
// these residues, so that each is solved once, with the screw's range widened by the rail's and its minutes left
// out: never worse than any position with this residue, and equal in pairs and closeness where the range is enough.

#include "action/inside/note_problem.h"

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

namespace hammerline::action {

class ResidueBounds {
public:
    /// `railRange`: how far, in base units, the rails can move let-off either way.
    ResidueBounds(const std::vector<const NoteProblem *> &notes, double railRange);
    /// Absent where the shift is of more than let-off, is a box or the note has no screw for it.
    [[nodiscard]] std::optional<Score> find(std::size_t note, const Shift &shift);

private:
    struct Known {
        NoteProblem relaxed{};
        std::unordered_map<std::int64_t, Score> byResidue{};
    };
    std::vector<Known> m_notes;
};

} // namespace hammerline::action
