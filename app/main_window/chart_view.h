#pragma once
// The charts of the chosen quantity: along the keyboard, or how the values spread; as found beside as left.

#include "charts/chart_pane.h"
#include "main_window/workshop.h"
#include "wording/number_form.h"

#include <QWidget>

class QButtonGroup;
class QCheckBox;
class QLabel;
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
    void rebuild();
    void rebuildIfSeen();
    void followSelection();
    [[nodiscard]] tolerance::Judgement plannedJudgement() const;

    Workshop &m_workshop;
    wording::NumberForm m_form;
    charts::ChartPane *m_pane;
    QButtonGroup *m_question;
    QCheckBox *m_withBefore;
    QCheckBox *m_withPlan;
    QLabel *m_empty;
    QStackedLayout *m_pages;
    std::optional<catalogue::Quantity> m_shown;
};

} // namespace hammerline::main_window
