#include "shop/judge_shop.h"

#include <nlohmann/json.hpp>

namespace hammerline::shop {

namespace {

using nlohmann::ordered_json;
using tolerance::Status;

ordered_json treeOf(const tolerance::Tally &tally)
{
    ordered_json json;
    for (const Status status : {Status::In, Status::Marginal, Status::Out, Status::Missing})
        json[tolerance::idOf(status)] = tally.of(status);
    json["uneven"] = tally.uneven;
    return json;
}

void put(ordered_json &json, const TwoSets &counts)
{
    json["now"] = treeOf(counts.now);
    json["then"] = treeOf(counts.then);
    if (counts.bothJudge())
        json["more_out"] = counts.moreOut();
}

} // namespace

std::string judgedJson(const Asked &asked, const ShopJudged &judged, const Names &names)
{
    ordered_json json;
    json["format"] = "hammerline-rejudge";
    json["version"] = 1;
    json["set"] = asked.set.name;
    json["action"] = catalogue::idOf(asked.set.action);
    json["passes"] = idOf(asked.which);
    json["judged_passes"] = passesIn(judged);
    json["quantities"] = ordered_json::object();
    for (const auto &row : rowsByQuantity(judged))
        put(json["quantities"][std::string(catalogue::idOf(row.key))], row.counts);
    json["instruments"] = ordered_json::array();
    for (const auto &row : rowsByInstrument(judged)) {
        ordered_json one{{"instrument", row.key}};
        if (const auto name = names.find(row.key); name != names.end())
            one["name"] = name->second;
        put(one, row.counts);
        json["instruments"].push_back(std::move(one));
    }
    return json.dump(2, ' ', false, ordered_json::error_handler_t::replace) + '\n';
}

} // namespace hammerline::shop
