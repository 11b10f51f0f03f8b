#pragma once
// The pictures: JPEG copies by their SHA-256. They are kept beside the version tables, since a digest over some hundred
// kilobytes is not wanted in every check of a row: a photograph's row names the digest, and by the row the digest is
// covered by the history. A check of the history holds every picture against its name and against the rows.

#include "logbook/inside/database.h"
#include "logbook/verify_history.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::logbook::inside {

/// 64 hex digits.
[[nodiscard]] std::string pictureDigest(std::string_view jpeg);
/// Within the caller's transaction. The same picture is kept once.
void keepPicture(Database &database, const std::string &digest, std::string_view jpeg);
[[nodiscard]] std::optional<std::string> findPicture(Database &database, const std::string &digest);
/// Appends what is wrong with the picture that a photograph of `deed` names.
void checkPicture(Database &database, const std::string &digest, DeedId deed, std::vector<Alteration> &found);
/// Altered, gone, and those that no photograph names. A file of a structure without pictures has none.
void checkPictures(Database &database, std::vector<Alteration> &found);

} // namespace hammerline::logbook::inside
