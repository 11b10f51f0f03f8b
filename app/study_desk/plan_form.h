#pragma once
// Planning a gauge study: which gauge, which quantity, who, how many notes, how often; and the seed by which notes and
// order are drawn.

#include "instrument/instrument.h"
#include "logbook/gauge_studies.h"

#include <QDialog>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QSpinBox;

namespace hammerline::study_desk {

/// What a plan starts from.
struct PlanProposal {
    instrument::Instrument instrument{}; ///< whose notes are read; id 0: any piano, all 88
    readings::Gauge gauge{};
    units::Unit unit = units::Unit::Millimetre;
    catalogue::Quantity quantity = catalogue::Quantity::LetOff;
    std::vector<std::string> people{};
    std::uint32_t seed = 1;
};

class PlanForm : public QDialog {
    Q_OBJECT
public:
    static constexpr int usualNotes = 10, usualTakes = 3;

    explicit PlanForm(PlanProposal proposal, QWidget *parent = nullptr);

    [[nodiscard]] outcome::Outcome<logbook::PlannedStudy> entered() const;

signals:
    void ready(const hammerline::logbook::PlannedStudy &study);

public slots:
    /// Emits `ready` and closes where the plan can be taken; else tells why and stays.
    void accept() override;

private:
    void addFields(QFormLayout *form);
    void fill();
    void tellLength();

    PlanProposal m_proposal;
    QLineEdit *m_gauge, *m_resolution;
    QComboBox *m_quantity, *m_unit;
    QPlainTextEdit *m_people;
    QSpinBox *m_notes, *m_takes, *m_seed;
    QLabel *m_length, *m_faults;
};

} // namespace hammerline::study_desk
