#pragma once
// The smallest file that can be dressed and sealed, and a key to do it with.

#include "seal/seal.h"

#include <string>

namespace hammerline::seal {

/// One empty page, as some drawing library might write it.
[[nodiscard]] std::string smallPdf();
[[nodiscard]] Dressing smallDressing();
[[nodiscard]] readings::Instant someDay();
/// Made once for the whole run.
[[nodiscard]] const SigningKey &someKey();
[[nodiscard]] std::string smallSealedRecord();

} // namespace hammerline::seal
