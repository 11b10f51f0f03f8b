#include "keyboard_strip/strip_geometry.h"

#include <algorithm>
#include <array>

namespace hammerline::keyboard_strip {

namespace {

using keyboard::Colour;
using keyboard::Note;

// Widths in naturals, lengths as parts of a natural's length. Sharps are a little shorter than on a piano (0.63) so
// that the gauges of both colours are equally high.
constexpr double sharpWidthInNaturals = 0.56;
constexpr double sharpLengthPart = 0.55;
constexpr double gaugeHeightPart = 0.37;
constexpr double sharpGaugeTop = 0.165;
constexpr double naturalGaugeTop = 0.555;
constexpr double gaugeInset = 0.09; ///< left and right, of the key's width

constexpr int notesPerOctave = 12;
constexpr int naturalsPerOctave = 7;
constexpr double tailCtoE = 3.0 / 5;
constexpr double tailFtoB = 4.0 / 7;

/// Left end of each tail, C to B, in naturals from the C. Five tails fill three naturals, seven fill four.
constexpr std::array<double, notesPerOctave + 1> tailLefts{0,
                                                           tailCtoE,
                                                           2 * tailCtoE,
                                                           3 * tailCtoE,
                                                           4 * tailCtoE,
                                                           3,
                                                           3 + tailFtoB,
                                                           3 + 2 * tailFtoB,
                                                           3 + 3 * tailFtoB,
                                                           3 + 4 * tailFtoB,
                                                           3 + 5 * tailFtoB,
                                                           3 + 6 * tailFtoB,
                                                           naturalsPerOctave};
/// How many naturals of the octave lie below.
constexpr std::array<int, notesPerOctave> naturalsBelow{0, 1, 1, 2, 2, 3, 4, 4, 5, 5, 6, 6};

int pitchClass(Note note)
{
    return note.midi() % notesPerOctave;
}

double octaveLeft(Note note)
{
    return static_cast<double>(note.midi() / notesPerOctave * naturalsPerOctave);
}

double tailRight(Note note)
{
    return octaveLeft(note) + tailLefts[static_cast<std::size_t>(pitchClass(note)) + 1];
}

bool isSharp(Note note)
{
    return note.colour() == Colour::Sharp;
}

} // namespace

StripGeometry::StripGeometry(keyboard::Compass compass, QRectF keys) : m_compass(compass), m_keys(keys)
{
    const auto rightOf = [this](Note note) { return leftOf(note) + (isSharp(note) ? sharpWidthInNaturals : 1); };
    m_origin = leftOf(compass.first);
    if (compass.count() > 1)
        m_origin = std::min(m_origin, leftOf(Note(compass.first.number() + 1)));
    double right = rightOf(compass.last);
    if (compass.count() > 1)
        right = std::max(right, rightOf(Note(compass.last.number() - 1)));
    m_naturalWidth = keys.width() / (right - m_origin);
}

double StripGeometry::sharpWidth() const
{
    return m_naturalWidth * sharpWidthInNaturals;
}

double StripGeometry::sharpLength() const
{
    return m_keys.height() * sharpLengthPart;
}

double StripGeometry::leftOf(Note note) const
{
    const auto index = static_cast<std::size_t>(pitchClass(note));
    if (!isSharp(note))
        return octaveLeft(note) + naturalsBelow[index];
    const double middle = (tailLefts[index] + tailLefts[index + 1]) / 2;
    return octaveLeft(note) + middle - sharpWidthInNaturals / 2;
}

QRectF StripGeometry::keyRect(Note note) const
{
    const double x = m_keys.x() + (leftOf(note) - m_origin) * m_naturalWidth;
    return isSharp(note) ? QRectF(x, m_keys.y(), sharpWidth(), sharpLength())
                         : QRectF(x, m_keys.y(), m_naturalWidth, m_keys.height());
}

QPolygonF StripGeometry::outline(Note note) const
{
    const QRectF key = keyRect(note);
    if (isSharp(note))
        return QPolygonF(key);
    const Note below(note.number() - 1);
    const Note above(note.number() + 1);
    const bool cutLeft = m_compass.contains(below) && isSharp(below);
    const bool cutRight = m_compass.contains(above) && isSharp(above);
    const double left = cutLeft ? keyRect(below).right() : key.left();
    const double right = cutRight ? keyRect(above).left() : key.right();
    const double shoulder = key.top() + sharpLength();
    return QPolygonF({{left, key.top()},
                      {right, key.top()},
                      {right, shoulder},
                      {key.right(), shoulder},
                      key.bottomRight(),
                      key.bottomLeft(),
                      {key.left(), shoulder},
                      {left, shoulder},
                      {left, key.top()}});
}

QRectF StripGeometry::gaugeRect(Note note) const
{
    const QRectF key = keyRect(note);
    const double top = m_keys.y() + m_keys.height() * (isSharp(note) ? sharpGaugeTop : naturalGaugeTop);
    const double inset = key.width() * gaugeInset;
    return {key.x() + inset, top, key.width() - 2 * inset, m_keys.height() * gaugeHeightPart};
}

double StripGeometry::boundaryAbove(Note note) const
{
    return m_keys.x() + (tailRight(note) - m_origin) * m_naturalWidth;
}

std::optional<Note> StripGeometry::noteAt(QPointF point) const
{
    std::optional<Note> hit;
    for (int number = m_compass.first.number(); number <= m_compass.last.number(); ++number)
        if (const Note note(number); keyRect(note).contains(point) && (!hit || isSharp(note)))
            hit = note;
    return hit;
}

} // namespace hammerline::keyboard_strip
