#pragma once
// The two tables of a setup's form: what can be adjusted on single notes, and the rails. Lengths are typed as anywhere
// (3.2, 1/64, 125mil; a bare number is mm), weights in g. A row without a step is no adjustment. Sources stay with
// what was not changed; changed figures are the shop's own and say so.

#include "action/action.h"
#include "outcome/outcome.h"

#include <QTableWidget>

#include <vector>

namespace hammerline::plan_sheet {

using Faults = std::vector<outcome::Fault>;

class AdjustmentTable : public QTableWidget {
    Q_OBJECT
public:
    enum Column { Step, Most, Minutes, PerTurn, Punchings, columnTotal };

    explicit AdjustmentTable(QWidget *parent = nullptr);
    void show(const action::Setup &setup);
    /// What cannot be read is added to `faults`, and left out of what is returned.
    [[nodiscard]] std::map<catalogue::Quantity, action::Adjustment> entered(Faults &faults) const;
    /// In the order of the rows.
    [[nodiscard]] const std::vector<catalogue::Quantity> &quantities() const { return m_quantities; }
    void setPerTurn(catalogue::Quantity quantity, units::Amount perTurn);

private:
    [[nodiscard]] action::Adjustment adjustmentAt(int row, Faults &faults) const;

    action::Setup m_known;
    std::vector<catalogue::Quantity> m_quantities;
};

class RailTable : public QTableWidget {
    Q_OBJECT
public:
    enum Column { Name, Moves, Shape, Step, Most, Minutes, First, Last, columnTotal };

    explicit RailTable(QWidget *parent = nullptr);
    void show(const action::Setup &setup);
    /// By name, as a setup has them.
    [[nodiscard]] std::vector<action::Rail> entered(Faults &faults) const;
    void addRail();
    void removeRail(); ///< the current one

private:
    void append(const action::Rail &rail);
    [[nodiscard]] action::Rail railAt(int row, Faults &faults) const;

    action::Setup m_known;
};

} // namespace hammerline::plan_sheet
