#include "bench/inside/key_picture.h"

#include "wording/palette.h"

#include <QPainter>

namespace hammerline::bench {

namespace {

constexpr int naturalsShown = 3;
constexpr double sharpWidth = 0.6;   ///< of a natural
constexpr double sharpLength = 0.62; ///< of a natural

bool isSharp(keyboard::Note note)
{
    return note.colour() == keyboard::Colour::Sharp;
}

/// How many naturals lie from `from` up to `to`, `to` not counted.
int naturalsBetween(keyboard::Note from, keyboard::Note to)
{
    int count = 0;
    for (int n = from.number(); n < to.number(); ++n)
        count += isSharp(keyboard::Note(n)) ? 0 : 1;
    return count;
}

/// The lowest natural shown, so that `note` stands in the middle.
keyboard::Note leftmost(keyboard::Note note)
{
    int naturals = isSharp(note) ? 1 : 0;
    int number = note.number();
    while (number > keyboard::Note::lowest && naturals < (isSharp(note) ? 2 : 1)) {
        --number;
        naturals += isSharp(keyboard::Note(number)) ? 0 : 1;
    }
    return keyboard::Note(number);
}

} // namespace

KeyPicture::KeyPicture(QWidget *parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void KeyPicture::setNote(std::optional<keyboard::Note> note)
{
    m_note = note;
    const bool sharp = note && isSharp(*note);
    setAccessibleName(!note ? QString() : sharp ? tr("a sharp key") : tr("a natural key"));
    update();
}

QSize KeyPicture::sizeHint() const
{
    return {84, 96};
}

void KeyPicture::paintEvent(QPaintEvent *)
{
    if (!m_note)
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const wording::Palette &colours = wording::paletteFor(*this);
    const QRectF area = QRectF(rect()).adjusted(1, 1, -1, -1);
    const double step = area.width() / naturalsShown;
    const keyboard::Note first = leftmost(*m_note);
    const auto draw = [&](keyboard::Note note, const QRectF &key, const QColor &plain) {
        painter.setPen(QPen(colours.line, 1));
        painter.setBrush(note == *m_note ? colours.ink : plain);
        painter.drawRoundedRect(key, 2, 2);
    };
    painter.setClipRect(area.adjusted(-1, -1, 1, 1));
    for (int i = 0, n = first.number(); i < naturalsShown; ++n) {
        if (isSharp(keyboard::Note(n)))
            continue;
        draw(keyboard::Note(n), QRectF(area.left() + i * step, area.top(), step, area.height()), colours.paper);
        ++i;
    }
    for (int n = first.number() - 1; naturalsBetween(first, keyboard::Note(n)) <= naturalsShown; ++n) {
        const keyboard::Note note(n);
        if (!isSharp(note))
            continue;
        const double middle = area.left() + naturalsBetween(first, note) * step;
        const QRectF key(middle - step * sharpWidth / 2, area.top(), step * sharpWidth, area.height() * sharpLength);
        // The asked sharp stands out by being the only filled one.
        draw(note, key, colours.sharp);
    }
}

} // namespace hammerline::bench
