#include "dossier/dossier.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace hammerline::dossier {

namespace {

constexpr std::array<std::string_view, workKinds> workKindIds{
    "parts-renewed",  "repinned", "cleaned",  "recovered",     "refinished", "replated",
    "pedal-trapwork", "restrung", "repaired", "found-altered", "other"};
constexpr std::array<std::string_view, 2> momentIds{"as-received", "as-it-leaves"};
constexpr std::array<std::string_view, areas> areaIds{"case",    "keys",     "action",    "pedals",
                                                      "strings", "pinblock", "soundboard"};

template <typename Value, std::size_t count>
std::optional<Value> find(const std::array<std::string_view, count> &ids, std::string_view id)
{
    const auto found = std::ranges::find(ids, id);
    return found == ids.end() ? std::nullopt : std::optional(static_cast<Value>(found - ids.begin()));
}

constexpr std::ptrdiff_t longestText = 2000;

/// Code points, for a limit that people can count.
std::ptrdiff_t charactersIn(std::string_view utf8)
{
    return std::ranges::count_if(utf8, [](char c) { return (static_cast<unsigned char>(c) & 0xc0) != 0x80; });
}

bool isBlank(std::string_view text)
{
    return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

bool fits(const keyboard::NoteRange &notes, const keyboard::Compass &compass)
{
    return notes.first <= notes.last && compass.contains(notes.first) && compass.contains(notes.last);
}

std::string rangeText(const keyboard::NoteRange &notes)
{
    return std::to_string(notes.first.number()) + "-" + std::to_string(notes.last.number());
}

/// A pair that still lacks the photograph of this moment.
PhotographPair &placeFor(std::vector<PhotographPair> &pairs, const Photograph &photograph)
{
    const auto lacksIt = [&](const PhotographPair &pair) {
        return pair.view == photograph.view &&
               (photograph.moment == Moment::AsReceived ? pair.received : pair.leaving) == nullptr;
    };
    const auto found = std::ranges::find_if(pairs, lacksIt);
    return found == pairs.end() ? pairs.emplace_back(PhotographPair{photograph.view}) : *found;
}

std::optional<int> wholeNumber(std::string_view digits)
{
    int number = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    const bool all = error == std::errc() && end == digits.data() + digits.size() && digits[0] != '-';
    return all ? std::optional(number) : std::nullopt;
}

} // namespace

std::string_view idOf(WorkKind kind)
{
    return workKindIds[static_cast<std::size_t>(kind)];
}
std::optional<WorkKind> findWorkKind(std::string_view id)
{
    return find<WorkKind>(workKindIds, id);
}
std::string_view idOf(Moment moment)
{
    return momentIds[static_cast<std::size_t>(moment)];
}
std::optional<Moment> findMoment(std::string_view id)
{
    return find<Moment>(momentIds, id);
}
std::string_view idOf(Area area)
{
    return areaIds[static_cast<std::size_t>(area)];
}
std::optional<Area> findArea(std::string_view id)
{
    return find<Area>(areaIds, id);
}

std::vector<outcome::Fault> faultsOf(const WorkEntry &entry, const keyboard::Compass &compass)
{
    std::vector<outcome::Fault> faults;
    const auto add = [&](std::string problem) { faults.push_back({.problem = std::move(problem)}); };
    if (isBlank(entry.what))
        add("the work does not say what was done; write it in a few words");
    if (entry.departure && isBlank(entry.why))
        add("a departure from the original build needs its reason; a buyer must be told");
    if (entry.notes && !fits(*entry.notes, compass))
        add("the work lies on notes " + rangeText(*entry.notes) + "; keep it, low note first, inside " +
            rangeText(compass));
    if (entry.took && (entry.took->count() < 0 || *entry.took > std::chrono::hours(10'000)))
        add("the time must lie between 0 and 10 000 hours");
    for (const std::string *text : {&entry.what, &entry.material, &entry.person, &entry.why, &entry.remark})
        if (charactersIn(*text) > longestText)
            add("a text of the work is longer than 2000 characters; shorten it");
    return faults;
}

std::vector<PhotographPair> pairsOf(std::span<const Photograph> photographs)
{
    std::vector<PhotographPair> pairs;
    for (const Photograph &photograph : photographs) {
        PhotographPair &pair = placeFor(pairs, photograph);
        (photograph.moment == Moment::AsReceived ? pair.received : pair.leaving) = &photograph;
    }
    return pairs;
}

std::vector<WorkEntry> Dossier::departures() const
{
    std::vector<WorkEntry> found;
    std::ranges::copy_if(work, std::back_inserter(found), &WorkEntry::departure);
    return found;
}

std::chrono::minutes Dossier::timeWorked() const
{
    std::chrono::minutes total{};
    for (const WorkEntry &entry : work)
        total += entry.took.value_or(std::chrono::minutes{});
    return total;
}

std::string isoDay(std::chrono::sys_days day)
{
    const std::chrono::year_month_day date(day);
    const auto padded = [](unsigned number, std::size_t width) {
        const std::string digits = std::to_string(number);
        return std::string(width - std::min(width, digits.size()), '0') + digits;
    };
    return padded(static_cast<unsigned>(static_cast<int>(date.year())), 4) + '-' +
           padded(static_cast<unsigned>(date.month()), 2) + '-' + padded(static_cast<unsigned>(date.day()), 2);
}

std::optional<std::chrono::sys_days> parseIsoDay(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const auto year = wholeNumber(text.substr(0, 4));
    const auto month = wholeNumber(text.substr(5, 2));
    const auto day = wholeNumber(text.substr(8, 2));
    if (!year || !month || !day || *year < 1700 || *year > 2100)
        return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year(*year), std::chrono::month(static_cast<unsigned>(*month)),
                                           std::chrono::day(static_cast<unsigned>(*day))};
    return date.ok() ? std::optional(std::chrono::sys_days(date)) : std::nullopt;
}

} // namespace hammerline::dossier
