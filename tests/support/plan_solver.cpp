#include "support/plan_solver.h"

#include "action/lever_model.h"

#include <glpk.h>

#include <cmath>
#include <map>
#include <memory>
#include <utility>

namespace hammerline::support {

using action::PlanTask;
using catalogue::Quantity;
using keyboard::Note;

namespace {

/// A weighted sum of columns and a constant.
struct Linear {
    std::map<int, double> of{};
    double constant = 0;
    void add(int column, double factor) { of[column] += factor; }
    void add(const Linear &other, double factor)
    {
        constant += factor * other.constant;
        for (const auto &[column, weight] : other.of)
            of[column] += factor * weight;
    }
};

class Program {
public:
    Program() : m_program(glp_create_prob(), glp_delete_prob) { glp_set_obj_dir(m_program.get(), GLP_MIN); }

    int column(int kind, double low, double high)
    {
        const int added = glp_add_cols(m_program.get(), 1);
        glp_set_col_kind(m_program.get(), added, kind);
        if (std::isinf(high))
            glp_set_col_bnds(m_program.get(), added, GLP_LO, low, 0);
        else
            glp_set_col_bnds(m_program.get(), added, low == high ? GLP_FX : GLP_DB, low, high);
        return added;
    }
    /// low <= sum (infinite: no limit).
    void atLeast(const Linear &sum, double low)
    {
        const int row = glp_add_rows(m_program.get(), 1);
        std::vector<int> columns{0};
        std::vector<double> factors{0};
        for (const auto &[col, factor] : sum.of) {
            columns.push_back(col);
            factors.push_back(factor);
        }
        glp_set_mat_row(m_program.get(), row, static_cast<int>(columns.size()) - 1, columns.data(), factors.data());
        glp_set_row_bnds(m_program.get(), row, GLP_LO, low - sum.constant, 0);
    }
    void atMost(const Linear &sum, double high)
    {
        Linear negative;
        negative.add(sum, -1);
        atLeast(negative, -high);
    }

    bool minimise(const Linear &objective)
    {
        for (int col = 1; col <= glp_get_num_cols(m_program.get()); ++col)
            glp_set_obj_coef(m_program.get(), col, 0);
        for (const auto &[col, factor] : objective.of)
            glp_set_obj_coef(m_program.get(), col, factor);
        glp_iocp options;
        glp_init_iocp(&options);
        options.msg_lev = GLP_MSG_OFF;
        options.presolve = GLP_ON;
        options.tol_int = 1e-9;
        options.tol_obj = 1e-9;
        options.tm_lim = 60'000;
        return glp_intopt(m_program.get(), &options) == 0 && glp_mip_status(m_program.get()) == GLP_OPT;
    }
    double valueOf(const Linear &sum) const
    {
        double value = sum.constant;
        for (const auto &[col, factor] : sum.of)
            value += factor * glp_mip_col_val(m_program.get(), col);
        return value;
    }

private:
    std::unique_ptr<glp_prob, decltype(&glp_delete_prob)> m_program;
};

/// A note's values as sums of what can be turned, in mm or g.
using Values = std::map<Quantity, Linear>;

class PlanProgram {
public:
    PlanProgram(const PlanTask &task, const std::vector<Note> &notes, const RailSteps *standing = nullptr)
        : m_task(task), m_ratios(action::ownRatios(task.values, task.compass))
    {
        for (std::size_t i = 0; i < task.setup.rails.size(); ++i)
            if (standing)
                addStandingRail((*standing)[i]);
            else
                addRail(task.setup.rails[i]);
        for (const Note note : notes)
            addNote(note);
    }

    SolverAnswer solve()
    {
        SolverAnswer answer;
        Linear outside;
        outside.add(m_pairs, -1);
        if (!m_program.minimise(outside))
            return answer;
        answer.worth.pairs = static_cast<int>(std::lround(m_program.valueOf(m_pairs)));
        m_program.atLeast(m_pairs, answer.worth.pairs);
        const bool in = m_task.aim == action::Aim::In;
        const Linear &first = in ? m_minutes : m_closeness, &second = in ? m_closeness : m_minutes;
        if (!m_program.minimise(first))
            return answer;
        m_program.atMost(first, m_program.valueOf(first) + 1e-8);
        if (!m_program.minimise(second))
            return answer;
        answer.proved = true;
        answer.worth.minutes = m_program.valueOf(m_minutes);
        answer.worth.closeness = m_program.valueOf(m_closeness);
        answer.plan = plan();
        return answer;
    }

private:
    units::Amount turned(int column, units::Amount step) const
    {
        Linear steps;
        steps.add(column, 1);
        return {step.dimension(), step.baseCount() * std::lround(m_program.valueOf(steps))};
    }

