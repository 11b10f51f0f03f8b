#pragma once
// The store: one SQLite file a logbook, and the only SQL in the tree.
//
// Nothing stored is ever changed or removed. Every change is a deed: one entry of the history (who, when, what, and the
// SHA-256 digest that chains it to the one before) and the rows it wrote, in one transaction that is flushed to disk
// before the call returns. A correction is a newer version of a row; undoing a deed is a new deed that writes the
// versions that stood before. "Current" always means the newest version. A withdrawn reading is a version without a
// value.
//
// Failure: everything about the disk or the file is thrown as outcome::BrokenWorld (locked, full, read-only, damaged,
// not a logbook, made by a newer program, a pass that is not there); after it the file holds every deed that had
// returned and nothing of the one that failed (where the disk broke for good while that one was being flushed, all of
// it or nothing of it). Two logbooks may be open on one file, in one process or two: each sees the other's deeds (see
// `newestDeed`); who writes while another writes waits for three seconds, then throws. A Logbook belongs to one thread
// at a time.
//
// A pass that is signed is closed: its readings, marks and particulars, and what was decided about them, stand. Until
// it is opened again as a new revision, `refusal` says why nothing can be entered, and the verbs below that are marked
// (open passes) throw the same words: somebody may sign while another window types. Neither a signature nor a reopening
// is undone, nor anything done before it to the pass or to its instrument; a new revision is corrected instead.
//
// What is kept of each thing, and the names of deeds, are in stored.h. Side doors: hand_over.h (an instrument on its
// way to another logbook), gauge_studies.h, to_review.h, daily_backup.h; verify_history.h and verify_instrument.h tell
// whether another program has edited the file.

