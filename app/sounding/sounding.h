#pragma once
// What the bench lets the ear know while the eyes are on the hammers: a short tone for every verdict and, where the
// computer can speak, the note and the value in words.
//
// One note means in, two mean close to a limit, three mean out; rising means too large, falling too small. So a tone is
// told from another by counting and by its direction, not by pitch alone. Nothing depends on being heard: without sound
// hardware, a sound server or a voice the sounder is silent and the program is whole.

#include "tolerance/judge.h"

#include <QLocale>
#include <QString>

#include <memory>
#include <optional>

namespace hammerline::sounding {

enum class ToneKind {
    Taken,        ///< kept, not judged
    In,           ///< within the limits
    Marginal,     ///< within the gauge's doubt, on target
    MarginalLow,  ///< within the gauge's doubt, below target
    MarginalHigh, ///< within the gauge's doubt, above target
    OutLow,       ///< out, too small
    OutHigh,      ///< out, too large
    Doubt,        ///< a question waits on the screen
};
inline constexpr int toneKindCount = 8;

/// Absent where nothing was read.
[[nodiscard]] std::optional<ToneKind> toneOf(const tolerance::Verdict &verdict);

struct Available {
    bool tones = false;
    bool speech = false;
    bool operator==(const Available &) const = default;
};

/// Neither call waits for the sound to end; the newest tone and the newest words cut off what is still heard.
class Sounder {
public:
    Sounder() = default;
    virtual ~Sounder() = default;
    Sounder(const Sounder &) = delete;
    Sounder &operator=(const Sounder &) = delete;
    virtual void tone(ToneKind kind) = 0;
    /// See sounding/saying.h for the words.
    virtual void say(const QString &text) = 0;
    /// As of now: headphones and voices come and go. Asking is what first looks for devices, so ask where sound is to
    /// be switched on and not at the program's start.
    [[nodiscard]] virtual Available available() const = 0;
};

class SilentSounder final : public Sounder {
public:
    void tone(ToneKind) override {}
    void say(const QString &) override {}
    [[nodiscard]] Available available() const override { return {}; }
};

/// What this computer and this build can do; silent where that is nothing. Looks for no device before its first use.
/// Lives in the thread of the windows. `voice`: the language that words are spoken in.
[[nodiscard]] std::unique_ptr<Sounder> makeSounder(const QLocale &voice = QLocale());

} // namespace hammerline::sounding
