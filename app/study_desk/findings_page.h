#pragma once
// What a finished study says: the sentences, the components with their intervals, and one of three charts.

#include "charts/study_pane.h"
#include "study_desk/study_findings.h"

#include <QWidget>

class QButtonGroup;
class QLabel;
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
    void saveWanted();

private:
    void fillTable(const Findings &findings);
    void choose(int question);

    QLabel *m_heading, *m_story;
    QTableWidget *m_table;
    QButtonGroup *m_question;
    charts::StudyPane *m_pane;
};

} // namespace hammerline::study_desk
