#pragma once
// Runs of notes as a technician types them into one line: `bass A0 to E2; tenor F2 to B4; treble C5 to C8`.
// Name first, then the first and last note (names or numbers), `;` or a new line between the runs.

#include "instrument/instrument.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"

#include <string>
#include <string_view>
#include <vector>

namespace hammerline::instrument_file {

/// Every run that cannot be read is a fault that quotes it. Blank text is no runs.
[[nodiscard]] outcome::Outcome<keyboard::Sections> parseSections(std::string_view text);
[[nodiscard]] outcome::Outcome<std::vector<instrument::Fitting>> parseFittings(std::string_view text);

[[nodiscard]] std::string textOf(const keyboard::Sections &sections);
[[nodiscard]] std::string textOf(const std::vector<instrument::Fitting> &fittings);

} // namespace hammerline::instrument_file
