#include "exchange/built_in.h"

#include "exchange/exchange.h"
#include "exchange/setup_json.h"
#include "exchange/tolerance_json.h"

#include <algorithm>

namespace hammerline::exchange {
namespace {

constexpr std::size_t mostBytes = 16u << 20;

const BuiltIn *findIn(const std::vector<BuiltIn> &all, const std::string &id)
{
    const auto place = std::ranges::find(all, id, &BuiltIn::id);
    return place == all.end() ? nullptr : &*place;
}

std::string idsOf(const std::vector<BuiltIn> &all)
{
    std::string ids;
    for (const BuiltIn &one : all)
        ids += (ids.empty() ? "" : ", ") + one.id;
    return ids;
}

/// The text that `idOrFile` means; where it is neither, the fault also names the built-in ids.
outcome::Outcome<std::string> textOf(const std::vector<BuiltIn> &all, const std::string &idOrFile)
{
    if (const BuiltIn *builtIn = findIn(all, idOrFile))
        return builtIn->text;
    auto text = readFile(idOrFile, mostBytes);
    if (text)
        return text;
    outcome::Fault fault = text.fault();
    fault.problem += ", or a built-in one: " + idsOf(all);
    return fault;
}

} // namespace

outcome::Outcome<NamedSet> findToleranceSet(const std::string &idOrFile)
{
    const auto text = textOf(builtInToleranceSets(), idOrFile);
    if (!text)
        return text.faults();
    auto set = readToleranceSet(text.value(), idOrFile);
    if (!set)
        return set.faults();
    const bool builtIn = findIn(builtInToleranceSets(), idOrFile) != nullptr;
    std::string id = builtIn || set.value().name.empty() ? idOrFile : set.value().name;
    return NamedSet{std::move(id), text.value(), std::move(set).value()};
}

outcome::Outcome<action::Setup> findSetup(const std::string &idOrFile)
{
    const auto text = textOf(builtInSetups(), idOrFile);
    if (!text)
        return text.faults();
    return readSetup(text.value(), idOrFile);
}

} // namespace hammerline::exchange
