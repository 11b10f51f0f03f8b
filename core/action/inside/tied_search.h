#pragma once
// The search over the tied screws of one note (inside/note_search.h says why it looks like this).

#include "action/inside/note_search.h"
#include "action/inside/one_screw.h"

namespace hammerline::action {

/// The screws that are tied; a choice of them is a number with bit i set for the i-th.
inline constexpr std::array<catalogue::Quantity, 6> tiedScrews{
    catalogue::Quantity::LetOff,     catalogue::Quantity::Drop,      catalogue::Quantity::Blow,
    catalogue::Quantity::LostMotion, catalogue::Quantity::KeyHeight, catalogue::Quantity::Dip};

class TiedSearch {
public:
    TiedSearch(const NoteProblem &problem, const Shift &shift, Aim aim);
    NoteAnswer run();
    [[nodiscard]] Score bound();

private:
    using Index = std::size_t; ///< of a quantity
    static constexpr Index keyHeight = at(catalogue::Quantity::KeyHeight), blow = at(catalogue::Quantity::Blow),
                           lostMotion = at(catalogue::Quantity::LostMotion), letOff = at(catalogue::Quantity::LetOff),
                           drop = at(catalogue::Quantity::Drop), dip = at(catalogue::Quantity::Dip),
                           aftertouch = at(catalogue::Quantity::Aftertouch);

    /// What is left to hope for from the screws still to come.
    struct Hope {
        Score own{};              ///< each of their values at its best alone, in whole steps
        double closeness = 0;     ///< the same as if steps were endlessly fine
        double easyLow = 0;       ///< how far they can move aftertouch while every value of theirs that can be inside
        double easyHigh = 0;      ///< is inside
        double centre = 0;        ///< change of aftertouch with each of them on its target
        double dead = 0;          ///< how far from there it may be at no cost: what slack hides
        double deadBySteps = 0;   ///< the same beside `own`: what slack or a target between two steps hides
        double slope = unlimited; ///< least closeness that a base unit further costs
    };
    using Hopes = std::array<Hope, tiedScrews.size() + 1>;

    struct Span {
        double low = 0;
        double high = 0;
    };

    void searchByMinutes();
    [[nodiscard]] int mostPairs(unsigned screws) const;
    [[nodiscard]] Span spanOf(Index quantity, double range, double grain, int &pairs) const;
    void search(unsigned screws);
    void beginRound(unsigned screws);
    [[nodiscard]] Score hopedFor(const Score &score, std::size_t depth) const;
    [[nodiscard]] double leastCloseness(unsigned screws);
    [[nodiscard]] bool addUntouched(Score &score);
    void sortOrder();
    void setHopes(std::size_t first, Hopes &hopes) const;
    /// By how much and in what steps the screws to come can change a value.
    struct Freedom {
        double range = 0;
        double grain = 0;
    };
    void hopeForValue(Index quantity, const Freedom &freedom, Hope &hope) const;
    [[nodiscard]] double grainOf(Index one, Index other) const;
    [[nodiscard]] bool promising(const Score &score, std::size_t depth) const;
    enum class Side { Up, Down };
    [[nodiscard]] bool sideIsDone(std::size_t depth, int steps, Side side, const Score &before) const;
    void visit(std::size_t depth, const Score &score);
    void turnLast(Index quantity, const Score &score);
    void turnEach(std::size_t depth, const Score &score);
    void turnTo(std::size_t depth, int steps, const Score &score);
    [[nodiscard]] bool addOwn(Index quantity, Score &score);
    [[nodiscard]] bool addDrop(Score &score);
    [[nodiscard]] bool addAt(Index quantity, Score &score) const;
    [[nodiscard]] double closenessAt(Index quantity) const;
    void keep(const Score &score);

    [[nodiscard]] bool turns(Index quantity) const { return m_turns[quantity]; }
    [[nodiscard]] double rangeOf(Index quantity) const;
    [[nodiscard]] Line line(Index quantity, double perStep) const;

    const NoteProblem &m_problem;
    Aim m_aim;
    Standing m_standing;                                    ///< with the screws turned that stand so far
    std::array<double, catalogue::quantityCount> m_touch{}; ///< change of aftertouch per base unit of each
    std::array<bool, catalogue::quantityCount> m_turns{};   ///< may be turned in this round
    std::array<Index, tiedScrews.size()> m_order{};         ///< of this round, without drop
    std::size_t m_count = 0;
    std::size_t m_keyDepth = 0; ///< of key height where dip is turned too; else beyond all
    Hopes m_hopes{};
    Hopes m_keyedHopes{}; ///< beyond m_keyDepth: with key height standing
    Steps m_steps{};
    NoteAnswer m_best{};
};

} // namespace hammerline::action
