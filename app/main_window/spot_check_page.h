#pragma once
// The finding page of a spot check: each quantity in a line of figures; of the chosen one what the sample proves of the
// rest, how far the two people agree, and the chart of their differences. The arrow keys go from quantity to quantity.

#include "main_window/spot_check_told.h"

#include <QDialog>

class QLabel;
class QTableWidget;

namespace hammerline::charts {
class ChartPane;
}

namespace hammerline::main_window {

class SpotCheckPage : public QDialog {
    Q_OBJECT
public:
    explicit SpotCheckPage(QWidget *parent);

    void show(SpotCheckTold told);
    /// Of the chosen quantity.
    [[nodiscard]] const charts::ChartData &chart() const;

    enum Column { Quantity, ReadAgain, Out, MostOut, Mean, Limits, ColumnCount };

signals:
    void noteChosen(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note);
    void saveWanted(const hammerline::charts::ChartData &chart);

private:
    [[nodiscard]] QWidget *makeContent();
    [[nodiscard]] QLayout *makeText();
    [[nodiscard]] QWidget *makeFoot();
    void fillTable();
    void fillRow(int row, const decisions::SpotFinding &finding);
    void fitTable();
    void tellChosen();

    SpotCheckTold m_told;
    QLabel *m_heading;
    QLabel *m_origin;
    QTableWidget *m_table;
    QLabel *m_proof;
    QLabel *m_agreement;
    QLabel *m_samples; ///< what other samples would have proved
    charts::ChartPane *m_chart;
};

} // namespace hammerline::main_window
