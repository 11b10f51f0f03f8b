#include "action/inside/one_screw.h"

#include <algorithm>
#include <cmath>

namespace hammerline::action {

namespace {

class TurnSearch {
public:
    TurnSearch(const Screw &screw, std::span<const Line> lines, Aim aim) : m_screw(screw), m_lines(lines), m_aim(aim) {}

    Turn run()
    {
        tryStep(0);
        if (m_screw.most == 0 || (m_aim == Aim::In && m_screw.minutes > 0 && everythingInside()))
            return m_best;
        for (const Line &line : m_lines)
            tryTargets(line);
        // Closeness alone is convex: where its least step has every pair inside, no step is better.
        if (m_allFeasible && everythingInside() && m_best.score.closeness <= m_leastCloseness)
            return m_best;
        tryStep(-m_screw.most);
        tryStep(m_screw.most);
        for (const Line &line : m_lines)
            tryLimits(line);
        return m_best;
    }

private:
    bool everythingInside() const
    {
        int judged = 0;
        for (const Line &line : m_lines)
            judged += line.term->judged ? 1 : 0;
        return m_best.feasible && m_best.score.pairs == judged;
    }

    void tryTargets(const Line &line)
    {
        if (!line.term->judged || line.term->slope <= 0)
            return;
        tryAround(line, line.term->target - line.slack);
        if (line.slack > 0)
            tryAround(line, line.term->target + line.slack);
    }

    void tryLimits(const Line &line)
    {
        const Term &term = *line.term;
        if (term.guarded)
            tryAround(line, -onTheLimit - line.slack);
        if (!term.judged)
            return;
        if (term.low > -unlimited)
            tryAround(line, term.low - line.slack);
        if (term.high < unlimited)
            tryAround(line, term.high + line.slack);
    }

    void tryAround(const Line &line, double x)
    {
        const double exact = (x - line.start) / line.perStep;
        if (exact <= -m_screw.most || exact >= m_screw.most) {
            tryStep(exact < 0 ? -m_screw.most : m_screw.most);
            return;
        }
        const double below = std::floor(exact);
        tryStep(static_cast<int>(below));
        tryStep(static_cast<int>(below) + 1);
    }

    void tryStep(int steps)
    {
        Score score{.minutes = steps == 0 ? 0 : m_screw.minutes};
        for (const Line &line : m_lines)
            if (!addTerm(*line.term, line.start + steps * line.perStep, line.slack, score)) {
                m_allFeasible = false;
                return;
            }
        m_leastCloseness = std::min(m_leastCloseness, score.closeness);
        if (!m_best.feasible || better(score, m_best.score, m_aim, sameForNotes))
            m_best = {.feasible = true, .steps = steps, .score = score};
    }

    const Screw &m_screw;
    std::span<const Line> m_lines;
    Aim m_aim;
    Turn m_best{};
    bool m_allFeasible = true; ///< of the steps tried
    double m_leastCloseness = unlimited;
};

} // namespace

Turn bestTurn(const Screw &screw, std::span<const Line> lines, Aim aim)
{
    return TurnSearch(screw, lines, aim).run();
}

} // namespace hammerline::action
