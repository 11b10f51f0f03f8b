#include "keyboard_strip/keyboard_strip.h"

#include "keyboard_strip/inside/strip_access.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace hammerline::keyboard_strip {

namespace {

constexpr int octave = 12;
constexpr int usualWidth = 1200;
constexpr int leastWidth = 640;

/// Where a key of the computer's keyboard leads; absent where it is none of ours.
std::optional<int> destination(int key, int from, const keyboard::Compass &compass)
{
    switch (key) {
    case Qt::Key_Left:
        return from - 1;
    case Qt::Key_Right:
        return from + 1;
    case Qt::Key_Up:
        return from + octave;
    case Qt::Key_Down:
        return from - octave;
    case Qt::Key_Home:
        return compass.first.number();
    case Qt::Key_End:
        return compass.last.number();
    default:
        return std::nullopt;
    }
}

} // namespace

KeyboardStrip::KeyboardStrip(QWidget *parent) : QWidget(parent), m_model(emptyModel({}, {}))
{
    installStripAccess();
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("Keyboard"));
    setAccessibleDescription(tr("Every key is a gauge. Left and Right go by one note, Up and Down by an octave."));
}

void KeyboardStrip::setModel(StripModel model)
{
    const bool sameCompass = model.compass == m_model.compass;
    m_model = std::move(model);
    if (!m_model.compass.contains(m_selected))
        m_selected = m_model.compass.first;
    m_pointedAt.reset();
    if (!sameCompass)
        updateGeometry();
    update();
}

void KeyboardStrip::setKey(const StripKey &key)
{
    if (!m_model.find(key.note))
        return;
    m_model.keys[static_cast<std::size_t>(key.note.number() - m_model.compass.first.number())] = key;
    update(keyRect(key.note));
    tellAccess(*this, key.note, AccessNews::Value);
}

void KeyboardStrip::select(keyboard::Note note)
{
    if (!m_model.compass.contains(note) || note == m_selected)
        return;
    repaintKey(m_selected);
    m_selected = note;
    repaintKey(m_selected);
    tellAccess(*this, note, AccessNews::Current);
}

void KeyboardStrip::choose(keyboard::Note note)
{
    const StripKey *key = m_model.find(note);
    if (!key)
        return;
    select(note);
    emit noteTold(key->story);
    emit noteChosen(note);
}

void KeyboardStrip::setLegendShown(bool shown)
{
    m_legendShown = shown;
    updateGeometry();
    update();
}

QRect KeyboardStrip::keyRect(keyboard::Note note) const
{
    return geometryOf(currentStyle(), rect(), m_model.compass).keyRect(note).adjusted(-1, -1, 1, 1).toAlignedRect();
}

QSize KeyboardStrip::sizeHint() const
{
    return {usualWidth, heightForWidth(usualWidth)};
}

QSize KeyboardStrip::minimumSizeHint() const
{
    return {leastWidth, heightForWidth(leastWidth)};
}

int KeyboardStrip::heightForWidth(int width) const
{
    return static_cast<int>(std::ceil(heightFor(currentStyle(), m_model.compass, width)));
}

StripStyle KeyboardStrip::currentStyle() const
{
    StripStyle style = screenStyle(*this);
    style.selected = m_selected;
    style.pointedAt = m_pointedAt;
    style.legend = m_legendShown;
    return style;
}

std::optional<keyboard::Note> KeyboardStrip::noteAt(QPointF point) const
{
    return geometryOf(currentStyle(), rect(), m_model.compass).noteAt(point);
}

void KeyboardStrip::repaintKey(keyboard::Note note)
{
    update(dirtyRect(rect(), m_model, currentStyle(), note).toAlignedRect());
}

void KeyboardStrip::pointAt(std::optional<keyboard::Note> note)
{
    if (note == m_pointedAt)
        return;
    if (m_pointedAt)
        repaintKey(*m_pointedAt);
    m_pointedAt = note;
    if (note)
        repaintKey(*note);
    const StripKey *key = note ? m_model.find(*note) : nullptr;
    emit noteTold(key ? key->story : QString());
}

void KeyboardStrip::paintEvent(QPaintEvent *event)
{
    QPainter painter(this);
    paintStrip(painter, rect(), m_model, currentStyle(), event->rect());
}

void KeyboardStrip::mousePressEvent(QMouseEvent *event)
{
    if (const auto note = noteAt(event->position()); note && event->button() == Qt::LeftButton)
        choose(*note);
}

void KeyboardStrip::mouseMoveEvent(QMouseEvent *event)
{
    pointAt(noteAt(event->position()));
}

void KeyboardStrip::leaveEvent(QEvent *)
{
    pointAt(std::nullopt);
}

void KeyboardStrip::keyPressEvent(QKeyEvent *event)
{
    const auto number = destination(event->key(), m_selected.number(), m_model.compass);
    if (!number || event->modifiers().testAnyFlags(Qt::ControlModifier | Qt::AltModifier)) {
        QWidget::keyPressEvent(event);
        return;
    }
    const keyboard::Note note(*number);
    if (m_model.compass.contains(note) && note != m_selected)
        choose(note);
}

void KeyboardStrip::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        update();
}

bool KeyboardStrip::event(QEvent *event)
{
    if (event->type() == QEvent::FocusIn)
        tellAccess(*this, m_selected, AccessNews::Current);
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto *help = static_cast<QHelpEvent *>(event);
    const auto note = noteAt(help->pos());
    const StripKey *key = note ? m_model.find(*note) : nullptr;
    if (key)
        QToolTip::showText(help->globalPos(), key->story, this, keyRect(*note));
    else
        QToolTip::hideText();
    return true;
}

} // namespace hammerline::keyboard_strip
