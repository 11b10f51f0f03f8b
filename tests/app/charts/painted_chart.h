#pragma once
// A chart painted over magenta, which no palette has: whatever shows through was left unpainted.

#include "charts/charts.h"

#include <QImage>
#include <QPainter>

namespace hammerline::charts {

inline QImage painted(const ChartData &data, const wording::Palette &palette, QSize size = {1200, 480})
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    renderChart(painter, image.rect(), data, palette, 12);
    return image;
}

/// Pixels of exactly this colour.
inline int count(const QImage &image, const QColor &colour)
{
    int found = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            found += image.pixelColor(x, y) == colour ? 1 : 0;
    return found;
}

} // namespace hammerline::charts
