#pragma once
// The digests by which a hand-over vouches for what is in it; what they are over is in hand_over.h.

#include <nlohmann/json.hpp>

#include <string>

namespace hammerline::logbook::inside {

/// Gives every deed and the document, which have everything else, their digests.
void giveDigests(nlohmann::json &document);

/// Where a deed is not the one that its digest was made for, or not in its place: what, in words. Empty: none is. The
/// document may be any tree of readHandedTree.
[[nodiscard]] std::string alteredDeed(const nlohmann::json &document);
/// SHA-256 over the document without the member "digest", hexadecimal.
[[nodiscard]] std::string digestOfDocument(const nlohmann::json &document);

} // namespace hammerline::logbook::inside
