#pragma once
// The empty start: what a logbook is, and the first thing to do. Recent logbooks are one key press away.

#include <QStringList>
#include <QWidget>

class QVBoxLayout;

namespace hammerline::main_window {

class StartPage : public QWidget {
    Q_OBJECT
public:
    explicit StartPage(QWidget *parent = nullptr);
    void setRecent(const QStringList &paths);

signals:
    void newWanted();
    void openWanted();
    void recentWanted(const QString &path);

private:
    QVBoxLayout *m_recent;
};

} // namespace hammerline::main_window
