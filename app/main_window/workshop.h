#pragma once
// What one window works on: an open logbook, the instrument and pass chosen in it, everything derived from their
// readings, and the note that all views speak of. Views read from here and hear here what changed; only the main window
// and the bench write to the logbook.
//
// Two windows on one logbook have a Workshop each; `poll` notices what the other has done.

#include "analysis/analysis.h"
#include "exchange/built_in.h"
#include "instrument/instrument.h"
#include "keyboard_strip/strip_model.h"
#include "logbook/logbook.h"
#include "readings/readings.h"
#include "review/review.h"
#include "tolerance/judge.h"

#include <QObject>

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace hammerline::main_window {

using Clock = std::function<readings::Instant()>;

/// A pass with all that follows from its readings.
struct PassInView {
    readings::Pass pass{};
    std::vector<readings::Reading> readings{};
    readings::ValueTable values{};
    /// Of a spot check only what it asks for or has read: a note that was not drawn is not missing.
    tolerance::Judgement judgement{};
    std::optional<decisions::SpotCheck> check{}; ///< present: the pass reads a sample of another again
    int unread = 0; ///< of a spot check: values of the sample that the checked pass has and this one has not yet
};

struct Selection {
    catalogue::Quantity quantity = catalogue::Quantity::Blow;
    keyboard::Note note{};
    bool operator==(const Selection &) const = default;
};

class Workshop : public QObject {
    Q_OBJECT
public:
    explicit Workshop(Clock clock, QObject *parent = nullptr);

    // Logbook ---------------------------------------------------------------------------------------------------
    [[nodiscard]] bool isOpen() const { return m_book.has_value(); }
    [[nodiscard]] logbook::Logbook &book() { return *m_book; }
    [[nodiscard]] const logbook::Logbook &book() const { return *m_book; }
    void use(logbook::Logbook book);
    void close();
    void setPerson(std::string person) { m_person = std::move(person); }
    [[nodiscard]] logbook::Stamp stamp() const { return {m_clock(), m_person}; }
    /// True where somebody else has done something since; everything is read anew then.
    bool poll();
    /// This window has done something: read anew what may have changed.
    void passTouched();
    void instrumentsTouched();

    // What is chosen --------------------------------------------------------------------------------------------
    [[nodiscard]] const std::vector<logbook::InstrumentLine> &instruments() const { return m_instruments; }
    [[nodiscard]] std::vector<readings::Pass> passesOf(instrument::InstrumentId id) const;
    /// Null: none is chosen.
    [[nodiscard]] const instrument::Instrument *instrument() const { return m_chosen ? &*m_chosen : nullptr; }
    [[nodiscard]] const PassInView *pass() const { return m_pass ? &*m_pass : nullptr; }
    /// While a spot check is chosen that is not read to its end, nothing that was read before of its instrument may be
    /// seen, nor what was thought of it: whoever reads again reads blind. Every view asks here, and nothing else.
    [[nodiscard]] bool readsBlind() const { return m_pass && m_pass->unread > 0; }
    /// The first as-found pass with readings, to hold the chosen one against; null where that is the chosen one, and
    /// where the chosen one is a spot check, which is held against the pass that it checks.
    [[nodiscard]] const PassInView *before() const { return m_before ? &*m_before : nullptr; }
    [[nodiscard]] const std::optional<tolerance::ToleranceSet> &set() const { return m_set; }
    [[nodiscard]] analysis::Summaries summaries() const;

    /// The newest deed of the chosen pass or instrument that can be taken back, or done again.
    [[nodiscard]] std::optional<logbook::Deed> undoable() const;
    [[nodiscard]] std::optional<logbook::Deed> redoable() const;

    /// Chooses the newest pass of the instrument too; or the spot check that was begun after it, where that is not read
    /// to its end: it goes on, and stays blind, in every window and after every start.
    void chooseInstrument(instrument::InstrumentId id);
    void choosePass(readings::PassId id);

    [[nodiscard]] const Selection &selection() const { return m_selection; }
    void select(const Selection &selection);

    /// Every item of what stands in the workshop (not of what was delivered), worst first, and whether any pass could
    /// be judged. Only instruments that were touched since it was asked for last are judged anew. While a spot check is
    /// read blind, nothing of its instrument.
    struct Queue {
        std::vector<review::Item> items{};
        std::vector<review::Settled> conceded{}; ///< accepted as they are
        std::vector<review::Settled> mended{};   ///< sent back and inside since
        std::vector<review::Item> inDoubt{};     ///< in, but within the gauge's doubt; least sure first
        bool judged = false;
    };
    [[nodiscard]] Queue queue();
    [[nodiscard]] Queue queueOfPass() const;

    /// Where the plan on the sheet would put each pair of the chosen pass; empty: no plan was made.
    using Planned = std::map<keyboard_strip::PairOf, units::Amount>;
    [[nodiscard]] const Planned &planned() const { return m_planned; }
    void setPlanned(Planned planned);

signals:
    void instrumentsChanged();
    void passChosen(); ///< another instrument or pass, or none; the tolerance set may be another
    void readingsChanged();
    void selected();
    void plannedChanged();

private:
    [[nodiscard]] PassInView view(const readings::Pass &pass) const;
    /// The newest spot check, if it is newer than `passes`, the other ones, and not read to its end.
    [[nodiscard]] std::optional<PassInView> openCheck(instrument::InstrumentId id,
                                                      const std::vector<readings::Pass> &passes) const;
    void readInstruments();
    void readSet();
    /// The pass before is read again only where somebody may have touched it; one reading at the bench does not.
    enum class Before { Anew, AsItWas };
    void readPass(Before before = Before::Anew);
    /// The sets met so far by their texts: a shop judges by a few.
    using Judges = std::map<std::string, std::optional<tolerance::Judge>>;
    [[nodiscard]] Queue queueOf(instrument::InstrumentId id, Judges &judges) const;
    void forgetTouched();

    Clock m_clock;
    std::string m_person;
    std::optional<logbook::Logbook> m_book;
    logbook::DeedId m_seen = 0;
    std::vector<logbook::InstrumentLine> m_instruments;
    instrument::InstrumentId m_instrument = 0;
    std::optional<instrument::Instrument> m_chosen;
    std::optional<PassInView> m_pass;
    std::optional<PassInView> m_before;
    std::optional<tolerance::ToleranceSet> m_set;
    Selection m_selection;
    Planned m_planned;
    std::map<instrument::InstrumentId, Queue> m_judged;
    logbook::DeedId m_judgedUpTo = 0;
};

/// "As found"; "Spot check".
[[nodiscard]] QString nameOf(const PassInView &pass);

/// The tolerance set in force for an instrument; absent where none is chosen or its text no longer reads.
[[nodiscard]] std::optional<tolerance::ToleranceSet> setOf(const instrument::Instrument &instrument);

} // namespace hammerline::main_window
