#include "logbook/inside/decision_rows.h"

#include "logbook/inside/broken.h"
#include "logbook/inside/record_rows.h"

#include <sstream>

namespace hammerline::logbook::inside {

namespace {

std::string textAt(const Row &row, std::size_t index)
{
    const auto *text = std::get_if<std::string>(&row.value(index));
    return text == nullptr ? std::string() : *text;
}

std::int64_t numberAt(const Row &row, std::size_t index, const std::string &path)
{
    const auto *number = std::get_if<std::int64_t>(&row.value(index));
    if (number == nullptr)
        throwDamaged(path, describe(row) + ": a number is missing");
    return *number;
}

readings::Instant instantAt(const Row &row, std::size_t index, const std::string &path)
{
    return readings::Instant(std::chrono::milliseconds(numberAt(row, index, path)));
}

Cell cellOf(readings::Instant at)
{
    return std::int64_t{at.time_since_epoch().count()};
}

template <typename Known>
Known known(const std::optional<Known> &found, const Row &row, const std::string &path)
{
    if (!found)
        throwDamaged(path, describe(row) + ": a word in it is none that is known");
    return *found;
}

} // namespace

std::vector<Cell> keysOf(readings::PassId pass, catalogue::Quantity quantity, keyboard::Note note)
{
    return {pass, storedQuantity(quantity), std::int64_t{note.number()}};
}

std::vector<Cell> valuesOf(const decisions::Decision &decision, const Stamp &stamp)
{
    return {decision.words, decision.value ? Cell(decision.value->baseCount()) : Cell(),
            std::string(decisions::idOf(decision.kind)), stamp.person, cellOf(stamp.at)};
}

decisions::Decision decisionOf(const Row &row, const std::string &path)
{
    decisions::Decision decision;
    decision.quantity = quantityOf(std::get<std::int64_t>(row.cells[1]), path);
    decision.note = noteOf(std::get<std::int64_t>(row.cells[2]), path);
    decision.words = textAt(row, 0);
    if (const auto *count = std::get_if<std::int64_t>(&row.value(1)))
        decision.value = units::Amount(catalogue::infoOf(decision.quantity).dimension, *count);
    decision.kind = known(decisions::findKind(textAt(row, 2)), row, path);
    decision.person = textAt(row, 3);
    decision.at = instantAt(row, 4, path);
    return decision;
}

std::vector<Cell> valuesOf(const decisions::StandingChange &change)
{
    return {std::string(decisions::idOf(change.change)), std::int64_t{change.revision}, change.person,
            cellOf(change.at), change.words};
}

decisions::StandingChange changeOf(const Row &row, const std::string &path)
{
    constexpr std::int64_t mostRevisions = 1'000'000;
    const std::int64_t revision = numberAt(row, 1, path);
    if (revision < 1 || revision > mostRevisions)
        throwDamaged(path, describe(row) + ": a revision is counted from 1");
    return {.change = known(decisions::findChange(textAt(row, 0)), row, path),
            .revision = static_cast<int>(revision),
            .person = textAt(row, 2),
            .at = instantAt(row, 3, path),
            .words = textAt(row, 4)};
}

std::vector<Cell> valuesOf(const decisions::SpotCheck &check)
{
    std::string notes;
    for (const keyboard::Note note : check.notes)
        notes += (notes.empty() ? "" : " ") + std::to_string(note.number());
    std::string quantities;
    for (const catalogue::Quantity quantity : check.quantities)
        quantities += (quantities.empty() ? "" : " ") + std::string(catalogue::idOf(quantity));
    return {check.checked, std::int64_t{check.seed}, std::ssize(check.notes), notes, quantities};
}

decisions::SpotCheck spotCheckOf(const Row &row, const std::string &path)
{
    decisions::SpotCheck check;
    check.checked = numberAt(row, 0, path);
    check.seed = static_cast<std::uint32_t>(numberAt(row, 1, path));
    std::istringstream notes(textAt(row, 3));
    for (std::int64_t number = 0; notes >> number;)
        check.notes.push_back(noteOf(number, path));
    std::istringstream quantities(textAt(row, 4));
    for (std::string id; quantities >> id;)
        check.quantities.push_back(known(catalogue::findQuantity(id), row, path));
    if (!notes.eof() || std::ssize(check.notes) != numberAt(row, 2, path))
        throwDamaged(path, describe(row) + ": the sample is not as large as it says");
    return check;
}

} // namespace hammerline::logbook::inside
