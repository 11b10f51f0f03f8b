#pragma once
// How every file of this room is written: no object streams, an identity made from the content, PDF 1.6 and up.

#include <string>

class QPDF;

namespace hammerline::seal {

[[nodiscard]] std::string written(QPDF &pdf);

} // namespace hammerline::seal
