#pragma once
// The plan sheet: the least work that brings every note in, move by move, and what the piano will be like after it. A
// move that is unticked, an adjustment that is ruled out, another setup, aim or limit: the best plan under that is
// there at once. Moves are ticked off as they are done, with the time they took. The sheet computes from what it is
// handed and writes nothing; who owns it stores and prints.
//
// Where the width is scarce all stands in one column, the moves first.
//
// Keys: the space bar ticks (on a heading: all of its moves), Enter goes to the note.

#include "action/plan.h"
#include "logbook/logbook.h"
#include "paper/paper.h"
#include "plan_sheet/findings.h"
#include "plan_sheet/plan_model.h"

#include <QWidget>

#include <chrono>
#include <map>
#include <optional>
#include <vector>

class QBoxLayout;
class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QLayout;
class QPushButton;
class QTableView;
class QTextBrowser;

namespace hammerline::plan_sheet {

/// A setup that may be chosen.
struct NamedSetup {
    QString name{};
    action::Setup setup{};
};

/// A piece of work that was ticked off, and how long it took (0: nobody timed it).
struct TickedWork {
    std::string item{};
    std::chrono::seconds took{};
};

class WorkClock;

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
    /// Chooses a setup of the task's action, beside those that there are; as if it were chosen from the list.
    void chooseSetup(NamedSetup setup);
    [[nodiscard]] WorkClock &clock() { return *m_clock; }
    /// As planned now; absent where there is nothing to plan.
    [[nodiscard]] const std::optional<action::Plan> &plan() const { return m_plan; }
    /// The task with everything that was changed on the sheet.
    [[nodiscard]] std::optional<action::PlanTask> task() const;

signals:
    void planned();
    void workTicked(const std::vector<hammerline::plan_sheet::TickedWork> &work, bool done);
    void setupChosen(); ///< the user chose another setup or aim
    void setupWanted(); ///< to be looked at and changed
    void noteChosen(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note);
    void keepWanted();
    void printWanted();
    void fitWanted();
    void orderWanted();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void build();
    [[nodiscard]] QLayout *makeChoices();
    [[nodiscard]] QLayout *makeLimits();
    void addButtons(QLayout &row);
    void arrange(bool oneColumn);
    void connectParts();
    void fillSetups(std::vector<NamedSetup> setups);
    void fillAdjustments();
    void orderTheTabs();
    void fillLimits();
    void showShift();
    void takeShift();
    void tellLimits(const QString &problem);
    void tickOff(const QStringList &items, bool done);
    void fillTable();
    void replan();
    void putInOrder(action::Plan &plan) const;
    void tell();
    [[nodiscard]] QString headlineText() const;
    [[nodiscard]] QString asideText() const;
    [[nodiscard]] QStringList hourLines() const;

    struct Shift {
        units::Amount low{}, target{}, high{};
    };
    using Shifts = std::map<catalogue::Quantity, Shift>;
    [[nodiscard]] tolerance::ToleranceSet shifted(const Shifts &shifts) const;
    std::optional<action::PlanTask> m_task;
    std::optional<action::Plan> m_plan;
    std::vector<NamedSetup> m_setups;
    std::vector<logbook::WorkDone> m_done;
    Shifts m_shifts; ///< those that can stand
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
    QDoubleSpinBox *m_target;
    QDoubleSpinBox *m_upper;
    QLabel *m_limitWords;
    WorkClock *m_clock;
    QWidget *m_tools;
    QBoxLayout *m_middle; ///< the moves and what is said beside or below them
    QLayout *m_adjustments;
};

/// What the readings will be if all of the plan is done and the model holds: for the strip and the charts.
[[nodiscard]] readings::ValueTable valuesAfter(const action::Plan &plan, readings::ValueTable values);

/// For the bench: the work in order with boxes to tick, what to fetch, what to measure again.
struct PrintInput {
    QString instrument{};
    QString pass{};
    QString issued{};
    action::Plan plan{};
    keyboard::Sections sections{};
    std::vector<logbook::WorkDone> done{};
    wording::NumberForm form{};
    paper::Size size = paper::Size::A4;
};
[[nodiscard]] QByteArray printPlan(const PrintInput &input);

} // namespace hammerline::plan_sheet
