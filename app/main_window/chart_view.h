#pragma once
// The charts of the chosen quantity, one question at a time: along the keyboard, how the values spread, which notes
// moved, whether it drifted over all passes, whether two people agree. The chosen pass is held against another one.

#include "charts/chart_pane.h"
#include "main_window/workshop.h"
#include "wording/number_form.h"

#include <QWidget>

class QButtonGroup;
class QCheckBox;
class QComboBox;
class QLabel;
class QLayout;
class QStackedLayout;

namespace hammerline::main_window {

class ChartView : public QWidget {
    Q_OBJECT
public:
    explicit ChartView(Workshop &workshop, QWidget *parent = nullptr);
    void setForm(const wording::NumberForm &form);
    /// What the chart shows now; absent where there is no pass.
    [[nodiscard]] std::optional<charts::ChartData> data() const;

signals:
    void noteChosen(hammerline::keyboard::Note note);
    void saveWanted();

protected:
    void showEvent(QShowEvent *event) override;

private:
    QLayout *makeQuestions();
    QLayout *makeChoices();
    void fillAgainst();
    void rebuild();
    void rebuildIfSeen();
    void followSelection();
    [[nodiscard]] QString emptyText(bool ofOnePass, const std::optional<charts::ChartData> &chart) const;
    [[nodiscard]] charts::Question question() const;
    [[nodiscard]] tolerance::Judgement judged(const readings::ValueTable &values) const;
    [[nodiscard]] tolerance::Judgement plannedJudgement() const;
    void addOther(charts::ChartData &data) const;
    void addTrends(charts::ChartData &data) const;
    [[nodiscard]] std::optional<readings::Pass> against() const;
    [[nodiscard]] const readings::Pass *usualAgainst() const;
    [[nodiscard]] const readings::Pass *whoToAgreeWith() const;
    [[nodiscard]] bool sharesNotes(const readings::Pass &other) const;

    Workshop &m_workshop;
    wording::NumberForm m_form;
    charts::ChartPane *m_pane;
    QButtonGroup *m_question;
    QCheckBox *m_withBefore;
    QCheckBox *m_withPlan;
    QLabel *m_againstName;
    QComboBox *m_against;
    std::vector<readings::Pass> m_others; ///< of the instrument, with readings, spot checks too; newest first
    QLabel *m_empty;
    QStackedLayout *m_pages;
    std::optional<catalogue::Quantity> m_shown;
};

} // namespace hammerline::main_window
