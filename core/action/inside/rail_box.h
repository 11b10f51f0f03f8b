#pragma once
// The search of one group of rails (inside/rail_search.h has the idea).

#include "action/inside/rail_search.h"
#include "action/inside/residue_bound.h"

namespace hammerline::action {

/// The positions from `low` to `high` of one rail, both ends.
struct RailSpan {
    RailPosition low{};
    RailPosition high{};
};

/// Adds what a rail somewhere in `span` does to `note`, which lies in its range.
void addRail(const Rail &rail, const keyboard::NoteRange &range, keyboard::Note note, const RailSpan &span,
             Shift &shift);

class RailBoxSearch {
public:
    /// `rails`: indices into the setup's rails, of one group; `notes`: those that any of them moves.
    RailBoxSearch(const PlanTask &task, std::vector<std::size_t> rails, std::vector<const NoteProblem *> notes);
    /// Writes the best position of each rail of the group.
    void run(std::vector<RailPosition> &positions);

private:
    struct Box {
        std::vector<RailSpan> spans{}; ///< one a rail of the group
        std::vector<Shift> shifts{};   ///< one a note
        std::vector<Score> shares{};   ///< bound of each note
        Score bound{};                 ///< of all, rails' minutes included
    };

    [[nodiscard]] bool solve(Box &box, const Box *parent);
    [[nodiscard]] bool bound(Box &box, const Box *parent);
    [[nodiscard]] bool solveNotes(Box &position) const;
    void setShare(Box &box, std::size_t note, const Score &share) const;
    [[nodiscard]] Score boundOf(std::size_t note, const Shift &shift);
    [[nodiscard]] NoteAnswer answerOf(std::size_t note, const Shift &shift) const;
    [[nodiscard]] Shift shiftIn(const Box &box, std::size_t note) const;
    [[nodiscard]] double minutesOf(const Box &box) const;
    [[nodiscard]] Box middleOf(const Box &box) const;
    [[nodiscard]] std::vector<Box> halvesOf(const Box &box) const;
    [[nodiscard]] bool hopeful(const Score &score) const;
    void keep(const Box &position);
    void search(const Box &box);

    const PlanTask &m_task;
    std::vector<std::size_t> m_rails;
    std::vector<keyboard::NoteRange> m_ranges;
    std::vector<const NoteProblem *> m_notes;
    bool m_tied = true;                        ///< blow and let-off; else checking
    std::optional<ResidueBounds> m_residues{}; ///< where many positions are nearly as good
    std::vector<RailSpan> m_best{};
    Score m_bestScore{};
};

} // namespace hammerline::action
