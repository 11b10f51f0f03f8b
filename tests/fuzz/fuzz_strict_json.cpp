// The tree of a text: what is read is what the library reads of it by itself, within the bounds; what stops one reading
// stops it under narrower bounds too.
#include "strict_json/strict_json.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <optional>

using namespace hammerline;
using strict_json::Bounds;
using strict_json::Json;
using strict_json::Kinds;

namespace {

void insist(bool holds)
{
    if (!holds)
        std::abort();
}

std::optional<Json> treeOf(std::string_view text, const Bounds &bounds)
{
    auto tree = strict_json::read(text, bounds, [&](const strict_json::Stop &stop) {
        insist(stop.said.size() <= 200 && stop.path.size() <= bounds.depth);
        insist(stop.line <= 1 + static_cast<std::size_t>(std::ranges::count(text, '\n')));
        return outcome::Fault{};
    });
    return tree ? std::optional(std::move(tree).value()) : std::nullopt;
}

std::size_t depthOf(const Json &tree)
{
    std::size_t most = 0;
    for (const Json &child : tree)
        if (child.is_structured())
            most = std::max(most, depthOf(child));
    return tree.is_structured() ? most + 1 : 0;
}

bool plain(const Json &tree)
{
    if (tree.is_structured())
        return std::ranges::all_of(tree, plain);
    return tree.is_string() || tree.is_number_integer();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char *>(data), size);
    const auto all = treeOf(text, {});
    const auto narrow = treeOf(text, {.depth = 3, .values = 9, .kinds = Kinds::TextsAndWholeNumbers});
    insist(all || !narrow);
    if (!all)
        return 0;
    insist(*all == Json::parse(text) && depthOf(*all) <= Bounds{}.depth);
    insist(!narrow || (*narrow == *all && plain(*narrow) && depthOf(*narrow) <= 3));
    return 0;
}
