#include "main_window/bench_tools.h"

namespace hammerline::main_window {

BenchTools::BenchTools(const ToolPlace &place) : QObject(place.window), m_place(place)
{
    const auto choice = bench::HeardChoice::from(m_place.settings);
    m_tones = addSwitch(tr("&Tones for verdicts"), "tones", choice.tones);
    m_speech = addSwitch(tr("&Speak values and notes"), "speech", choice.speech);
    m_place.bench->setSounder(m_place.sounder);
    m_place.bench->setHeard(choice);
    connect(m_tones, &QAction::toggled, this, [this](bool on) {
        listen();
        if (on)
            tellWhatIsMissing(true);
    });
    connect(m_speech, &QAction::toggled, this, [this](bool on) {
        listen();
        if (on)
            tellWhatIsMissing(false);
    });
}

QAction *BenchTools::addSwitch(const QString &text, const char *name, bool on)
{
    QAction *action = m_place.menu->addAction(text);
    action->setObjectName(name);
    action->setCheckable(true);
    action->setChecked(on);
    return action;
}

void BenchTools::listen()
{
    const bench::HeardChoice choice{m_tones->isChecked(), m_speech->isChecked()};
    choice.store(m_place.settings);
    m_place.bench->setHeard(choice);
}

void BenchTools::tellWhatIsMissing(bool tones)
{
    const sounding::Available here = m_place.sounder ? m_place.sounder->available() : sounding::Available{};
    if (tones ? here.tones : here.speech)
        return;
    m_place.prompts.tell(
        m_place.window,
        {tones ? tr("No sound is to be had here now") : tr("No voice is to be had here now"),
         tones ? tr("This computer offers no way to play tones.") : tr("This computer offers no voice that speaks."),
         tr("The choice is kept: it is heard as soon as there is one. Nothing else depends on it."),
         prompts::Weight::Question});
}

} // namespace hammerline::main_window
