#include "action/learning.h"

#include "action/lever_model.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace hammerline::action {

using catalogue::Quantity;

namespace {

constexpr int fewestTrials = 3;
constexpr double leastGain = 0.3, mostGain = 3;

/// What was asked of one quantity of one note, by rail and by screw, mm or g.
struct Asked {
    double byRail = 0;
    double byScrew = 0;
};
using AskedOfNote = std::map<Quantity, Asked>;

double railChangeAt(const RailSetting &move, const keyboard::NoteRange &range, keyboard::Note note)
{
    const double bass = move.bass.inDisplay(), treble = move.treble.inDisplay();
    const int steps = range.count() - 1;
    return steps == 0 ? bass : bass + (treble - bass) * (note.number() - range.first.number()) / steps;
}

RailSetting askedOf(const RailMove &move)
{
    return move.setting.value_or(RailSetting{move.bass, move.treble});
}

class Work {
public:
    Work(const DoneWork &done, const PlanTask &before)
        : m_task(before), m_ratios(ownRatios(before.values, before.compass))
    {
        for (const RailMove &move : done.rails)
            for (const Rail &rail : before.setup.rails)
                if (rail.id == move.rail)
                    addRail(move, rail.notes.value_or(before.compass));
        for (const Move &move : done.moves)
            m_asked[move.note][move.adjust].byScrew += move.by.inDisplay();
    }

    /// Change of a quantity that came from elsewhere on the note; absent where it moved itself in two ways.
    std::optional<double> carriedTo(Quantity quantity, keyboard::Note note) const
    {
        const auto found = m_asked.find(note);
        if (found == m_asked.end())
            return 0;
        const double ratio = ratioOf(m_ratios, note, m_task.sections, m_task.setup.leverRatio).ratio;
        double carried = 0;
        for (const auto &[moved, asked] : found->second) {
            if (moved == quantity && asked.byRail != 0 && asked.byScrew != 0)
                return std::nullopt;
            if (moved != quantity)
                carried += (asked.byRail + asked.byScrew) * carriedBy(moved, quantity, m_task.setup.action, ratio);
        }
        return carried;
    }

private:
    void addRail(const RailMove &move, const keyboard::NoteRange &range)
    {
        for (int n = m_task.compass.first.number(); n <= m_task.compass.last.number(); ++n)
            if (range.contains(keyboard::Note(n)))
                m_asked[keyboard::Note(n)][move.quantity].byRail +=
                    railChangeAt({move.bass, move.treble}, range, keyboard::Note(n));
    }

    const PlanTask &m_task;
    OwnRatios m_ratios;
    std::map<keyboard::Note, AskedOfNote> m_asked;
};

void addTrial(Trial trial, const Work &work, const PlanTask &before, const readings::ValueTable &after,
              std::vector<Trial> &trials)
{
    const auto was = before.values.value(trial.adjust, trial.note), is = after.value(trial.adjust, trial.note);
    const auto carried = work.carriedTo(trial.adjust, trial.note);
    if (!was || !is || !carried || trial.asked == 0)
        return;
    trial.answered = (*is - *was).inDisplay() - *carried;
    trials.push_back(std::move(trial));
}

struct Weighted {
    double value;
    double weight;
};

/// The middle of the weight; of an even split the mean of the two.
double weightedMedian(std::vector<Weighted> items)
{
    std::sort(items.begin(), items.end(), [](const Weighted &a, const Weighted &b) { return a.value < b.value; });
    double whole = 0, sum = 0;
    for (const Weighted &item : items)
        whole += item.weight;
    for (std::size_t i = 0; i < items.size(); ++i) {
        sum += items[i].weight;
        if (std::abs(sum - whole / 2) < 1e-12 * whole && i + 1 < items.size())
            return (items[i].value + items[i + 1].value) / 2;
        if (sum > whole / 2)
            return items[i].value;
    }
    return items.back().value;
}

/// How many of the smallest and of the largest to leave out so that the median is between the next ones with at least
/// 95 % (sign test: each value is as likely below the median as above).
std::optional<std::size_t> cutForSign(std::size_t count)
{
    double chance = std::pow(0.5, static_cast<double>(count)), tail = chance;
    if (2 * tail > 0.05)
        return std::nullopt;
    std::size_t cut = 0;
    while (true) {
        chance *= static_cast<double>(count - cut) / static_cast<double>(cut + 1);
        if (2 * (tail + chance) > 0.05)
            return cut;
        tail += chance;
        ++cut;
    }
}

Learned learnFrom(const std::vector<const Trial *> &trials)
{
    Learned learned{
        .adjust = trials.front()->adjust, .rail = trials.front()->rail, .trials = static_cast<int>(trials.size())};
    std::vector<Weighted> gains, perTurn;
    std::vector<double> plain;
    for (const Trial *trial : trials) {
        gains.push_back({trial->answered / trial->asked, std::abs(trial->asked)});
        plain.push_back(gains.back().value);
        if (trial->turns && *trial->turns != 0)
            perTurn.push_back({trial->answered / *trial->turns, std::abs(*trial->turns)});
    }
    learned.gain = weightedMedian(gains);
    if (static_cast<int>(perTurn.size()) >= fewestTrials)
        learned.displayPerTurn = weightedMedian(perTurn);
    std::sort(plain.begin(), plain.end());
    if (const auto cut = cutForSign(plain.size())) {
        learned.low = plain[*cut];
        learned.high = plain[plain.size() - 1 - *cut];
    }
    return learned;
}

const keyboard::Section *sectionOf(const keyboard::Sections &sections, keyboard::Note note)
{
    for (const keyboard::Section &section : sections)
        if (section.notes.contains(note))
            return &section;
    return nullptr;
}

/// In whole steps, no further than the rail goes.
units::Amount settingFor(units::Amount by, double gain, const Rail &rail)
{
    const std::int64_t most = rail.most.baseCount() / rail.step.baseCount() * rail.step.baseCount();
    const units::Amount asked = askedFor(by, gain, rail.step);
    return {asked.dimension(), std::clamp(asked.baseCount(), -most, most)};
}

} // namespace

