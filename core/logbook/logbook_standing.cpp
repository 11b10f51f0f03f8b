// Signing a pass and opening it again.
#include "logbook/inside/broken.h"
#include "logbook/inside/decision_rows.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/store.h"
#include "logbook/to_review.h"

namespace hammerline::logbook {

namespace {

using decisions::StandingChange;
using inside::instrumentTable;
using inside::passStandingTable;
using inside::passToleranceTable;
using instrument::State;

std::string nameOf(const review::Item &item)
{
    return std::string(catalogue::idOf(item.verdict.quantity)) + ' ' + item.verdict.note.name() + " is " +
           std::string(decisions::idOf(item.kind));
}

std::vector<outcome::Fault> faultsOf(const std::vector<review::Item> &open)
{
    std::vector<outcome::Fault> faults;
    for (const review::Item &item : open) {
        if (std::ssize(faults) == Logbook::mostOpenTold) {
            const auto besides = open.size() - faults.size();
            faults.push_back({{}, 0, "and " + std::to_string(besides) + " more are open"});
            break;
        }
        faults.push_back({{}, 0, nameOf(item) + ": send it back and have it mended, or accept it with a reason"});
    }
    return faults;
}

std::string revisionText(int revision)
{
    return "revision " + std::to_string(revision);
}

/// Absent: nothing stands against a signature but open items.
std::optional<outcome::Fault> notReady(const Logbook &book, readings::PassId pass, const Stamp &stamp)
{
    if (const auto refused = book.refusal(pass))
        return refused;
    if (stamp.person.empty())
        return outcome::Fault{{}, 0, "say who signs: a signature needs a name"};
    if (book.spotCheck(pass))
        return outcome::Fault{{}, 0, "a spot check is evidence for the pass it checks and is not signed itself"};
    if (!book.hasReadings(pass))
        return outcome::Fault{{}, 0, "the pass has no readings; there is nothing to sign"};
    return std::nullopt;
}

/// Is it this pass that says how the instrument leaves?
bool saysHowItLeaves(const Logbook &book, const readings::Pass &pass)
{
    const auto newest = newestReadPass(book, pass.instrument);
    return newest && newest->id == pass.id && pass.purpose != readings::Purpose::AsFound;
}

void moveInstrument(inside::DeedWriter &writer, instrument::Instrument moved, State state)
{
    moved.state = state;
    writer.add(instrumentTable(), {moved.id}, inside::valuesOf(moved));
}

} // namespace

decisions::Standing Logbook::Inside::standing(readings::PassId pass)
{
    const inside::Use query = database.use(passStandingTable().ofScopeSql());
    query->bind(1, pass);
    decisions::Standing changes;
    while (query->step())
        changes.push_back(inside::changeOf(inside::rowOf(passStandingTable(), *query), database.path()));
    return changes;
}

std::optional<outcome::Fault> Logbook::refusal(readings::PassId pass) const
{
    const auto standing = m_inside->standing(pass);
    const StandingChange *signature = decisions::signatureOf(standing);
    if (signature == nullptr)
        return std::nullopt;
    return outcome::Fault{{},
                          0,
                          signature->person + " signed this pass on " + readings::isoDate(signature->at) + " (" +
                              revisionText(signature->revision) +
                              "). To change it, open it again as a new revision and say why"};
}

instrument::InstrumentId Logbook::Inside::requireOpen(readings::PassId pass)
{
    const auto instrument = requirePass(pass);
    const auto changes = standing(pass);
    if (const StandingChange *signature = decisions::signatureOf(changes))
        inside::throwRefused(database.path(), signature->person + " signed the pass on " +
                                                  readings::isoDate(signature->at) +
                                                  ". Open it again as a new revision to change it");
    return instrument;
}

outcome::Outcome<StandingChange> Logbook::signPass(readings::PassId pass, const tolerance::ToleranceSet &set,
                                                   const PassTolerance &tolerance, const Stamp &stamp,
                                                   const std::string &remark)
{
    auto writer = m_inside->writer();
    const auto instrument = m_inside->findInstrument(m_inside->requirePass(pass));
    if (auto fault = notReady(*this, pass, stamp))
        return *std::move(fault);
    const auto signedPass = m_inside->findPass(pass);
    if (const auto open = review::queueOf({judgedPass(*this, *instrument, *signedPass, tolerance::Judge(set))});
        !open.empty())
        return faultsOf(open);
    const StandingChange change{StandingChange::Change::Signed, decisions::revisionOf(m_inside->standing(pass)),
                                stamp.person, stamp.at, remark};
    writer.add(passStandingTable(), {pass}, inside::valuesOf(change));
    writer.add(passToleranceTable(), {pass}, {tolerance.id, tolerance.text});
    if (instrument->state < State::SignedOff && saysHowItLeaves(*this, *signedPass))
        moveInstrument(writer, *instrument, State::SignedOff);
    static_cast<void>(writer.commit({.stamp = stamp,
                                     .name = "pass-signed",
                                     .subject = revisionText(change.revision),
                                     .reason = remark,
                                     .instrument = instrument->id,
                                     .pass = pass}));
    return change;
}

outcome::Outcome<StandingChange> Logbook::reopenPass(readings::PassId pass, const Stamp &stamp,
                                                     const std::string &reason)
{
    auto writer = m_inside->writer();
    const auto instrument = m_inside->findInstrument(m_inside->requirePass(pass));
    if (!refusal(pass))
        return outcome::Fault{{}, 0, "the pass is open already"};
    if (reason.empty())
        return outcome::Fault{{}, 0, "say why it is opened again: the record will name the reason"};
    const StandingChange change{StandingChange::Change::Reopened, decisions::revisionOf(m_inside->standing(pass)) + 1,
                                stamp.person, stamp.at, reason};
    writer.add(passStandingTable(), {pass}, inside::valuesOf(change));
    if (instrument->state >= State::SignedOff)
        moveInstrument(writer, *instrument, State::InReview);
    static_cast<void>(writer.commit({.stamp = stamp,
                                     .name = "pass-reopened",
                                     .subject = revisionText(change.revision),
                                     .reason = reason,
                                     .instrument = instrument->id,
                                     .pass = pass}));
    return change;
}

} // namespace hammerline::logbook
