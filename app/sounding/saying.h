#pragma once
// Note and value as they are spoken: "C sharp 4, three point one, a little low". Digits are words where they stand
// alone, so that every voice reads "3.10" alike and a decimal comma is no pause. Translatable, context "saying".

#include "sounding/sounding.h"
#include "wording/wording.h"

namespace hammerline::sounding {

/// "C sharp 4".
[[nodiscard]] QString noteSaying(keyboard::Note note);
/// "three point one", "minus zero point two five": in the unit of the form, which is not said; zeros at the end of
/// the decimals are left out.
[[nodiscard]] QString valueSaying(units::Amount value, const wording::NumberForm &form);
/// "in", "close to the lower limit", "a little low", "too high"; "not read". Empty where nothing is judged. A little:
/// up to two half-widths from the target, as in the sentences on the screen.
[[nodiscard]] QString verdictSaying(const tolerance::Verdict &verdict);
/// All three, with commas.
[[nodiscard]] QString readingSaying(const tolerance::Verdict &verdict, const wording::NumberForm &form);
/// What is asked for next: "C sharp 4", with the quantity behind it where it changes.
[[nodiscard]] QString askedSaying(keyboard::Note note, std::optional<catalogue::Quantity> quantity = {});

} // namespace hammerline::sounding
