#pragma once
// A chart in a window: point at a mark to hear its note, click it to go there. The question is part of the data.

#include "charts/charts.h"

#include <QWidget>

#include <memory>

class QChartView;

namespace hammerline::charts {

class ChartLayer;

class ChartPane : public QWidget {
    Q_OBJECT
public:
    explicit ChartPane(QWidget *parent = nullptr);
    ~ChartPane() override;

    [[nodiscard]] const ChartData &data() const { return m_data; }
    void setData(ChartData data);
    /// A ring around the note's mark; nothing where the note has none.
    void select(keyboard::Note note);

signals:
    void noteChosen(hammerline::keyboard::Note note);
    /// The story of the mark pointed at; empty when the mouse left it.
    void noteTold(const QString &story);

protected:
    void changeEvent(QEvent *event) override;

private:
    void rebuild();
    ChartData m_data;
    std::optional<keyboard::Note> m_selected{};
    QChartView *m_view;            ///< a child widget
    ChartLayer *m_layer = nullptr; ///< of the chart shown
};

} // namespace hammerline::charts
