#pragma once
// A chart of a gauge study in a window: point at a mark or a bar to hear what it says, click it to go to its note.
// Title and answer are its accessible name and description.

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

signals:
    void noteChosen(hammerline::keyboard::Note note);

protected:
    void mouseMoveEvent(QMouseEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void paintEvent(QPaintEvent *event) override;

private:
    [[nodiscard]] const PlacedNote *at(QPointF place) const;
    StudyChartData m_data;
    std::vector<PlacedNote> m_placed;
};

} // namespace hammerline::charts
