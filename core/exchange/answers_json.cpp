#include "exchange/answers_json.h"

#include "exchange/inside/answer_parts.h"

namespace hammerline::exchange {
namespace {

OrderedJson instrumentTree(const instrument::Instrument &instrument)
{
    OrderedJson json;
    json["id"] = instrument.id;
    json["name"] = instrument.name;
    json["action"] = catalogue::idOf(instrument.action);
    json["first_note"] = instrument.compass.first.number();
    json["last_note"] = instrument.compass.last.number();
    json["state"] = instrument::idOf(instrument.state);
    return json;
}

OrderedJson passTree(const PassCount &count)
{
    OrderedJson json;
    json["id"] = count.pass.id;
    json["purpose"] = readings::idOf(count.pass.purpose);
    json["began"] = readings::rfc3339(count.pass.began);
    json["readings"] = count.readings;
    return json;
}

/// The expanded doubt (k = 2), and how probably the true value lies inside with it: unlike `check`, whose probability
/// goes by the set alone, with the gauge of the pass and the digits written down.
void putDoubt(OrderedJson &json, const tolerance::Verdict &verdict)
{
    if (!verdict.doubt || !verdict.value)
        return;
    putMeasure(json, "doubt", verdict.value->dimension(), verdict.doubt->expanded());
    putNumber(json, "probability_inside", verdict.conformanceProbability);
}

OrderedJson itemTree(const review::Item &item, bool withKind)
{
    OrderedJson json;
    json["instrument"] = item.instrument;
    json["pass"] = item.pass;
    json["note"] = item.verdict.note.number();
    json["quantity"] = catalogue::idOf(item.verdict.quantity);
    if (withKind)
        json["kind"] = review::idOf(item.kind);
    putAmount(json, "value", item.verdict.value);
    putAmount(json, "deviation", item.verdict.deviation);
    putNumber(json, "half_widths", item.halfWidths);
    putDoubt(json, item.verdict);
    return json;
}

} // namespace

std::string checkJson(const tolerance::Judgement &judgement, const analysis::Summaries &summaries)
{
    OrderedJson json = documentHead("hammerline-check", 1);
    json["readings"] = OrderedJson::array();
    for (const auto &verdict : judgement.verdicts)
        json["readings"].push_back(verdictTree(verdict));
    json["quantities"] = summariesTree(summaries);
    return documentText(json);
}

std::string compareJson(const analysis::Comparisons &comparisons)
{
    OrderedJson json = documentHead("hammerline-compare", 1);
    json["quantities"] = comparisonsTree(comparisons);
    return documentText(json);
}

std::string instrumentsJson(const std::vector<instrument::Instrument> &instruments)
{
    OrderedJson json = documentHead("hammerline-instruments", 1);
    json["instruments"] = OrderedJson::array();
    for (const auto &instrument : instruments)
        json["instruments"].push_back(instrumentTree(instrument));
    return documentText(json);
}

std::string passesJson(const std::vector<PassCount> &passes)
{
    OrderedJson json = documentHead("hammerline-passes", 1);
    json["passes"] = OrderedJson::array();
    for (const auto &pass : passes)
        json["passes"].push_back(passTree(pass));
    return documentText(json);
}

std::string importJson(readings::PassId pass, int readings)
{
    OrderedJson json = documentHead("hammerline-import", 1);
    json["pass"] = pass;
    json["readings"] = readings;
    return documentText(json);
}

std::string reviewJson(const std::vector<review::Item> &items, const std::vector<review::Item> &inDoubt)
{
    OrderedJson json = documentHead("hammerline-review", 1);
    json["items"] = OrderedJson::array();
    for (const auto &item : items)
        json["items"].push_back(itemTree(item, true));
    json["in_doubt"] = OrderedJson::array();
    for (const auto &item : inDoubt) {
        json["in_doubt"].push_back(itemTree(item, false));
        json["in_doubt"].back()["uneven"] = item.verdict.uneven;
    }
    return documentText(json);
}

} // namespace hammerline::exchange
