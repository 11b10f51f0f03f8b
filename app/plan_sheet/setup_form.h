#pragma once
// The form for an action's setup: which adjustments there are, how fine, how far, at what cost in minutes, the shelf of
// punchings, the rails; and what a turn does, which nobody publishes: make a trial turn, type the reading before and
// after, and the form works it out. Setups are files that can be taken in and saved. The form stays open, with the
// reasons, until what is entered can stand.

#include "action/action.h"
#include "outcome/outcome.h"
#include "prompts/prompts.h"
#include "wording/entry_dialog.h"
#include "wording/number_form.h"

#include <optional>

class QBoxLayout;
class QLayout;
class QComboBox;
class QLineEdit;

namespace hammerline::plan_sheet {

class AdjustmentTable;
class RailTable;

/// What one full turn does: the change of the reading over the turns made ("1/4", "-0.5", "1 1/2"; less than 0: turned
/// the other way). Refused: what is no number, no turn at all, a reading that did not change.
[[nodiscard]] outcome::Outcome<units::Amount> trialTurn(const QString &turns, const QString &before,
                                                        const QString &after, units::Dimension dimension,
                                                        units::Unit bareUnit);

class SetupForm : public wording::EntryDialog {
    Q_OBJECT
public:
    /// Starts from `known`, whose kind of action stays. `prompts` answers for the files; outlives the form.
    SetupForm(const action::Setup &known, const wording::NumberForm &form, prompts::Prompts &prompts,
              QWidget *parent = nullptr);

    /// What the fields say now.
    [[nodiscard]] outcome::Outcome<action::Setup> entered() const;

signals:
    void ready(const hammerline::action::Setup &setup);

public slots:
    void accept() override;

private:
    void build();
    [[nodiscard]] QLayout *makeHead();
    [[nodiscard]] QLayout *makeTrial();
    [[nodiscard]] QBoxLayout *makeRailButtons();
    [[nodiscard]] QBoxLayout *makeFoot();
    void show(const action::Setup &setup);
    void takeTrial();
    void load();
    void save();

    action::Setup m_known;
    wording::NumberForm m_form;
    prompts::Prompts &m_prompts;
    AdjustmentTable *m_adjustments;
    RailTable *m_rails;
    QLineEdit *m_name, *m_ratio;
    QComboBox *m_trialOf;
    QLineEdit *m_turned, *m_before, *m_after;
};

} // namespace hammerline::plan_sheet
