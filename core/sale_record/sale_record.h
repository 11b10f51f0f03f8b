#pragma once
// The regulation record as a value: every figure and verdict that the paper will show, no layout and no words of
// the page. Built by pure assembly from what the logbook holds, so that it can be tested without a file and written as JSON.

#include "analysis/analysis.h"
#include "instrument/instrument.h"
#include "outcome/outcome.h"
#include "readings/readings.h"
#include "tolerance/judge.h"

#include <optional>
#include <string>
#include <vector>

namespace hammerline::sale_record {

/// One pass with everything the record says of it.
struct PassPart {
    readings::Pass pass{};
    std::vector<readings::Reading> readings{};
    readings::ValueTable values{};
    tolerance::Judgement judgement{};
    analysis::Summaries summaries{};
};

/// Cautions that apply to this instrument; the page words them.
enum class Caution { StringTension, TallUprightTips, LeadInKeys, IvoryLaw, Dust, ClimateMovesIt };

struct SaleRecord {
    instrument::Instrument instrument{};
    tolerance::ToleranceSet set{};
    readings::Instant issued{};
    std::string issuedBy{};
    std::string programVersion{};
    std::optional<PassPart> asFound{}; ///< the first as-found pass with readings
    PassPart asLeft{};                 ///< the newest pass with readings that is not the as-found one, or that one alone
    analysis::Comparisons change{};    ///< as found -> as left; empty without an as-found pass
    /// Out, marginal, uneven or missing as left, worst first.
    std::vector<tolerance::Verdict> exceptions{};
    std::vector<Caution> cautions{};

    /// Judged pairs as left: how many there are, and how many are inside (in or marginal).
    [[nodiscard]] int judgedPairs() const;
    [[nodiscard]] int pairsInside() const;
};

struct RecordInput {
    instrument::Instrument instrument{};
    tolerance::ToleranceSet set{};
    /// Every pass of the instrument with its readings, any order.
    std::vector<std::pair<readings::Pass, std::vector<readings::Reading>>> passes{};
    readings::Instant issued{};
    std::string issuedBy{};
    std::string programVersion{};
};

/// Refused where no pass has a reading, or the set is for the other action.
[[nodiscard]] outcome::Outcome<SaleRecord> assemble(const RecordInput &input);

} // namespace hammerline::sale_record
