#pragma once
// Where a tolerance set takes the uncertainty that it counts with from a gauge study of this workshop: which study, and
// whether a reading is in only where it lies inside the limits by more than that.

#include "tolerance/found_uncertainty.h"
#include "wording/number_form.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QComboBox;
class QPushButton;

namespace hammerline::instrument_file {

class StudiedRow : public QWidget {
    Q_OBJECT
public:
    explicit StudiedRow(QWidget *parent = nullptr);
    /// Hidden where there are none.
    void offer(std::vector<tolerance::FoundUncertainty> found, const wording::NumberForm &form);
    /// The set that it would be taken into.
    void follow(const tolerance::ToleranceSet &set);

signals:
    void wanted(const hammerline::tolerance::FoundUncertainty &found, hammerline::tolerance::Rule rule);

private:
    void choose();
    [[nodiscard]] const tolerance::FoundUncertainty *chosen() const;

    std::vector<tolerance::FoundUncertainty> m_found;
    tolerance::ToleranceSet m_set;
    QComboBox *m_studies;
    QCheckBox *m_guarded;
    QPushButton *m_take;
};

} // namespace hammerline::instrument_file
