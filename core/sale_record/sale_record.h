#pragma once
// The regulation record as a value: every figure and verdict that the paper will show, no layout and no words of
// the page. Built by pure assembly from what the logbook holds, so that it can be tested without a file and written as
// JSON.

#include "analysis/analysis.h"
#include "dossier/dossier.h"
#include "instrument/instrument.h"
#include "outcome/outcome.h"
#include "readings/readings.h"
#include "sale_record/cautions.h"
#include "tolerance/judge.h"

#include <map>
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

/// JPEG copies of photographs by their digest.
using Pictures = std::map<std::string, std::string>;

struct SaleRecord {
    instrument::Instrument instrument{};
    /// Work, departures, condition and photographs. The sale is empty unless the input asks for it.
    dossier::Dossier dossier{};
    Pictures pictures{};
    tolerance::ToleranceSet set{};
    readings::Instant issued{};
    std::string issuedBy{};
    std::string programVersion{};
    /// The newest as-left or recheck pass; where there is none, the newest setting pass; where there is none either,
    /// the newest pass at all (of an instrument that was measured as it came and no more). Its purpose tells.
    PassPart asLeft{};
    /// The first as-found pass of the round of work that asLeft ends: the first since an earlier round was left. Absent
    /// where there is none, or where asLeft is that pass itself.
    std::optional<PassPart> asFound{};
    analysis::Comparisons change{}; ///< as found -> as left; empty without an as-found pass
    /// Out, marginal, uneven or missing as left, worst first in half-widths; those without one come last, missing
    /// after the others; equals by quantity, then note.
    std::vector<tolerance::Verdict> exceptions{};
    std::vector<Caution> cautions{};

    /// Judged pairs as left: how many there are (missing ones too), and how many are inside (in or marginal).
    [[nodiscard]] int judgedPairs() const;
    [[nodiscard]] int pairsInside() const;
    /// Quantities that the action has and nobody read as left, in the order of the catalogue.
    [[nodiscard]] std::vector<catalogue::Quantity> notMeasured() const;
};

struct RecordInput {
    instrument::Instrument instrument{};
    dossier::Dossier dossier{};
    Pictures pictures{};
    bool tellSale = false; ///< buyer and price go into the record
    tolerance::ToleranceSet set{};
    /// Every pass of the instrument with its readings, any order; those without readings are passed over.
    std::vector<std::pair<readings::Pass, std::vector<readings::Reading>>> passes{};
    readings::Instant issued{};
    std::string issuedBy{};
    std::string programVersion{};
};

/// Judged pairs of one pass, and those of them that are inside (in or marginal).
[[nodiscard]] int judgedPairsOf(const PassPart &part);
[[nodiscard]] int pairsInsideOf(const PassPart &part);

/// Refused where no pass has a reading, or the set is for the other action.
[[nodiscard]] outcome::Outcome<SaleRecord> assemble(const RecordInput &input);

} // namespace hammerline::sale_record
