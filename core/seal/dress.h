#pragma once
// Turns the PDF that a drawing library made into a record fit for keeping: built to PDF/A-3b (ISO 19005-3), with the
// data it speaks of embedded as files, its title and language named, and no moment in it but the one handed in.
//
// The file is rewritten once by libqpdf. The same bytes and the same dressing give the same bytes. The pages themselves
// are not touched: fonts and colours must be in order already (all fonts embedded, device RGB alone).

#include "readings/instant.h"

#include <string>
#include <string_view>
#include <vector>

namespace hammerline::seal {

struct Attachment {
    std::string name{};        ///< plain file name
    std::string mimeType{};    ///< "application/json"
    std::string description{}; ///< one line for people
    std::string content{};
};

struct Dressing {
    std::string title{};
    std::string author{};   ///< empty: none named
    std::string creator{};  ///< the program and its version
    std::string language{}; ///< BCP 47: "en", "de"
    readings::Instant made{};
    std::string iccProfile{}; ///< of the RGB that the pages are painted in
    std::vector<Attachment> attachments{};
};

/// Attachments and metadata that the file came with are replaced. Throws outcome::BrokenWorld where `pdf` is none.
[[nodiscard]] std::string dress(std::string_view pdf, const Dressing &dressing);

} // namespace hammerline::seal
