#pragma once
// The moves of a plan as a table: rails first, then note by note in the order of the work, then what was ruled out. Two
// columns can be ticked: whether a move may be used, and whether it is done.

#include "action/plan.h"
#include "plan_sheet/plan_words.h"

#include <QAbstractTableModel>

#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace hammerline::plan_sheet {

class PlanModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Use, Done, Adjust, NoteColumn, By, How, Minutes, columnTotal };

    explicit PlanModel(QObject *parent = nullptr);

    void setPlan(const action::Plan &plan, const action::Forbidden &forbidden, const wording::NumberForm &form);
    void setDone(const std::set<std::string> &items);
    /// Where a row leads; absent for a rail.
    [[nodiscard]] std::optional<std::pair<catalogue::Quantity, keyboard::Note>> pairAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

signals:
    void moveAllowed(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note, bool allowed);
    void railAllowed(const QString &rail, bool allowed);
    void workTicked(const QString &item, double minutes, bool done);

private:
    struct Entry {
        std::string item{};
        std::string rail{}; ///< id; empty for a move on a note
        catalogue::Quantity adjust{};
        keyboard::Note note{};
        QString name{}, by{}, how{};
        double minutes = 0;
        bool allowed = true;
    };
    [[nodiscard]] QString textOf(const Entry &entry, int column) const;
    void allow(const Entry &entry, bool allowed);

    std::vector<Entry> m_entries;
    std::set<std::string> m_done;
    wording::NumberForm m_form;
};

} // namespace hammerline::plan_sheet
