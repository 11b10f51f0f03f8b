#include "sounding/inside/hush_remarks.h"
#include "sounding/inside/voice.h"

#include <QTextToSpeech>

namespace hammerline::sounding {

namespace {

class EngineVoice final : public Voice {
public:
    explicit EngineVoice(const QLocale &locale) : m_locale(locale)
    {
        const HushRemarks hush;
        // Without an engine Qt hands out an object in its error state, which is asked nothing more.
        m_engine = std::make_unique<QTextToSpeech>();
    }
    void say(const QString &text) override
    {
        if (text.isEmpty() || !canSpeak())
            return;
        speakTheLanguage();
        m_engine->stop();
        m_engine->say(text);
    }
    [[nodiscard]] bool canSpeak() const override { return m_engine->state() != QTextToSpeech::Error; }

private:
    /// Before the first words and not sooner: some engines know their languages only once they are connected.
    void speakTheLanguage()
    {
        if (m_languageSet)
            return;
        m_languageSet = true;
        if (m_engine->availableLocales().contains(m_locale))
            m_engine->setLocale(m_locale);
    }

    QLocale m_locale;
    std::unique_ptr<QTextToSpeech> m_engine;
    bool m_languageSet = false;
};

} // namespace

std::unique_ptr<Voice> makeVoice(const QLocale &locale)
{
    return std::make_unique<EngineVoice>(locale);
}

} // namespace hammerline::sounding
