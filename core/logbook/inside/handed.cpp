#include "logbook/inside/handed.h"

#include "logbook/inside/base64.h"
#include "logbook/inside/broken.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/sha256.h"

#include <nlohmann/json.hpp>

namespace hammerline::logbook::inside {

namespace {

using Json = nlohmann::ordered_json;

std::string dumped(const Json &json)
{
    return json.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

template <typename Map>
typename Map::mapped_type found(const Map &map, const typename Map::key_type &key, const std::string &path)
{
    const auto it = map.find(key);
    if (it == map.end())
        throwDamaged(path, "an instrument's deed names what is not the instrument's");
    return it->second;
}

Cell portableCell(Carried carried, std::int64_t number, const Names &names, const std::string &path)
{
    switch (carried) {
    case Carried::Instrument:
        return names.instrumentUid;
    case Carried::Pass:
        return found(names.uidOfPass, number, path);
    case Carried::Quantity:
        return std::string(catalogue::idOf(quantityOf(number, path)));
    case Carried::Deed:
        return found(names.numberOfDeed, number, path);
    case Carried::AsItIs:
        break;
    }
    return number;
}

Cell localCell(Carried carried, const Cell &cell, const Names &names)
{
    switch (carried) {
    case Carried::Instrument:
        return names.instrument;
    case Carried::Pass:
        return names.passOfUid.at(std::get<std::string>(cell));
    case Carried::Quantity:
        return storedQuantity(catalogue::findQuantity(std::get<std::string>(cell)).value());
    case Carried::Deed:
        return names.deedOfNumber.at(std::get<std::int64_t>(cell));
    case Carried::AsItIs:
        break;
    }
    return cell;
}

bool isNothing(const Cell &cell)
{
    return std::holds_alternative<std::monostate>(cell);
}

Json treeOf(const Row &row)
{
    Json json{{"table", row.table->name()}};
    for (std::size_t column = 0; column < row.cells.size(); ++column)
        if (const auto *number = std::get_if<std::int64_t>(&row.cells[column]))
            json[row.table->columns()[column]] = *number;
        else if (const auto *text = std::get_if<std::string>(&row.cells[column]))
            json[row.table->columns()[column]] = *text;
    return json;
}

Json treeOf(const HandedDeed &handed)
{
    Json json{{"deed", handed.deed.id},
              {"at", readings::rfc3339(handed.deed.stamp.at)},
              {"person", handed.deed.stamp.person},
              {"name", handed.deed.name},
              {"subject", handed.deed.subject}};
    if (!handed.deed.reason.empty())
        json["reason"] = handed.deed.reason;
    if (handed.deed.undoes)
        json["undoes"] = *handed.deed.undoes;
    if (!handed.pass.empty())
        json["pass"] = handed.pass;
    json["rows"] = Json::array();
    for (const Row &row : handed.rows)
        json["rows"].push_back(treeOf(row));
    return json;
}

std::string digestOf(const std::string &text)
{
    Sha256 digest;
    digest.add(text);
    return hexOf(digest.finish());
}

/// Numbers of deeds taken out of `deed`; the digests of those deeds.
std::string takeReferences(HandedDeed &deed, const std::vector<std::string> &digests)
{
    const auto digest = [&](DeedId number) { return ' ' + digests.at(static_cast<std::size_t>(number - 1)); };
    std::string references;
    if (deed.deed.undoes)
        references += digest(*deed.deed.undoes);
    deed.deed.undoes.reset();
    deed.deed.id = 0;
    for (Row &row : deed.rows)
        for (std::size_t column = 0; column < row.cells.size(); ++column)
            if (carriedAs(row.table->columns()[column]) == Carried::Deed && !isNothing(row.cells[column]))
                references += digest(std::get<std::int64_t>(std::exchange(row.cells[column], Cell(std::int64_t{0}))));
    return references;
}

} // namespace

Carried carriedAs(const std::string &column)
{
    if (column == "instrument")
        return Carried::Instrument;
    if (column == "pass" || column == "checked")
        return Carried::Pass;
    if (column == "quantity")
        return Carried::Quantity;
    return column == "origin" ? Carried::Deed : Carried::AsItIs;
}

Row portable(Row row, const Names &names, const std::string &path)
{
    for (std::size_t column = 0; column < row.cells.size(); ++column)
        if (const auto *number = std::get_if<std::int64_t>(&row.cells[column]))
            row.cells[column] = portableCell(carriedAs(row.table->columns()[column]), *number, names, path);
    return row;
}

Row local(Row row, const Names &names)
{
    for (std::size_t column = 0; column < row.cells.size(); ++column)
        if (!isNothing(row.cells[column]))
            row.cells[column] = localCell(carriedAs(row.table->columns()[column]), row.cells[column], names);
    return row;
}

std::vector<std::string> contentDigests(const Handed &handed)
{
    std::vector<std::string> digests;
    for (HandedDeed deed : handed.deeds) {
        const std::string references = takeReferences(deed, digests);
        digests.push_back(digestOf(dumped(treeOf(deed)) + references));
    }
    return digests;
}

std::string textOf(const Handed &handed)
{
    std::string text =
        "{\"format\":\"hammerline-hand-over\",\"version\":1,\"instrument\":" + dumped(Json(handed.instrument)) +
        ",\n\"deeds\":[";
    for (const HandedDeed &deed : handed.deeds)
        text += (deed.deed.id == 1 ? "\n" : ",\n") + dumped(treeOf(deed));
    text += "],\n\"pictures\":[";
    const char *separator = "\n";
    for (const auto &[digest, jpeg] : handed.pictures) {
        text += separator + dumped(Json{{"digest", digest}, {"jpeg_base64", base64Of(jpeg)}});
        separator = ",\n";
    }
    return text + "]}\n";
}

} // namespace hammerline::logbook::inside
