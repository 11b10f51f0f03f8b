#pragma once
// What went wrong with the disk or the file, what is safe, what to do: a bar above the views that does not stand in the
// way of reading what is there. It stays until it is put away or the logbook answers again.

#include <QFrame>
#include <QString>

class QLabel;

namespace hammerline::main_window {

class TroubleBar : public QFrame {
    Q_OBJECT
public:
    explicit TroubleBar(QWidget *parent = nullptr);
    void tell(const QString &what, bool logbookIsOpen);

signals:
    void tryAgain();

private:
    QLabel *m_what;
    QLabel *m_safe;
};

} // namespace hammerline::main_window
