#pragma once
// Which instruments were edited by another program, what that bars and what helps: a bar below that of trouble, so that
// neither hides the other. Put away it stays away until something is found that it has not told of yet.

#include "main_window/edited_watch.h"

#include <QFrame>

class QLabel;

namespace hammerline::main_window {

class EditedBar : public QFrame {
    Q_OBJECT
public:
    /// `watch` outlives it.
    explicit EditedBar(const EditedWatch &watch, QWidget *parent = nullptr);

private:
    void begin();
    void tell();

    const EditedWatch &m_watch;
    EditedWatch::Found m_putAway;
    QLabel *m_what;
    QLabel *m_help;
};

} // namespace hammerline::main_window
