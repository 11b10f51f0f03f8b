#pragma once
// Entering a pass, without a widget: which place is asked for, what typed text means, what is stored, what the verdict
// is.
//
// The session follows a Route with a cursor. The place under the cursor is asked for; a value typed for it is on disk
// before the cursor moves on. A place that was read already may be asked for again (by going back): a value typed there
// corrects it, an empty line keeps it, and the next place is asked for whether it was read or not. A new value goes on
// to the next place without one, so that a gap which is filled never leads into correcting its neighbours. A further
// take is a detour: it is asked for once, then the cursor goes on.
//
//     skip, back ── move the cursor        again ── detour to the next take        undo, redo ── deeds of the logbook
//
// The session holds what it has seen of the pass and stores only over that, so that a value which another window
// entered meanwhile is never overwritten unseen. It owns nothing: logbook and clock outlive it. BrokenWorld of the
// logbook passes through; the cursor then stands where it stood.

#include "bench/typing.h"
#include "instrument/instrument.h"
#include "logbook/logbook.h"
#include "logbook/to_review.h"
#include "outcome/outcome.h"
#include "readings/readings.h"
#include "route/route.h"
#include "slips/slips.h"
#include "tolerance/judge.h"
#include "tolerance/takes_apart.h"
#include "tolerance/tolerance.h"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::bench {

/// When, and by whom: asked once for each deed.
using Stamper = std::function<logbook::Stamp()>;

/// Places of take 1, none twice.
using Route = std::vector<readings::Place>;

/// What became of a typed value.
struct Entered {
    readings::Reading reading{};
    bool corrected = false; ///< a value stood there before
    bool kept = false;      ///< nothing was typed: the standing value stays
    /// Of the note's mean over its takes; absent where no tolerance set is chosen.
    std::optional<tolerance::Verdict> verdict{};
    /// Nothing was stored: this looks like a slip. Entered again as confirmed, it is kept and marked.
    std::optional<slips::Slip> doubted{};
    /// This value brought the takes of its note further apart than the gauge explains; told at that one and no later.
    std::optional<tolerance::TakesApart> takesApart{};
};

/// What undo and redo did.
struct TakenBack {
    logbook::Deed deed{};
    std::optional<readings::Place> changed{}; ///< absent where no reading changed
    bool way = false;                         ///< the way that is kept with the pass changed; it is to be followed
};

struct Progress {
    int read = 0; ///< places of the route with a reading
    int all = 0;
};

class EntrySession {
public:
    EntrySession(logbook::Logbook &book, instrument::Instrument instrument, readings::Pass pass,
                 std::optional<tolerance::ToleranceSet> set, Stamper stamper);

    [[nodiscard]] const readings::Pass &pass() const { return m_pass; }
    [[nodiscard]] const instrument::Instrument &instrument() const { return m_instrument; }
    /// Present: the pass reads a sample of another again, and asks for nothing else.
    [[nodiscard]] const std::optional<decisions::SpotCheck> &check() const { return m_check; }
    [[nodiscard]] const std::map<readings::Place, readings::Reading> &readings() const { return m_readings; }

    /// Follows another route, drawn now. One of what is out begins at its first note. Any other resumes after the
    /// newest reading on it, at the first place without one; where all places behind it are read, at the first missing
    /// one; with nothing missing the route is done.
    void follow(const route::Choice &choice);
    /// The same, kept for this pass together with how its digits are typed.
    void choose(const route::Choice &choice, const Typings &typings);
    /// As kept; absent where nothing was chosen yet.
    [[nodiscard]] std::optional<route::Choice> chosen() const;
    [[nodiscard]] const Typings &typings() const { return m_typings; }
    [[nodiscard]] Typing typing() const; ///< of the quantity that is asked for
    [[nodiscard]] const Route &route() const { return m_route; }
    [[nodiscard]] Progress progress() const;

