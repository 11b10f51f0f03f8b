#include "command_line/inside/drawn_photographs.h"

#include "outcome/outcome.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QPainterPath>

namespace hammerline::command_line {

namespace {

constexpr QSize pictureSize(640, 480);

void drawRoom(QPainter &painter, bool worn)
{
    QLinearGradient wall(0, 0, 0, 360);
    wall.setColorAt(0, worn ? QColor(0xb5, 0xad, 0xa2) : QColor(0xe6, 0xe1, 0xd8));
    wall.setColorAt(1, worn ? QColor(0x8f, 0x88, 0x7e) : QColor(0xcf, 0xc8, 0xbc));
    painter.fillRect(0, 0, 640, 370, wall);
    painter.fillRect(0, 370, 640, 110, worn ? QColor(0x6b, 0x62, 0x58) : QColor(0x9c, 0x86, 0x6b));
    painter.fillRect(96, 408, 448, 10, QColor(0, 0, 0, 70)); // its shadow
}

void drawKeys(QPainter &painter, const QRect &place, bool worn)
{
    painter.fillRect(place, worn ? QColor(0xd8, 0xcb, 0xa6) : QColor(0xf3, 0xef, 0xe4));
    painter.setPen(QPen(QColor(0x50, 0x48, 0x40), 1));
    constexpr int naturals = 52;
    for (int key = 1; key < naturals; ++key) {
        const int x = place.left() + place.width() * key / naturals;
        painter.drawLine(x, place.top(), x, place.bottom());
        if (const int step = (key + 5) % 7; step != 0 && step != 3)
            painter.fillRect(x - 2, place.top(), 4, place.height() * 5 / 8, QColor(0x1c, 0x1a, 0x18));
    }
    if (worn) // one covering has come off
        painter.fillRect(place.left() + place.width() * 30 / naturals + 1, place.top() + 12, 7, 10,
                         QColor(0xb0, 0x90, 0x60));
}

void drawScratches(QPainter &painter)
{
    painter.setPen(QPen(QColor(0xa8, 0x8e, 0x70, 170), 1.4));
    for (int i = 0; i < 9; ++i)
        painter.drawLine(112 + 7 * i, 120 + 21 * i % 150, 138 + 9 * i, 112 + 23 * i % 150);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(0xc0, 0xb4, 0xa2, 60)); // a ring left by a pot
    painter.drawEllipse(QPoint(440, 84), 26, 5);
}

void drawFront(QPainter &painter, bool worn)
{
    drawRoom(painter, worn);
    const QColor wood = worn ? QColor(0x4e, 0x3a, 0x2b) : QColor(0x5c, 0x34, 0x1e);
    const QColor panel = worn ? QColor(0x5e, 0x49, 0x38) : QColor(0x76, 0x45, 0x28);
    painter.fillRect(100, 76, 440, 336, wood);
    painter.fillRect(90, 66, 460, 14, panel);
    painter.fillRect(122, 98, 190, 118, panel);
    painter.fillRect(328, 98, 190, 118, panel);
    painter.fillRect(122, 286, 396, 104, panel);
    painter.fillRect(92, 228, 456, 48, wood.darker(130));
    drawKeys(painter, QRect(110, 236, 420, 28), worn);
    for (const int x : {96, 524})
        painter.fillRect(x, 276, 22, 134, wood.darker(115));
    painter.setPen(Qt::NoPen);
    painter.setBrush(worn ? QColor(0x80, 0x70, 0x48) : QColor(0xc9, 0xa6, 0x4a));
    for (const int x : {300, 340})
        painter.drawRoundedRect(x - 9, 396, 18, 10, 4, 4);
    if (worn)
        drawScratches(painter);
}

/// A hammer from the side, its crown up: moulding, felt, and the grooves that the strings cut.
void drawHammer(QPainter &painter, double x, double size, bool worn)
{
    painter.fillRect(QRectF(x - size * 0.07, 250, size * 0.14, 230), QColor(0xc8, 0xa4, 0x72));
    QPainterPath felt(QPointF(x - size * 0.42, 290));
    felt.cubicTo(x - size * 0.5, 170, x - size * 0.16, 110, x, 108);
    felt.cubicTo(x + size * 0.16, 110, x + size * 0.5, 170, x + size * 0.42, 290);
    felt.cubicTo(x + size * 0.2, 300, x - size * 0.2, 300, x - size * 0.42, 290);
    painter.setPen(QPen(QColor(0x90, 0x88, 0x78), 1.5));
    painter.setBrush(worn ? QColor(0xcc, 0xc4, 0xb0) : QColor(0xee, 0xea, 0xdc));
    painter.drawPath(felt);
    painter.setBrush(QColor(0xb8, 0x90, 0x5c));
    painter.drawRoundedRect(QRectF(x - size * 0.13, 200, size * 0.26, 96), 8, 8);
    if (!worn)
        return;
    painter.setPen(QPen(QColor(0x58, 0x50, 0x44), 3));
    for (const double groove : {-0.1, 0.0, 0.1})
        painter.drawLine(QPointF(x + groove * size, 112), QPointF(x + groove * size, 128));
}

void drawHammers(QPainter &painter, bool worn)
{
    QLinearGradient behind(0, 0, 0, pictureSize.height());
    behind.setColorAt(0, QColor(0x3a, 0x3c, 0x40));
    behind.setColorAt(1, QColor(0x22, 0x23, 0x26));
    painter.fillRect(QRect(QPoint(0, 0), pictureSize), behind);
    painter.fillRect(0, 420, 640, 60,
                     worn ? QColor(0x60, 0x30, 0x28) : QColor(0x8a, 0x2c, 0x26)); // the rest rail's cloth
    for (int i = 0; i < 6; ++i)
        drawHammer(painter, 62 + 104.0 * i, 104 - 4.0 * i, worn);
}

} // namespace

std::string drawnPhotograph(const dossier::Photograph &wanted)
{
    QImage picture(pictureSize, QImage::Format_RGB32);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool worn = wanted.moment == dossier::Moment::AsReceived;
    wanted.view == "hammers" ? drawHammers(painter, worn) : drawFront(painter, worn);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (!picture.save(&buffer, "JPEG", 85))
        throw outcome::BrokenWorld("Qt's JPEG support is not installed; the demonstration cannot draw its pictures.");
    return bytes.toStdString();
}

} // namespace hammerline::command_line
