#pragma once
// Taking a gauge study, without a widget: who reads which note now, and what a typed value means.
//
// The stops come in the order that was drawn with the plan; the first without a trial is asked for, so the study goes
// on after a restart, and in another window, where it stood. A value is on disk before the next is asked for. The last
// one can be mended: it is taken back (and stays in the history) and asked for again. No value that was read is ever
// told from here; whoever reads is to be as blind as on the first note.

#include "logbook/gauge_studies.h"

#include <functional>
#include <optional>
#include <string_view>
#include <vector>

namespace hammerline::study_desk {

using Clock = std::function<readings::Instant()>;

class Taking {
public:
    /// The logbook outlives it. The study is there.
    Taking(logbook::Logbook &book, logbook::PlannedStudy study, Clock clock);

    [[nodiscard]] const logbook::PlannedStudy &study() const { return m_study; }
    /// Absent: every trial is there.
    [[nodiscard]] std::optional<analysis::StudyStop> asked() const;
    /// Who read the stop before the asked one; empty at the first.
    [[nodiscard]] std::string personBefore() const;
    [[nodiscard]] std::size_t taken() const { return m_taken; }
    [[nodiscard]] std::size_t all() const { return m_order.size(); }

    /// Typed as at the bench: a bare number is in the unit of the study. A fault: nothing was stored and the stop is
    /// still asked for.
    [[nodiscard]] outcome::Outcome<analysis::StudyStop> enter(std::string_view typed);
    /// Asks for the trial entered last again. False where there is none.
    bool mendLast();
    /// Reads anew what another window may have entered.
    void refresh();

private:
    logbook::Logbook &m_book;
    logbook::PlannedStudy m_study;
    Clock m_clock;
    std::vector<analysis::StudyStop> m_order;
    std::size_t m_at = 0;    ///< asked for
    std::size_t m_taken = 0; ///< trials that are there
};

} // namespace hammerline::study_desk
