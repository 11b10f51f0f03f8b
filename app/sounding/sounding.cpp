#include "sounding/sounding.h"

#include "sounding/inside/tone_player.h"
#include "sounding/inside/voice.h"

namespace hammerline::sounding {

namespace {

/// Player and voice are made on their first use.
class RealSounder final : public Sounder {
public:
    explicit RealSounder(const QLocale &locale) : m_locale(locale) {}
    void tone(ToneKind kind) override { player().play(kind); }
    void say(const QString &text) override { voice().say(text); }
    [[nodiscard]] Available available() const override
    {
        return {.tones = player().canPlay(), .speech = voice().canSpeak()};
    }

private:
    [[nodiscard]] TonePlayer &player() const
    {
        if (!m_player)
            m_player = makeTonePlayer();
        return *m_player;
    }
    [[nodiscard]] Voice &voice() const
    {
        if (!m_voice)
            m_voice = makeVoice(m_locale);
        return *m_voice;
    }

    QLocale m_locale;
    mutable std::unique_ptr<TonePlayer> m_player;
    mutable std::unique_ptr<Voice> m_voice;
};

ToneKind marginalTone(std::int64_t side)
{
    if (side == 0)
        return ToneKind::Marginal;
    return side < 0 ? ToneKind::MarginalLow : ToneKind::MarginalHigh;
}

} // namespace

std::optional<ToneKind> toneOf(const tolerance::Verdict &verdict)
{
    const std::int64_t side = verdict.deviation ? verdict.deviation->baseCount() : 0;
    switch (verdict.status) {
    case tolerance::Status::In:
        return ToneKind::In;
    case tolerance::Status::Marginal:
        return marginalTone(side);
    case tolerance::Status::Out:
        return side < 0 ? ToneKind::OutLow : ToneKind::OutHigh;
    case tolerance::Status::Unjudged:
        return ToneKind::Taken;
    case tolerance::Status::Missing:
        break;
    }
    return std::nullopt;
}

std::unique_ptr<Sounder> makeSounder(const QLocale &voice)
{
    return std::make_unique<RealSounder>(voice);
}

} // namespace hammerline::sounding
