#include "charts/study_pane.h"

#include <QFontInfo>
#include <QPainter>

namespace hammerline::charts {

StudyPane::StudyPane(QWidget *parent) : QWidget(parent) {}

void StudyPane::setData(StudyChartData data)
{
    m_data = std::move(data);
    setAccessibleName(titleOf(m_data));
    setAccessibleDescription(answerOf(m_data));
    update();
}

QSize StudyPane::minimumSizeHint() const
{
    constexpr int leastLines = 16;
    return {20 * fontMetrics().height(), leastLines * fontMetrics().height()};
}

void StudyPane::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const wording::Palette &palette = wording::paletteFor(*this);
    painter.fillRect(rect(), palette.paper);
    if (!m_data.trials.empty())
        renderChart(painter, rect(), m_data, palette, QFontInfo(wording::font(wording::TextSize::Small)).pixelSize());
}

} // namespace hammerline::charts
