#pragma once
// What a finished study says, in figures and in plain language; and the uncertainty that passes take from it.

#include "analysis/study_intervals.h"
#include "logbook/gauge_studies.h"
#include "tolerance/tolerance.h"
#include "wording/number_form.h"

#include <QString>
#include <QStringList>

#include <map>
#include <optional>
#include <vector>

namespace hammerline::study_desk {

struct Findings {
    logbook::PlannedStudy study{};
    std::vector<analysis::Trial> trials{};
    analysis::GaugeStudy figures{};
    analysis::StudyIntervals intervals{};
    /// Half of the step that the gauge states, else of the finest that was typed (2.6 beside 2.57 is a zero left out),
    /// in mm or g. Absent where no step is known.
    std::optional<double> halfStep{};
    /// Of the gauge's variance, by that step. Absent where nothing varies either.
    std::optional<double> shareOfResolution{};
    /// Narrowest half-width among the notes of the study, in mm or g; absent without a set that judges them.
    std::optional<double> halfWidth{};
    /// What the set says of the notes of the study; empty without a set that judges them.
    std::map<keyboard::Note, tolerance::Limits> limits{};
};

/// Absent while trials are missing.
[[nodiscard]] std::optional<Findings> findingsOf(logbook::Logbook &book, const logbook::PlannedStudy &study,
                                                 const tolerance::ToleranceSet *set);

/// Unit of the study, digits of its gauge.
[[nodiscard]] wording::NumberForm formOf(const logbook::PlannedStudy &study);
/// A few sentences: where the spread comes from, how far a reading can be trusted, what would help most.
[[nodiscard]] QStringList sentencesOf(const Findings &findings);
/// "rule 3, let-off": gauge and quantity.
[[nodiscard]] QString nameOf(const logbook::PlannedStudy &study);
[[nodiscard]] QString dayOf(const logbook::PlannedStudy &study);

/// The newest finished study of lengths of each gauge, by the gauge's name: for passes.
[[nodiscard]] std::vector<Findings> newestOfEachGauge(logbook::Logbook &book);
/// The newest finished study of each quantity with each gauge: for tolerance sets.
[[nodiscard]] std::vector<Findings> newestOfEachQuantity(logbook::Logbook &book);
/// Expanded uncertainty of one reading (analysis::uncertaintyToJudgeBy), rounded up to the micrometre or milligram.
[[nodiscard]] units::Amount uncertaintyOf(const Findings &findings);
/// What passes with this gauge are to state: the same, 0 for a study of masses.
[[nodiscard]] units::Length expandedUncertaintyOf(const Findings &findings);
/// The step that goes with it, which it holds; 0: not known, or of masses.
[[nodiscard]] units::Length stepOf(const Findings &findings);

} // namespace hammerline::study_desk