    action::Plan plan() const
    {
        action::Plan plan;
        for (std::size_t i = 0; i < m_rails.size(); ++i) {
            const action::Rail &rail = m_task.setup.rails[i];
            const units::Amount bass = turned(m_rails[i].first, rail.step),
                                treble = turned(m_rails[i].second, rail.step);
            if (bass.baseCount() != 0 || treble.baseCount() != 0)
                plan.rails.push_back({.rail = rail.id, .quantity = rail.quantity, .bass = bass, .treble = treble});
        }
        for (const auto &[place, column] : m_turns) {
            const units::Amount by = turned(column, m_task.setup.adjustments.at(place.second).step);
            if (by.baseCount() != 0)
                plan.moves.push_back({.note = place.first, .adjust = place.second, .by = by});
        }
        return plan;
    }

    static int most(units::Amount limit, units::Amount step)
    {
        return static_cast<int>(limit.baseCount() / step.baseCount());
    }

    /// Whole steps either way that cost `minutes` where they are not 0; returns the column of the steps.
    int addTurn(int steps, int used)
    {
        const int column = m_program.column(GLP_IV, -steps, steps);
        Linear up, down;
        up.add(column, 1);
        up.add(used, -steps);
        down.add(column, 1);
        down.add(used, steps);
        m_program.atMost(up, 0);
        m_program.atLeast(down, 0);
        return column;
    }

    int addUse(double minutes)
    {
        const int used = m_program.column(GLP_BV, 0, 1);
        m_minutes.add(used, minutes);
        return used;
    }

    void addRail(const action::Rail &rail)
    {
        const int used = addUse(rail.minutes), steps = most(rail.most, rail.step);
        const int bass = addTurn(steps, used);
        m_rails.emplace_back(bass, rail.shape == action::RailShape::Linear ? addTurn(steps, used) : bass);
    }

    void addStandingRail(const std::pair<int, int> &steps)
    {
        m_rails.emplace_back(m_program.column(GLP_IV, steps.first, steps.first),
                             m_program.column(GLP_IV, steps.second, steps.second));
    }

    Linear railChange(Quantity quantity, Note note) const
    {
        Linear change;
        for (std::size_t i = 0; i < m_rails.size(); ++i) {
            const action::Rail &rail = m_task.setup.rails[i];
            const keyboard::NoteRange range = rail.notes.value_or(m_task.compass);
            if (rail.quantity != quantity || !range.contains(note))
                continue;
            const double span = range.count() > 1 ? range.count() - 1 : 1;
            const double share = (note.number() - range.first.number()) / span;
            change.add(m_rails[i].first, rail.step.inDisplay() * (1 - share));
            change.add(m_rails[i].second, rail.step.inDisplay() * share);
        }
        return change;
    }

    Values valuesBefore(Note note, double ratio) const
    {
        Values values;
        for (const auto &info : catalogue::all())
            if (const auto read = m_task.values.value(info.quantity, note))
                values[info.quantity].constant = read->inDisplay();
        if (!values.contains(Quantity::Aftertouch))
            if (const auto predicted = action::predictedAftertouch(m_task.values, note, ratio))
                values[Quantity::Aftertouch].constant = *predicted;
        return values;
    }

    void addNote(Note note)
    {
        const double r = action::ratioOf(m_ratios, note, m_task.sections, m_task.setup.leverRatio).ratio;
        Values values = valuesBefore(note, r);
        std::map<Quantity, Linear> changes;
        for (const auto &[quantity, adjustment] : m_task.setup.adjustments)
            if (m_task.values.value(quantity, note)) {
                const int turned = addTurn(most(adjustment.most, adjustment.step), addUse(adjustment.minutes));
                m_turns[{note, quantity}] = turned;
                changes[quantity].add(turned, adjustment.step.inDisplay());
            }
        for (const Quantity quantity : {Quantity::Blow, Quantity::LetOff, Quantity::Checking})
            changes[quantity].add(railChange(quantity, note), 1);
        carry(changes, r, values);
        for (auto &[quantity, value] : values)
            addValue(note, quantity, value);
    }

