#include "logbook/inside/decision_rows.h"
#include "logbook/inside/store.h"

namespace hammerline::logbook {

namespace {

using decisions::Decision;
using inside::concessionTable;
using inside::sentBackTable;
using inside::VersionTable;

std::vector<Decision> standingOf(inside::Database &database, const VersionTable &table, readings::PassId pass)
{
    const inside::Use query = database.use(table.standingSql());
    query->bind(1, pass);
    std::vector<Decision> found;
    while (query->step())
        found.push_back(inside::decisionOf(inside::rowOf(table, *query), database.path()));
    return found;
}

std::string nameOf(const Decision &decision)
{
    return std::string(catalogue::idOf(decision.quantity)) + ' ' + decision.note.name();
}

/// "let_off C4", "let_off C4 and 3 more".
std::string subjectOf(const std::vector<Decision> &made)
{
    const std::string first = nameOf(made.front());
    return made.size() == 1 ? first : first + " and " + std::to_string(made.size() - 1) + " more";
}

std::vector<outcome::Fault> faultsOf(const std::vector<Decision> &made, const readings::ValueTable &now)
{
    std::vector<outcome::Fault> faults;
    for (const Decision &decision : made) {
        if (decision.words.empty())
            faults.push_back({{}, 0, nameOf(decision) + ": say why; an empty word tells nobody anything"});
        if (now.value(decision.quantity, decision.note) != decision.value)
            faults.push_back({{}, 0, nameOf(decision) + ": it was read again meanwhile; look at it anew"});
    }
    return faults;
}

/// A withdrawn version where one stands.
bool takeBack(inside::Database &database, inside::DeedWriter &writer, const VersionTable &table,
              const std::vector<inside::Cell> &keys)
{
    const auto newest = inside::newestVersion(database, table, keys);
    if (!newest || newest->withdrawn())
        return false;
    writer.add(table, keys, {});
    return true;
}

} // namespace

decisions::PassDecisions Logbook::decisions(readings::PassId pass) const
{
    auto &database = m_inside->database;
    return {m_inside->standing(pass), standingOf(database, concessionTable(), pass),
            standingOf(database, sentBackTable(), pass)};
}

outcome::Outcome<DeedId> Logbook::Inside::decide(readings::PassId pass, const std::vector<Decision> &made,
                                                 const Decided &into, const Stamp &stamp, const Logbook &book)
{
    auto deeds = writer();
    const auto instrument = requireOpen(pass);
    if (book.spotCheck(pass))
        return outcome::Fault{
            {}, 0, "a spot check is evidence for the pass it checks; decide about the notes of that pass"};
    if (auto faults = faultsOf(made, book.values(pass)); !faults.empty())
        return faults;
    for (const Decision &decision : made) {
        const auto keys = inside::keysOf(pass, decision.quantity, decision.note);
        takeBack(database, deeds, into.instead, keys);
        deeds.add(into.table, keys, inside::valuesOf(decision, stamp));
    }
    return deeds
        .commit({.stamp = stamp,
                 .name = into.deed,
                 .subject = subjectOf(made),
                 .reason = made.front().words,
                 .instrument = instrument,
                 .pass = pass})
        .id;
}

outcome::Outcome<DeedId> Logbook::accept(readings::PassId pass, const std::vector<decisions::Concession> &concessions,
                                         const Stamp &stamp)
{
    return m_inside->decide(pass, concessions, {concessionTable(), sentBackTable(), "items-accepted"}, stamp, *this);
}

outcome::Outcome<DeedId> Logbook::sendBack(readings::PassId pass, const std::vector<decisions::SentBack> &sentBack,
                                           const Stamp &stamp)
{
    return m_inside->decide(pass, sentBack, {sentBackTable(), concessionTable(), "items-sent-back"}, stamp, *this);
}

bool Logbook::takeBackDecision(readings::PassId pass, catalogue::Quantity quantity, keyboard::Note note,
                               const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto instrument = m_inside->requireOpen(pass);
    const auto keys = inside::keysOf(pass, quantity, note);
    const bool accepted = takeBack(m_inside->database, writer, concessionTable(), keys);
    const bool sentBack = takeBack(m_inside->database, writer, sentBackTable(), keys);
    if (!accepted && !sentBack)
        return false;
    static_cast<void>(writer.commit({.stamp = stamp,
                                     .name = "decision-taken-back",
                                     .subject = std::string(catalogue::idOf(quantity)) + ' ' + note.name(),
                                     .instrument = instrument,
                                     .pass = pass}));
    return true;
}

} // namespace hammerline::logbook
