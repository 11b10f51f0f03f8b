#include "analysis/study_plan.h"

#include "analysis/inside/random_below.h"

#include <algorithm>
#include <set>

namespace hammerline::analysis {

namespace {

bool isOneLine(const std::string &name)
{
    return std::ranges::none_of(name, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
}

void checkPeople(const std::vector<std::string> &people, std::vector<outcome::Fault> &faults)
{
    if (people.size() < 2 || people.size() > mostPeople)
        faults.push_back({.problem = "a study takes 2 to " + std::to_string(mostPeople) + " people, not " +
                                     std::to_string(people.size())});
    std::set<std::string> seen;
    for (const std::string &person : people) {
        if (person.empty() || !isOneLine(person))
            faults.push_back({.problem = "each person needs a name on one line"});
        else if (!seen.insert(person).second)
            faults.push_back({.problem = "\"" + person + "\" is named twice; once would be right"});
    }
}

template <typename Thing>
void shuffle(std::vector<Thing> &things, std::mt19937_64 &numbers)
{
    inside::shuffleFirst(things, things.size(), numbers);
}

} // namespace

std::vector<outcome::Fault> faultsOf(const StudyPlan &plan)
{
    std::vector<outcome::Fault> faults;
    if (plan.notes.size() < 2)
        faults.push_back({.problem = "a study takes two notes at least"});
    if (std::ranges::adjacent_find(plan.notes, std::greater_equal<>{}) != plan.notes.end())
        faults.push_back({.problem = "the notes must rise, each of them once"});
    checkPeople(plan.people, faults);
    if (plan.takes < 2 || plan.takes > mostTakes)
        faults.push_back({.problem = "each person reads each note 2 to " + std::to_string(mostTakes) + " times, not " +
                                     std::to_string(plan.takes)});
    return faults;
}

std::vector<StudyStop> orderOf(const StudyPlan &plan)
{
    std::mt19937_64 numbers(plan.seed);
    std::vector<StudyStop> order;
    for (int take = 1; take <= plan.takes; ++take) {
        std::vector<std::string> people = plan.people;
        shuffle(people, numbers);
        for (const std::string &person : people) {
            std::vector<keyboard::Note> notes = plan.notes;
            shuffle(notes, numbers);
            for (const keyboard::Note note : notes)
                order.push_back({note, person, take});
        }
    }
    return order;
}

} // namespace hammerline::analysis
