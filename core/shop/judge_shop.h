#pragma once
// What if the whole shop were judged by another set? Every pass asked for is judged twice, by the set that its
// instrument is judged by now and by the other one, and counted: millions of readings in seconds.
//
// The instruments are shared out among connections of their own, one a thread; each walks the readings of an instrument
// once and holds no more than one pass at a time. Others may write meanwhile: what they write is seen for some
// instruments and not for others. Nothing is written.

#include "logbook/logbook.h"
#include "shop/shop.h"
#include "shop/touched.h"
#include "tolerance/judge.h"

#include <array>
#include <atomic>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::shop {

/// Which passes of an instrument; spot checks aside, for they read a sample again.
enum class Which {
    All,
    Newest, ///< the newest with readings
    AsFound,
    AsLeft,
};
/// "all", "newest", "as-found", "as-left".
[[nodiscard]] std::string_view idOf(Which which);
[[nodiscard]] std::optional<Which> findWhich(std::string_view id);

struct Asked {
    tolerance::ToleranceSet set{}; ///< the other one; instruments of another action are left out
    Which which = Which::All;
    Filter filter{};                   ///< months: in which the pass began
    std::optional<Instruments> only{}; ///< absent: all
};

/// What both sets say. Where the instrument has no set that can be read, `now` counts nothing.
struct TwoSets {
    tolerance::Tally now{};
    tolerance::Tally then{};

    /// How many more notes are out by the other set; below 0: fewer. A figure for readers only where both judge.
    [[nodiscard]] int moreOut() const;
    [[nodiscard]] bool anything() const; ///< does any of the two judge anything that was read
    [[nodiscard]] bool bothJudge() const;
    TwoSets &operator+=(const TwoSets &other);
    bool operator==(const TwoSets &) const = default;
};

/// Of one instrument, by quantity in the order of the catalogue.
struct JudgedTwice {
    std::array<TwoSets, catalogue::quantityCount> by{};
    int passes = 0; ///< with readings
    [[nodiscard]] TwoSets sum() const;
    bool operator==(const JudgedTwice &) const = default;
};
/// Instruments with readings in the passes asked for.
using ShopJudged = std::map<instrument::InstrumentId, JudgedTwice>;

/// How far it has come, for whoever waits on another thread, and the wish to end it early.
struct Course {
    std::atomic<std::size_t> done{0}; ///< instruments
    std::atomic<std::size_t> all{0};  ///< 0: not known yet
    std::atomic<bool> stop{false};
};

/// Throws BrokenWorld as opening and reading a logbook do. `atOnce`: how many threads, at least 1. Absent: it was
/// stopped.
[[nodiscard]] std::optional<ShopJudged> judgeShop(const std::string &path, const Asked &asked, unsigned atOnce,
                                                  Course &course);

[[nodiscard]] int passesIn(const ShopJudged &judged);
[[nodiscard]] TwoSets sumOf(const ShopJudged &judged);

/// One row: of a quantity or of an instrument.
template <typename Key>
struct JudgedRow {
    Key key{};
    TwoSets counts{};
};
/// Those of which anything is judged, in the order of the catalogue.
[[nodiscard]] std::vector<JudgedRow<catalogue::Quantity>> rowsByQuantity(const ShopJudged &judged);
/// The worst change first: most notes more out, then most more marginal; equals by number.
[[nodiscard]] std::vector<JudgedRow<instrument::InstrumentId>> rowsByInstrument(const ShopJudged &judged);

/// `quantity` or `instrument,name`, then `now_in,now_marginal,now_out,now_missing,then_in,then_marginal,then_out,
/// then_missing,more_out`; a row a line, CRLF; the last is empty where one of the two sets judges nothing. A name that
/// a spreadsheet would take for a formula has an apostrophe before it.
[[nodiscard]] std::string judgedCsv(const std::vector<JudgedRow<catalogue::Quantity>> &rows);
using Names = std::map<instrument::InstrumentId, std::string>;
[[nodiscard]] std::string judgedCsv(const std::vector<JudgedRow<instrument::InstrumentId>> &rows, const Names &names);

/// "hammerline-rejudge", version 1: the answer of the command, instruments with the worst change first.
[[nodiscard]] std::string judgedJson(const Asked &asked, const ShopJudged &judged, const Names &names);

} // namespace hammerline::shop
