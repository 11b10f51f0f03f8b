#include "gauge_desk/gauge_desk.h"

namespace hammerline::gauge_desk {

using gauge_input::SerialGauge;

GaugeDesk::GaugeDesk(QSettings &settings, QObject *parent)
    : QObject(parent), m_settings(settings), m_choice(GaugeChoice::from(settings))
{
    connect(&m_gauge, &SerialGauge::linkChanged, this, &GaugeDesk::followLink);
    connect(&m_gauge, &SerialGauge::lineArrived, this, &GaugeDesk::takeLine);
    connect(&m_gauge, &SerialGauge::readingArrived, this, [this](const gauge_input::GaugeReading &reading) {
        if (!m_trying)
            emit readingArrived(reading.typed);
    });
    connect(&m_gauge, &SerialGauge::lineRefused, this, [this](const QString &why) {
        if (!m_trying)
            emit lineRefused(why);
    });
    follow(m_choice);
}

GaugeState GaugeDesk::state() const
{
    if (m_followed.device.isEmpty())
        return GaugeState::None;
    switch (m_gauge.link()) {
    case SerialGauge::Link::Off:
        return GaugeState::Off;
    case SerialGauge::Link::Listening:
        return m_spoke ? GaugeState::Connected : GaugeState::Waiting;
    case SerialGauge::Link::Lost:
        break;
    }
    return m_wasThere ? GaugeState::Unplugged : GaugeState::NotReached;
}

QString GaugeDesk::stateText() const
{
    switch (state()) {
    case GaugeState::None:
        break;
    case GaugeState::Off:
        return tr("○ Gauge off");
    case GaugeState::Waiting:
        return tr("○ Gauge waiting");
    case GaugeState::Connected:
        return tr("● Gauge connected");
    case GaugeState::NotReached:
        return tr("▲ Gauge not reached");
    case GaugeState::Unplugged:
        return tr("▲ Gauge unplugged");
    }
    return {};
}

QString GaugeDesk::stateStory() const
{
    switch (state()) {
    case GaugeState::None:
        return tr("Plug the gauge in and choose its port; press its button to see what it says.");
    case GaugeState::Off:
        return tr("The gauge is switched off here.");
    case GaugeState::Waiting:
        return tr("The line is open; the gauge has not spoken yet.");
    case GaugeState::Connected:
        if (m_trying)
            return tr("The gauge is heard; nothing is entered while this is open.");
        return tr("The gauge is connected: each of its readings is entered for the note asked for.");
    case GaugeState::NotReached:
        return tr("The gauge is not reached (%1); tried again and again.").arg(m_gauge.trouble());
    case GaugeState::Unplugged:
        return tr("The gauge is unplugged; it is taken up again as soon as it is back.");
    }
    return {};
}

void GaugeDesk::use(const GaugeChoice &choice)
{
    m_choice = choice;
    m_choice.store(m_settings);
    m_trying = false;
    follow(m_choice);
}

void GaugeDesk::tryOut(const GaugeChoice &choice)
{
    m_trying = true;
    GaugeChoice tried = choice;
    tried.wanted = !tried.device.isEmpty();
    follow(tried);
}

void GaugeDesk::endTrial()
{
    if (!m_trying)
        return;
    m_trying = false;
    follow(m_choice);
}

void GaugeDesk::follow(const GaugeChoice &choice)
{
    const bool sameLine = choice.device == m_followed.device && choice.baud == m_followed.baud &&
                          choice.frame == m_followed.frame && choice.wanted == m_followed.wanted;
    m_followed = choice;
    m_gauge.setPattern(choice.pattern);
    if (!sameLine) {
        m_wasThere = m_spoke = false;
        if (choice.wanted)
            m_gauge.listen(choice.line());
        else
            m_gauge.stop();
    }
    emit stateChanged(state());
}

void GaugeDesk::followLink(SerialGauge::Link link)
{
    m_spoke = false;
    m_wasThere = m_wasThere || link == SerialGauge::Link::Listening;
    emit stateChanged(state());
}

void GaugeDesk::takeLine(const QByteArray &line)
{
    const bool first = !m_spoke;
    m_spoke = true;
    if (first)
        emit stateChanged(state());
    emit lineArrived(line);
}

} // namespace hammerline::gauge_desk
