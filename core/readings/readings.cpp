#include "readings/readings.h"

#include <algorithm>
#include <array>
#include <span>

namespace hammerline::readings {

namespace {

constexpr std::array<std::string_view, 4> purposeIds{"as-found", "setting", "as-left", "recheck"};
constexpr std::array<std::string_view, 3> dipDatumIds{"front-edge", "back-13-mm", "over-front-pin"};
constexpr std::array<std::string_view, 2> dropDatumIds{"below-let-off", "from-string"};

template <typename Enum, std::size_t count>
std::optional<Enum> find(const std::array<std::string_view, count> &ids, std::string_view id)
{
    const auto found = std::find(ids.begin(), ids.end(), id);
    return found == ids.end() ? std::nullopt : std::optional(static_cast<Enum>(found - ids.begin()));
}

constexpr std::size_t usualNotes = 88;

auto placeOf(const TakenValue &taken)
{
    return std::pair(taken.quantity, taken.note);
}

NoteValue meanOf(std::span<const TakenValue> takes)
{
    units::Wide sum = 0;
    for (const TakenValue &take : takes)
        sum += take.baseCount;
    const int count = static_cast<int>(takes.size());
    const std::int64_t mean = count == 1 ? takes[0].baseCount : units::roundedQuotient(sum, count);
    return {.value = {catalogue::infoOf(takes[0].quantity).dimension, mean}, .takes = count};
}

} // namespace

std::string_view idOf(Purpose purpose)
{
    return purposeIds[static_cast<std::size_t>(purpose)];
}

std::optional<Purpose> findPurpose(std::string_view id)
{
    return find<Purpose>(purposeIds, id);
}

std::string_view idOf(DipDatum datum)
{
    return dipDatumIds[static_cast<std::size_t>(datum)];
}

std::string_view idOf(DropDatum datum)
{
    return dropDatumIds[static_cast<std::size_t>(datum)];
}

std::optional<DipDatum> findDipDatum(std::string_view id)
{
    return find<DipDatum>(dipDatumIds, id);
}

std::optional<DropDatum> findDropDatum(std::string_view id)
{
    return find<DropDatum>(dropDatumIds, id);
}

const ValueTable::Column &ValueTable::column(catalogue::Quantity quantity) const
{
    static const Column none;
    const auto found = m_columns.find(quantity);
    return found == m_columns.end() ? none : found->second;
}

std::optional<units::Amount> ValueTable::value(catalogue::Quantity quantity, keyboard::Note note) const
{
    const auto &notes = column(quantity);
    const auto found = notes.find(note);
    return found == notes.end() ? std::nullopt : std::optional(found->second.value);
}

std::vector<catalogue::Quantity> ValueTable::quantities() const
{
    std::vector<catalogue::Quantity> read;
    for (const auto &[quantity, notes] : m_columns)
        read.push_back(quantity);
    return read;
}

bool ValueTable::empty() const
{
    return m_columns.empty();
}

void ValueTable::set(catalogue::Quantity quantity, keyboard::Note note, NoteValue value)
{
    assert(value.value.dimension() == catalogue::infoOf(quantity).dimension);
    Column &column = m_columns[quantity];
    if (column.empty())
        column.reserve(usualNotes);
    column.insert_or_assign(column.end(), note, value); // mostly they come in order
}

void ValueTable::clear(catalogue::Quantity quantity, keyboard::Note note)
{
    const auto found = m_columns.find(quantity);
    if (found == m_columns.end())
        return;
    found->second.erase(note);
    if (found->second.empty()) // so that equality and quantities() do not see a column that once was
        m_columns.erase(found);
}

ValueTable meansOf(const std::vector<Reading> &readings)
{
    std::vector<TakenValue> taken;
    taken.reserve(readings.size());
    for (const Reading &reading : readings)
        taken.push_back({reading.place.quantity, reading.place.note, reading.value.baseCount()});
    return meansOfValues(std::move(taken));
}

ValueTable meansOfValues(std::vector<TakenValue> taken)
{
    if (!std::ranges::is_sorted(taken, {}, placeOf))
        std::ranges::sort(taken, {}, placeOf);
    ValueTable table;
    for (auto first = taken.begin(); first != taken.end();) {
        auto last = first + 1;
        while (last != taken.end() && last->note == first->note && last->quantity == first->quantity)
            ++last;
        table.set(first->quantity, first->note, meanOf({first, last}));
        first = last;
    }
    return table;
}

outcome::Outcome<units::Amount> dropBelowLetOff(units::Length fromString, units::Length letOff)
{
    if (fromString >= letOff)
        return units::Amount(fromString - letOff);
    return outcome::Fault{.problem = "a drop of " + units::exactDecimal(fromString) +
                                     " mm from the string lies above the let-off point at " +
                                     units::exactDecimal(letOff) +
                                     " mm, so the hammer would have risen; read one of the two again"};
}

} // namespace hammerline::readings
