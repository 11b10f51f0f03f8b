#pragma once
// What waits for the shop lead: across all instruments in work, every note that is out, marginal, uneven or missing in
// the newest pass, worst first in units of its half-width (|deviation| / half-width); pairs without one come last.
//
// An item leaves the queue in two ways: it is accepted (a concession that holds for its value as it is now), or it is
// mended (a newer reading lies inside). One that was sent back stays in the queue until it is mended; what was mended
// after it was sent back is told apart (`mendedOf`), so that nothing leaves silently.
//
// Beside the queue stands what is in and yet not sure: inside its limits, but nearer to one than the doubt of its
// reading reaches (tolerance/doubt.h). Nobody need decide about that; it says where a finer gauge would be worth its
// time. It speaks of limits alone, so that a note that waits in the queue for being uneven, or was accepted so, stands
// there as well.

#include "decisions/decisions.h"
#include "instrument/instrument.h"
#include "readings/readings.h"
#include "tolerance/judge.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace hammerline::review {

using decisions::idOf;
using decisions::Kind;

/// Where an item stands between the lead and the bench.
enum class Course {
    Open,      ///< nobody has decided about it
    SentBack,  ///< sent back and not read again since
    ReadAgain, ///< sent back, read again since, and still an item
};

struct Item {
    instrument::InstrumentId instrument = 0;
    readings::PassId pass = 0;
    tolerance::Verdict verdict{};
    Kind kind = Kind::Out;
    std::optional<double> halfWidths{};
    Course course = Course::Open;
    std::shared_ptr<const decisions::SentBack> sentBack{}; ///< the newest; null where the item is open
    std::string person{};                                  ///< who read it; of a missing one, who walks the pass
    readings::Instant at{};                                ///< when it was read; of a missing one, when the pass began
};

/// A pass of an instrument as judged, its doubt weighed, with what was decided about it.
struct JudgedPass {
    instrument::InstrumentId instrument = 0;
    readings::PassId pass = 0;
    tolerance::Judgement judgement{};
    decisions::PassDecisions decided{};
    std::vector<readings::Reading> readings{}; ///< for who and when; empty: person and moment below are taken
    std::string person{};
    readings::Instant began{};
};

/// The items of one pass, in the order of its verdicts, without those accepted. A reading that is out or marginal and
/// uneven besides is one item.
[[nodiscard]] std::vector<Item> itemsOf(const JudgedPass &pass);
/// Worst first; equals by instrument, quantity, note.
[[nodiscard]] std::vector<Item> queueOf(const std::vector<JudgedPass> &passes);
/// The same of items taken pass by pass, so that a whole workshop's passes need not be held at once.
void putWorstFirst(std::vector<Item> &items);

/// Every pair that is in, but within the doubt of its reading, in the order of the verdicts; `verdict.uneven` tells
/// those that are uneven too. `kind` is Marginal, which they would be if the set guarded its limits by that doubt; the
/// verdict's status is In. None where no doubt was weighed.
[[nodiscard]] std::vector<Item> inDoubtOf(const JudgedPass &pass);
/// The least probably inside first; equals by instrument, quantity, note.
void putLeastSureFirst(std::vector<Item> &items);

/// Was the pair read after it was sent back? Any other value says so, and so does the same value read later.
[[nodiscard]] bool readSince(const decisions::SentBack &sentBack, const std::optional<units::Amount> &valueNow,
                             const std::vector<readings::Reading> &among);

/// An item that is none any more, with what was decided about it.
struct Settled {
    Item item{}; ///< kind as it was when it was decided about; the verdict is today's
    decisions::Decision decision{};
};
/// Accepted items whose concession holds, in the order of the verdicts.
[[nodiscard]] std::vector<Settled> concededOf(const JudgedPass &pass);
/// Sent back, and no item any more, in the order of the verdicts. Its own value may have stayed: an uneven note is
/// mended at its neighbour too.
[[nodiscard]] std::vector<Settled> mendedOf(const JudgedPass &pass);

/// What the items leave out: all of `older` that was sent back and that nobody has read or judged in `newer` passes.
/// An item sent back does not vanish because a newer pass was begun elsewhere on the keyboard.
[[nodiscard]] JudgedPass leftBehind(JudgedPass older, const std::vector<JudgedPass> &newer);
/// What was sent back in `older` and is read in `newer` goes on there with the lead's word, unless a word stands there.
void takeWordsAlong(const JudgedPass &older, JudgedPass &newer);
/// Takes out of `newer` what is merely not read there and stands in `older`: one item a pair, the one that says more.
void leaveMissingTo(const JudgedPass &older, std::vector<JudgedPass> &newer);

} // namespace hammerline::review
