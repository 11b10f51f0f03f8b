#pragma once
// The plan sheet: the least work that brings every note in, move by move, and what the piano will be like after it. A
// move that is unticked, an adjustment that is ruled out, another setup, aim or limit: the best plan under that is
// there at once. Moves are ticked off as they are done. The sheet computes from what it is handed and writes nothing;
// who owns it stores and prints.
//
// Keys: the space bar ticks, Enter goes to the note.

#include "action/plan.h"
#include "logbook/logbook.h"
#include "paper/paper.h"
#include "plan_sheet/findings.h"
#include "plan_sheet/plan_model.h"

#include <QWidget>

#include <map>
#include <optional>
#include <vector>

class QBoxLayout;
class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QTableView;
class QTextBrowser;

namespace hammerline::plan_sheet {

/// A setup that may be chosen.
struct NamedSetup {
    QString name{};
    action::Setup setup{};
};

class PlanSheet : public QWidget {
    Q_OBJECT
public:
    explicit PlanSheet(QWidget *parent = nullptr);

    /// What to plan for; absent: there is nothing to plan (`why` says what to do first). `setups` are of the task's
    /// action; the task's own setup is taken where its name is among them, else the first.
    void show(std::optional<action::PlanTask> task, std::vector<NamedSetup> setups, const wording::NumberForm &form,
              const QString &why);
    /// The order in which the work is listed; quantities that are not named come after those that are, as the trade has
    /// them. Another order than the trade's may make one move disturb an earlier one.
    void setOrder(std::vector<catalogue::Quantity> order);
    [[nodiscard]] const std::vector<catalogue::Quantity> &order() const { return m_order; }
    /// What stands beside the moves; what was learned goes into their turns.
    void setFindings(Findings findings);
    void setDone(const std::vector<logbook::WorkDone> &done);
    /// As planned now; absent where there is nothing to plan.
    [[nodiscard]] const std::optional<action::Plan> &plan() const { return m_plan; }
    /// The task with everything that was changed on the sheet.
    [[nodiscard]] std::optional<action::PlanTask> task() const;

signals:
    void planned();
    void workTicked(const QString &item, double minutes, bool done);
    void noteChosen(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note);
    void keepWanted();
    void printWanted();
    void fitWanted();
    void orderWanted();

private:
    void build();
    [[nodiscard]] QBoxLayout *makeChoices();
    [[nodiscard]] QBoxLayout *makeLimits();
    [[nodiscard]] QBoxLayout *makeButtons();
    void connectParts();
    void fillSetups(std::vector<NamedSetup> setups);
    void fillAdjustments();
    void fillLimits();
    void showShift();
    void takeShift();
    void replan();
    void putInOrder(action::Plan &plan) const;
    void tell();
    [[nodiscard]] QString headlineText() const;
    [[nodiscard]] QString asideText() const;
    [[nodiscard]] tolerance::ToleranceSet shiftedSet() const;

    struct Shift {
        units::Amount low{}, high{};
    };
    std::optional<action::PlanTask> m_task;
    std::optional<action::Plan> m_plan;
    std::vector<NamedSetup> m_setups;
    std::vector<logbook::WorkDone> m_done;
    std::map<catalogue::Quantity, Shift> m_shifts;
    Findings m_findings;
    std::vector<catalogue::Quantity> m_order;
    wording::NumberForm m_form;
    QString m_why;
    bool m_filling = false;

    PlanModel *m_model;
    QTableView *m_table;
    QLabel *m_headline;
    QTextBrowser *m_aside;
    QComboBox *m_setup;
    QComboBox *m_aim;
    QComboBox *m_limitOf;
    QDoubleSpinBox *m_lower;
    QDoubleSpinBox *m_upper;
    QWidget *m_tools;
    QBoxLayout *m_adjustments;
};

/// What the readings will be if all of the plan is done and the model holds: for the strip and the charts.
[[nodiscard]] readings::ValueTable valuesAfter(const action::Plan &plan, readings::ValueTable values);

/// For the bench: the work in order with boxes to tick, what to fetch, what to measure again.
struct PrintInput {
    QString instrument{};
    QString pass{};
    QString issued{};
    action::Plan plan{};
    std::vector<logbook::WorkDone> done{};
    wording::NumberForm form{};
    paper::Size size = paper::Size::A4;
};
[[nodiscard]] QByteArray printPlan(const PrintInput &input);

} // namespace hammerline::plan_sheet
