#pragma once
// Speaks through the system's speech engine. Two files define makeVoice; the build takes the one that Qt TextToSpeech
// allows.

#include <QLocale>
#include <QString>

#include <memory>

namespace hammerline::sounding {

class Voice {
public:
    Voice() = default;
    virtual ~Voice() = default;
    Voice(const Voice &) = delete;
    Voice &operator=(const Voice &) = delete;
    virtual void say(const QString &text) = 0;
    [[nodiscard]] virtual bool canSpeak() const = 0;
};

[[nodiscard]] std::unique_ptr<Voice> makeVoice(const QLocale &locale);

} // namespace hammerline::sounding
