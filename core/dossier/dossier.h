#pragma once
// The file of an instrument: what a sale needs beyond readings. The log of work, the departures from the original
// build, the condition by area as it came and as it leaves, photographs, and, kept apart from all that, the sale
// itself.
//
// A buyer must be told of every departure: it is work (ours, or found done by somebody before us) by which the
// instrument is no longer built as its maker built it, and it says why. Nothing here is a valuation.
//
// Words are the workshop's own, UTF-8. Work and photographs are named by 32 hex digits, which keep naming them in every
// logbook they travel to.

#include "instrument/instrument.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"

#include <chrono>
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::dossier {

enum class WorkKind {
    PartsRenewed,
    Repinned,
    Cleaned,
    Recovered,
    Refinished,
    Replated,
    PedalTrapwork,
    Restrung,
    Repaired,
    FoundAltered, ///< done by somebody before us; found when the instrument came
    Other,
};
inline constexpr int workKinds = 11;
/// "parts-renewed", "repinned", …, "found-altered", "other".
[[nodiscard]] std::string_view idOf(WorkKind kind);
[[nodiscard]] std::optional<WorkKind> findWorkKind(std::string_view id);

/// One line of the log of work.
struct WorkEntry {
    std::string uid{}; ///< the logbook makes it where it is empty
    WorkKind kind = WorkKind::PartsRenewed;
    std::string what{};                         ///< "hammers", "balance rail cloth"
    std::optional<keyboard::NoteRange> notes{}; ///< absent: the whole instrument
    std::string material{};
    std::string person{};                       ///< who did it
    std::optional<std::chrono::sys_days> day{}; ///< absent: not known
    std::optional<std::chrono::minutes> took{};
    bool departure = false; ///< from the original build
    std::string why{};      ///< of a departure: never empty
    std::string remark{};
    bool operator==(const WorkEntry &) const = default;
};

/// No "what"; a departure without why; notes outside the compass; time below 0 or over 10 000 hours; a text over
/// 2000 characters. Empty: nothing.
[[nodiscard]] std::vector<outcome::Fault> faultsOf(const WorkEntry &entry, const keyboard::Compass &compass);

/// As received, or as it leaves the workshop.
enum class Moment { AsReceived, AsItLeaves };
/// "as-received", "as-it-leaves".
[[nodiscard]] std::string_view idOf(Moment moment);
[[nodiscard]] std::optional<Moment> findMoment(std::string_view id);

enum class Area { Case, Keys, Action, Pedals, Strings, Pinblock, Soundboard };
inline constexpr int areas = 7;
/// "case", "keys", "action", "pedals", "strings", "pinblock", "soundboard".
[[nodiscard]] std::string_view idOf(Area area);
[[nodiscard]] std::optional<Area> findArea(std::string_view id);

/// The five steps of the scale, worst first; stored and written as 1 to 5. They rank what was seen on the day, by the
/// workshop's eye.
enum class Grade { Unserviceable = 1, Poor, Serviceable, Good, AsNew };

/// What the workshop says of one area at one moment. Without words and grade: nothing was said.
struct Condition {
    std::optional<Grade> grade{};
    std::string words{};
    bool operator==(const Condition &) const = default;
    [[nodiscard]] bool said() const { return grade.has_value() || !words.empty(); }
};
/// By moment, then area; only what was said.
struct ConditionPlace {
    Moment moment{};
    Area area{};
    auto operator<=>(const ConditionPlace &) const = default;
};
using Conditions = std::map<ConditionPlace, Condition>;

/// A photograph: what is known of it. The picture itself is a JPEG copy in the logbook, named by its digest
/// (Logbook::picture). Photographs of different moments that show the same `view` ("front", "hammers") stand side by
/// side.
struct Photograph {
    std::string uid{}; ///< the logbook makes it where it is empty
    Moment moment{};
    std::string view{};
    std::string caption{};
    std::string digest{}; ///< SHA-256 of the JPEG, 64 hex digits; the logbook makes it
    int width = 0;        ///< pixels
    int height = 0;
    bool operator==(const Photograph &) const = default;
};

/// Photographs of one view, side by side. Never neither. A further photograph of the same view and moment begins a
/// further pair.
struct PhotographPair {
    std::string view{};
    const Photograph *received = nullptr; ///< null: there is none
    const Photograph *leaving = nullptr;
};
/// In the order in which the views come up in `photographs`, which must outlive the pairs.
[[nodiscard]] std::vector<PhotographPair> pairsOf(std::span<const Photograph> photographs);

/// Kept out of the record unless asked for. Free words: "3400 EUR, delivered".
struct Sale {
    std::string buyer{};
    std::string price{};
    std::string remark{};
    bool operator==(const Sale &) const = default;
    [[nodiscard]] bool said() const { return !buyer.empty() || !price.empty() || !remark.empty(); }
};

struct Dossier {
    std::vector<WorkEntry> work{}; ///< by day, those of unknown day first; equals as they were entered
    Conditions conditions{};
    std::vector<Photograph> photographs{}; ///< as they were added
    Sale sale{};
    bool operator==(const Dossier &) const = default;

    /// In the order of `work`.
    [[nodiscard]] std::vector<WorkEntry> departures() const;
    /// Hours and minutes that are known, together.
    [[nodiscard]] std::chrono::minutes timeWorked() const;
};

/// "2026-03-02".
[[nodiscard]] std::string isoDay(std::chrono::sys_days day);
/// The same backwards; absent where it is no day of the years 1700 to 2100.
[[nodiscard]] std::optional<std::chrono::sys_days> parseIsoDay(std::string_view text);

} // namespace hammerline::dossier
