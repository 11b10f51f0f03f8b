#pragma once
// What a picture in a logbook may be: a JPEG (ITU-T T.81) with the image and nothing beside it. Cameras write where,
// when and with what a photograph was taken into the file (Exif, XMP, IPTC, comments); a record goes to strangers, so a
// picture with anything of that kind is refused here, whoever hands it in.

#include "outcome/outcome.h"

#include <string_view>

namespace hammerline::dossier {

struct PictureSize {
    int width = 0; ///< pixels
    int height = 0;
};

inline constexpr std::size_t mostPictureBytes = 4u << 20;

/// The size, or the fault: no JPEG, cut off, bytes after its end, over mostPictureBytes, or segments other than the
/// image's own tables, the JFIF and Adobe marks and a colour profile.
[[nodiscard]] outcome::Outcome<PictureSize> sizeOfPicture(std::string_view jpeg);

} // namespace hammerline::dossier