#include "decisions/decisions.h"
#include "dossier/dossier.h"
#include "instrument/instrument.h"
#include "logbook/stored.h"
#include "outcome/outcome.h"
#include "readings/reading_source.h"

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::logbook {

struct TakenOver; ///< see hand_over.h
/// The faults of a text that is no tolerance set, `file` to blame; empty: it can be judged by. Reading sets is not the
/// logbook's (exchange/tolerance_json.h), so it is handed in.
using SetCheck = std::function<std::vector<outcome::Fault>(const std::string &text, const std::string &file)>;
/// Whether buyer and price are handed over too.
enum class HandedSale { GoesAlong, StaysHere };

enum class Access { ReadWrite, ReadOnly };

class Logbook {
public:
    /// A new file; a fault where something is there already.
    [[nodiscard]] static outcome::Outcome<Logbook> create(const std::string &path, const Stamp &stamp);
    /// Opens and checks: is it ours, whole, not newer than this program; an older one is brought up to date after a
    /// backup beside it (`<path>.schema-N-backup`). For reading only it is taken as it is where it lacks no table,
    /// else refused. Throws BrokenWorld with the reason.
    [[nodiscard]] static Logbook open(const std::string &path, Access access = Access::ReadWrite);

    Logbook(Logbook &&) noexcept;
    Logbook &operator=(Logbook &&) noexcept;
    ~Logbook();

    [[nodiscard]] const std::string &path() const;
    [[nodiscard]] Access access() const;
    /// A whole copy as of now, while others may write; a fault where something is there already.
    [[nodiscard]] outcome::Outcome<bool> copyTo(const std::string &newPath) const;

    // Instruments -----------------------------------------------------------------------------------------------
    /// By id.
    [[nodiscard]] std::vector<instrument::Instrument> instruments() const;
    /// By id. Of ten thousand instruments this takes milliseconds: their long texts stay on the disk.
    [[nodiscard]] std::vector<InstrumentLine> instrumentLines() const;
    [[nodiscard]] std::vector<Keyboard> keyboards() const; ///< by instrument, as quick
    [[nodiscard]] SetsInUse setsInUse() const;
    [[nodiscard]] std::optional<instrument::Instrument> instrument(instrument::InstrumentId id) const;
    /// `uid` is made here where it is empty. The instrument as stored, with its id.
    [[nodiscard]] outcome::Outcome<instrument::Instrument> addInstrument(instrument::Instrument added,
                                                                         const Stamp &stamp);
    /// A newer version of the same id. A fault where faultsOf finds one or the id is not there, and where it is said to
    /// be signed off or delivered while its newest pass with readings is not signed.
    [[nodiscard]] outcome::Outcome<bool> changeInstrument(const instrument::Instrument &changed, const Stamp &stamp,
                                                          const std::string &reason);

    /// What the next plan of the instrument starts from, whichever its pass; absent: none chosen yet.
    [[nodiscard]] std::optional<ActionSetup> actionSetup(instrument::InstrumentId instrument) const;
    /// The instrument must be there.
    void chooseActionSetup(instrument::InstrumentId instrument, const ActionSetup &chosen, const Stamp &stamp);

    // Passes ----------------------------------------------------------------------------------------------------
    /// Oldest first (by `began`, then id), without spot checks.
    [[nodiscard]] std::vector<readings::Pass> passes(instrument::InstrumentId instrument) const;
    /// Of all instruments, by pass, without spot checks.
    [[nodiscard]] std::vector<PassOf> passesOfAll() const;
    [[nodiscard]] std::optional<readings::Pass> pass(readings::PassId id) const;
    [[nodiscard]] int readingCount(readings::PassId pass) const; ///< takes counted
    [[nodiscard]] bool hasReadings(readings::PassId pass) const; ///< quicker than counting them
    /// `uid` is made here where it is empty. The pass as stored, with its id. The instrument must be there. A climate
    /// is kept to the thousandth.
    [[nodiscard]] readings::Pass beginPass(readings::Pass begun, const Stamp &stamp);
    /// (Open passes.)
    void changePass(const readings::Pass &changed, const Stamp &stamp, const std::string &reason);
    /// A whole pass from a file, all of it or nothing: one deed. A reading without person and moment has the pass's.
    /// No place twice.
    [[nodiscard]] readings::Pass importPass(readings::Pass begun, const std::vector<readings::Reading> &readings,
                                            const Stamp &stamp);
    /// The same of more readings than one wants to hold, and the same deed whatever batches they come in. A fault of
    /// the source is returned and nothing is written. Others who want to write wait from the second batch on.
    [[nodiscard]] outcome::Outcome<readings::Pass>
    importPassFrom(readings::Pass begun, const readings::ReadingSource &source, const Stamp &stamp);

    // Readings (what writes: open passes) -----------------------------------------------------------------------
    /// Why nothing can be entered into the pass: who signed it and what to do. Absent: it is open.
    [[nodiscard]] std::optional<outcome::Fault> refusal(readings::PassId pass) const;
    /// Current readings of a pass, by place.
    [[nodiscard]] std::vector<readings::Reading> readings(readings::PassId pass) const;
    /// The same as meansOf(readings(pass)), without the texts: what judging needs, quicker.
    [[nodiscard]] readings::ValueTable values(readings::PassId pass) const;
    /// The current takes with their readers, quicker than `readings`.
    [[nodiscard]] ReadBy readBy(readings::PassId pass) const;
    /// On disk when it returns. Without person and moment of its own a reading has the stamp's. A reading that stands
    /// at its place already is corrected: what was there stays in the history. `confirmed`: the suspicion that its
    /// reader stood by, kept as a ConfirmedSlip in the same deed; empty: none.
    DeedId enter(readings::PassId pass, const readings::Reading &reading, const Stamp &stamp,
                 const std::string &reason = {}, const std::string &confirmed = {});
    /// The same, but only where `standing` (absent: nothing) is the value that stands there now; otherwise somebody
    /// else was there meanwhile, nothing is written, and the result is absent.
    std::optional<DeedId> enterOver(const std::optional<units::Amount> &standing, readings::PassId pass,
                                    const readings::Reading &reading, const Stamp &stamp,
                                    const std::string &reason = {}, const std::string &confirmed = {});
    /// Takes a reading back; it stays in the history. False where there is none.
    bool withdraw(readings::PassId pass, const readings::Place &place, const Stamp &stamp, const std::string &reason);
    [[nodiscard]] std::vector<ReadingVersion> versions(readings::PassId pass, const readings::Place &place) const;

    // Beside the readings (what writes: open passes) ------------------------------------------------------------
    /// By note, then fault.
    [[nodiscard]] std::vector<FaultMark> faultMarks(readings::PassId pass) const;
    /// False where it is marked already / not marked; then nothing is written.
    bool markFault(readings::PassId pass, const FaultMark &mark, const Stamp &stamp, const std::string &reason = {});
    bool clearFault(readings::PassId pass, const FaultMark &mark, const Stamp &stamp, const std::string &reason = {});
    /// Absent: none remembered yet.
    [[nodiscard]] std::optional<PassTolerance> tolerance(readings::PassId pass) const;
    void rememberTolerance(readings::PassId pass, const PassTolerance &tolerance, const Stamp &stamp);
    /// By place; those of readings that were changed since are among them.
    [[nodiscard]] std::vector<ConfirmedSlip> confirmedSlips(readings::PassId pass) const;
    /// Of a reading that stands already; a fresh one is confirmed by `enter`.
    void confirmSlip(readings::PassId pass, const ConfirmedSlip &slip, const Stamp &stamp);

    // Plan, work and route of a pass (of a signed one too) ------------------------------------------------------
    /// The inputs a plan of the pass was made from, as the caller wrote them; absent: none kept.
    [[nodiscard]] std::optional<std::string> keptPlan(readings::PassId pass) const;
    void keepPlan(readings::PassId pass, const std::string &inputs, const Stamp &stamp);
    /// By item. Person and moment are those of the stamp it was logged with.
    [[nodiscard]] std::vector<WorkDone> workDone(readings::PassId pass) const;
    /// False where the item is logged already / is not logged; then nothing is written.
    bool logWork(readings::PassId pass, const std::string &item, std::chrono::seconds took, const Stamp &stamp);
    bool takeBackWork(readings::PassId pass, const std::string &item, const Stamp &stamp);
    [[nodiscard]] std::optional<PassRoute> route(readings::PassId pass) const;
    void chooseRoute(readings::PassId pass, const PassRoute &route, const Stamp &stamp);

    // The file of an instrument ----------------------------------------------------------------------------------
    // Instruments that are not there are refused by BrokenWorld.
    [[nodiscard]] dossier::Dossier dossier(instrument::InstrumentId instrument) const;
    /// As stored, with its uid. A fault where faultsOf finds one.
    [[nodiscard]] outcome::Outcome<dossier::WorkEntry> addWork(instrument::InstrumentId instrument,
                                                               dossier::WorkEntry entry, const Stamp &stamp);
    /// A fault where faultsOf finds one or the entry is not there.
    [[nodiscard]] outcome::Outcome<bool> changeWork(instrument::InstrumentId instrument,
                                                    const dossier::WorkEntry &entry, const Stamp &stamp,
                                                    const std::string &reason);
    /// False where it is not there; then nothing is written.
    bool strikeWork(instrument::InstrumentId instrument, const std::string &uid, const Stamp &stamp,
                    const std::string &reason);
    /// Nothing said takes back what was. False where it stands so already; then nothing is written.
    bool sayCondition(instrument::InstrumentId instrument, const dossier::ConditionPlace &place,
                      const dossier::Condition &condition, const Stamp &stamp);
    /// As stored, with uid, digest and size. A fault where sizeOfPicture (dossier/plain_jpeg.h) finds one.
    [[nodiscard]] outcome::Outcome<dossier::Photograph> addPhotograph(instrument::InstrumentId instrument,
                                                                      dossier::Photograph photograph,
                                                                      std::string_view jpeg, const Stamp &stamp);
    /// Moment, view and caption; the picture stays. A fault where it is not there.
    [[nodiscard]] outcome::Outcome<bool> changePhotograph(instrument::InstrumentId instrument,
                                                          dossier::Photograph photograph, const Stamp &stamp);
    /// False where it is not there. The picture stays in the file, so that this can be undone.
    bool removePhotograph(instrument::InstrumentId instrument, const std::string &uid, const Stamp &stamp);
    /// A JPEG by its digest.
    [[nodiscard]] std::optional<std::string> picture(const std::string &digest) const;
    void noteSale(instrument::InstrumentId instrument, const dossier::Sale &sale, const Stamp &stamp);

    // Handing over, see hand_over.h -------------------------------------------------------------------------------
    /// The document. A fault where there is no such instrument, where what is said of it was edited by another program
    /// (verify_instrument.h), and where the document would be too large to be taken over.
    [[nodiscard]] outcome::Outcome<std::string> handOver(instrument::InstrumentId instrument,
                                                         HandedSale sale = HandedSale::GoesAlong) const;
    /// `file` is to blame for what is wrong with the document. `setFaults` is asked about each tolerance set in it: an
    /// instrument that could not be judged here is refused. `digest`, where it is not empty: the one the document must
    /// have, 64 small hexadecimal digits.
    [[nodiscard]] outcome::Outcome<TakenOver> takeOver(const std::string &document, const std::string &file,
                                                       const Stamp &stamp, const SetCheck &setFaults,
                                                       const std::string &digest = {});

    // The lead's desk -------------------------------------------------------------------------------------------
    /// All that was decided about the pass; what no longer holds is among it.
    [[nodiscard]] decisions::PassDecisions decisions(readings::PassId pass) const;
    /// Accepts items / sends them back, several in one deed. Person and moment are the stamp's. What is accepted is no
    /// longer sent back. A fault where one has no words, where the value of a note is no longer the one decided about,
    /// and where the pass is a spot check: nothing is written then. (Open passes; the list must not be empty.)
    [[nodiscard]] outcome::Outcome<DeedId>
    accept(readings::PassId pass, const std::vector<decisions::Concession> &concessions, const Stamp &stamp);
    [[nodiscard]] outcome::Outcome<DeedId>
    sendBack(readings::PassId pass, const std::vector<decisions::SentBack> &sentBack, const Stamp &stamp);
    /// The item is open again. False where nothing was decided about it. (Open passes.)
    bool takeBackDecision(readings::PassId pass, catalogue::Quantity quantity, keyboard::Note note, const Stamp &stamp);
    /// Signs the pass as it is now, and moves its instrument on to signed off where it is the newest with readings and
    /// not as found. Judged here and now by `set`, which is remembered with the pass as `tolerance`. Refused, with what
    /// is wrong: it has no readings, is signed already, is a spot check, nobody is named, or items are open: one fault
    /// for each of these, at most `mostOpenTold`, and one more for how many there are besides.
    [[nodiscard]] outcome::Outcome<decisions::StandingChange> signPass(readings::PassId pass,
                                                                       const tolerance::ToleranceSet &set,
                                                                       const PassTolerance &tolerance,
                                                                       const Stamp &stamp, const std::string &remark);
    static constexpr int mostOpenTold = 20;
    /// Opens a signed pass as a new revision; an instrument that is signed off or delivered is in review again. A fault
    /// where it is open or no reason is given.
    [[nodiscard]] outcome::Outcome<decisions::StandingChange> reopenPass(readings::PassId pass, const Stamp &stamp,
                                                                         const std::string &reason);
    /// A pass that reads a sample again, and how the sample was drawn, in one deed whose subject names size and seed.
    /// The pass checked must be there, of the same instrument.
    [[nodiscard]] readings::Pass beginSpotCheck(readings::Pass begun, const decisions::SpotCheck &check,
                                                const Stamp &stamp);
    /// Absent: the pass is no spot check.
    [[nodiscard]] std::optional<decisions::SpotCheck> spotCheck(readings::PassId pass) const;
    /// Passes that are spot checks, oldest first.
    [[nodiscard]] std::vector<readings::Pass> spotChecks(instrument::InstrumentId instrument) const;

    // History ---------------------------------------------------------------------------------------------------
    /// 0 for none. Moves when any window or program has done something: poll it to see the others' deeds.
    [[nodiscard]] DeedId newestDeed() const;
    /// After `after`, oldest first, at most `most`.
    [[nodiscard]] std::vector<Deed> deeds(DeedId after, int most) const;
    [[nodiscard]] std::optional<Deed> deed(DeedId id) const;
    /// SHA-256 that chains the deed to all before it, 64 hex digits; empty where there is no such deed. Written into
    /// what leaves the house it pins the whole history up to the deed.
    [[nodiscard]] std::string digest(DeedId id) const;
    /// The deed with this digest, 64 lower-case hex digits; absent where none has it. Goes through all of them.
    [[nodiscard]] std::optional<DeedId> deedOf(const std::string &digest) const;
    /// The newest deed of the pass (its readings, marks and the pass itself) that can be undone, and the newest that
    /// was undone and can be done again, each as first done, for its name. A fresh deed ends every redo. Absent: none.
    [[nodiscard]] std::optional<Deed> undoable(readings::PassId pass) const;
    [[nodiscard]] std::optional<Deed> redoable(readings::PassId pass) const;
    /// The same for what was done to the instrument itself.
    [[nodiscard]] std::optional<Deed> undoableOfInstrument(instrument::InstrumentId instrument) const;
    [[nodiscard]] std::optional<Deed> redoableOfInstrument(instrument::InstrumentId instrument) const;
    /// Takes the deed back / does it again by a new deed, which is returned. Not only the newest: any deed of which
    /// nothing was changed since. Otherwise, or where it is undone (not undone) already, throws; nothing is changed.
    Deed undo(const Deed &deed, const Stamp &stamp);
    Deed redo(const Deed &deed, const Stamp &stamp);

    struct Inside; ///< for the room's own files

private:
    friend class GaugeStudies; ///< see gauge_studies.h
    explicit Logbook(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

} // namespace hammerline::logbook
