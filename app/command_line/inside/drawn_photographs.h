#pragma once
// Pictures for the demonstration workshop, drawn by this program: what a photograph of an invented piano might show.
// They carry pixels and nothing else. Needs no application object.

#include "dossier/dossier.h"

#include <string>

namespace hammerline::command_line {

/// A JPEG. The views "front" and "hammers" have a drawing each, worn as received and clean as it leaves; any other view
/// gets the front.
[[nodiscard]] std::string drawnPhotograph(const dossier::Photograph &wanted);

} // namespace hammerline::command_line
