#pragma once
// The keys of the bench. Each acts only while the field is empty, and none of the defaults can begin a number, so that
// a number pad suffices: `*` goes back, `/` asks for a further take, `+` and `-` step from the value entered last
// (where a value may be negative, `-` stays a sign), `=` is the same again, Down skips. They can be changed.

#include <QKeyEvent>
#include <QKeySequence>
#include <QSettings>
#include <QString>

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace hammerline::bench {

enum class BenchAct { Back, Skip, Again, Withdraw, StepUp, StepDown, Same };
[[nodiscard]] std::span<const BenchAct> allBenchActs();
/// What it does, in a few words.
[[nodiscard]] QString nameOf(BenchAct act);
/// Names it in the settings, and the fields of the dialog that changes its keys.
[[nodiscard]] QString idOf(BenchAct act);

/// The key pressed, in the form that BenchKeys holds: where it sits (number pad or not) does not matter, nor does the
/// Shift that a layout needs for a sign.
[[nodiscard]] QKeySequence keyOf(const QKeyEvent &event);

class BenchKeys {
public:
    /// The defaults.
    BenchKeys();
    /// The defaults with what the settings hold under `bench/keys/<act>` (portable key names, `; ` between several).
    [[nodiscard]] static BenchKeys from(const QSettings &settings);
    void store(QSettings &settings) const;

    [[nodiscard]] const std::vector<QKeySequence> &of(BenchAct act) const { return m_keys.at(act); }
    void set(BenchAct act, std::vector<QKeySequence> keys) { m_keys[act] = std::move(keys); }
    [[nodiscard]] std::optional<BenchAct> actOf(const QKeyEvent &event) const;
    [[nodiscard]] std::optional<BenchAct> actOf(const QKeySequence &key) const;
    bool operator==(const BenchKeys &) const = default;
    /// The first key of an act as people read it.
    [[nodiscard]] QString labelOf(BenchAct act) const;

private:
    std::map<BenchAct, std::vector<QKeySequence>> m_keys;
};

} // namespace hammerline::bench
