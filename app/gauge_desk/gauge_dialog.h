#pragma once
// Choosing a gauge and seeing at once what it says: below the settings, every line as it comes and what is understood
// from it. Nothing reaches the bench while the dialog is open; closing it without a choice leaves all as it was.

#include "gauge_desk/gauge_desk.h"

#include <QDialog>
#include <QList>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableWidget;

namespace hammerline::gauge_desk {

class GaugeDialog : public QDialog {
    Q_OBJECT
public:
    static constexpr int mostLines = 50;

    /// The desk outlives the dialog, which deletes itself when it is closed.
    explicit GaugeDialog(GaugeDesk &desk, QWidget *parent = nullptr);

    ~GaugeDialog() override;

    void done(int result) override;

private:
    void fillPorts();
    void addLineRows(QFormLayout *form);
    void addPatternRows(QFormLayout *form);
    void makePreview();
    void makeFoot();
    [[nodiscard]] GaugeChoice chosen() const;
    void tryOut();
    void follow();
    void addLine(const QByteArray &line);
    void showLines();
    void finish(bool wanted);
    void hearNoMore();

    GaugeDesk &m_desk;
    QComboBox *m_port;
    QComboBox *m_speed;
    QComboBox *m_frame;
    QLineEdit *m_pattern;
    QComboBox *m_unit;
    QLabel *m_fault;
    QLabel *m_state;
    QTableWidget *m_lines;
    QPushButton *m_connect = nullptr;
    QList<QByteArray> m_heard; ///< newest first
};

} // namespace hammerline::gauge_desk