    /// The table of the lever model.
    void carry(std::map<Quantity, Linear> &changes, double r, Values &values) const
    {
        const auto add = [&](Quantity to, Quantity from, double factor) {
            if (const auto value = values.find(to); value != values.end())
                value->second.add(changes[from], factor);
        };
        const bool grand = m_task.setup.action == catalogue::ActionKind::Grand;
        for (const auto &info : catalogue::all())
            add(info.quantity, info.quantity, 1);
        add(Quantity::Aftertouch, Quantity::LetOff, 1 / r);
        add(Quantity::Drop, Quantity::LetOff, -1);
        add(grand ? Quantity::Aftertouch : Quantity::LostMotion, Quantity::Blow, -1 / r);
        add(Quantity::Aftertouch, Quantity::LostMotion, -1);
        add(Quantity::Aftertouch, Quantity::Dip, 1);
        add(Quantity::Aftertouch, Quantity::KeyHeight, 1);
        add(Quantity::Dip, Quantity::KeyHeight, 1);
    }

    void addValue(Note note, Quantity quantity, const Linear &value)
    {
        if (quantity != Quantity::KeyHeight && quantity != Quantity::Aftertouch)
            m_program.atLeast(value, 0);
        if (const auto limits = tolerance::limitsAt(m_task.set, quantity, note)) {
            addPair(*limits, value);
            if (const auto half = limits->halfWidth())
                addCloseness(value, limits->target.inDisplay(), *half);
        }
    }

    void addPair(const tolerance::Limits &limits, const Linear &value)
    {
        constexpr double far = 200; // further than anything can be turned, in mm or g
        const double w = limits.rule == tolerance::Rule::Guarded ? limits.expandedUncertainty.inDisplay() : 0;
        double low = limits.low ? limits.low->inDisplay() + w : -far;
        double high = limits.high ? limits.high->inDisplay() - w : 2 * far;
        if (low > high)
            low = high = (limits.low->inDisplay() + limits.high->inDisplay()) / 2;
        const int inside = m_program.column(GLP_BV, 0, 1);
        m_pairs.add(inside, 1);
        if (limits.low) {
            Linear above = value;
            above.add(inside, -far);
            m_program.atLeast(above, low - far);
        }
        if (limits.high) {
            Linear below = value;
            below.add(inside, far);
            m_program.atMost(below, high + far);
        }
    }

    void addCloseness(const Linear &value, double target, double half)
    {
        const int away = m_program.column(GLP_CV, 0, INFINITY);
        m_closeness.add(away, 1);
        for (const double sign : {1.0, -1.0}) {
            Linear bound;
            bound.add(away, 1);
            bound.add(value, -sign / half);
            m_program.atLeast(bound, -sign * target / half);
        }
    }

    const PlanTask &m_task;
    action::OwnRatios m_ratios;
    Program m_program;
    std::vector<std::pair<int, int>> m_rails; ///< columns of the two ends
    std::map<std::pair<Note, Quantity>, int> m_turns;
    Linear m_pairs, m_minutes, m_closeness;
};

std::vector<Note> allNotes(const PlanTask &task)
{
    std::vector<Note> notes;
    for (int number = task.compass.first.number(); number <= task.compass.last.number(); ++number)
        notes.emplace_back(number);
    return notes;
}

} // namespace

SolverAnswer bestBySolver(const PlanTask &task, const std::vector<Note> &notes)
{
    return PlanProgram(task, notes).solve();
}

SolverAnswer bestBySolver(const PlanTask &task)
{
    return bestBySolver(task, allNotes(task));
}

SolverAnswer bestNoteByNote(const PlanTask &task, const RailSteps &rails)
{
    SolverAnswer sum{.proved = true};
    for (std::size_t i = 0; i < rails.size(); ++i)
        if (rails[i] != std::pair(0, 0)) {
            const action::Rail &rail = task.setup.rails[i];
            sum.worth.minutes += rail.minutes;
            const auto by = [&rail](int steps) {
                return units::Amount(rail.step.dimension(), rail.step.baseCount() * steps);
            };
            sum.plan.rails.push_back({.rail = rail.id,
                                      .quantity = rail.quantity,
                                      .bass = by(rails[i].first),
                                      .treble = by(rails[i].second)});
        }
    for (const Note note : allNotes(task)) {
        const SolverAnswer one = PlanProgram(task, {note}, &rails).solve();
        sum.proved = sum.proved && one.proved;
        sum.worth.pairs += one.worth.pairs;
        sum.worth.minutes += one.worth.minutes;
        sum.worth.closeness += one.worth.closeness;
        sum.plan.moves.insert(sum.plan.moves.end(), one.plan.moves.begin(), one.plan.moves.end());
    }
    return sum;
}

} // namespace hammerline::support
