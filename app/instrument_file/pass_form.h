#pragma once
// Beginning a pass, and changing what is noted of it: what for, who, climate, gauge, and from where dip and drop are
// measured. Everything but the purpose may be left out; what the last pass said is offered again.

#include "catalogue/catalogue.h"
#include "outcome/outcome.h"
#include "readings/readings.h"
#include "wording/entry_dialog.h"

class QComboBox;
class QFormLayout;
class QLineEdit;

namespace hammerline::instrument_file {

/// A gauge that was studied, by its name.
struct StudiedGauge {
    std::string name{};
    units::Length resolution{};          ///< 0: not stated
    units::Length expandedUncertainty{}; ///< that its newest study found
    QString day{};                       ///< of the study
};

class PassForm : public wording::EntryDialog {
    Q_OBJECT
public:
    /// Starts from `known`; id 0: a new pass.
    PassForm(readings::Pass known, catalogue::ActionKind action, QWidget *parent = nullptr);

    /// Where one of these gauges is named, the form says what its study found, and fills that in where nothing else
    /// stands there, or the pass is a new one; the person may type over it.
    void offer(std::vector<StudiedGauge> gauges);
    [[nodiscard]] outcome::Outcome<readings::Pass> entered() const;

signals:
    void ready(const hammerline::readings::Pass &pass);

public slots:
    void accept() override;

private:
    void addFields(QFormLayout *form, catalogue::ActionKind action);
    void fill();
    void followGauge();
    [[nodiscard]] const StudiedGauge *studied() const;

    readings::Pass m_known;
    QComboBox *m_purpose = nullptr, *m_unit = nullptr, *m_dip = nullptr, *m_drop = nullptr;
    QLineEdit *m_person = nullptr, *m_celsius = nullptr, *m_humidity = nullptr, *m_remark = nullptr;
    QLineEdit *m_gauge = nullptr, *m_resolution = nullptr, *m_uncertainty = nullptr;
    QLabel *m_offered = nullptr;
    std::vector<StudiedGauge> m_gauges;
    QString m_filledIn; ///< the uncertainty that was filled in last, to be told from what a person typed
};

} // namespace hammerline::instrument_file
