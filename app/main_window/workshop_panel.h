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
    /// Another pass of the instrument that a spot check is reading blind: it shows what was read before.
    void leaveCheckWanted(hammerline::readings::PassId pass);
    void takeInWanted();
    void beginPassWanted();
    void toleranceWanted();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void elideSet();
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
    [[nodiscard]] std::optional<readings::PassId> passBehind(const QTreeWidgetItem &item) const;
    void askToLeave(readings::PassId pass);
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
