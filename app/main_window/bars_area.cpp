#include "main_window/bars_area.h"

#include <QBoxLayout>
#include <QEvent>

#include <algorithm>

namespace hammerline::main_window {

namespace {

constexpr int leastLines = 6;

}

BarsArea::BarsArea(std::initializer_list<QWidget *> bars, QWidget *parent) : QScrollArea(parent)
{
    auto *all = new QWidget;
    auto *column = new QVBoxLayout(all);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    for (QWidget *bar : bars)
        column->addWidget(bar);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus); // it follows the button that has the focus
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    setWidgetResizable(true);
    setWidget(all);
    all->installEventFilter(this);
}

int BarsArea::wishedHeight() const
{
    return std::max(0, widget()->layout()->heightForWidth(viewport()->width()));
}

QSize BarsArea::sizeHint() const
{
    return {QScrollArea::sizeHint().width(), wishedHeight()};
}

QSize BarsArea::minimumSizeHint() const
{
    return {0, std::min(wishedHeight(), leastLines * fontMetrics().lineSpacing())};
}

bool BarsArea::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == widget() && event->type() == QEvent::LayoutRequest)
        updateGeometry(); // a bar came, went or says something else
    return QScrollArea::eventFilter(watched, event);
}

void BarsArea::resizeEvent(QResizeEvent *event)
{
    QScrollArea::resizeEvent(event);
    updateGeometry();
}

} // namespace hammerline::main_window
