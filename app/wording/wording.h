#pragma once
// What the core knows, in the words of the trade. Everything a window, a sheet or a tooltip says about a quantity, a
// verdict or a fault comes from here, translatable (context "wording"), so that one thing has one name everywhere.
//
// A verdict is a sentence: how much, which way, what to do. No exclamation marks and no blame. Let-off and its kin are
// never only a label: definitionOf says how each is measured, for tooltips and for the foot of a sheet.

#include "catalogue/catalogue.h"
#include "instrument/instrument.h"
#include "outcome/outcome.h"
#include "readings/readings.h"
#include "tolerance/judge.h"
#include "wording/number_form.h"

#include <QString>

#include <vector>

namespace hammerline::wording {

/// "Let-off": for headings and menus, with a capital.
[[nodiscard]] QString nameOf(catalogue::Quantity quantity);
/// "let-off": at most nine letters or so, for column heads and chips.
[[nodiscard]] QString shortNameOf(catalogue::Quantity quantity);
/// One line that says how the quantity is measured, with a full stop.
[[nodiscard]] QString definitionOf(catalogue::Quantity quantity);

[[nodiscard]] QString nameOf(catalogue::ActionKind action); ///< "Vertical"
[[nodiscard]] QString nameOf(readings::Purpose purpose);    ///< "As found"
[[nodiscard]] QString nameOf(instrument::State state);      ///< "In work"
[[nodiscard]] QString nameOf(tolerance::Status status);     ///< "Out", "Close to the limit"…
[[nodiscard]] QString nameOf(tolerance::Rule rule);
[[nodiscard]] QString nameOf(readings::DipDatum datum);
[[nodiscard]] QString nameOf(readings::DropDatum datum);
/// "C#4" with the sign that musicians write: "C♯4".
[[nodiscard]] QString nameOf(keyboard::Note note);

/// Which side of the target a value lies on.
enum class Direction { TooSmall, OnTarget, TooLarge };
[[nodiscard]] Direction directionOf(units::Amount deviation);
/// "too far from the string", "too shallow"; "on target".
[[nodiscard]] QString directionText(catalogue::Quantity quantity, Direction direction);
/// What brings the value back: "later", "deeper"; empty on target.
[[nodiscard]] QString remedyText(catalogue::Quantity quantity, Direction direction);

/// "0.3 mm too far from the string; a little later" ("a little" up to two half-widths). Inside: "On target" or "0.1 mm
/// above target, within limits". Either ends "in, but within the gauge's doubt" (or "out, but") where that reaches over
/// a limit. Missing and unjudged have sentences of their own.
[[nodiscard]] QString verdictSentence(const tolerance::Verdict &verdict, const NumberForm &form);
/// "2.4 to 4.0 mm, target 3.2"; "at least 0.5 mm, target 1.0"; "target 3.2 mm"; empty where nothing is judged.
[[nodiscard]] QString limitsText(const tolerance::Limits &limits, const NumberForm &form);
/// "Doubt: 0.2 mm either way, 8 % of its variance from how finely it was read off; truly inside with a probability of
/// 97 %."; empty where no doubt was weighed.
[[nodiscard]] QString doubtSentence(const tolerance::Verdict &verdict, const NumberForm &form);
/// The whole story of one key for a tooltip, a status line or a screen reader: note, quantity, value, limits, verdict.
[[nodiscard]] QString keyStory(const tolerance::Verdict &verdict, const NumberForm &form);

/// "readings.csv, line 12: …", with the file as the user named it.
[[nodiscard]] QString faultText(const outcome::Fault &fault);
/// One fault a line; beyond `most` of them the rest is counted ("and 12 more").
[[nodiscard]] QString faultsText(const std::vector<outcome::Fault> &faults, int most = 12);

} // namespace hammerline::wording
