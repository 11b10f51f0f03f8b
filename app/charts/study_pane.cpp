#include "charts/study_pane.h"

#include "charts/inside/axis_title.h"

#include <QFontInfo>
#include <QLineF>
#include <QMouseEvent>
#include <QPainter>

namespace hammerline::charts {

StudyPane::StudyPane(QWidget *parent) : QWidget(parent)
{
    setMouseTracking(true);
}

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

const PlacedNote *StudyPane::at(QPointF place) const
{
    const PlacedNote *best = nullptr;
    for (const PlacedNote &placed : m_placed)
        if (placed.area.contains(place) && (best == nullptr || QLineF(placed.area.center(), place).length() <
                                                                   QLineF(best->area.center(), place).length()))
            best = &placed;
    return best;
}

void StudyPane::mouseMoveEvent(QMouseEvent *event)
{
    const PlacedNote *pointedAt = at(event->position());
    const bool isShort = shortName(m_data.subject) != m_data.subject;
    setToolTip(pointedAt ? pointedAt->story : isShort ? m_data.subject : QString());
}

void StudyPane::mousePressEvent(QMouseEvent *event)
{
    if (const PlacedNote *clicked = at(event->position()))
        emit noteChosen(clicked->note);
    else
        event->ignore();
}

void StudyPane::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const wording::Palette &palette = wording::paletteFor(*this);
    painter.fillRect(rect(), palette.paper);
    const int pixelSize = QFontInfo(wording::font(wording::TextSize::Small)).pixelSize();
    m_placed =
        m_data.trials.empty() ? std::vector<PlacedNote>{} : renderChart(painter, rect(), m_data, palette, pixelSize);
}

} // namespace hammerline::charts
