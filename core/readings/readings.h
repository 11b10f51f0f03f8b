#pragma once
// A pass is one tour of measuring over an instrument; a reading is one value of one quantity on one note; a take is
// a repeated reading. The value of a note is the mean of its takes, rounded half away from zero to the base unit.

#include "catalogue/catalogue.h"
#include "instrument/instrument.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "readings/instant.h"
#include "units/units.h"

#include <boost/container/flat_map.hpp>

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::readings {

/// Number within one logbook. 0: not stored yet.
using PassId = std::int64_t;

enum class Purpose { AsFound, Setting, AsLeft, Recheck };
/// "as-found", "setting", "as-left", "recheck".
[[nodiscard]] std::string_view idOf(Purpose purpose);
[[nodiscard]] std::optional<Purpose> findPurpose(std::string_view id);

/// Where on the key dip was taken: the trade uses more than one place.
enum class DipDatum { FrontEdge, Back13mm, OverFrontPin };
/// A drop may be read below the let-off point, or from the string; the second is turned into the first on entry
/// (drop below let-off = distance from the string - let-off) and the typed text tells.
enum class DropDatum { BelowLetOff, FromString };
[[nodiscard]] std::string_view idOf(DipDatum datum);  ///< "front-edge", "back-13-mm", "over-front-pin"
[[nodiscard]] std::string_view idOf(DropDatum datum); ///< "below-let-off", "from-string"
[[nodiscard]] std::optional<DipDatum> findDipDatum(std::string_view id);
[[nodiscard]] std::optional<DropDatum> findDropDatum(std::string_view id);

struct Climate {
    std::optional<double> celsius{};
    std::optional<double> relativeHumidityPercent{};
    bool operator==(const Climate &) const = default;
};

struct Gauge {
    std::string name{};
    units::Length resolution{};          ///< 0: not stated
    units::Length expandedUncertainty{}; ///< k = 2; 0: not stated
    bool operator==(const Gauge &) const = default;
};

struct Pass {
    PassId id = 0;
    std::string uid{}; ///< 32 hex digits, made by the caller who adds it
    instrument::InstrumentId instrument = 0;
    Purpose purpose = Purpose::AsFound;
    Instant began{};
    std::string person{};
    Climate climate{};
    Gauge gauge{};
    DipDatum dipDatum = DipDatum::FrontEdge;
    DropDatum dropDatum = DropDatum::BelowLetOff;
    units::Unit unit = units::Unit::Millimetre; ///< of a bare decimal typed in this pass
    std::string remark{};
    bool operator==(const Pass &) const = default;
};

/// Where a reading belongs. Ordered by quantity, then note, then take: the order of every output.
struct Place {
    catalogue::Quantity quantity{};
    keyboard::Note note{};
    int take = 1; ///< from 1
    auto operator<=>(const Place &) const = default;
};

struct Reading {
    Place place{};
    units::Amount value{};
    std::string typed{}; ///< as typed, before any conversion
    std::string remark{};
    std::string person{};
    Instant at{};
    bool operator==(const Reading &) const = default;
};

/// The value of one note: mean of its takes.
struct NoteValue {
    units::Amount value{};
    int takes = 1;
    bool operator==(const NoteValue &) const = default;
};

/// What was read, by quantity and note. "No reading" is absence.
class ValueTable {
public:
    /// By note; in one piece of memory, since judging walks it again and again.
    using Column = boost::container::flat_map<keyboard::Note, NoteValue>;

    /// A quantity that was asked for but has no reading is an empty column ("with or without such a column").
    [[nodiscard]] const Column &column(catalogue::Quantity quantity) const;
    [[nodiscard]] std::optional<units::Amount> value(catalogue::Quantity quantity, keyboard::Note note) const;
    /// Quantities with at least one reading, in the order of the catalogue.
    [[nodiscard]] std::vector<catalogue::Quantity> quantities() const;
    [[nodiscard]] bool empty() const;
    void set(catalogue::Quantity quantity, keyboard::Note note, NoteValue value);
    void clear(catalogue::Quantity quantity, keyboard::Note note);
    bool operator==(const ValueTable &) const = default;

private:
    std::map<catalogue::Quantity, Column> m_columns;
};

/// Means over takes. Readings in any order; no place twice.
[[nodiscard]] ValueTable meansOf(const std::vector<Reading> &readings);

/// A reading's value without its texts.
struct TakenValue {
    catalogue::Quantity quantity{};
    keyboard::Note note{};
    std::int64_t baseCount = 0;
};
/// The same of bare values, in any order, quickest by quantity, then note.
[[nodiscard]] ValueTable meansOfValues(std::vector<TakenValue> taken);

/// A drop read from the string, as a drop below the let-off point. A fault where the hammer would have risen.
[[nodiscard]] outcome::Outcome<units::Amount> dropBelowLetOff(units::Length fromString, units::Length letOff);

} // namespace hammerline::readings
