#pragma once
// Texts on their way into and out of a CSV file (RFC 4180, UTF-8).
//
// A spreadsheet runs a cell that begins with = + - @ (or their full-width forms), tab or CR as a formula, and may pass
// over blanks and what has no width before it. Whatever a person wrote (a name, a remark) therefore leaves the program
// through `csvText`, in every CSV file; figures and ids go out as they are.

#include <string>
#include <string_view>

namespace hammerline::exchange {

/// `field` as RFC 4180 wants it: in quotation marks where it holds a comma, a mark, a line end or blanks at its ends.
[[nodiscard]] std::string csvField(std::string_view field);

/// The same of a person's words: an apostrophe in front of what would start a formula.
[[nodiscard]] std::string csvText(std::string_view text);
/// What was handed to `csvText`, from the cell as it was read: the two are one to one. A text that begins with
/// apostrophes and then a formula has one more on its way.
[[nodiscard]] std::string plainText(std::string_view cell);

/// Well-formed UTF-8 (no surrogates, no overlong forms) without NUL.
[[nodiscard]] bool isCleanUtf8(std::string_view text);

} // namespace hammerline::exchange
