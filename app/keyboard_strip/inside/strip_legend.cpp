#include "keyboard_strip/inside/strip_legend.h"

#include "keyboard_strip/inside/key_painter.h"
#include "keyboard_strip/inside/marks.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <array>
#include <vector>

namespace hammerline::keyboard_strip {

namespace {

struct Entry {
    Mark mark;
    const char *text;
};

constexpr std::array entries{
    Entry{Mark::Within, QT_TRANSLATE_NOOP("keyboard_strip", "within")},
    Entry{Mark::Doubt, QT_TRANSLATE_NOOP("keyboard_strip", "close to a limit")},
    Entry{Mark::TooLarge, QT_TRANSLATE_NOOP("keyboard_strip", "too large")},
    Entry{Mark::TooSmall, QT_TRANSLATE_NOOP("keyboard_strip", "too small")},
    Entry{Mark::FarTooLarge, QT_TRANSLATE_NOOP("keyboard_strip", "off the scale")},
    Entry{Mark::Missing, QT_TRANSLATE_NOOP("keyboard_strip", "not read")},
    Entry{Mark::Before, QT_TRANSLATE_NOOP("keyboard_strip", "before")},
    Entry{Mark::Planned, QT_TRANSLATE_NOOP("keyboard_strip", "planned")},
    Entry{Mark::Uneven, QT_TRANSLATE_NOOP("keyboard_strip", "uneven")},
    Entry{Mark::Concession, QT_TRANSLATE_NOOP("keyboard_strip", "concession")},
    Entry{Mark::Slip, QT_TRANSLATE_NOOP("keyboard_strip", "confirmed")},
    Entry{Mark::Fault, QT_TRANSLATE_NOOP("keyboard_strip", "fault of the key")},
};

struct Placed {
    Mark mark{};
    QString text{};
    QPointF at{}; ///< left end of the row's middle line
};

double rowHeight(const StripStyle &style)
{
    return QFontMetricsF(style.font).height() * 1.5;
}

/// From left to right, row after row, as the width allows.
std::vector<Placed> place(const StripStyle &style, double width)
{
    const QFontMetricsF metrics(style.font);
    const double em = metrics.height();
    std::vector<Placed> placed;
    QPointF at(0, rowHeight(style) / 2);
    for (const Entry &entry : entries) {
        const QString text = QCoreApplication::translate("keyboard_strip", entry.text);
        const double needs = 1.2 * em + metrics.horizontalAdvance(text);
        if (at.x() > 0 && at.x() + needs > width)
            at = {0, at.y() + rowHeight(style)};
        placed.push_back({entry.mark, text, at});
        at.rx() += needs + em;
    }
    return placed;
}

} // namespace

double legendHeight(const StripStyle &style, double width)
{
    return place(style, width).back().at.y() + rowHeight(style) / 2;
}

void paintLegend(QPainter &painter, const QRectF &rect, const StripStyle &style)
{
    const QFontMetricsF metrics(style.font);
    const double em = metrics.height();
    painter.setFont(style.font);
    for (const Placed &entry : place(style, rect.width())) {
        const QPointF at = rect.topLeft() + entry.at;
        painter.setRenderHint(QPainter::Antialiasing, true);
        drawMark(painter, entry.mark, at + QPointF(em * 0.5, 0), {em * 0.7, lineOf(style)}, style.palette);
        painter.setPen(style.palette.quiet);
        painter.drawText(at + QPointF(em * 1.2, (metrics.ascent() - metrics.descent()) / 2), entry.text);
    }
}

} // namespace hammerline::keyboard_strip
