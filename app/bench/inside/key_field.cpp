#include "bench/inside/key_field.h"

#include "bench/bench_keys.h"

namespace hammerline::bench {

KeyField::KeyField(QWidget *parent) : QLineEdit(parent)
{
    setReadOnly(true);
    setPlaceholderText(tr("none"));
    setContextMenuPolicy(Qt::NoContextMenu);
}

void KeyField::show(const QKeySequence &key)
{
    setText(key.toString(QKeySequence::NativeText));
}

void KeyField::keyPressEvent(QKeyEvent *event)
{
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Escape:
        return event->ignore();
    case Qt::Key_Shift:
    case Qt::Key_Control:
    case Qt::Key_Alt:
    case Qt::Key_AltGr:
    case Qt::Key_Meta:
        return;
    case Qt::Key_Backspace:
        emit keyWanted({});
        return;
    default:
        emit keyWanted(keyOf(*event));
    }
}

} // namespace hammerline::bench
