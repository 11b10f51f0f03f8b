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

double minutesOf(const std::vector<logbook::WorkDone> &done)
{
    double seconds = 0;
    for (const logbook::WorkDone &work : done)
        seconds += static_cast<double>(work.took.count());
    return seconds / 60;
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

QString PlanSheet::asideText() const
{
    QString html;
    if (!m_done.empty())
        html += section(tr("Ticked off"),
                        {tr("%n piece(s) of work, %1 of %2 planned", nullptr, static_cast<int>(m_done.size()))
                             .arg(timeText(minutesOf(m_done)), timeText(m_plan->minutes))});
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
                        "it into the setup (mm_per_turn); the plan then speaks in turns.")});
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
