#pragma once
// Which instruments were edited by another program, what that bars and what helps: a bar below that of trouble, so that
// neither hides the other. Where the window is low the heading stands alone and what helps behind a button. Put away it
// stays away until an instrument is found, or more places of one, that it has not told of yet.

#include "main_window/edited_watch.h"

#include <QFrame>

class QLabel;
class QPushButton;

namespace hammerline::main_window {

class EditedBar : public QFrame {
    Q_OBJECT
public:
    /// `watch` outlives it.
    explicit EditedBar(const EditedWatch &watch, QWidget *parent = nullptr);

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void begin();
    void tell();
    /// What the height of the window has room for.
    void arrange();

    const EditedWatch &m_watch;
    EditedWatch::Found m_putAway;
    QLabel *m_what;
    QLabel *m_help;
    QPushButton *m_more, *m_away;
};

} // namespace hammerline::main_window
