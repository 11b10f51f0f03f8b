#pragma once
// What a shop lead decides about a pass, as values: items accepted, items sent back, a pass signed, a pass reopened, a
// sample drawn to be read again. The logbook keeps them, the review goes by them, the record prints them.
//
// An item is a pair of quantity and note that is out, marginal, uneven or missing. A decision about an item is one
// about its value: where the note is read again and has another value, or the same value has come to be a graver kind
// (under a tighter set), the decision no longer holds and the item is open again.

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "readings/readings.h"
#include "tolerance/judge.h"
#include "units/units.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::decisions {

/// What makes a pair an item. A pair that is out or marginal and uneven besides is named by the graver of the two.
enum class Kind { Out, Marginal, Uneven, Missing };
[[nodiscard]] std::string_view idOf(Kind kind); ///< "out", "marginal", "uneven", "missing"
[[nodiscard]] std::optional<Kind> findKind(std::string_view id);
/// Absent: the verdict makes no item.
[[nodiscard]] std::optional<Kind> kindOf(const tolerance::Verdict &verdict);

/// One item accepted, or sent back.
struct Decision {
    catalogue::Quantity quantity{};
    keyboard::Note note{};
    Kind kind = Kind::Out;
    std::optional<units::Amount> value{}; ///< mean of the takes that it was about; absent: there was none
    std::string words{};                  ///< why it is accepted, or what to do; never empty
    std::string person{};
    readings::Instant at{};

    /// Is it about this note as it is now?
    [[nodiscard]] bool isOf(catalogue::Quantity ofQuantity, keyboard::Note ofNote) const
    {
        return quantity == ofQuantity && note == ofNote;
    }
    [[nodiscard]] bool holds(const std::optional<units::Amount> &valueNow, Kind kindNow) const;
    bool operator==(const Decision &) const = default;
};
using Concession = Decision;
using SentBack = Decision;

/// One change of a pass's standing. A pass is open in revision 1 from the start, which is no change.
struct StandingChange {
    enum class Change { Signed, Reopened };
    Change change = Change::Signed;
    int revision = 1; ///< that was signed, or that was begun
    std::string person{};
    readings::Instant at{};
    std::string words{}; ///< a remark to the signature; why it was reopened
    bool operator==(const StandingChange &) const = default;
};
[[nodiscard]] std::string_view idOf(StandingChange::Change change); ///< "signed", "reopened"
[[nodiscard]] std::optional<StandingChange::Change> findChange(std::string_view id);

/// Every change of standing of one pass, oldest first.
using Standing = std::vector<StandingChange>;
[[nodiscard]] bool isSigned(const Standing &standing);
/// Of the pass as it is now, from 1.
[[nodiscard]] int revisionOf(const Standing &standing);
/// Who signed the pass as it is now, and when; null where it is open.
[[nodiscard]] const StandingChange *signatureOf(const Standing &standing);

/// All that was decided about one pass; decisions that no longer hold are among them.
struct PassDecisions {
    Standing standing{};
    std::vector<Concession> concessions{}; ///< by quantity, then note
    std::vector<SentBack> sentBack{};      ///< by quantity, then note
    bool operator==(const PassDecisions &) const = default;
};

/// Null where there is none for the pair.
[[nodiscard]] const Decision *findDecision(const std::vector<Decision> &among, catalogue::Quantity quantity,
                                           keyboard::Note note);

/// A pass that reads a random sample of the notes of another again. The sample follows from the seed
/// (analysis/draw_sample.h), which is kept so that anybody can see that it was drawn and not chosen.
struct SpotCheck {
    readings::PassId checked = 0; ///< the pass whose notes are read again
    std::uint32_t seed = 0;
    std::vector<keyboard::Note> notes{}; ///< the sample, rising
    std::vector<catalogue::Quantity> quantities{};
    bool operator==(const SpotCheck &) const = default;
};

} // namespace hammerline::decisions
