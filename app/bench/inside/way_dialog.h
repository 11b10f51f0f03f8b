#pragma once
// The way through a pass: in which order notes are asked for, and how the digits of one quantity are read.

#include "bench/typing.h"
#include "route/route.h"

#include <QDialog>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace hammerline::bench {

/// "31 is read as 3.1 mm"; empty without a scale.
[[nodiscard]] QString scaleText(const Typing &typing);

class WayDialog : public QDialog {
    Q_OBJECT
public:
    /// Typing is of `quantity`; a mass has no scale.
    WayDialog(const route::Choice &choice, const Typing &typing, catalogue::Quantity quantity,
              QWidget *parent = nullptr);

signals:
    void ready(const hammerline::route::Choice &choice, const hammerline::bench::Typing &typing);

public slots:
    /// Emits `ready` and closes where the list of notes reads; else tells why and stays.
    void accept() override;

private:
    void addOrders(QFormLayout *form);
    void addTyping(QFormLayout *form, const Typing &typing, catalogue::Quantity quantity);
    void showWhatMatters();
    [[nodiscard]] Typing typing() const;

    route::Choice m_choice;
    QComboBox *m_order, *m_samples, *m_scale;
    QLineEdit *m_notes;
    QSpinBox *m_digits, *m_from;
    QLabel *m_example, *m_fault;
};

} // namespace hammerline::bench
