#include "logbook/inside/handed_sale.h"

#include "logbook/inside/handed_order.h"

#include <algorithm>
#include <set>

namespace hammerline::logbook::inside {

namespace {

/// One version of the instrument and the deed that wrote it.
struct Written {
    std::size_t deed = 0;
    bool alone = false; ///< the deed wrote nothing else
    const Row *row = nullptr;
};

std::vector<Written> versionsIn(const Handed &handed)
{
    std::vector<Written> versions;
    for (std::size_t deed = 0; deed < handed.deeds.size(); ++deed)
        for (const Row &row : handed.deeds[deed].rows)
            if (row.table == &instrumentTable())
                versions.push_back({deed, handed.deeds[deed].rows.size() == 1, &row});
    return versions;
}

std::size_t stateColumn()
{
    const auto &columns = instrumentTable().columns();
    return static_cast<std::size_t>(std::ranges::find(columns, "state") - columns.begin());
}

bool isDelivered(const Row &row)
{
    return row.cells[stateColumn()] == Cell("delivered");
}

bool sameButForState(const Row &a, const Row &b)
{
    for (std::size_t column = instrumentTable().firstValue(); column < a.cells.size(); ++column)
        if (column != stateColumn() && a.cells[column] != b.cells[column])
            return false;
    return true;
}

/// Where the versions begin that tell of nothing but the delivery and the states since.
std::size_t deliveryIn(const std::vector<Written> &versions)
{
    for (std::size_t first = 1; first < versions.size(); ++first) {
        const Row &before = *versions[first - 1].row;
        const auto tellsNothingElse = [&](const Written &version) {
            return version.alone && sameButForState(before, *version.row);
        };
        if (isDelivered(*versions[first].row) && !isDelivered(before) &&
            std::all_of(versions.begin() + static_cast<std::ptrdiff_t>(first), versions.end(), tellsNothingElse))
            return first;
    }
    return versions.size();
}

} // namespace

Handed withoutSale(Handed handed)
{
    std::set<std::size_t> leftOut;
    const auto versions = versionsIn(handed);
    for (std::size_t version = deliveryIn(versions); version < versions.size(); ++version)
        leftOut.insert(versions[version].deed);
    std::vector<std::size_t> kept;
    for (std::size_t deed = 0; deed < handed.deeds.size(); ++deed)
        if (!leftOut.contains(deed) && !isOfSale(handed.deeds[deed].rows))
            kept.push_back(deed);
    handed.saleLeftOut = true;
    return arranged(std::move(handed), kept);
}

} // namespace hammerline::logbook::inside
