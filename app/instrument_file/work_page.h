#pragma once
// The log of work, one line an entry; what departs from the original build is marked and says why.

#include "dossier/dossier.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTableWidget;

namespace hammerline::instrument_file {

class WorkPage : public QWidget {
    Q_OBJECT
public:
    explicit WorkPage(QWidget *parent = nullptr);
    void show(const dossier::Dossier &dossier);
    using QWidget::show;

signals:
    void addWanted();
    void changeWanted(const QString &uid);
    void strikeWanted(const QString &uid);

private:
    QTableWidget *m_table;
    QLabel *m_story;
    QPushButton *m_change, *m_strike;
};

} // namespace hammerline::instrument_file
