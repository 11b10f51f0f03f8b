// Targets fitted to the action of the chosen pass, told in one sentence, and kept as a set that says where it came
// from.
#include "analysis/analysis.h"
#include "exchange/exchange.h"
#include "exchange/tolerance_json.h"
#include "main_window/logbook_files.h"
#include "main_window/plan_view.h"
#include "wording/wording.h"

namespace hammerline::main_window {

namespace {

QString medianText(const action::Fit &fit, units::Length action::FittedNote::*part, const wording::NumberForm &form)
{
    std::vector<double> values;
    for (const action::FittedNote &note : fit.notes)
        values.push_back((note.*part).inMillimetres());
    return wording::amountText(units::Length::millimetres(analysis::medianOf(values)), form);
}

} // namespace

QString PlanView::fitStory(const action::Fit &fit) const
{
    using Note = action::FittedNote;
    std::vector<double> ratios;
    int infeasible = 0;
    for (const Note &note : fit.notes) {
        ratios.push_back(note.ratio);
        infeasible += note.feasible ? 0 : 1;
    }
    const auto text = [&](units::Length Note::*part) { return medianText(fit, part, m_form); };
    QString story =
        tr("This action's ratio is %1; with these targets aftertouch comes out at %2. These targets fit it: blow %3, "
           "let-off %4, dip %5, and aftertouch comes out at %6.")
            .arg(wording::numberText(analysis::medianOf(ratios), 1, m_form), text(&Note::aftertouchOfOldTargets),
                 text(&Note::blow), text(&Note::letOff), text(&Note::dip), text(&Note::aftertouch));
    if (infeasible > 0)
        story += ' ' +
                 tr("On %n note(s) no targets inside the limits fit; the nearest ones are taken.", nullptr, infeasible);
    return story;
}

/// With a name and remark that tell the set it was made from, the readings, and when.
tolerance::ToleranceSet PlanView::namedFit(const action::Fit &fit) const
{
    tolerance::ToleranceSet set = fit.set;
    const std::string from = m_workshop.instrument()->toleranceId;
    const readings::Pass &pass = m_workshop.pass()->pass;
    set.name += " (fitted)";
    set.remark +=
        (set.remark.empty() ? "" : " ") +
        tr("Targets of blow, let-off, dip and aftertouch fitted on %1 to the readings of “%2”, %3 %4; before that: %5.")
            .arg(QString::fromStdString(readings::isoDate(m_workshop.stamp().at)),
                 QString::fromStdString(m_workshop.instrument()->name), wording::nameOf(pass.purpose).toLower(),
                 QString::fromStdString(readings::isoDate(pass.began)), QString::fromStdString(from))
            .toStdString();
    return set;
}

void PlanView::saveFit(const tolerance::ToleranceSet &set)
{
    const auto path = m_prompts->chooseFile(
        this, {prompts::FileWish::Use::Save, tr("Save the fitted set"), tr("Tolerance sets (*.json)"),
               proposedName(*m_workshop.instrument(), tr("fitted")) + ".json", "json"});
    if (!path)
        return;
    const auto written =
        exchange::writeFile(path->toStdString(), exchange::writeToleranceSet(set), exchange::Overwrite::Yes);
    if (!written)
        m_prompts->tell(this, {tr("The set was not saved"), wording::faultsText(written.faults()), {}});
}

void PlanView::fit()
{
    const auto task = m_sheet->task();
    if (!m_prompts || !task)
        return;
    const auto fitted = action::fitTargets({task->values, task->set, task->compass, task->sections});
    if (!fitted)
        return m_prompts->tell(this, {tr("Targets can't be fitted"), wording::faultsText(fitted.faults()), {}});
    const int answer = m_prompts->ask(
        this, {tr("Fit targets to this action"),
               fitStory(fitted.value()),
               tr("Judging by fitted targets makes a new set of this instrument's own; its limits stay as they are."),
               {tr("Judge by these targets"), tr("Save them to a file…"), tr("Leave it")}});
    const tolerance::ToleranceSet set = namedFit(fitted.value());
    if (answer == 0)
        emit setWanted({set.name, exchange::writeToleranceSet(set), set});
    else if (answer == 1)
        saveFit(set);
}

} // namespace hammerline::main_window
