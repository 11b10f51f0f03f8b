#pragma once
// The XMP packet (ISO 16684-1) that says of the file what its document information says, and that it is built to
// PDF/A-3b.

#include "seal/dress.h"

#include <string>

namespace hammerline::seal {

[[nodiscard]] std::string xmpPacket(const Dressing &dressing);
/// `D:20260302091000Z`, to the second.
[[nodiscard]] std::string pdfDate(readings::Instant instant);

} // namespace hammerline::seal
