#include "logbook/gauge_studies.h"
#include "logbook/inside/broken.h"
#include "logbook/inside/store.h"
#include "logbook/inside/study_rows.h"

#include <algorithm>

namespace hammerline::logbook {

namespace {

using inside::gaugeStudyTable;
using inside::gaugeTrialTable;

bool planned(const analysis::StudyPlan &plan, const analysis::StudyStop &stop)
{
    return std::ranges::find(plan.notes, stop.note) != plan.notes.end() &&
           std::ranges::find(plan.people, stop.person) != plan.people.end() && stop.take >= 1 &&
           stop.take <= plan.takes;
}

std::string subjectOf(const PlannedStudy &study)
{
    return study.gauge.name + ", " + std::string(catalogue::idOf(study.quantity));
}

std::string subjectOf(const PlannedStudy &study, const analysis::StudyStop &stop)
{
    return std::string(catalogue::idOf(study.quantity)) + ' ' + stop.note.name() + ", " + stop.person + ", take " +
           std::to_string(stop.take);
}

} // namespace

std::vector<outcome::Fault> faultsOf(const PlannedStudy &study)
{
    auto faults = analysis::faultsOf(study.plan);
    const auto controls = [](char c) { return static_cast<unsigned char>(c) < 0x20; };
    if (study.gauge.name.empty() || std::ranges::any_of(study.gauge.name, controls))
        faults.push_back({.problem = "the gauge needs a name on one line"});
    return faults;
}

GaugeStudies::GaugeStudies(Logbook &book) : m_inside(book.m_inside.get()) {}

std::vector<PlannedStudy> GaugeStudies::all() const
{
    const inside::Use query = m_inside->database.use(gaugeStudyTable().allStandingSql());
    std::vector<PlannedStudy> found;
    while (query->step())
        found.push_back(inside::studyOf(inside::rowOf(gaugeStudyTable(), *query), m_inside->database.path()));
    return found;
}

std::optional<PlannedStudy> GaugeStudies::find(StudyId study) const
{
    const inside::Cell key = study;
    const auto row = inside::newestVersion(m_inside->database, gaugeStudyTable(), {&key, 1});
    return row && !row->withdrawn() ? std::optional(inside::studyOf(*row, m_inside->database.path())) : std::nullopt;
}

outcome::Outcome<PlannedStudy> GaugeStudies::plan(PlannedStudy study, const Stamp &stamp)
{
    if (auto faults = faultsOf(study); !faults.empty())
        return faults;
    auto writer = m_inside->writer();
    study.id = m_inside->nextId("SELECT max(study) FROM gauge_study");
    study.gauge.expandedUncertainty = {};
    study.at = stamp.at;
    study.person = stamp.person;
    writer.add(gaugeStudyTable(), {study.id}, inside::valuesOf(study));
    static_cast<void>(writer.commit({.stamp = stamp, .name = "gauge-study-planned", .subject = subjectOf(study)}));
    return study;
}

std::vector<ReadTrial> GaugeStudies::trials(StudyId study) const
{
    const auto found = find(study);
    if (!found)
        return {};
    const inside::Use query = m_inside->database.use(gaugeTrialTable().standingSql());
    query->bind(1, study);
    std::vector<ReadTrial> trials;
    while (query->step())
        trials.push_back(inside::trialOf(inside::rowOf(gaugeTrialTable(), *query),
                                         catalogue::infoOf(found->quantity).dimension, m_inside->database.path()));
    return trials;
}

outcome::Outcome<DeedId> GaugeStudies::enter(StudyId study, const analysis::StudyStop &stop, units::Amount value,
                                             const std::string &typed, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto found = find(study);
    if (!found)
        inside::throwRefused(m_inside->database.path(), "there is no gauge study " + std::to_string(study));
    if (!planned(found->plan, stop))
        return outcome::Fault{.problem = "the study does not ask for " + subjectOf(*found, stop)};
    if (value.dimension() != catalogue::infoOf(found->quantity).dimension)
        return outcome::Fault{.problem = std::string("a value in ") +
                                         units::displaySymbol(catalogue::infoOf(found->quantity).dimension) +
                                         " would be right"};
    const bool stood = writer.add(gaugeTrialTable(), inside::keysOf(study, stop),
                                  inside::valuesOf({.stop = stop, .value = value, .typed = typed, .at = stamp.at}));
    if (stood)
        return outcome::Fault{.problem = subjectOf(*found, stop) + " was entered already; take that back first"};
    return writer.commit({.stamp = stamp, .name = "gauge-trial-entered", .subject = subjectOf(*found, stop)}).id;
}

bool GaugeStudies::strike(StudyId study, const Stamp &stamp, const std::string &reason)
{
    auto writer = m_inside->writer();
    const auto found = find(study);
    if (!found)
        return false;
    writer.add(gaugeStudyTable(), {study}, {});
    static_cast<void>(
        writer.commit({.stamp = stamp, .name = "gauge-study-struck", .subject = subjectOf(*found), .reason = reason}));
    return true;
}

std::vector<analysis::Trial> trialsOf(const std::vector<ReadTrial> &read)
{
    std::vector<analysis::Trial> trials;
    for (const ReadTrial &trial : read)
        trials.push_back({trial.stop.note, trial.stop.person, trial.stop.take, trial.value});
    return trials;
}

} // namespace hammerline::logbook
