#pragma once
// The moves of a plan as a table, as one walks the action: the rails, then a heading for each adjustment and section
// with its notes under it, then what was ruled out. Two columns can be ticked: whether a move may be used, and whether
// it is done. The tick of a heading is that of all its moves.

#include "action/plan.h"
#include "plan_sheet/plan_words.h"

#include <QAbstractTableModel>
#include <QStringList>

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

    void setPlan(const action::Plan &plan, const action::Forbidden &forbidden, const keyboard::Sections &sections,
                 const wording::NumberForm &form);
    void setDone(const std::set<std::string> &items);
    /// Where a row leads; absent for a rail or a heading.
    [[nodiscard]] std::optional<std::pair<catalogue::Quantity, keyboard::Note>> pairAt(int row) const;
    [[nodiscard]] bool isHeading(int row) const { return m_entries[static_cast<std::size_t>(row)].heading; }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

signals:
    void moveAllowed(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note, bool allowed);
    void railAllowed(const QString &rail, bool allowed);
    /// Only what changes: of a heading, the moves that were not ticked yet, or all of them.
    void workTicked(const QStringList &items, bool done);

private:
    struct Entry {
        std::string item{};
        std::string rail{}; ///< id; empty for a move on a note
        catalogue::Quantity adjust{};
        keyboard::Note note{};
        QString name{}, where{}, by{}, how{};
        double minutes = 0;
        bool allowed = true;
        bool heading = false;
    };
    void addHeading(const QString &text, double minutes);
    void addRails(const action::Plan &plan);
    void addMoves(const action::Plan &plan, const keyboard::Sections &sections);
    [[nodiscard]] QString textOf(const Entry &entry, int column) const;
    [[nodiscard]] bool ticks(int row, int column) const;
    [[nodiscard]] bool isDone(const Entry &entry) const;
    [[nodiscard]] std::vector<const Entry *> under(int heading) const;
    [[nodiscard]] Qt::CheckState doneState(int row) const;
    void tickDone(int row, bool done);
    void allow(const Entry &entry, bool allowed);

    std::vector<Entry> m_entries;
    std::set<std::string> m_done;
    wording::NumberForm m_form;
};

} // namespace hammerline::plan_sheet
