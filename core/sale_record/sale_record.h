#pragma once
// The regulation record as a value: every figure and verdict that the paper will show, no layout and no words of
// the page. Built by pure assembly from what the logbook holds, so that it can be tested without a file and written as
// JSON.

#include "analysis/analysis.h"
#include "analysis/drift.h"
#include "decisions/decisions.h"
#include "dossier/dossier.h"
#include "instrument/instrument.h"
#include "outcome/outcome.h"
#include "readings/readings.h"
#include "sale_record/accepted.h"
#include "sale_record/cautions.h"
#include "sale_record/second_reading.h"
#include "tolerance/judge.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace hammerline::sale_record {

/// Where the history of the logbook stood when the record was made. Carried out of the house by the record, it shows a
/// history that was written anew with all its digests.
struct HistoryPin {
    std::int64_t deed = 0; ///< number of the newest entry; 0: the record comes from no logbook
    std::string digest{};  ///< the one that chains that entry to all before it, 64 hex digits
    bool operator==(const HistoryPin &) const = default;
};

/// Somebody who stands for the readings as left.
struct Signature {
    std::string person{};
    readings::Instant at{};
    int revision = 1;     ///< of the pass that was signed
    std::string reason{}; ///< why there is a later revision; empty for the first
    bool operator==(const Signature &) const = default;
};

/// The record that this one takes the place of.
struct Replaced {
    int revision = 1;
    readings::Instant issued{};
    std::string fileDigest{}; ///< SHA-256 of the whole file, 64 hex digits
    bool operator==(const Replaced &) const = default;
};

/// A fault that was felt and not measured ("blocking"), in the user's word for it.
struct FeltFault {
    keyboard::Note note{};
    std::string fault{};
    auto operator<=>(const FeltFault &) const = default;
};

/// One pass with everything the record says of it.
struct PassPart {
    readings::Pass pass{};
    std::vector<readings::Reading> readings{};
    readings::ValueTable values{};
    tolerance::Judgement judgement{};
    analysis::Summaries summaries{};
    std::vector<FeltFault> felt{}; ///< by note, then fault
};

/// What moved between the day on which the instrument was left and a recheck.
struct Since {
    readings::Pass before{};                ///< what the recheck is held against: analysis::leftBefore
    std::vector<analysis::Drift> changes{}; ///< as analysis::driftBetween gives them; empty: no note was read twice
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
    std::string workshop{}; ///< name and place of the workshop, in its own words; empty: not stated
    std::string programVersion{};
    std::string owner{}; ///< empty unless the input asks for the sale
    /// The newest as-left or recheck pass, but for a partial recheck; where there is none, the newest setting pass;
    /// where there is none either, the newest pass at all (of an instrument that was measured as it came and no more).
    /// Its purpose tells.
    PassPart asLeft{};
    /// The first as-found pass of the round of work that asLeft ends: the first since an earlier round was left. Absent
    /// where there is none, or where asLeft is that pass itself.
    std::optional<PassPart> asFound{};
    /// The newest recheck, where it read again only a part (less than wholeRecheck) of what asLeft holds: a sample does
    /// not take the place of the whole. Its judgement has no missing pair, for nobody promised to read them all again.
    std::optional<PassPart> recheck{};
    analysis::Comparisons change{}; ///< as found -> as left; empty without an as-found pass
    /// Present where the recheck, or asLeft that is one, has an instrument left before to be held against.
    std::optional<Since> since{};
    /// Out, marginal, uneven or missing as left, worst first in half-widths; those without one come last, missing
    /// after the others; equals by quantity, then note.
    std::vector<tolerance::Verdict> exceptions{};
    std::vector<SecondReading> secondReadings{}; ///< spot checks of asLeft that were read, oldest first
    std::vector<Caution> cautions{};
    HistoryPin history{};
    std::vector<Concession>
        concessions{}; ///< of asLeft and the recheck; by quantity in the order of the catalogue, then note
    std::vector<EarlierConcession> earlierConcessions{}; ///< accepted before, as accepted.h tells
    std::vector<Signature> signatures{};                 ///< oldest first
    std::optional<Replaced> replaces{};

    /// 1 for a record that replaces none, else one more than the one it replaces.
    [[nodiscard]] int revision() const { return replaces ? replaces->revision + 1 : 1; }
    /// Judged pairs as left: how many there are (missing ones too), and how many are inside (in or marginal).
    [[nodiscard]] int judgedPairs() const;
    [[nodiscard]] int pairsInside() const;
    /// The newest pass that the record tells of: the recheck, or asLeft.
    [[nodiscard]] const PassPart &newest() const { return recheck ? *recheck : asLeft; }
    /// Of the earlier concessions those that still speak of a note as it leaves.
    [[nodiscard]] std::vector<EarlierConcession> earlierThatStand() const;
    /// Quantities that the action has and nobody read as left, in the order of the catalogue.
    [[nodiscard]] std::vector<catalogue::Quantity> notMeasured() const;
};

struct RecordInput {
    instrument::Instrument instrument{};
    dossier::Dossier dossier{};
    Pictures pictures{};
    bool tellSale = false; ///< owner, buyer and price go into the record
    tolerance::ToleranceSet set{};
    /// Every pass of the instrument with its readings, any order; those without readings are passed over.
    std::vector<std::pair<readings::Pass, std::vector<readings::Reading>>> passes{};
    std::map<readings::PassId, std::vector<FeltFault>> felt{}; ///< what was felt in those passes, any order
    readings::Instant issued{};
    std::string issuedBy{};
    std::string workshop{};
    std::string programVersion{};
    std::vector<SpotCheckPass> spotChecks{}; ///< of any of the passes, oldest first
    HistoryPin history{};
    /// What was decided about the passes, as the logbook holds it. The concessions of asLeft and of every pass before
    /// it go into the record, and, where asLeft is signed, every signature of it.
    std::map<readings::PassId, decisions::PassDecisions> decided{};
    std::vector<Concession> concessions{}; ///< beside those decided; any order
    std::vector<Signature> signatures{};   ///< beside those decided; any order
    std::optional<Replaced> replaces{};
};

/// A recheck that read at least this part of the pairs read before stands for the whole instrument. House rule, no
/// source: a note or two are passed over in any pass.
inline constexpr double wholeRecheck = 0.9;

/// Judged pairs of one pass, and those of them that are inside (in or marginal).
[[nodiscard]] int judgedPairsOf(const PassPart &part);
[[nodiscard]] int pairsInsideOf(const PassPart &part);
/// Of those inside the ones that are in by the rule of the set: marginal ones, which a guarded rule knows, are not.
[[nodiscard]] int pairsInOf(const PassPart &part);
/// Pairs inside (in or marginal) that lie nearer to a limit than their doubt (gauge, people, how finely it was read
/// off).
[[nodiscard]] int pairsInDoubtOf(const PassPart &part);

/// Refused where no pass has a reading, or the set is for the other action.
[[nodiscard]] outcome::Outcome<SaleRecord> assemble(const RecordInput &input);

} // namespace hammerline::sale_record
