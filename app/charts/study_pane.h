#pragma once
// A chart of a gauge study in a window. Title and answer are its accessible name and description.

#include "charts/study_chart.h"

#include <QWidget>

namespace hammerline::charts {

class StudyPane : public QWidget {
    Q_OBJECT
public:
    explicit StudyPane(QWidget *parent = nullptr);
    [[nodiscard]] const StudyChartData &data() const { return m_data; }
    void setData(StudyChartData data);
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    StudyChartData m_data;
};

} // namespace hammerline::charts
