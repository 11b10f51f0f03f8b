#include "logbook/inside/handed_order.h"

#include <algorithm>
#include <queue>
#include <tuple>
#include <utility>

namespace hammerline::logbook::inside {

namespace {

using Index = std::size_t;

/// Which deeds each deed builds upon.
class Foundations {
public:
    explicit Foundations(const std::vector<HandedDeed> &deeds) : m_of(deeds.size())
    {
        for (Index index = 0; index < deeds.size(); ++index)
            add(deeds[index], index);
    }
    [[nodiscard]] const std::vector<std::vector<Index>> &of() const { return m_of; }

private:
    struct PassSoFar {
        std::optional<Index> begun{};
        std::optional<Index> stood{}; ///< the newest that signed it or opened it again
        std::vector<Index> since{};
    };

    void add(const HandedDeed &deed, Index index)
    {
        if (index > 0)
            build(index, 0);
        if (deed.deed.undoes)
            build(index, numbered(*deed.deed.undoes));
        bool stands = false;
        for (const Row &row : deed.rows) {
            addRow(row, index);
            stands = stands || row.table == &passStandingTable();
        }
        if (!deed.pass.empty())
            addToPass(m_passes[deed.pass], index, stands);
    }

    void addRow(const Row &row, Index index)
    {
        auto [writer, isFirst] = m_writers.try_emplace({row.table, {row.keys().begin(), row.keys().end()}}, index);
        if (!isFirst)
            build(index, std::exchange(writer->second, index));
        for (std::size_t column = 0; column < row.cells.size(); ++column) {
            const Carried carried = carriedAs(row.table->columns()[column]);
            if (const auto *number = std::get_if<std::int64_t>(&row.cells[column]);
                number != nullptr && carried == Carried::Deed)
                build(index, numbered(*number));
            if (const auto *uid = std::get_if<std::string>(&row.cells[column]);
                uid != nullptr && carried == Carried::Pass)
                addToBegun(m_passes[*uid], index);
        }
    }

    void addToBegun(PassSoFar &pass, Index index)
    {
        if (!pass.begun)
            pass.begun = index;
        build(index, *pass.begun);
    }

    void addToPass(PassSoFar &pass, Index index, bool stands)
    {
        addToBegun(pass, index);
        if (pass.stood)
            build(index, *pass.stood);
        if (!stands) {
            pass.since.push_back(index);
            return;
        }
        for (const Index before : std::exchange(pass.since, {}))
            build(index, before);
        pass.stood = index;
    }

    void build(Index index, Index upon)
    {
        if (index != upon)
            m_of[index].push_back(upon);
    }

    static Index numbered(DeedId number) { return static_cast<Index>(number - 1); }

    std::vector<std::vector<Index>> m_of;
    std::map<std::pair<const VersionTable *, std::vector<Cell>>, Index> m_writers{};
    std::map<std::string, PassSoFar> m_passes{};
};

/// That of the first row; a deed without one comes last.
std::size_t kindOf(const HandedDeed &deed)
{
    const auto tables = versionTables();
    const auto found = deed.rows.empty() ? tables.end() : std::ranges::find(tables, deed.rows.front().table);
    return static_cast<std::size_t>(found - tables.begin());
}

/// Of those that build upon nothing that is yet to come, always the first by moment, person, kind and place.
std::vector<Index> orderOf(const std::vector<HandedDeed> &deeds)
{
    using Turn = std::tuple<readings::Instant, std::string_view, std::size_t, Index>;
    const Foundations foundations(deeds);
    std::vector<std::size_t> waitsFor(deeds.size());
    std::vector<std::vector<Index>> carries(deeds.size());
    std::priority_queue<Turn, std::vector<Turn>, std::greater<>> ready;
    const auto get = [&](Index index) {
        ready.emplace(deeds[index].deed.stamp.at, deeds[index].deed.stamp.person, kindOf(deeds[index]), index);
    };
    for (Index index = 0; index < deeds.size(); ++index) {
        waitsFor[index] = foundations.of()[index].size();
        for (const Index upon : foundations.of()[index])
            carries[upon].push_back(index);
        if (waitsFor[index] == 0)
            get(index);
    }
    std::vector<Index> order;
    while (!ready.empty()) {
        order.push_back(std::get<3>(ready.top()));
        ready.pop();
        for (const Index above : carries[order.back()])
            if (--waitsFor[above] == 0)
                get(above);
    }
    return order;
}

void renumber(HandedDeed &deed, const std::vector<DeedId> &numbers)
{
    const auto anew = [&](DeedId number) { return numbers[static_cast<Index>(number - 1)]; };
    deed.deed.id = anew(deed.deed.id);
    if (deed.deed.undoes)
        deed.deed.undoes = anew(*deed.deed.undoes);
    for (Row &row : deed.rows)
        for (std::size_t column = 0; column < row.cells.size(); ++column)
            if (auto *number = std::get_if<std::int64_t>(&row.cells[column]);
                number != nullptr && carriedAs(row.table->columns()[column]) == Carried::Deed)
                *number = anew(*number);
}

} // namespace

Handed arranged(Handed handed, const std::vector<std::size_t> &places)
{
    std::vector<DeedId> numbers(handed.deeds.size());
    for (Index place = 0; place < places.size(); ++place)
        numbers[places[place]] = static_cast<DeedId>(place) + 1;
    std::vector<HandedDeed> deeds;
    deeds.reserve(places.size());
    for (const Index index : places) {
        renumber(handed.deeds[index], numbers);
        deeds.push_back(std::move(handed.deeds[index]));
    }
    handed.deeds = std::move(deeds);
    return handed;
}

Handed inOrder(Handed handed)
{
    const auto order = orderOf(handed.deeds);
    return arranged(std::move(handed), order);
}

} // namespace hammerline::logbook::inside
