// Built where Qt TextToSpeech is not at hand.
#include "sounding/inside/voice.h"

namespace hammerline::sounding {

namespace {

class NoVoice final : public Voice {
public:
    void say(const QString &) override {}
    [[nodiscard]] bool canSpeak() const override { return false; }
};

} // namespace

std::unique_ptr<Voice> makeVoice(const QLocale &)
{
    return std::make_unique<NoVoice>();
}

} // namespace hammerline::sounding
