#pragma once
// What the bench lets be heard while the eyes are on the hammers: a tone for every verdict, question and refusal, and
// in words the value that was taken, its verdict and the note asked for next. One utterance each, because newer words
// cut off older ones. Off until it is switched on; without a sounder all of it is silence.

#include "bench/entry_session.h"
#include "sounding/sounding.h"
#include "wording/number_form.h"

#include <QSettings>
#include <QString>

namespace hammerline::bench {

struct HeardChoice {
    bool tones = false;
    bool speech = false;
    bool operator==(const HeardChoice &) const = default;

    /// What the settings hold under `bench/tones` and `bench/speech`.
    [[nodiscard]] static HeardChoice from(const QSettings &settings);
    void store(QSettings &settings) const;
};

class Heard {
public:
    /// Outlives this; null: silence.
    void setSounder(sounding::Sounder *sounder) { m_sounder = sounder; }
    void setChoice(const HeardChoice &choice) { m_choice = choice; }

    void entered(const Entered &entered, const wording::NumberForm &form);
    /// A question waits on the screen.
    void doubted(const slips::Slip &slip, const wording::NumberForm &form);
    /// Something was typed or sent, and nothing was taken.
    void refused();
    /// The gauge has gone.
    void gaugeLost();
    /// What is asked for now; absent: the end of the route. Spoken behind what was entered, and where it is another
    /// place than before.
    void asked(const std::optional<readings::Place> &place);
    /// Another pass: nothing has been asked for in it.
    void startAnew();

private:
    void tone(sounding::ToneKind kind);
    void say(const QString &words);

    sounding::Sounder *m_sounder = nullptr;
    HeardChoice m_choice;
    QString m_pending; ///< said together with what is asked for next
    std::optional<readings::Place> m_asked;
    bool m_toldEnd = false;
};

} // namespace hammerline::bench
