#pragma once
// What was accepted though it is not as promised. Some of it was accepted in the pass that the record speaks of; the
// rest in a pass before it, when nobody could know whether the note would be read again. A buyer is told of every one:
// what was accepted earlier and still stands as it was, and, in brief, what has been mended or accepted anew since.

#include "decisions/decisions.h"
#include "readings/readings.h"
#include "tolerance/judge.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::sale_record {

/// A pair that is not as promised and was accepted as it is.
struct Concession {
    catalogue::Quantity quantity{};
    keyboard::Note note{};
    std::optional<units::Amount> value{}; ///< what was accepted; absent: that it was not read
    std::string reason{};
    std::string person{};
    readings::Instant at{};
    bool operator==(const Concession &) const = default;
};

/// What has become of a pair that was accepted in an earlier pass.
enum class Fate {
    Stands,        ///< not read since, or read and still not as promised: the acceptance speaks of it as it leaves
    AcceptedAgain, ///< a later pass has a concession for it
    Mended,        ///< read since, and as promised
};
[[nodiscard]] std::string_view idOf(Fate fate); ///< "stands", "accepted-again", "mended"

struct EarlierConcession {
    Concession made{};
    readings::Pass pass{}; ///< in which it was accepted
    Fate fate = Fate::Stands;
    std::optional<units::Amount> valueNow{}; ///< of the newest pass that read it since; absent: none did
    bool operator==(const EarlierConcession &) const = default;
};

/// A pass judged by the set of the record, with what was decided about it.
struct DecidedPass {
    readings::Pass pass{};
    tolerance::Judgement judgement{};
    decisions::PassDecisions decided{};
};

/// Those that hold for the pass as it reads now, in their own order.
[[nodiscard]] std::vector<Concession> concessionsOf(const tolerance::Judgement &judgement,
                                                    const decisions::PassDecisions &decided);

/// `passes`: oldest first; the last is the one that the record speaks of. Of the last itself those that hold no more.
/// By fate, then quantity in the order of the catalogue, then note, then the older first.
[[nodiscard]] std::vector<EarlierConcession> earlierConcessionsOf(std::span<const DecidedPass> passes);

} // namespace hammerline::sale_record
