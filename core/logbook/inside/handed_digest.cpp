#include "logbook/inside/handed_digest.h"

#include "logbook/inside/canonical_tree.h"
#include "logbook/inside/handed_tree.h"
#include "logbook/inside/sha256.h"

namespace hammerline::logbook::inside {

namespace {

using Json = nlohmann::json;

std::string beforeTheFirst()
{
    return std::string(64, '0');
}

std::string digestOfDeed(Json deed, const std::string &previous)
{
    deed.erase("digest");
    deed["previous"] = previous;
    std::string canonical;
    appendCanonical(canonical, deed);
    Sha256 digest;
    digest.add(canonical);
    return hexOf(digest.finish());
}

std::string textIn(const Json &json, const char *name)
{
    const auto found = json.find(name);
    return found == json.end() || !found->is_string() ? std::string() : found->get<std::string>();
}

/// "reading let_off C#4", as far as the deed still says.
std::string whatItDid(const Json &deed)
{
    const auto rows = deed.find("rows");
    const bool hasRow = rows != deed.end() && rows->is_array() && !rows->empty() && rows->front().is_object();
    std::string did = (hasRow ? textIn(rows->front(), "table") : textIn(deed, "name")) + ' ' + textIn(deed, "subject");
    return strict_json::clipped(std::move(did));
}

/// A list is added element by element, so that no second copy of all pictures is made.
void addCanonical(Sha256 &digest, const Json &value)
{
    std::string text;
    if (!value.is_array()) {
        appendCanonical(text, value);
        digest.add(text);
        return;
    }
    digest.add("[");
    for (const Json &element : value) {
        appendCanonical(text, element);
        digest.add(text);
        text = ",";
    }
    digest.add("]");
}

} // namespace

void giveDigests(Json &document)
{
    std::string previous = beforeTheFirst();
    for (Json &deed : document["deeds"])
        deed["digest"] = previous = digestOfDeed(deed, previous);
    document["digest"] = digestOfDocument(document);
}

std::string alteredDeed(const Json &document)
{
    const auto deeds = document.find("deeds");
    if (deeds == document.end() || !deeds->is_array())
        return "the document: \"deeds\" is missing or no list";
    std::string previous = beforeTheFirst();
    std::size_t number = 0;
    for (const Json &deed : *deeds) {
        const std::string place = placeOfDeed(++number);
        if (!deed.is_object())
            return place + " is none";
        if (deed.value("deed", Json()) != Json(number))
            return place + " is missing or out of order";
        const std::string stated = textIn(deed, "digest");
        if (stated.empty())
            return place + ": \"digest\" is missing";
        if (stated != digestOfDeed(deed, previous))
            return place + ", " + whatItDid(deed) + ": was altered after it was handed over";
        previous = stated;
    }
    return {};
}

std::string digestOfDocument(const Json &document)
{
    Sha256 digest;
    std::string separator = "{";
    for (const auto &[name, value] : document.items()) {
        if (name == "digest")
            continue;
        appendCanonical(separator, Json(name));
        digest.add(separator + ':');
        addCanonical(digest, value);
        separator = ",";
    }
    digest.add("}");
    return hexOf(digest.finish());
}

} // namespace hammerline::logbook::inside
