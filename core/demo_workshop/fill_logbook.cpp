#include "demo_workshop/inside/fill_logbook.h"

#include "exchange/tolerance_json.h"

#include <algorithm>

namespace hammerline::demo_workshop {
namespace {

using dossier::Moment;
using logbook::Stamp;

Stamp stampOf(const readings::Pass &pass)
{
    return {.at = pass.began, .person = pass.person};
}

/// Faults where there are any, else done.
template <class Value>
outcome::Outcome<bool> done(const outcome::Outcome<Value> &outcome)
{
    return outcome ? outcome::Outcome<bool>(true) : outcome::Outcome<bool>(outcome.faults());
}

/// Plays the deeds of one pass, one operator a kind.
class Player {
public:
    Player(logbook::Logbook &book, instrument::InstrumentId instrument, readings::PassId pass)
        : m_book(book), m_instrument(instrument), m_pass(pass)
    {
    }

    outcome::Outcome<bool> play(const LeadDeed &deed)
    {
        m_stamp = {.at = deed.at, .person = deed.person};
        return std::visit(*this, deed.what);
    }

    outcome::Outcome<bool> operator()(const SendBack &sent)
    {
        return done(m_book.sendBack(m_pass, sent.items, m_stamp));
    }
    outcome::Outcome<bool> operator()(const Accept &accept)
    {
        return done(m_book.accept(m_pass, accept.items, m_stamp));
    }
    outcome::Outcome<bool> operator()(const Reopen &reopen)
    {
        return done(m_book.reopenPass(m_pass, m_stamp, reopen.reason));
    }
    outcome::Outcome<bool> operator()(const ReadAgain &again)
    {
        for (const readings::Reading &reading : again.readings)
            m_book.enter(m_pass, reading, {.at = reading.at, .person = reading.person}, again.reason);
        return true;
    }
    outcome::Outcome<bool> operator()(const Sign &sign)
    {
        const auto instrument = m_book.instrument(m_instrument);
        const auto set = exchange::readToleranceSet(instrument->toleranceText, instrument->toleranceId);
        if (!set)
            return set.faults();
        return done(m_book.signPass(m_pass, set.value(), {instrument->toleranceId, instrument->toleranceText}, m_stamp,
                                    sign.remark));
    }
    outcome::Outcome<bool> operator()(const ReadSample &sample)
    {
        readings::Pass pass = sample.pass;
        pass.instrument = m_instrument;
        decisions::SpotCheck check = sample.check;
        check.checked = m_pass;
        const auto begun = m_book.beginSpotCheck(pass, check, m_stamp);
        for (const readings::Reading &reading : sample.readings)
            m_book.enter(begun.id, reading, {.at = reading.at, .person = reading.person});
        return true;
    }
    outcome::Outcome<bool> operator()(const MoveOn &move)
    {
        auto moved = *m_book.instrument(m_instrument);
        moved.state = move.state;
        return m_book.changeInstrument(moved, m_stamp, move.reason);
    }

private:
    logbook::Logbook &m_book;
    instrument::InstrumentId m_instrument;
    readings::PassId m_pass;
    Stamp m_stamp{};
};

/// What was said and seen of it at one moment.
outcome::Outcome<bool> tellMoment(logbook::Logbook &book, instrument::InstrumentId id, const MadeInstrument &made,
                                  Moment moment, const Drawer &drawer, const Stamp &stamp)
{
    for (const auto &[place, condition] : made.dossier.conditions)
        if (place.moment == moment)
            book.sayCondition(id, place, condition, stamp);
    for (const dossier::Photograph &photograph : made.dossier.photographs) {
        if (photograph.moment != moment || !drawer)
            continue;
        if (const auto added = book.addPhotograph(id, photograph, drawer(photograph), stamp); !added)
            return added.faults();
    }
    return true;
}

/// Written down in the evening of its day, or on the day the instrument came where nobody knows when it was done.
readings::Instant loggedAt(const dossier::WorkEntry &entry, readings::Instant cameIn)
{
    return entry.day ? std::max(cameIn, readings::Instant(*entry.day + std::chrono::hours(17))) : cameIn;
}

/// The work that was logged after `from` and not after `until`.
outcome::Outcome<bool> logWork(logbook::Logbook &book, instrument::InstrumentId id, const MadeInstrument &made,
                               readings::Instant from, readings::Instant until)
{
    const readings::Instant cameIn = made.passes.front().pass.began;
    for (const dossier::WorkEntry &entry : made.dossier.work) {
        const readings::Instant at = loggedAt(entry, cameIn);
        if (at <= from || at > until)
            continue;
        if (const auto added = book.addWork(id, entry, {.at = at, .person = entry.person}); !added)
            return added.faults();
    }
    return true;
}

/// A pass, and before it what else was written down on its day.
outcome::Outcome<bool> fillPass(logbook::Logbook &book, instrument::InstrumentId id, const MadeInstrument &made,
                                const MadePass &one, const Drawer &drawer)
{
    readings::Pass pass = one.pass;
    pass.instrument = id;
    const Stamp stamp = stampOf(pass);
    if (&one == &made.passes.front())
        if (auto told = tellMoment(book, id, made, Moment::AsReceived, drawer, stamp); !told)
            return told;
    if (pass.purpose == readings::Purpose::AsLeft)
        if (auto told = tellMoment(book, id, made, Moment::AsItLeaves, drawer, stamp); !told)
            return told;
    const auto stored = book.importPass(pass, one.readings, stamp);
    Player player(book, id, stored.id);
    for (const LeadDeed &deed : one.deeds)
        if (auto played = player.play(deed); !played)
            return played;
    return true;
}

} // namespace

outcome::Outcome<bool> fill(logbook::Logbook &book, const MadeInstrument &made, const Drawer &drawer)
{
    const Stamp taken = made.passes.empty() ? Stamp{} : stampOf(made.passes.front().pass);
    instrument::Instrument fresh = made.instrument;
    fresh.state = instrument::State::TakenIn;
    const auto added = book.addInstrument(fresh, taken);
    if (!added)
        return added.faults();
    const auto id = added.value().id;
    readings::Instant worked{};
    for (const MadePass &one : made.passes) {
        if (auto logged = logWork(book, id, made, worked, one.pass.began); !logged)
            return logged;
        worked = one.pass.began;
        if (auto filled = fillPass(book, id, made, one, drawer); !filled)
            return filled;
    }
    const Stamp last = made.passes.empty() ? taken : stampOf(made.passes.back().pass);
    if (made.dossier.sale.said())
        book.noteSale(id, made.dossier.sale, last);
    auto now = *book.instrument(id);
    if (now.state == made.instrument.state)
        return true;
    now.state = made.instrument.state;
    return book.changeInstrument(now, last, "goes on");
}

} // namespace hammerline::demo_workshop
