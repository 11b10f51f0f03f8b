#pragma once
// The gauge on its cable, as the bench sees it: which one, whether it is there, and what it says.
//
// A reading comes as the text a person would have typed, with its unit. While a choice is tried out (gauge_dialog.h)
// lines are shown and no reading is handed on.

#include "gauge_desk/gauge_choice.h"

#include <QObject>

namespace hammerline::gauge_desk {

enum class GaugeState {
    None,       ///< no gauge was chosen
    Off,        ///< chosen, not wanted now
    Waiting,    ///< the line is open, nothing has come yet
    Connected,  ///< it has spoken since it was plugged in
    NotReached, ///< the line could not be opened yet; tried again and again
    Unplugged,  ///< it was there and is gone; taken up again as soon as it is back
};

class GaugeDesk : public QObject {
    Q_OBJECT
public:
    /// The settings outlive the desk. Takes up the gauge where they say that it is wanted.
    explicit GaugeDesk(QSettings &settings, QObject *parent = nullptr);

    [[nodiscard]] const GaugeChoice &choice() const { return m_choice; }
    [[nodiscard]] GaugeState state() const;
    /// A mark and a word or two: "● Gauge connected". Empty without a gauge.
    [[nodiscard]] QString stateText() const;
    /// A sentence: what is so and what happens next.
    [[nodiscard]] QString stateStory() const;

    /// Keeps the choice and follows it.
    void use(const GaugeChoice &choice);
    void tryOut(const GaugeChoice &choice);
    /// Back to what is kept.
    void endTrial();
    /// What the note asked for takes.
    void setForm(const units::TypedForm &form) { m_gauge.setForm(form); }
    void setRetryInterval(int milliseconds) { m_gauge.setRetryInterval(milliseconds); }

signals:
    void readingArrived(const QString &typed);
    void lineArrived(const QByteArray &line);
    /// A line from which nothing was taken: why.
    void lineRefused(const QString &why);
    void stateChanged(hammerline::gauge_desk::GaugeState state);

private:
    void follow(const GaugeChoice &choice);
    void followLink(gauge_input::SerialGauge::Link link);
    void takeLine(const QByteArray &line);

    QSettings &m_settings;
    GaugeChoice m_choice;
    GaugeChoice m_followed; ///< the kept one, or the one that is tried out
    gauge_input::SerialGauge m_gauge;
    bool m_trying = false;
    bool m_wasThere = false; ///< the line of this choice was open once
    bool m_spoke = false;    ///< since it was opened
};

} // namespace hammerline::gauge_desk
