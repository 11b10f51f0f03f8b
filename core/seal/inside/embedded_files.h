#pragma once
// The files inside a record, read only after its seal was found to hold.

#include "seal/seal.h"

#include <optional>
#include <string_view>
#include <vector>

namespace hammerline::seal {

/// Sorted by name. Absent where the file is damaged or a file inside is larger than the bound: libqpdf tries to mend
/// nothing, and its first warning counts as damage.
[[nodiscard]] std::optional<std::vector<EmbeddedFile>> embeddedFilesOf(std::string_view pdf);

} // namespace hammerline::seal
