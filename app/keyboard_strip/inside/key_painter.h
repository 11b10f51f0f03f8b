#pragma once
// One key of the strip: its body, its gauge, its flags.

#include "keyboard_strip/paint_strip.h"

class QPainter;

namespace hammerline::keyboard_strip {

/// The gauge reaches this many half-widths up and down; what lies further off is drawn at its end, doubled.
inline constexpr double gaugeReach = 2.4;

class KeyPainter {
public:
    KeyPainter(QPainter &painter, const StripGeometry &geometry, const StripStyle &style);
    void paint(const StripKey &key) const;
    /// The heavy outline of the selected key, over its neighbours.
    void paintSelection(keyboard::Note note) const;
    void paintPointedAt(keyboard::Note note) const;

private:
    void paintBody(keyboard::Note note) const;
    void paintBand(const StripKey &key, const QRectF &gauge) const;
    void paintReadings(const StripKey &key, const QRectF &gauge) const;
    void paintNow(const StripKey &key, const QRectF &gauge) const;
    void paintFlags(const StripKey &key, const QRectF &gauge) const;
    void paintNotch(keyboard::Note note) const;
    void paintOutline(keyboard::Note note, double thickness) const;
    [[nodiscard]] double markSize(const QRectF &gauge) const;
    [[nodiscard]] double notchSide() const;

    QPainter &m_painter;
    const StripGeometry &m_geometry;
    const StripStyle &m_style;
    double m_line;
};

/// Thickness of a hairline in the units of the style's font.
[[nodiscard]] double lineOf(const StripStyle &style);

} // namespace hammerline::keyboard_strip
