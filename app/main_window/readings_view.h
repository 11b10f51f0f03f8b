#pragma once
// The readings of the pass in numbers, with their summary above.

#include "main_window/reading_model.h"
#include "main_window/summary_model.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace hammerline::main_window {

class ReadingsView : public QWidget {
    Q_OBJECT
public:
    explicit ReadingsView(Workshop &workshop, QWidget *parent = nullptr);
    void setForm(const wording::NumberForm &form);

signals:
    void pairChosen(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note);

protected:
    void resizeEvent(QResizeEvent *event) override;
    void showEvent(QShowEvent *event) override;

private:
    void fill();
    void fillIfSeen();
    void fitHeights();
    void followSelection();

    Workshop &m_workshop;
    wording::NumberForm m_form;
    ReadingModel *m_readings;
    SummaryModel *m_summary;
    QTableView *m_table;
    QTableView *m_summaryTable;
    QLabel *m_empty;
};

} // namespace hammerline::main_window
