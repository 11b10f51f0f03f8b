#pragma once
// A later pass beside the one the instrument was left with: what moved, which way, how much, and whether the gauges can
// tell, under the climate of both days.

#include "analysis/drift.h"
#include "wording/number_form.h"

#include <QWidget>

class QLabel;
class QTableWidget;

namespace hammerline::instrument_file {

class DriftPage : public QWidget {
    Q_OBJECT
public:
    explicit DriftPage(QWidget *parent = nullptr);
    void show(const readings::Pass &before, const readings::Pass &after, const std::vector<analysis::Drift> &drifts,
              const wording::NumberForm &form);
    /// There is nothing to compare.
    void showNothing();
    /// A spot check is being read blind.
    void showWithheld();
    using QWidget::show;

private:
    QTableWidget *m_table;
    QLabel *m_story;
};

} // namespace hammerline::instrument_file
