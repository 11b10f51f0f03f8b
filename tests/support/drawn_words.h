#pragma once
// What a painting writes, measured as it is drawn: a device that keeps no picture, only each run of words with its
// place, and whether it was cut there.

#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QString>

#include <functional>
#include <vector>

namespace hammerline::support {

struct DrawnWords {
    QString text;
    QRectF place;         ///< on the device, as wide as the letters run and as high as their line
    bool upright = false; ///< set along a line that goes up or down
    bool cut = false;     ///< by what is clipped, or by the edge of the device
};

class WordsEngine : public QPaintEngine {
public:
    WordsEngine(std::vector<DrawnWords> &words, const QRectF &device)
        : QPaintEngine(QPaintEngine::AllFeatures), m_words(words), m_device(device)
    {
    }
    bool begin(QPaintDevice *) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState &) override {}
    void drawPath(const QPainterPath &) override {}
    void drawPixmap(const QRectF &, const QPixmap &, const QRectF &) override {}
    void drawPolygon(const QPointF *, int, PolygonDrawMode) override {}
    void drawPolygon(const QPoint *, int, PolygonDrawMode) override {}
    Type type() const override { return User; }
    void drawTextItem(const QPointF &at, const QTextItem &item) override
    {
        constexpr double rounding = 1;
        if (item.text().trimmed().isEmpty())
            return;
        const QTransform &to = painter()->combinedTransform();
        const QRectF own(at.x(), at.y() - item.ascent(), item.width(), item.ascent() + item.descent());
        const QRectF place = to.mapRect(own);
        QRectF seen = m_device;
        if (painter()->hasClipping())
            seen &= to.mapRect(painter()->clipBoundingRect());
        const bool cut = !seen.adjusted(-rounding, -rounding, rounding, rounding).contains(place);
        m_words.push_back({item.text(), place, to.m12() != 0, cut});
    }

private:
    std::vector<DrawnWords> &m_words;
    QRectF m_device;
};

/// Of one dot a pixel.
class WordsDevice : public QPaintDevice {
public:
    explicit WordsDevice(const QSize &size) : m_size(size), m_engine(words, QRectF(QPointF(0, 0), size)) {}
    QPaintEngine *paintEngine() const override { return &m_engine; }

    std::vector<DrawnWords> words;

protected:
    int metric(PaintDeviceMetric of) const override
    {
        constexpr int dpi = 96;
        switch (of) {
        case PdmWidth:
            return m_size.width();
        case PdmHeight:
            return m_size.height();
        case PdmDpiX:
        case PdmDpiY:
        case PdmPhysicalDpiX:
        case PdmPhysicalDpiY:
            return dpi;
        case PdmDepth:
            return 32;
        case PdmDevicePixelRatio:
            return 1;
        default:
            return QPaintDevice::metric(of);
        }
    }

private:
    QSize m_size;
    mutable WordsEngine m_engine;
};

[[nodiscard]] inline std::vector<DrawnWords> drawnWords(const QSize &size,
                                                        const std::function<void(QPainter &, const QRectF &)> &paint)
{
    WordsDevice device(size);
    QPainter painter(&device);
    paint(painter, QRectF(QPointF(0, 0), size));
    painter.end();
    return device.words;
}

} // namespace hammerline::support
