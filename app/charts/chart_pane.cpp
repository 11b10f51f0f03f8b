#include "charts/chart_pane.h"

#include "charts/inside/chart_access.h"
#include "charts/inside/chart_maker.h"
#include "charts/inside/mark_layer.h"

#include <QChart>
#include <QChartView>
#include <QEvent>
#include <QFontInfo>
#include <QVBoxLayout>

namespace hammerline::charts {

namespace {

ChartLook lookOf(const QWidget &pane)
{
    return {wording::paletteFor(pane), QFontInfo(wording::font(wording::TextSize::Small)).pixelSize()};
}

} // namespace

ChartPane::ChartPane(QWidget *parent) : QWidget(parent), m_view(new QChartView(this))
{
    installChartAccess();
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_view);
    m_view->setRenderHint(QPainter::Antialiasing);
    m_view->setFrameShape(QFrame::NoFrame);
    rebuild();
}

ChartPane::~ChartPane() = default;

void ChartPane::setData(ChartData data)
{
    m_data = std::move(data);
    rebuild();
}

void ChartPane::select(keyboard::Note note)
{
    m_selected = note;
    if (m_layer)
        m_layer->select(note);
}

void ChartPane::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        rebuild();
}

void ChartPane::rebuild()
{
    MadeChart made = makeChart(m_data, lookOf(*this));
    m_layer = made.layer;
    m_layer->select(m_selected);
    connect(m_layer, &ChartLayer::noteChosen, this, &ChartPane::noteChosen);
    connect(m_layer, &ChartLayer::noteTold, this, &ChartPane::noteTold);
    const QChart *old = m_view->chart();
    m_view->setChart(made.chart.release()); // which the view owns from here on; the old one it lets go
    m_view->setBackgroundBrush(wording::paletteFor(*this).paper);
    m_view->setAccessibleName(titleOf(m_data));
    m_view->setAccessibleDescription(answerOf(m_data));
    delete old;
}

} // namespace hammerline::charts
