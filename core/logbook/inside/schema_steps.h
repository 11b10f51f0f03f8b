#pragma once
// The structure of the file, as the steps that lead to it. Step N turns structure N - 1 into structure N; a new logbook
// takes them all. A step that has been released is never edited: files made by it are compared with it letter by
// letter.

#include <span>
#include <string_view>

namespace hammerline::logbook::inside {

/// The SQL of each step, step 1 first.
[[nodiscard]] std::span<const std::string_view> schemaSteps();

/// The first structure that has every table of today: what came after it are indexes, so that a file of it is read
/// without being brought up to date.
inline constexpr int firstReadableStructure = 3;

/// "HmrL" in the header of the file; what `file` and others know it by.
inline constexpr int applicationId = 0x486D724C;

} // namespace hammerline::logbook::inside
