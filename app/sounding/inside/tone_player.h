#pragma once
// Plays tones on the system's default output. Two files define makeTonePlayer; the build takes the one that Qt
// Multimedia allows.

#include "sounding/sounding.h"

#include <memory>

namespace hammerline::sounding {

class TonePlayer {
public:
    TonePlayer() = default;
    virtual ~TonePlayer() = default;
    TonePlayer(const TonePlayer &) = delete;
    TonePlayer &operator=(const TonePlayer &) = delete;
    virtual void play(ToneKind kind) = 0;
    [[nodiscard]] virtual bool canPlay() const = 0;
};

[[nodiscard]] std::unique_ptr<TonePlayer> makeTonePlayer();

} // namespace hammerline::sounding
