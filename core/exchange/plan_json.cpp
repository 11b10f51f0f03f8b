#include "exchange/plan_json.h"

#include "exchange/inside/json_writer.h"

namespace hammerline::exchange {
namespace {

using catalogue::Quantity;

std::string plainName(Quantity quantity)
{
    std::string name(catalogue::idOf(quantity));
    for (char &letter : name)
        letter = letter == '_' ? ' ' : letter;
    return name;
}

OrderedJson railJson(const action::RailMove &rail)
{
    OrderedJson json;
    json["rail"] = rail.rail;
    putAmount(json, "bass", rail.bass);
    putAmount(json, "treble", rail.treble);
    return json;
}

OrderedJson moveJson(const action::Move &move)
{
    OrderedJson json;
    json["order"] = move.order;
    json["note"] = move.note.number();
    json["adjust"] = catalogue::idOf(move.adjust);
    putAmount(json, "by", move.by);
    putNumber(json, "turns", move.turns);
    if (!move.punchings)
        return json;
    OrderedJson &list = json["punchings_mm"] = OrderedJson::array();
    for (const units::Length piece : *move.punchings)
        list.push_back(piece.inMillimetres());
    return json;
}

OrderedJson placeJson(keyboard::Note note, Quantity quantity)
{
    OrderedJson json;
    json["note"] = note.number();
    json["quantity"] = catalogue::idOf(quantity);
    return json;
}

OrderedJson pairJson(const action::Pair &pair)
{
    OrderedJson json = placeJson(pair.note, pair.quantity);
    putMeasure(json, "value", catalogue::infoOf(pair.quantity).dimension, pair.after);
    json["status"] = tolerance::idOf(pair.status);
    json["predicted"] = pair.predicted;
    return json;
}

template <typename List, typename ToJson>
void putList(OrderedJson &json, const std::string &key, const List &list, ToJson toJson)
{
    OrderedJson &items = json[key] = OrderedJson::array();
    for (const auto &item : list)
        items.push_back(toJson(item));
}

OrderedJson fittedJson(const action::FittedNote &note)
{
    OrderedJson json;
    json["note"] = note.note.number();
    json["lever_ratio"] = note.ratio;
    json["feasible"] = note.feasible;
    OrderedJson &targets = json["targets"] = OrderedJson::object();
    putAmount(targets, "blow", note.blow);
    putAmount(targets, "let_off", note.letOff);
    putAmount(targets, "dip", note.dip);
    putAmount(targets, "aftertouch", note.aftertouch);
    return json;
}

} // namespace

std::string_view wordsOf(action::Hindrance why)
{
    switch (why) {
    case action::Hindrance::NothingMovesIt:
        return "no adjustment of the setup moves it";
    case action::Hindrance::OutOfReach:
        return "its adjustments do not reach far enough";
    case action::Hindrance::BetweenSteps:
        return "it lies between two steps of its adjustments";
    case action::Hindrance::AtTheCostOf:
        return "it could come in only at the cost of another";
    }
    return "";
}

std::string planJson(const action::Plan &plan)
{
    OrderedJson json = documentHead("hammerline-plan", 1);
    json["aim"] = action::idOf(plan.aim);
    putList(json, "rails", plan.rails, railJson);
    putList(json, "moves", plan.moves, moveJson);
    json["minutes"] = plan.minutes;
    json["pairs"] = plan.pairs.size();
    json["pairs_in_before"] = plan.pairsInBefore;
    json["pairs_in_after"] = plan.pairsInAfter;
    json["closeness"] = plan.closeness;
    putList(json, "after", plan.pairs, pairJson);
    putList(json, "unresolved", plan.unresolved, [](const action::Unresolved &unresolved) {
        OrderedJson item = placeJson(unresolved.note, unresolved.quantity);
        item["why"] = wordsOf(unresolved.why);
        return item;
    });
    putList(json, "remeasure", plan.remeasure, [](const action::Remeasure &again) {
        OrderedJson item = placeJson(again.note, again.quantity);
        item["why"] = plainName(again.movedBy) + " moves";
        return item;
    });
    return documentText(json);
}

std::string fitJson(const action::Fit &fit)
{
    OrderedJson json = documentHead("hammerline-fit", 1);
    putList(json, "notes", fit.notes, fittedJson);
    return documentText(json);
}

} // namespace hammerline::exchange
