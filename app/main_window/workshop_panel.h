#pragma once
// The workshop at the left: instruments, under each its passes, and what is known of the chosen one. What was delivered
// stands folded away below the rest.

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
    /// Thousands may have been delivered: their rows are made when somebody looks for them.
    void addDelivered(int count, bool unfolded);
    void unfold(QTreeWidgetItem *row);
    /// Null: the instrument is not in the list.
    [[nodiscard]] QTreeWidgetItem *rowOf(const instrument::Instrument &instrument);
    /// Passes stand under a row from when it is first opened.
    void addPasses(QTreeWidgetItem *row);
    void markChosen();
    void choose(QTreeWidgetItem *item);
    void tellDetail();
    [[nodiscard]] QString standing(const instrument::Instrument &instrument) const;

    Workshop &m_workshop;
    QTreeWidget *m_tree;
    QTreeWidgetItem *m_delivered = nullptr; ///< null: nothing was delivered
    QLabel *m_detail;
    QPushButton *m_set;
    QPushButton *m_begin;
    bool m_filling = false;
};

} // namespace hammerline::main_window
