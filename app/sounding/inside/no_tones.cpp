// Built where Qt Multimedia is not at hand.
#include "sounding/inside/tone_player.h"

namespace hammerline::sounding {

namespace {

class NoTones final : public TonePlayer {
public:
    void play(ToneKind) override {}
    [[nodiscard]] bool canPlay() const override { return false; }
};

} // namespace

std::unique_ptr<TonePlayer> makeTonePlayer()
{
    return std::make_unique<NoTones>();
}

} // namespace hammerline::sounding
