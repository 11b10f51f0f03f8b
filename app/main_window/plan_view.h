#pragma once
// The plan of the chosen pass: hands the plan sheet what the logbook knows, and does what the sheet asks for.

#include "action/fit.h"
#include "action/learning.h"
#include "main_window/workshop.h"
#include "plan_sheet/plan_sheet.h"
#include "prompts/prompts.h"

#include <QSettings>
#include <QWidget>

namespace hammerline::main_window {

class PlanView : public QWidget {
    Q_OBJECT
public:
    PlanView(Workshop &workshop, QWidget *parent = nullptr);
    /// Who answers its questions; outlives it. Without one, printing and fitting do nothing.
    void setPrompts(prompts::Prompts *prompts) { m_prompts = prompts; }
    /// Where the order of the work is remembered; outlives it.
    void setSettings(QSettings *settings);
    void setForm(const wording::NumberForm &form);
    [[nodiscard]] plan_sheet::PlanSheet &sheet() { return *m_sheet; }

signals:
    void noteChosen(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note);
    /// Fitted targets that the user wants the instrument judged by.
    void setWanted(const hammerline::exchange::NamedSet &set);

protected:
    void showEvent(QShowEvent *event) override;

private:
    void makeAnew();
    [[nodiscard]] std::optional<action::PlanTask> freshTask(QString &why) const;
    [[nodiscard]] bool isShown(const std::optional<action::PlanTask> &task) const;
    [[nodiscard]] std::vector<action::Learned> learnedBefore() const;
    void showPlanned();
    void tick(const std::vector<plan_sheet::TickedWork> &work, bool done);
    void logTicked(const std::vector<plan_sheet::TickedWork> &work);
    void editSetup();
    void remember();
    void keep();
    void print();
    [[nodiscard]] paper::Size askPaper();
    void fit();
    void askOrder();
    // fit_targets.cpp
    [[nodiscard]] QString fitStory(const action::Fit &fit) const;
    [[nodiscard]] tolerance::ToleranceSet namedFit(const action::Fit &fit) const;
    void saveFit(const tolerance::ToleranceSet &set);

    Workshop &m_workshop;
    prompts::Prompts *m_prompts = nullptr;
    QSettings *m_settings = nullptr;
    wording::NumberForm m_form;
    plan_sheet::PlanSheet *m_sheet;
    readings::PassId m_shownPass = 0;
    std::optional<action::PlanTask> m_shown;          ///< as it was before anything was changed on the sheet
    std::optional<logbook::ActionSetup> m_shownSetup; ///< the instrument's own, when it was shown
};

} // namespace hammerline::main_window
