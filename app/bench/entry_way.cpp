// The entry session, continued: routes, how digits are typed, felt faults, takes.
#include "bench/entry_session.h"

#include <algorithm>

namespace hammerline::bench {

void EntrySession::follow(const route::Choice &choice)
{
    route::Ground ground{m_instrument.compass, m_instrument.sections, {}, m_book.values(m_pass.id)};
    if (m_set)
        ground.judgement = tolerance::judge(ground.values, *m_set, ground.compass, ground.sections);
    for (const decisions::SentBack &item : m_sentBack)
        if (sentBackAt(item.quantity, item.note) != nullptr)
            ground.sentBack.push_back({item.quantity, item.note});
    m_route.clear();
    for (const route::Stop &stop : route::stopsOf(choice, ground))
        m_route.push_back({stop.quantity, stop.note, 1});
    m_detour.reset();
    m_lastEntered.reset();
    m_cursor = choice.order == route::Order::OnlyOut ? 0 : resumeAt();
}

void EntrySession::choose(const route::Choice &choice, const Typings &typings)
{
    const logbook::PassRoute kept{route::textOf(choice), textOf(typings)};
    if (m_book.route(m_pass.id) != kept)
        m_book.chooseRoute(m_pass.id, kept, m_stamper());
    m_typings = typings;
    reload();
    follow(choice);
}

std::optional<route::Choice> EntrySession::chosen() const
{
    const auto kept = m_book.route(m_pass.id);
    if (!kept)
        return std::nullopt;
    const auto choice = route::parseChoice(kept->route);
    return choice ? std::optional(choice.value()) : std::nullopt;
}

Typing EntrySession::typing() const
{
    const auto place = asked();
    const auto found = place ? m_typings.find(place->quantity) : m_typings.end();
    return found == m_typings.end() ? Typing{} : found->second;
}

const decisions::SentBack *EntrySession::sentBackAt(catalogue::Quantity quantity, keyboard::Note note) const
{
    const auto *item = decisions::findDecision(m_sentBack, quantity, note);
    if (item == nullptr)
        return nullptr;
    std::vector<readings::Reading> here;
    for (const auto &[place, reading] : m_readings)
        here.push_back(reading);
    // A pair that was never read here may have been sent back in an older pass.
    const auto value = valueOf(quantity, note);
    return value && review::readSince(*item, value, here) ? nullptr : item;
}

bool EntrySession::markFault(keyboard::Note note, const std::string &fault, bool marked)
{
    const bool changed = marked ? m_book.markFault(m_pass.id, {note, fault}, m_stamper())
                                : m_book.clearFault(m_pass.id, {note, fault}, m_stamper());
    reload();
    return changed;
}

std::vector<std::string> EntrySession::faultsOf(keyboard::Note note) const
{
    std::vector<std::string> faults;
    for (const logbook::FaultMark &mark : m_book.faultMarks(m_pass.id))
        if (mark.note == note)
            faults.push_back(mark.fault);
    return faults;
}

std::optional<tolerance::TakesApart> EntrySession::apartAt(const readings::Place &place) const
{
    std::vector<readings::Reading> takes;
    for (auto at = m_readings.lower_bound({place.quantity, place.note, 1});
         at != m_readings.end() && at->first.quantity == place.quantity && at->first.note == place.note; ++at)
        takes.push_back(at->second);
    const auto apart = tolerance::takesApart(takes, m_pass.gauge, m_set ? &*m_set : nullptr);
    return apart.empty() ? std::nullopt : std::optional(apart.begin()->second);
}

std::size_t EntrySession::resumeAt() const
{
    std::size_t after = 0;
    readings::Instant newest{};
    for (std::size_t i = 0; i < m_route.size(); ++i) {
        const auto found = m_readings.find(m_route[i]);
        if (found != m_readings.end() && found->second.at >= newest) {
            newest = found->second.at;
            after = i + 1;
        }
    }
    const auto missing = [this](const readings::Place &place) { return !m_readings.contains(place); };
    const auto begin = m_route.begin();
    auto found = std::find_if(begin + static_cast<std::ptrdiff_t>(after), m_route.end(), missing);
    if (found == m_route.end())
        found = std::find_if(begin, m_route.end(), missing);
    return static_cast<std::size_t>(found - begin);
}

} // namespace hammerline::bench
