#pragma once
// Gauge studies in a logbook: what was planned, and each trial as it was read.
//
// A study stands by itself, beside the instruments and their passes: a gauge goes from one instrument to the next. Its
// deeds name neither, and so a study is not handed over with an instrument. For the rest all is as with the
// readings (logbook.h): one deed a change, on disk when the call returns, covered by the history and its check,
// corrected by newer versions, and Logbook::undo and redo take its deeds too.
//
// Names of deeds: gauge-study-planned, gauge-trial-entered, gauge-study-struck.

#include "analysis/study_plan.h"
#include "catalogue/catalogue.h"
#include "logbook/logbook.h"
#include "readings/readings.h"
#include "units/parse_amount.h"

#include <optional>
#include <string>
#include <vector>

namespace hammerline::logbook {

/// Number within one logbook. 0: not stored yet.
using StudyId = std::int64_t;

struct PlannedStudy {
    StudyId id = 0;
    readings::Gauge gauge{}; ///< by its name the passes find it; its uncertainty is what the study is to tell
    catalogue::Quantity quantity = catalogue::Quantity::LetOff;
    analysis::StudyPlan plan{};
    units::Unit unit = units::Unit::Millimetre; ///< of a bare decimal
    instrument::InstrumentId instrument = 0;    ///< whose notes are read; 0: not said
    readings::Instant at{};                     ///< when it was planned, and by whom
    std::string person{};
    bool operator==(const PlannedStudy &) const = default;
};

/// Nothing where it can be taken: a gauge with a name on one line, and a plan that can.
[[nodiscard]] std::vector<outcome::Fault> faultsOf(const PlannedStudy &study);

struct ReadTrial {
    analysis::StudyStop stop{};
    units::Amount value{};
    std::string typed{};
    readings::Instant at{};
    bool operator==(const ReadTrial &) const = default;
};

class GaugeStudies {
public:
    /// The logbook outlives it.
    explicit GaugeStudies(Logbook &book);

    /// Oldest first.
    [[nodiscard]] std::vector<PlannedStudy> all() const;
    [[nodiscard]] std::optional<PlannedStudy> find(StudyId study) const;
    /// As stored: with its id, and when and by whom out of the stamp.
    [[nodiscard]] outcome::Outcome<PlannedStudy> plan(PlannedStudy study, const Stamp &stamp);
    /// By note, person and take, whatever the order in which they were read.
    [[nodiscard]] std::vector<ReadTrial> trials(StudyId study) const;
    /// A fault where the plan has no such stop, where a trial stands there already (somebody else was there meanwhile),
    /// or where a mass is entered for a length.
    [[nodiscard]] outcome::Outcome<DeedId> enter(StudyId study, const analysis::StudyStop &stop, units::Amount value,
                                                 const std::string &typed, const Stamp &stamp);
    /// The study is no longer among `all`; its trials stay in the history. False where it is not there.
    bool strike(StudyId study, const Stamp &stamp, const std::string &reason);

    /// As for a pass: the newest deed of the study that can be taken back, and done again.
    [[nodiscard]] std::optional<Deed> undoable(StudyId study) const;
    [[nodiscard]] std::optional<Deed> redoable(StudyId study) const;

private:
    Logbook::Inside *m_inside;
};

/// The trials as analysis::gaugeStudy takes them.
[[nodiscard]] std::vector<analysis::Trial> trialsOf(const std::vector<ReadTrial> &read);

} // namespace hammerline::logbook
