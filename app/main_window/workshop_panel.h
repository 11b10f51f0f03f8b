#pragma once
// The workshop at the left: instruments, under each its passes, and what is known of the chosen one.

#include "main_window/workshop.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace hammerline::main_window {

class WorkshopPanel : public QWidget {
    Q_OBJECT
public:
    explicit WorkshopPanel(Workshop &workshop, QWidget *parent = nullptr);

signals:
    void takeInWanted();
    void beginPassWanted();
    void toleranceWanted();

private:
    void fill();
    /// Passes stand under a row from when it is first opened: a workshop may keep thousands of instruments.
    void addPasses(QTreeWidgetItem *row);
    void markChosen();
    void choose(QTreeWidgetItem *item);
    void tellDetail();
    [[nodiscard]] QString standing(const instrument::Instrument &instrument) const;

    Workshop &m_workshop;
    QTreeWidget *m_tree;
    QLabel *m_detail;
    QPushButton *m_set;
    QPushButton *m_begin;
    bool m_filling = false;
};

} // namespace hammerline::main_window
