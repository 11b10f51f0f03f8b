#include "logbook/judge_shop.h"

#include "logbook/inside/record_rows.h"
#include "logbook/inside/store.h"
#include "logbook/inside/taker.h"

#include <algorithm>
#include <future>
#include <span>
#include <unordered_map>

namespace hammerline::logbook {

namespace {

using Keyboards = std::unordered_map<instrument::InstrumentId, Keyboard>;
using Part = std::span<const PassOf>;

// The columns of an instrument up to its sections; of each the newest version comes last. Its long texts lie behind.
constexpr std::string_view keyboardsSql =
    "SELECT instrument, version, uid, name, action, first_note, last_note, sections "
    "FROM instrument ORDER BY instrument, version";
constexpr std::string_view passesSql =
    "SELECT pass, instrument FROM pass WHERE NOT EXISTS "
    "(SELECT 1 FROM spot_check AS s WHERE s.pass = pass.pass) ORDER BY pass, version";

std::vector<PassTally> judged(const Logbook &book, const tolerance::Judge &judge, const Keyboards &keyboards, Part part)
{
    std::vector<PassTally> tallies;
    for (const auto &[pass, instrument] : part) {
        const auto keyboard = keyboards.find(instrument);
        const auto values = keyboard == keyboards.end() ? readings::ValueTable{} : book.values(pass);
        if (!values.empty())
            tallies.push_back(
                {pass, instrument, judge.tally(values, keyboard->second.compass, keyboard->second.sections)});
    }
    return tallies;
}

} // namespace

std::vector<Keyboard> Logbook::keyboards() const
{
    const inside::Use query = m_inside->database.use(keyboardsSql);
    std::vector<Keyboard> found;
    while (query->step()) {
        inside::Row row{&inside::instrumentTable(),
                        std::vector<inside::Cell>(inside::instrumentTable().columns().size())};
        for (int column = 0; column < query->columns(); ++column)
            row.cells[static_cast<std::size_t>(column)] = query->cell(column);
        if (!found.empty() && found.back().instrument == query->integer(0))
            found.pop_back();
        if (!row.withdrawn())
            found.push_back(inside::keyboardOf(row, path()));
    }
    return found;
}

std::vector<PassOf> Logbook::passesOfAll() const
{
    const inside::Use query = m_inside->database.use(passesSql);
    std::vector<PassOf> found;
    while (query->step()) {
        const readings::PassId pass = query->integer(0);
        if (!found.empty() && found.back().pass == pass)
            found.pop_back();
        if (!query->isNull(1))
            found.push_back({pass, query->integer(1)});
    }
    return found;
}

std::vector<PassTally> judgeShop(const std::string &path, const tolerance::ToleranceSet &set, unsigned atOnce)
{
    const auto book = Logbook::open(path, Access::ReadOnly);
    const tolerance::Judge judge(set);
    Keyboards keyboards;
    for (Keyboard &each : book.keyboards())
        if (each.action == set.action)
            keyboards.emplace(each.instrument, std::move(each));
    const auto passes = book.passesOfAll();
    const std::size_t share = passes.size() / std::max(atOnce, 1U) + 1;
    std::vector<std::future<std::vector<PassTally>>> others;
    for (std::size_t from = share; from < passes.size(); from += share)
        others.push_back(std::async(std::launch::async, [&, from] {
            return judged(Logbook::open(path, Access::ReadOnly), judge, keyboards,
                          Part(passes).subspan(from, std::min(share, passes.size() - from)));
        }));
    auto tallies = judged(book, judge, keyboards, Part(passes).first(std::min(share, passes.size())));
    for (auto &other : others)
        std::ranges::move(other.get(), std::back_inserter(tallies));
    return tallies;
}

} // namespace hammerline::logbook
