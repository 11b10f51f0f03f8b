#include "exchange/inside/dossier_parts.h"

namespace hammerline::exchange {
namespace {

OrderedJson workTree(const dossier::WorkEntry &entry)
{
    OrderedJson json;
    json["kind"] = dossier::idOf(entry.kind);
    json["what"] = entry.what;
    if (entry.notes) {
        json["first_note"] = entry.notes->first.number();
        json["last_note"] = entry.notes->last.number();
    }
    putText(json, "material", entry.material);
    putText(json, "person", entry.person);
    if (entry.day)
        json["day"] = dossier::isoDay(*entry.day);
    if (entry.took)
        json["minutes"] = entry.took->count();
    if (entry.departure)
        json["departure_why"] = entry.why;
    putText(json, "remark", entry.remark);
    return json;
}

OrderedJson conditionTree(const dossier::ConditionPlace &place, const dossier::Condition &condition)
{
    OrderedJson json;
    json["moment"] = dossier::idOf(place.moment);
    json["area"] = dossier::idOf(place.area);
    if (condition.grade)
        json["grade"] = static_cast<int>(*condition.grade);
    putText(json, "words", condition.words);
    return json;
}

OrderedJson photographTree(const dossier::Photograph &photograph)
{
    OrderedJson json;
    json["moment"] = dossier::idOf(photograph.moment);
    putText(json, "view", photograph.view);
    putText(json, "caption", photograph.caption);
    json["sha256"] = photograph.digest;
    return json;
}

OrderedJson saleTree(const dossier::Sale &sale)
{
    OrderedJson json;
    putText(json, "buyer", sale.buyer);
    putText(json, "price", sale.price);
    putText(json, "remark", sale.remark);
    return json;
}

} // namespace

void putDossier(OrderedJson &json, const dossier::Dossier &dossier)
{
    for (const dossier::WorkEntry &entry : dossier.work)
        json["work"].push_back(workTree(entry));
    for (const auto &[place, condition] : dossier.conditions)
        json["condition"].push_back(conditionTree(place, condition));
    for (const dossier::Photograph &photograph : dossier.photographs)
        json["photographs"].push_back(photographTree(photograph));
    if (dossier.sale.said())
        json["sale"] = saleTree(dossier.sale);
}

} // namespace hammerline::exchange
