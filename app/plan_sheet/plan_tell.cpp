// What the plan sheet says beside its table.
#include "plan_sheet/plan_sheet.h"

#include "wording/wording.h"

#include <QCoreApplication>
#include <QLabel>
#include <QTableView>
#include <QTextBrowser>

#include <map>

namespace hammerline::plan_sheet {

namespace {

/// What the plan holds of the work that was ticked off, and how long that took by the clock.
struct Hours {
    int done = 0;
    int all = 0;
    double plannedOfDone = 0;
    double plannedOfTimed = 0;
    double taken = 0;
    int notTimed = 0;
    int ofOtherPlans = 0;
};

Hours hoursOf(const action::Plan &plan, const std::vector<logbook::WorkDone> &done)
{
    std::map<std::string, double, std::less<>> planned;
    for (const action::RailMove &rail : plan.rails)
        planned.emplace(action::workIn(action::itemOf(rail)), rail.minutes);
    for (const action::Move &move : plan.moves)
        planned.emplace(action::workIn(action::itemOf(move)), move.minutes);
    Hours hours{.all = static_cast<int>(planned.size())};
    for (const logbook::WorkDone &work : done) {
        const double took = static_cast<double>(work.took.count()) / 60;
        hours.taken += took;
        hours.notTimed += took == 0 ? 1 : 0;
        const auto found = planned.find(action::workIn(work.item));
        if (found == planned.end()) {
            ++hours.ofOtherPlans;
            continue;
        }
        ++hours.done;
        hours.plannedOfDone += found->second;
        hours.plannedOfTimed += took == 0 ? 0 : found->second;
    }
    return hours;
}

QString section(const QString &title, const QStringList &lines)
{
    if (lines.isEmpty())
        return {};
    QString html = QStringLiteral("<h4>%1</h4>").arg(title.toHtmlEscaped());
    for (const QString &line : lines)
        html += QStringLiteral("<p style=\"margin:2px 0\">%1</p>").arg(line.toHtmlEscaped());
    return html;
}

QStringList unresolvedLines(const action::Plan &plan)
{
    QStringList lines;
    for (const action::Unresolved &one : plan.unresolved)
        lines << QCoreApplication::translate("plan_sheet", "%1, %2: %3")
                     .arg(wording::nameOf(one.note), wording::shortNameOf(one.quantity), whyText(one.why));
    return lines;
}

QStringList remeasureLines(const action::Plan &plan)
{
    std::map<catalogue::Quantity, std::vector<keyboard::Note>> notes;
    for (const action::Remeasure &one : plan.remeasure)
        if (notes[one.quantity].empty() || notes[one.quantity].back() != one.note)
            notes[one.quantity].push_back(one.note);
    QStringList lines;
    for (const auto &[quantity, those] : notes)
        lines << wording::nameOf(quantity) + QStringLiteral(": ") + notesText(those);
    return lines;
}

QStringList punchingLines(const action::Plan &plan, const wording::NumberForm &form)
{
    QStringList lines;
    for (const auto &[thickness, count] : action::punchingsToFetch(plan))
        lines << QCoreApplication::translate("plan_sheet", "%1 of %2")
                     .arg(count)
                     .arg(wording::amountText(thickness, form));
    return lines;
}

bool saysTurns(const action::Plan &plan)
{
    for (const action::Move &move : plan.moves)
        if (move.turns)
            return true;
    return plan.moves.empty();
}

} // namespace

QString PlanSheet::headlineText() const
{
    if (!m_plan)
        return m_why;
    return tr("%1 of %2 measures inside now, %3 after %4 of work")
        .arg(m_plan->pairsInBefore)
        .arg(m_plan->pairs.size())
        .arg(m_plan->pairsInAfter)
        .arg(timeText(m_plan->minutes));
}

QStringList PlanSheet::hourLines() const
{
    const Hours hours = hoursOf(*m_plan, m_done);
    QStringList lines{tr("Planned: %1").arg(timeText(m_plan->minutes))};
    if (m_done.empty())
        return lines;
    lines << tr("Done: %1 of %2, planned at %3").arg(hours.done).arg(hours.all).arg(timeText(hours.plannedOfDone));
    QString taken = tr("Taken: %1").arg(timeText(hours.taken));
    if (hours.notTimed > 0)
        taken += tr(" (%1 not timed)").arg(hours.notTimed);
    lines << taken;
    const double left = m_plan->minutes - hours.plannedOfDone;
    if (hours.plannedOfTimed > 0 && left > 0)
        lines << tr("At this pace the rest takes %1").arg(timeText(left * hours.taken / hours.plannedOfTimed));
    if (hours.ofOtherPlans > 0)
        lines << tr("Ticked off before the plan was made anew: %1").arg(hours.ofOtherPlans);
    return lines;
}

QString PlanSheet::asideText() const
{
    QString html;
    html += section(tr("Hours"), hourLines());
    html += section(tr("Readings to repeat"), doubtLines(m_findings, m_form));
    html += section(tr("Stays outside"), unresolvedLines(*m_plan));
    html += section(tr("Punchings to fetch"), punchingLines(*m_plan, m_form));
    html += section(tr("Measure again afterwards"), remeasureLines(*m_plan));
    html += section(tr("One remedy for many"), patternLines(m_findings, m_form));
    html += section(tr("How this action has answered"), learnedLines(m_findings, m_form));
    if (!saysTurns(*m_plan))
        html +=
            section(tr("How far to turn"),
                    {tr("Nobody has published what a turn does on any action. Make a trial turn, measure it, and put "
                        "it into the setup (Setup…); the plan then speaks in turns.")});
    return html;
}

void PlanSheet::tell()
{
    m_headline->setText(headlineText());
    m_tools->setVisible(m_plan.has_value());
    m_table->setVisible(m_plan.has_value());
    m_aside->setVisible(m_plan.has_value());
    m_aside->setHtml(m_plan ? asideText() : QString());
}

readings::ValueTable valuesAfter(const action::Plan &plan, readings::ValueTable values)
{
    for (const action::Pair &pair : plan.pairs) {
        const auto dimension = catalogue::infoOf(pair.quantity).dimension;
        values.set(pair.quantity, pair.note, {units::Amount::fromDisplay(dimension, pair.after), 1});
    }
    return values;
}

} // namespace hammerline::plan_sheet
