#include "logbook/inside/handed_tree.h"

#include "logbook/inside/canonical_tree.h"

#include <algorithm>

namespace hammerline::logbook::inside {

namespace {

using strict_json::clipped;
using strict_json::Json;
using strict_json::Step;
using strict_json::Stop;
using strict_json::Why;

/// As deep as document, deeds, deed, rows, row. No document that a logbook writes within the size allowed has as many
/// values: each takes some ten letters.
constexpr strict_json::Bounds bounds{
    .depth = 5, .values = 16u << 20, .kinds = strict_json::Kinds::TextsAndWholeNumbers};

/// The deed or picture that is being read, or the document.
std::string placeAt(const std::vector<Step> &path)
{
    if (path.size() < 2 || path[0].member.empty() || path[1].element == 0)
        return "the document";
    return path[0].member == "deeds" ? placeOfDeed(path[1].element)
                                     : clipped(path[0].member) + ", " + std::to_string(path[1].element);
}

std::string problemAt(const Stop &stop)
{
    const std::string said = '"' + clipped(stop.said) + '"';
    switch (stop.why) {
    case Why::Null:
        return "holds null, which no hand-over does; what is absent is left out";
    case Why::Boolean:
        return "holds true or false, which no hand-over does";
    case Why::NoWholeNumber:
        return "holds " + said + ", which is no whole number";
    case Why::BeyondExact:
        return "holds " + stop.said + ", beyond what can be kept";
    case Why::MemberTwice:
        return said + " stands there twice; once would be right";
    case Why::TooDeep:
        return "objects and lists are nested deeper than in any hand-over";
    default:
        return "there are more values than in any hand-over";
    }
}

outcome::Fault faultOf(const Stop &stop, const std::string &file)
{
    if (stop.why != Why::NotJson)
        return {file, 0, placeAt(stop.path) + ": " + problemAt(stop)};
    const bool hurt = stop.line > 1;
    const std::string problem =
        hurt ? "from here on it is no JSON; it was cut off or altered" : "this is no JSON document";
    return {file, hurt ? stop.line : 0, problem + "; give a file made by handing an instrument over"};
}

/// `"name":[` and each element on a line of its own.
void layOutList(const char *name, const Json &list, const std::function<void(std::string_view)> &piece)
{
    piece(std::string(",\n\"") + name + "\":[");
    std::string line = "\n";
    for (const Json &element : list) {
        appendCanonical(line, element);
        piece(line);
        line = ",\n";
    }
    piece("]");
}

} // namespace

std::string placeOfDeed(std::size_t number)
{
    return "deed " + std::to_string(number);
}

void layOut(const Json &document, const std::function<void(std::string_view)> &piece)
{
    std::string head;
    for (const char *name : {"format", "version", "digest", "instrument", "without"}) {
        if (!document.contains(name))
            continue;
        head += (head.empty() ? "{\"" : ",\"") + std::string(name) + "\":";
        appendCanonical(head, document[name]);
    }
    piece(head);
    layOutList("deeds", document["deeds"], piece);
    layOutList("pictures", document["pictures"], piece);
    piece("}\n");
}

std::size_t firstLineOff(const Json &document, std::string_view text)
{
    std::size_t line = 1;
    bool same = true;
    layOut(document, [&](std::string_view piece) {
        if (!same)
            return;
        const auto [ours, theirs] = std::ranges::mismatch(piece, text);
        line += static_cast<std::size_t>(std::count(piece.begin(), ours, '\n'));
        same = ours == piece.end();
        text.remove_prefix(static_cast<std::size_t>(theirs - text.begin()));
    });
    return same && text.empty() ? 0 : line;
}

outcome::Outcome<Json> readHandedTree(std::string_view text, const std::string &file)
{
    return strict_json::read(text, bounds, [&](const Stop &stop) { return faultOf(stop, file); });
}

} // namespace hammerline::logbook::inside
