#include "bench/entry_session.h"

#include "tolerance/doubt.h"
#include "units/parse_amount.h"

#include <algorithm>
#include <vector>

namespace hammerline::bench {

namespace {

using ReadingMap = std::map<readings::Place, readings::Reading>;

bool isBlank(std::string_view text)
{
    return text.find_first_not_of(" \t") == std::string_view::npos;
}

/// Only the takes of one quantity: what its verdicts are made of.
readings::ValueTable columnOf(const ReadingMap &all, catalogue::Quantity quantity)
{
    std::vector<readings::Reading> some;
    for (const auto &[place, reading] : all)
        if (place.quantity == quantity)
            some.push_back(reading);
    return readings::meansOf(some);
}

std::vector<readings::Reading> readingsOf(const ReadingMap &all, catalogue::Quantity quantity)
{
    std::vector<readings::Reading> read;
    for (auto at = all.lower_bound({quantity, keyboard::Note(1), 1}); at != all.end(); ++at) {
        if (at->first.quantity != quantity)
            break;
        read.push_back(at->second);
    }
    return read;
}

/// The first place whose reading differs between the two.
std::optional<readings::Place> firstDifference(const ReadingMap &before, const ReadingMap &after)
{
    for (const auto &[place, reading] : after) {
        const auto old = before.find(place);
        if (old == before.end() || !(old->second == reading))
            return place;
    }
    for (const auto &[place, reading] : before)
        if (!after.contains(place))
            return place;
    return std::nullopt;
}

} // namespace

EntrySession::EntrySession(logbook::Logbook &book, instrument::Instrument instrument, readings::Pass pass,
                           std::optional<tolerance::ToleranceSet> set, Stamper stamper)
    : m_book(book),
      m_instrument(std::move(instrument)),
      m_pass(std::move(pass)),
      m_set(std::move(set)),
      m_stamper(std::move(stamper))
{
    m_check = m_book.spotCheck(m_pass.id);
    takeEarlier();
    if (const auto kept = m_book.route(m_pass.id))
        m_typings = parseTypings(kept->typing);
    reload();
}

void EntrySession::takeEarlier()
{
    if (m_check)
        return;
    for (const readings::Pass &other : m_book.passes(m_instrument.id)) {
        if (other.id == m_pass.id)
            break;
        m_earlier = m_book.values(other.id);
    }
}

std::optional<readings::Reading> EntrySession::lastEntered() const
{
    const auto found = m_lastEntered ? m_readings.find(*m_lastEntered) : m_readings.end();
    return found == m_readings.end() ? std::nullopt : std::optional(found->second);
}

Progress EntrySession::progress() const
{
    const auto read = std::ranges::count_if(m_route, [this](const auto &place) { return m_readings.contains(place); });
    return {static_cast<int>(read), static_cast<int>(m_route.size())};
}

std::optional<readings::Place> EntrySession::asked() const
{
    if (m_detour)
        return m_detour;
    if (m_cursor < m_route.size())
        return m_route[m_cursor];
    return std::nullopt;
}

const readings::Reading *EntrySession::standing() const
{
    const auto place = asked();
    if (!place)
        return nullptr;
    const auto found = m_readings.find(*place);
    return found == m_readings.end() ? nullptr : &found->second;
}

std::optional<units::Amount> EntrySession::valueOf(catalogue::Quantity quantity, keyboard::Note note) const
{
    return columnOf(m_readings, quantity).value(quantity, note);
}

std::optional<tolerance::Limits> EntrySession::limits() const
{
    const auto place = asked();
    return place && m_set ? tolerance::limitsAt(*m_set, place->quantity, place->note) : std::nullopt;
}

std::optional<tolerance::Verdict> EntrySession::verdictAt(catalogue::Quantity quantity, keyboard::Note note) const
{
    if (!m_set)
        return std::nullopt;
    tolerance::ToleranceSet only;
    only.action = m_set->action;
    if (const auto entry = m_set->entries.find(quantity); entry != m_set->entries.end())
        only.entries.insert(*entry);
    auto judgement =
        tolerance::judge(columnOf(m_readings, quantity), only, m_instrument.compass, m_instrument.sections);
    tolerance::weighDoubt(judgement, readingsOf(m_readings, quantity), m_pass.gauge);
    const tolerance::Verdict *verdict = judgement.find(quantity, note);
    return verdict ? std::optional(*verdict) : std::nullopt;
}

outcome::Outcome<Entered> EntrySession::enter(std::string_view typed, bool confirmed)
{
    const auto place = asked();
    if (!place)
        return outcome::Fault{.problem = "every note of this route is read; choose another quantity or go back"};
    if (auto closed = m_book.refusal(m_pass.id); closed && !isBlank(typed))
        return *std::move(closed);
    if (auto changed = changedMeanwhile(*place))
        return std::move(*changed);
    const readings::Reading *before = standing();
    if (isBlank(typed)) {
        if (!before)
            return outcome::Fault{.problem = "nothing typed yet: a value, or skip the note"};
        const Entered kept{*before, false, true, verdictAt(place->quantity, place->note), {}, {}};
        moveOn();
        return kept;
    }
    const std::string spelled = spelledOut(typed, typing());
    const auto value = meant(spelled, *place);
    if (!value)
        return value.faults();
    const auto doubted = doubt(value.value(), *place);
    if (doubted && !confirmed)
        return Entered{.doubted = doubted};

    const bool corrected = before != nullptr;
    const logbook::Stamp stamp = m_stamper();
    const std::string &reader = stamp.person.empty() ? m_pass.person : stamp.person; // another may go on with a pass
    const readings::Reading reading{*place, value.value().value, spelled, {}, reader, stamp.at};
    const bool wereApart = apartAt(*place).has_value();
    const auto over = before ? std::optional(before->value) : std::nullopt;
    const std::string stoodBy = doubted ? std::string(slips::idOf(doubted->suspicion)) : std::string();
    const auto deed = m_book.enterOver(over, m_pass.id, reading, stamp, {}, stoodBy);
    if (!deed)
        return changedMeanwhile(*place).value_or(outcome::Fault{.problem = "the reading was changed meanwhile"});
    m_readings[*place] = reading;
    if (*deed == m_seen + 1)
        m_seen = *deed;
    else
        reload(); // another window's deed came in between
    m_lastEntered = *place;
    moveOn();
    if (!corrected && place->take == 1)
        passOverRead();
    const auto apart = wereApart ? std::nullopt : apartAt(*place);
    return Entered{reading, corrected, false, verdictAt(place->quantity, place->note), {}, apart};
}

void EntrySession::skip()
{
    moveOn();
}

bool EntrySession::back()
{
    if (m_detour) {
        m_detour.reset();
        return true;
    }
    if (m_cursor == 0)
        return false;
    --m_cursor;
    return true;
}

bool EntrySession::again()
{
    auto of = standing() ? asked() : m_lastEntered;
    if (!of || takesOf(*of) == 0)
        return false;
    // A take was withdrawn in the middle: its number is free again and is asked for first.
    of->take = 1;
    while (m_readings.contains(*of))
        ++of->take;
    if (m_cursor < m_route.size() && !m_detour && standing())
        ++m_cursor;
    m_detour = of;
    return true;
}

bool EntrySession::goTo(catalogue::Quantity quantity, keyboard::Note note)
{
    const auto found = std::ranges::find(m_route, readings::Place{quantity, note, 1});
    if (found == m_route.end())
        return false;
    m_detour.reset();
    m_cursor = static_cast<std::size_t>(found - m_route.begin());
    return true;
}

bool EntrySession::withdraw(const std::string &reason)
{
    const auto place = asked();
    if (!place || takesOf(*place) == 0)
        return false;
    readings::Place newest = *place;
    for (const auto &[stands, reading] : m_readings)
        if (stands.quantity == place->quantity && stands.note == place->note)
            newest = stands;
    const bool done = m_book.withdraw(m_pass.id, newest, m_stamper(), reason);
    reload();
    return done;
}

std::optional<logbook::Deed> EntrySession::undoable() const
{
    auto deed = m_book.undoable(m_pass.id);
    // The pass itself is not taken back from under the one who works on it.
    if (deed && (deed->name == "pass-begun" || deed->name == "pass-imported"))
        return std::nullopt;
    return deed;
}

std::optional<logbook::Deed> EntrySession::redoable() const
{
    return m_book.redoable(m_pass.id);
}

std::optional<TakenBack> EntrySession::undo()
{
    return retrace(undoable(), &logbook::Logbook::undo);
}

std::optional<TakenBack> EntrySession::redo()
{
    return retrace(redoable(), &logbook::Logbook::redo);
}

bool EntrySession::refresh()
{
    if (m_book.newestDeed() == m_seen)
        return false;
    reload();
    return true;
}

outcome::Outcome<EntrySession::Meant> EntrySession::meant(std::string_view typed, const readings::Place &place) const
{
    const catalogue::QuantityInfo &info = catalogue::infoOf(place.quantity);
    const units::TypedForm form{info.dimension, m_pass.unit, info.mayBeNegative};
    const auto parsed = units::parseAmount(typed, form);
    if (!parsed)
        return parsed.faults();
    const bool fromString =
        place.quantity == catalogue::Quantity::Drop && m_pass.dropDatum == readings::DropDatum::FromString;
    if (!fromString)
        return Meant{parsed.value().value, parsed.value().unit};
    const auto letOff = valueOf(catalogue::Quantity::LetOff, place.note);
    if (!letOff)
        return outcome::Fault{.problem = "drop is measured from the string in this pass: read the let-off of " +
                                         place.note.name() + " first"};
    const auto drop = readings::dropBelowLetOff(parsed.value().value.asLength(), letOff->asLength());
    if (!drop)
        return drop.faults();
    return Meant{drop.value(), parsed.value().unit};
}

std::optional<slips::Slip> EntrySession::doubt(const Meant &meant, const readings::Place &place) const
{
    std::vector<readings::Reading> all;
    for (const auto &[stands, reading] : m_readings)
        all.push_back(reading);
    const readings::ValueTable pass = readings::meansOf(all);
    slips::Surroundings around;
    around.pass = &pass;
    around.earlier = m_earlier ? &*m_earlier : nullptr;
    around.set = m_set ? &*m_set : nullptr;
    around.sections = m_instrument.sections;
    around.gaugeUncertainty = m_pass.gauge.expandedUncertainty;
    return slips::suspect({place.quantity, place.note, meant.value, meant.unit}, around);
}

std::optional<outcome::Fault> EntrySession::changedMeanwhile(const readings::Place &place)
{
    const auto before = m_readings.find(place);
    const auto seen = before == m_readings.end() ? std::nullopt : std::optional(before->second);
    if (!refresh())
        return std::nullopt;
    const auto after = m_readings.find(place);
    const auto stands = after == m_readings.end() ? std::nullopt : std::optional(after->second);
    if (seen == stands || !stands)
        return std::nullopt;
    const std::string who = stands->person.empty() ? "somebody" : stands->person;
    return outcome::Fault{.problem = place.note.name() + " was read meanwhile in another window: " + who + " entered " +
                                     stands->typed + "; enter again to correct it"};
}

int EntrySession::takesOf(const readings::Place &place) const
{
    return static_cast<int>(std::ranges::count_if(m_readings, [&place](const auto &stored) {
        return stored.first.quantity == place.quantity && stored.first.note == place.note;
    }));
}

std::optional<TakenBack> EntrySession::retrace(const std::optional<logbook::Deed> &deed, Retrace how)
{
    if (!deed)
        return std::nullopt;
    refresh();
    const auto before = m_readings;
    const auto wayBefore = m_book.route(m_pass.id);
    (m_book.*how)(*deed, m_stamper());
    reload();
    const auto way = m_book.route(m_pass.id);
    if (way != wayBefore)
        m_typings = way ? parseTypings(way->typing) : Typings();
    const auto changed = firstDifference(before, m_readings);
    if (changed)
        goTo(changed->quantity, changed->note);
    return TakenBack{*deed, changed, way != wayBefore};
}

void EntrySession::reload()
{
    m_seen = m_book.newestDeed();
    m_readings.clear();
    for (readings::Reading &reading : m_book.readings(m_pass.id))
        m_readings.insert_or_assign(reading.place, std::move(reading));
    m_sentBack = logbook::sentBackTo(m_book, m_pass);
}

void EntrySession::passOverRead()
{
    while (m_cursor < m_route.size() && m_readings.contains(m_route[m_cursor]))
        ++m_cursor;
}

void EntrySession::moveOn()
{
    if (m_detour)
        m_detour.reset();
    else if (m_cursor < m_route.size())
        ++m_cursor;
}

} // namespace hammerline::bench
