#pragma once
// Judging a whole table of readings by a set: one Verdict for every note that was read or is missing.

#include "readings/readings.h"
#include "tolerance/tolerance.h"

#include <array>
#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace hammerline::tolerance {

/// What a reading's value may be off by, as standard uncertainties in mm or g: see doubt.h.
struct Doubt {
    double gauge = 0;
    double resolution = 0;

    [[nodiscard]] double combined() const;
    [[nodiscard]] double expanded() const { return 2 * combined(); } ///< k = 2
    /// Part of the combined variance that comes from how finely the reading was read off, 0 to 1.
    [[nodiscard]] double shareOfResolution() const;
    bool operator==(const Doubt &) const = default;
};

/// Limits as a verdict holds them: as std::optional<Limits> does, but those of one note are there once, however many
/// verdicts speak of them.
class SharedLimits {
public:
    SharedLimits() = default;
    SharedLimits(std::nullopt_t) {}
    SharedLimits(const Limits &limits) : m_limits(std::make_shared<const Limits>(limits)) {}
    SharedLimits(const std::optional<Limits> &limits)
        : m_limits(limits ? std::make_shared<const Limits>(*limits) : nullptr)
    {
    }
    explicit SharedLimits(std::shared_ptr<const Limits> limits) : m_limits(std::move(limits)) {}

    [[nodiscard]] bool has_value() const { return m_limits != nullptr; }
    explicit operator bool() const { return has_value(); }
    const Limits &operator*() const { return *m_limits; }
    const Limits *operator->() const { return m_limits.get(); }
    operator std::optional<Limits>() const { return m_limits ? std::optional(*m_limits) : std::nullopt; }

private:
    std::shared_ptr<const Limits> m_limits{};
};

struct Verdict {
    catalogue::Quantity quantity{};
    keyboard::Note note{};
    Status status = Status::Unjudged;
    std::optional<units::Amount> value{};     ///< absent where missing
    int takes = 0;                            ///< 0 where missing
    SharedLimits limits{};                    ///< absent where unjudged
    std::optional<units::Amount> deviation{}; ///< value - target; absent where missing or unjudged
    bool uneven = false;
    /// Signed difference from the nearest lower note that evenness compares with; absent where there is none.
    std::optional<units::Amount> stepFromBelow{};
    /// Of judged readings. From the set's uncertainty alone, until doubt.h has weighed the rest too.
    std::optional<double> conformanceProbability{};
    std::optional<Doubt> doubt{}; ///< absent until weighed, and where nothing is known of it

    /// |deviation| / half-width: how far out in units of the promise. Absent for one-sided or missing pairs.
    [[nodiscard]] std::optional<double> halfWidths() const;
    /// In or marginal, but nearer to a limit than the expanded doubt; and out, but not beyond the limit by more than
    /// it.
    [[nodiscard]] bool withinDoubt() const;
};

struct Judgement {
    std::vector<Verdict> verdicts; ///< by quantity in the order of the catalogue, then by note
    [[nodiscard]] const Verdict *find(catalogue::Quantity quantity, keyboard::Note note) const;
    /// The verdicts of one quantity (contiguous), possibly empty.
    [[nodiscard]] std::vector<Verdict> of(catalogue::Quantity quantity) const;
    [[nodiscard]] bool anyOutOrMissing() const;
};

/// A judgement counted, not told note by note.
struct Tally {
    std::array<int, 5> by{}; ///< by Status
    int uneven = 0;          ///< whatever their status
    [[nodiscard]] int of(Status status) const { return by[static_cast<std::size_t>(status)]; }
    Tally &operator+=(const Tally &other);
    bool operator==(const Tally &) const = default;
};
using QuantityTallies = std::array<Tally, catalogue::quantityCount>; ///< in the order of the catalogue
[[nodiscard]] Tally sumOf(const QuantityTallies &tallies);

/// Judging by one set again and again: what the set says of each note is worked out once, when it is made.
class Judge {
public:
    /// `notes`: those it can be asked about.
    explicit Judge(const ToleranceSet &set,
                   const keyboard::NoteRange &notes = {keyboard::Note(keyboard::Note::lowest),
                                                       keyboard::Note(keyboard::Note::highest)});
    /// As `judge` below; `compass` within `notes`.
    [[nodiscard]] Judgement judge(const readings::ValueTable &values, const keyboard::Compass &compass,
                                  const keyboard::Sections &sections) const;

    /// The same counted: what one wants of thousands of passes, quicker.
    [[nodiscard]] QuantityTallies tally(const readings::ValueTable &values, const keyboard::Compass &compass,
                                        const keyboard::Sections &sections) const;

    /// What the set says of one quantity, note by note.
    struct Line {
        using OfNotes = std::vector<std::optional<Limits>>;
        std::shared_ptr<const OfNotes> limits{}; ///< verdicts hold on to it
        std::optional<units::Amount> step{};
    };

private:
    keyboard::NoteRange m_notes;
    std::map<catalogue::Quantity, Line> m_lines{};
};

/// `sections` empty: no section breaks are known. Readings outside `compass` are the caller's fault and ignored.
[[nodiscard]] Judgement judge(const readings::ValueTable &values, const ToleranceSet &set,
                              const keyboard::Compass &compass, const keyboard::Sections &sections);

/// The note that evenness compares `note` with: the nearest lower one read, at most 4 below, of the same colour for
/// dip, key_height and aftertouch, not across a section break (or to a note in no section where sections are known).
[[nodiscard]] std::optional<keyboard::Note> neighbourBelow(const readings::ValueTable::Column &column,
                                                           catalogue::Quantity quantity, keyboard::Note note,
                                                           const keyboard::Sections &sections);

} // namespace hammerline::tolerance
