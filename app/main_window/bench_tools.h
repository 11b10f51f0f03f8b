#pragma once
// What stands beside the bench and is chosen once: what is heard, and the gauge on its cable. Puts its own actions into
// the menu it is given, keeps what is chosen in the settings, and tells the bench.

#include "bench/bench.h"
#include "gauge_desk/gauge_desk.h"
#include "prompts/prompts.h"
#include "sounding/sounding.h"
#include "study_desk/study_desk.h"

#include <QMenu>
#include <QSettings>

namespace hammerline::main_window {

/// All of it outlives the tools.
struct ToolPlace {
    QWidget *window;
    QMenu *menu;
    bench::BenchView *bench;
    prompts::Prompts &prompts;
    QSettings &settings;
    sounding::Sounder *sounder;               ///< null: silence
    study_desk::StudyDesk *studies = nullptr; ///< takes what the gauge says while a study is being taken there
};

class BenchTools : public QObject {
    Q_OBJECT
public:
    explicit BenchTools(const ToolPlace &place);
    [[nodiscard]] gauge_desk::GaugeDesk &gauge() { return m_gauge; }

signals:
    /// A reading of the gauge is about to be entered: the bench is to be seen.
    void benchWanted();

private:
    void connectGauge();
    void connectReadings();
    void chooseGauge();
    void expect(std::optional<catalogue::Quantity> quantity);
    void followGauge(gauge_desk::GaugeState state);
    QAction *addSwitch(const QString &text, const char *name, bool on);
    void listen();
    void tellWhatIsMissing(bool tones);

    ToolPlace m_place;
    gauge_desk::GaugeDesk m_gauge;
    std::optional<catalogue::Quantity> m_atTheBench{}; ///< asked for there
    QAction *m_tones;
    QAction *m_speech;
};

} // namespace hammerline::main_window
