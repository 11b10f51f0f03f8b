#pragma once
// Where each key lies. Naturals are of equal width and fill the whole rectangle. Sharps sit where they do on a real
// keyboard: between C and E, and between F and B, all key tails are of one width (3/5 and 4/7 of a natural), so C#
// leans to the left of its gap, D# to the right, F# left, G# stands in the middle, A# right. (Common construction, no
// source.)

#include "keyboard/keyboard.h"

#include <QPolygonF>
#include <QRectF>

#include <optional>

namespace hammerline::keyboard_strip {

class StripGeometry {
public:
    /// `keys`: the rectangle that the keys fill, without captions and labels.
    StripGeometry(keyboard::Compass compass, QRectF keys);

    [[nodiscard]] const QRectF &keysRect() const { return m_keys; }
    [[nodiscard]] double naturalWidth() const { return m_naturalWidth; }
    [[nodiscard]] double sharpWidth() const;
    [[nodiscard]] double sharpLength() const;
    /// Bounding rectangle of the key.
    [[nodiscard]] QRectF keyRect(keyboard::Note note) const;
    /// Outline with the cut-outs that neighbouring sharps make in a natural.
    [[nodiscard]] QPolygonF outline(keyboard::Note note) const;
    /// Where the key's gauge stands; of the same height on naturals and sharps.
    [[nodiscard]] QRectF gaugeRect(keyboard::Note note) const;
    /// x of the line between the tails of `note` and the next higher note.
    [[nodiscard]] double boundaryAbove(keyboard::Note note) const;
    /// The key under a point, sharps on top; absent outside the keys.
    [[nodiscard]] std::optional<keyboard::Note> noteAt(QPointF point) const;

private:
    [[nodiscard]] double leftOf(keyboard::Note note) const; ///< in naturals, from the first C of all
    keyboard::Compass m_compass;
    QRectF m_keys;
    double m_origin = 0;
    double m_naturalWidth = 0;
};

} // namespace hammerline::keyboard_strip
