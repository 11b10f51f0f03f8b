#include "main_window/bench_tools.h"

#include "gauge_desk/gauge_dialog.h"

namespace hammerline::main_window {

namespace {

constexpr const char *gaugeTypesKey = "bench/gauge-types";

} // namespace

BenchTools::BenchTools(const ToolPlace &place) : QObject(place.window), m_place(place), m_gauge(place.settings)
{
    setObjectName("benchTools");
    connectGauge();
    const auto choice = bench::HeardChoice::from(m_place.settings);
    m_tones = addSwitch(tr("T&ones for verdicts"), "tones", choice.tones);
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

void BenchTools::connectGauge()
{
    QAction *choose = m_place.menu->addAction(tr("&Gauge on a serial line…"));
    choose->setObjectName("chooseGauge");
    const bool types = m_place.settings.value(gaugeTypesKey).toBool();
    m_place.bench->setGaugeTypes(types);
    connect(addSwitch(tr("A gauge &types and sends no Enter"), "gaugeTypes", types), &QAction::toggled, this,
            [this](bool on) {
                m_place.settings.setValue(gaugeTypesKey, on);
                m_place.bench->setGaugeTypes(on);
            });
    m_place.menu->addSeparator();
    connect(choose, &QAction::triggered, this, &BenchTools::chooseGauge);
    connect(m_place.bench, &bench::BenchView::gaugeWanted, this, &BenchTools::chooseGauge);
    connectReadings();
    connect(&m_gauge, &gauge_desk::GaugeDesk::stateChanged, this, &BenchTools::followGauge);
    followGauge(m_gauge.state());
}

void BenchTools::connectReadings()
{
    connect(m_place.bench, &bench::BenchView::askedFor, this, [this](catalogue::Quantity quantity) {
        m_atTheBench = quantity;
        expect(quantity);
    });
    connect(&m_gauge, &gauge_desk::GaugeDesk::readingArrived, this, [this](const QString &typed) {
        if (m_place.studies && m_place.studies->takeFromGauge(typed))
            return;
        emit benchWanted();
        m_place.bench->takeFromGauge(typed);
    });
    connect(&m_gauge, &gauge_desk::GaugeDesk::lineRefused, this, [this](const QString &why) {
        if (!m_place.studies || !m_place.studies->refuseFromGauge(why))
            m_place.bench->refuseFromGauge(why);
    });
    if (m_place.studies)
        connect(
            m_place.studies, &study_desk::StudyDesk::asksFor, this,
            [this](const std::optional<catalogue::Quantity> &quantity) { expect(quantity ? quantity : m_atTheBench); });
}

void BenchTools::expect(std::optional<catalogue::Quantity> quantity)
{
    if (!quantity)
        return;
    const catalogue::QuantityInfo &info = catalogue::infoOf(*quantity);
    m_gauge.setForm({info.dimension, units::Unit::Millimetre, info.mayBeNegative});
}

void BenchTools::chooseGauge()
{
    auto *dialog = new gauge_desk::GaugeDialog(m_gauge, m_place.window);
    connect(dialog, &QDialog::finished, m_place.bench, &bench::BenchView::focusField);
    dialog->open();
}

void BenchTools::followGauge(gauge_desk::GaugeState state)
{
    m_place.bench->tellGauge(m_gauge.stateText(), m_gauge.stateStory(), state == gauge_desk::GaugeState::Unplugged);
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
