#pragma once
// What a finished study says: in words, with the components and their intervals, or as one of three charts.

#include "charts/study_pane.h"
#include "study_desk/study_findings.h"

#include <QWidget>

class QButtonGroup;
class QLayout;
class QLabel;
class QPushButton;
class QStackedWidget;
class QTableWidget;

namespace hammerline::study_desk {

class FindingsPage : public QWidget {
    Q_OBJECT
public:
    explicit FindingsPage(QWidget *parent = nullptr);
    void show(const Findings &findings);
    using QWidget::show;
    /// As it is shown.
    [[nodiscard]] const charts::StudyChartData &chart() const { return m_pane->data(); }

signals:
    void noteChosen(hammerline::keyboard::Note note);
    void saveWanted();
    void trialsWanted(); ///< as a file

private:
    void fillTable(const Findings &findings);
    [[nodiscard]] QLayout *makeChoices();
    void choose(int page);

    QLabel *m_heading, *m_story;
    QTableWidget *m_table;
    QButtonGroup *m_choice; ///< 0: in words; else the chart of the question one below
    QStackedWidget *m_pages;
    QPushButton *m_save, *m_saveTrials;
    charts::StudyPane *m_pane;
};

} // namespace hammerline::study_desk
