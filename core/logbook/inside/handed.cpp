#include "logbook/inside/handed.h"

#include "logbook/inside/base64.h"
#include "logbook/inside/broken.h"
#include "logbook/inside/canonical_tree.h"
#include "logbook/inside/handed_digest.h"
#include "logbook/inside/handed_tree.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/sha256.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace hammerline::logbook::inside {

namespace {

using Json = nlohmann::json;

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
        else if (auto *text = std::get_if<std::string>(&row.cells[column]))
            *text = wholeUtf8(std::move(*text));
    return row;
}

std::string wholeUtf8(std::string text)
{
    const bool ascii = std::ranges::all_of(text, [](char letter) { return static_cast<unsigned char>(letter) < 0x80; });
    if (ascii)
        return text;
    return Json::parse(Json(text).dump(-1, ' ', false, Json::error_handler_t::replace)).get<std::string>();
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
        std::string content;
        appendCanonical(content, treeOf(deed));
        digests.push_back(digestOf(content + references));
    }
    return digests;
}

bool isOfSale(const std::vector<Row> &rows)
{
    return !rows.empty() && std::ranges::all_of(rows, [](const Row &row) { return row.table == &saleTable(); });
}

std::string textOf(const Handed &handed)
{
    Json document{{"format", "hammerline-hand-over"}, {"version", 2}, {"instrument", handed.instrument}};
    if (handed.saleLeftOut)
        document["without"] = Json::array({"sale"});
    document["deeds"] = document["pictures"] = Json::array();
    for (const HandedDeed &deed : handed.deeds)
        document["deeds"].push_back(treeOf(deed));
    for (const auto &[digest, jpeg] : handed.pictures)
        document["pictures"].push_back(Json{{"digest", digest}, {"jpeg_base64", base64Of(jpeg)}});
    giveDigests(document);
    std::string text;
    layOut(document, [&](std::string_view piece) { text += piece; });
    return text;
}

} // namespace hammerline::logbook::inside