    /// Absent at the end of the route.
    [[nodiscard]] std::optional<readings::Place> asked() const;
    /// What stands at the asked place. Null: nothing yet.
    [[nodiscard]] const readings::Reading *standing() const;
    [[nodiscard]] std::optional<units::Amount> valueOf(catalogue::Quantity quantity, keyboard::Note note) const;
    /// Felt faults of a note. True where the mark was changed.
    bool markFault(keyboard::Note note, const std::string &fault, bool marked);
    [[nodiscard]] std::vector<std::string> faultsOf(keyboard::Note note) const;
    /// The lead's word about a pair that was sent back and not read again since; null: none.
    [[nodiscard]] const decisions::SentBack *sentBackAt(catalogue::Quantity quantity, keyboard::Note note) const;
    /// The value entered last; absent before the first.
    [[nodiscard]] std::optional<readings::Reading> lastEntered() const;
    /// Limits at the asked place.
    [[nodiscard]] std::optional<tolerance::Limits> limits() const;
    [[nodiscard]] std::optional<tolerance::Verdict> verdictAt(catalogue::Quantity quantity, keyboard::Note note) const;

    /// Stores what was typed for the asked place and goes on. A fault: nothing was stored, the place is still asked
    /// for.
    [[nodiscard]] outcome::Outcome<Entered> enter(std::string_view typed, bool confirmed = false);
    void skip();
    /// False at the beginning.
    bool back();
    /// Asks for a further take of the asked place if it has a reading, else of the one entered last. False: neither.
    bool again();
    /// False where the route does not lead there.
    bool goTo(catalogue::Quantity quantity, keyboard::Note note);
    /// Takes back the newest take of the asked place. False where nothing stands there.
    bool withdraw(const std::string &reason);

    [[nodiscard]] std::optional<logbook::Deed> undoable() const;
    [[nodiscard]] std::optional<logbook::Deed> redoable() const;
    /// Takes the newest deed of the pass back (undo) or the newest undoing (redo) and goes to the place it changed,
    /// where the route leads there. Absent where there is none.
    std::optional<TakenBack> undo();
    std::optional<TakenBack> redo();

    /// Reads the pass anew where the logbook has moved. True where it had.
    bool refresh();

private:
    using Retrace = logbook::Deed (logbook::Logbook::*)(const logbook::Deed &, const logbook::Stamp &);
    struct Meant {
        units::Amount value{};
        units::Unit unit{};
    };
    [[nodiscard]] outcome::Outcome<Meant> meant(std::string_view typed, const readings::Place &place) const;
    [[nodiscard]] std::optional<slips::Slip> doubt(const Meant &meant, const readings::Place &place) const;
    [[nodiscard]] std::size_t resumeAt() const;
    [[nodiscard]] std::optional<outcome::Fault> changedMeanwhile(const readings::Place &place);
    [[nodiscard]] int takesOf(const readings::Place &place) const;
    [[nodiscard]] std::optional<tolerance::TakesApart> apartAt(const readings::Place &place) const;
    std::optional<TakenBack> retrace(const std::optional<logbook::Deed> &deed, Retrace how);
    void takeEarlier();
    void reload();
    void moveOn();
    void passOverRead();

    logbook::Logbook &m_book;
    instrument::Instrument m_instrument;
    readings::Pass m_pass;
    std::optional<tolerance::ToleranceSet> m_set;
    Stamper m_stamper;
    std::map<readings::Place, readings::Reading> m_readings;
    std::optional<decisions::SpotCheck> m_check;
    /// Of the pass before; none in a spot check, whose reader must not be led by what was read before.
    std::optional<readings::ValueTable> m_earlier;
    std::vector<decisions::SentBack> m_sentBack; ///< to be read again in this pass, as of the newest reading of it
    Typings m_typings;
    logbook::DeedId m_seen = 0;
    Route m_route;
    std::size_t m_cursor = 0; ///< m_route.size(): done
    std::optional<readings::Place> m_detour;
    std::optional<readings::Place> m_lastEntered;
};

} // namespace hammerline::bench
