#pragma once
// A hand-over as a tree of JSON, on its way into text and out of it.
//
// The text has one form alone: each deed and each picture is a line of its own, in canonical form (RFC 8785); so a text
// is the one that was written, byte for byte, or it is another.

#include "outcome/outcome.h"
#include "strict_json/strict_json.h"

#include <functional>
#include <string>
#include <string_view>

namespace hammerline::logbook::inside {

/// The whole text, piece by piece in order. The tree has a document's members.
void layOut(const strict_json::Json &document, const std::function<void(std::string_view)> &piece);
/// The first line of `text`, from 1, that is not the one `layOut` writes; 0: none.
[[nodiscard]] std::size_t firstLineOff(const strict_json::Json &document, std::string_view text);

/// Lets in objects, lists, texts and whole numbers below 2^53, nested no deeper than a hand-over is, and each member
/// once; what goes beyond ends the reading (strict_json.h). One fault, with its place.
[[nodiscard]] outcome::Outcome<strict_json::Json> readHandedTree(std::string_view text, const std::string &file);

/// "deed 12"; counted from 1.
[[nodiscard]] std::string placeOfDeed(std::size_t number);

} // namespace hammerline::logbook::inside