std::vector<Trial> trialsOf(const DoneWork &done, const PlanTask &before, const readings::ValueTable &after)
{
    const Work work(done, before);
    std::vector<Trial> trials;
    for (const RailMove &move : done.rails)
        for (const Rail &rail : before.setup.rails) {
            const keyboard::NoteRange range = rail.notes.value_or(before.compass);
            if (rail.id != move.rail)
                continue;
            for (const auto &[note, value] : before.values.column(rail.quantity))
                if (range.contains(note))
                    addTrial({rail.quantity, rail.id, note, railChangeAt(askedOf(move), range, note)}, work, before,
                             after, trials);
        }
    for (const Move &move : done.moves)
        addTrial({move.adjust, {}, move.note, move.by.inDisplay(), 0, move.turns}, work, before, after, trials);
    return trials;
}

std::vector<Learned> learn(const std::vector<Trial> &trials, const keyboard::Sections &sections)
{
    std::map<std::tuple<Quantity, std::string, std::string>, std::vector<const Trial *>> groups;
    for (const Trial &trial : trials) {
        groups[{trial.adjust, trial.rail, {}}].push_back(&trial);
        if (const keyboard::Section *section = sectionOf(sections, trial.note))
            groups[{trial.adjust, trial.rail, section->name}].push_back(&trial);
    }
    std::vector<Learned> learned;
    for (const auto &[key, group] : groups) {
        if (static_cast<int>(group.size()) < fewestTrials)
            continue;
        learned.push_back(learnFrom(group));
        learned.back().section = std::get<2>(key);
    }
    return learned;
}

const Learned *findLearned(const std::vector<Learned> &learned, Quantity adjust, const std::string &rail,
                           keyboard::Note note, const keyboard::Sections &sections)
{
    const keyboard::Section *section = sectionOf(sections, note);
    const Learned *whole = nullptr;
    for (const Learned &each : learned) {
        if (each.adjust != adjust || each.rail != rail)
            continue;
        if (section && !each.section.empty() && each.section == section->name)
            return &each;
        if (each.section.empty())
            whole = &each;
    }
    return whole;
}

Plan withLearnedTurns(Plan plan, const std::vector<Learned> &learned, const keyboard::Sections &sections)
{
    for (Move &move : plan.moves) {
        const Learned *known = findLearned(learned, move.adjust, {}, move.note, sections);
        if (known && known->displayPerTurn && *known->displayPerTurn != 0)
            move.turns = move.by.inDisplay() / *known->displayPerTurn;
    }
    return plan;
}

Plan withLearnedAnswers(Plan plan, const std::vector<Learned> &learned, const PlanTask &task)
{
    plan = withLearnedTurns(std::move(plan), learned, task.sections);
    for (RailMove &move : plan.rails) {
        const Learned *known = findLearned(learned, move.quantity, move.rail, {}, {}); // no sections: the whole rail's
        const auto rail = std::ranges::find(task.setup.rails, move.rail, &Rail::id);
        if (!known || known->gain < leastGain || known->gain > mostGain || rail == task.setup.rails.end())
            continue;
        const RailSetting setting{settingFor(move.bass, known->gain, *rail),
                                  settingFor(move.treble, known->gain, *rail)};
        if (setting != RailSetting{move.bass, move.treble})
            move.setting = setting;
    }
    return plan;
}

units::Amount askedFor(units::Amount by, double gain, units::Amount step)
{
    if (!(gain > 0))
        return by;
    const double steps = static_cast<double>(by.baseCount()) / gain / static_cast<double>(step.baseCount());
    return {by.dimension(), std::llround(steps) * step.baseCount()};
}

} // namespace hammerline::action
