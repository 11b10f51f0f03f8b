#include "logbook/inside/handed_fit.h"

#include "logbook/inside/decision_rows.h"
#include "logbook/inside/dossier_rows.h"
#include "logbook/inside/handed_tree.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/row_check.h"

#include <algorithm>
#include <map>

namespace hammerline::logbook::inside {

namespace {

struct Misfit {
    std::string column{};
    std::string problem{};
};

std::string rangeText(const keyboard::NoteRange &notes)
{
    return std::to_string(notes.first.number()) + "-" + std::to_string(notes.last.number());
}

std::string quantitiesOf(catalogue::ActionKind action)
{
    std::string ids;
    for (const catalogue::QuantityInfo &info : catalogue::all())
        if (catalogue::has(action, info.quantity))
            ids += (ids.empty() ? "" : ", ") + std::string(info.id);
    return ids;
}

/// What stands under `name`; absent where the table has no such column.
const Cell *cellOf(const Row &row, const std::string &name)
{
    const auto &columns = row.table->columns();
    const auto found = std::ranges::find(columns, name);
    return found == columns.end() ? nullptr : &row.cells[static_cast<std::size_t>(found - columns.begin())];
}

template <typename Value>
const Value *valueOf(const Row &row, const std::string &name)
{
    const Cell *cell = cellOf(row, name);
    return cell == nullptr ? nullptr : std::get_if<Value>(cell);
}

class Fitting {
public:
    Fitting(const Handed &handed, const SetCheck &setFaults) : m_setFaults(&setFaults)
    {
        for (const HandedDeed &deed : handed.deeds)
            for (const Row &row : deed.rows)
                if (row.table == &instrumentTable() && !row.withdrawn())
                    m_versions.push_back(instrumentOf(numbered(row), {}));
    }

    [[nodiscard]] std::optional<Misfit> misfitOf(const Row &row)
    {
        if (row.table == &spotCheckTable())
            return ofSpotCheck(row);
        if (row.table == &workEntryTable())
            return ofWork(row);
        if (const auto *text = valueOf<std::string>(row, "tolerance_text"); text != nullptr && !text->empty())
            return ofSet(*text);
        return ofPlace(row);
    }

private:
    [[nodiscard]] const instrument::Instrument &newest() const { return m_versions.back(); }

    [[nodiscard]] std::optional<Misfit> ofNote(const char *column, keyboard::Note note) const
    {
        const auto has = [note](const instrument::Instrument &version) { return version.compass.contains(note); };
        if (std::ranges::any_of(m_versions, has))
            return std::nullopt;
        return Misfit{column, "note " + std::to_string(note.number()) +
                                  " is outside the instrument; one of its notes, " + rangeText(newest().compass) +
                                  ", would be right"};
    }
    [[nodiscard]] std::optional<Misfit> ofQuantity(const char *column, catalogue::Quantity quantity) const
    {
        const auto has = [quantity](const auto &version) { return catalogue::has(version.action, quantity); };
        if (std::ranges::any_of(m_versions, has))
            return std::nullopt;
        return Misfit{column, std::string(catalogue::idOf(quantity)) +
                                  " is a quantity of the other action; this one has " + quantitiesOf(newest().action)};
    }

    /// Of a row whose key is a note, or a quantity and a note.
    [[nodiscard]] std::optional<Misfit> ofPlace(const Row &row) const
    {
        const auto *id = valueOf<std::string>(row, "quantity");
        if (const auto quantity = id == nullptr ? std::nullopt : catalogue::findQuantity(*id))
            if (auto misfit = ofQuantity("quantity", *quantity))
                return misfit;
        const auto *note = valueOf<std::int64_t>(row, "note");
        return note == nullptr ? std::nullopt : ofNote("note", keyboard::Note(static_cast<int>(*note)));
    }

    [[nodiscard]] std::optional<Misfit> ofSpotCheck(const Row &row) const
    {
        if (row.withdrawn())
            return std::nullopt;
        const auto check = spotCheckOf(numbered(row), {});
        for (const keyboard::Note note : check.notes)
            if (auto misfit = ofNote("notes", note))
                return misfit;
        for (const catalogue::Quantity quantity : check.quantities)
            if (auto misfit = ofQuantity("quantities", quantity))
                return misfit;
        return std::nullopt;
    }

    [[nodiscard]] std::optional<Misfit> ofWork(const Row &row) const
    {
        if (row.withdrawn())
            return std::nullopt;
        const auto work = workEntryOf(numbered(row), {});
        if (!work.notes)
            return std::nullopt;
        const auto holds = [&](const instrument::Instrument &version) {
            return work.notes->first <= work.notes->last && version.compass.contains(work.notes->first) &&
                   version.compass.contains(work.notes->last);
        };
        if (std::ranges::any_of(m_versions, holds))
            return std::nullopt;
        return Misfit{"first_note", "the work lies on notes " + rangeText(*work.notes) +
                                        "; a range, low note first, inside " + rangeText(newest().compass) +
                                        " would be right"};
    }

    [[nodiscard]] std::optional<Misfit> ofSet(const std::string &text)
    {
        auto [known, isNew] = m_sets.try_emplace(text);
        if (isNew)
            if (const auto faults = (*m_setFaults)(text, "the set"); !faults.empty())
                known->second = faults.front().problem;
        if (known->second.empty())
            return std::nullopt;
        return Misfit{"tolerance_text", "the tolerance set cannot be read, so that nothing could be judged by it: " +
                                            known->second + "; the whole text of a set would be right"};
    }

    const SetCheck *m_setFaults;
    std::vector<instrument::Instrument> m_versions{}; ///< never empty: a hand-over begins with one
    std::map<std::string, std::string> m_sets{};      ///< what is wrong with each text, asked once
};

} // namespace

std::string misfitIn(const Handed &handed, const SetCheck &setFaults)
{
    Fitting fitting(handed, setFaults);
    for (std::size_t deed = 0; deed < handed.deeds.size(); ++deed)
        for (std::size_t row = 0; row < handed.deeds[deed].rows.size(); ++row)
            if (const auto misfit = fitting.misfitOf(handed.deeds[deed].rows[row]))
                return placeOfDeed(deed + 1) + ", deeds[" + std::to_string(deed) + "].rows[" + std::to_string(row) +
                       "]." + misfit->column + ": " + misfit->problem;
    return {};
}

} // namespace hammerline::logbook::inside
