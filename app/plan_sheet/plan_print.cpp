// The plan on paper, for the bench: large enough to read beside the action, a box to tick at every move.
#include "plan_sheet/plan_groups.h"
#include "plan_sheet/plan_sheet.h"

#include "wording/wording.h"

#include <QCoreApplication>
#include <QPainter>

#include <map>
#include <set>

namespace hammerline::plan_sheet {

namespace {

using paper::Sheet;
using paper::Table;

constexpr paper::TextStyle benchText{11, false, 0, 1.5};

QString tr(const char *text)
{
    return QCoreApplication::translate("plan_sheet", text);
}

std::vector<paper::Column> columns()
{
    return {
        {tr("done"), 48}, {tr("note"), 46}, {tr("by"), 110, Qt::AlignRight}, {QStringLiteral(" "), 12}, {tr("how"), 0}};
}

QString box(const std::set<std::string> &done, const std::string &item)
{
    return done.contains(std::string(action::workIn(item))) ? QStringLiteral("\u2612") : QStringLiteral("\u2610");
}

void setRails(Sheet &sheet, const PrintInput &input, const std::set<std::string> &done)
{
    if (input.plan.rails.empty())
        return;
    sheet.heading(tr("Rails first"));
    Table table(sheet, columns(), benchText);
    for (const action::RailMove &rail : input.plan.rails)
        table.row({box(done, itemOf(rail)), notesOf(rail), byText(rail, input.form), {}, nameOf(rail)});
    table.end();
}

/// One table for every group: as one walks the action.
void setMoves(Sheet &sheet, const PrintInput &input, const std::set<std::string> &done)
{
    for (const PlanGroup &group : groupsOf(input.plan.moves, input.sections)) {
        sheet.heading(headingOf(group));
        Table table(sheet, columns(), benchText);
        for (std::size_t i = group.first; i < group.last; ++i) {
            const action::Move &move = input.plan.moves[i];
            table.row({box(done, itemOf(move)),
                       wording::nameOf(move.note),
                       wording::changeText(move.by, input.form),
                       {},
                       howText(move, input.form)});
        }
        table.end();
    }
}

void setList(Sheet &sheet, const QString &title, const QStringList &lines)
{
    if (lines.isEmpty())
        return;
    sheet.heading(title);
    for (const QString &line : lines)
        sheet.paragraph(line);
}

QStringList fetched(const PrintInput &input)
{
    QStringList lines;
    for (const auto &[thickness, count] : action::punchingsToFetch(input.plan))
        lines << tr("%1 of %2").arg(count).arg(wording::amountText(thickness, input.form));
    return lines;
}

QStringList remeasured(const PrintInput &input)
{
    std::map<catalogue::Quantity, std::vector<keyboard::Note>> notes;
    for (const action::Remeasure &one : input.plan.remeasure)
        if (notes[one.quantity].empty() || notes[one.quantity].back() != one.note)
            notes[one.quantity].push_back(one.note);
    QStringList lines;
    for (const auto &[quantity, those] : notes)
        lines << wording::nameOf(quantity) + QStringLiteral(": ") + notesText(those);
    return lines;
}

QStringList unresolved(const PrintInput &input)
{
    QStringList lines;
    for (const action::Unresolved &one : input.plan.unresolved)
        lines << tr("%1, %2: %3").arg(wording::nameOf(one.note), wording::shortNameOf(one.quantity), whyText(one.why));
    return lines;
}

} // namespace

QByteArray printPlan(const PrintInput &input)
{
    std::set<std::string> done;
    for (const logbook::WorkDone &work : input.done)
        done.emplace(action::workIn(work.item));
    Sheet sheet(paper::pointsOf(input.size));
    sheet.paragraph(tr("Plan of work: %1").arg(input.instrument), paper::chapterText);
    sheet.paragraph(tr("%1. %2 of %3 measures inside now, %4 after %5 of work.")
                        .arg(input.pass)
                        .arg(input.plan.pairsInBefore)
                        .arg(input.plan.pairs.size())
                        .arg(input.plan.pairsInAfter)
                        .arg(timeText(input.plan.minutes)));
    setList(sheet, tr("Punchings to fetch"), fetched(input));
    setRails(sheet, input, done);
    setMoves(sheet, input, done);
    setList(sheet, tr("Measure again afterwards"), remeasured(input));
    setList(sheet, tr("Stays outside"), unresolved(input));
    const auto frame = [&](QPainter &painter, int page) {
        const QRectF body = sheet.body();
        const QPointF foot(body.left(), body.bottom() + 20);
        paper::TextBlock(input.issued, paper::quietText, body.width()).paint(painter, foot);
        paper::TextBlock(tr("page %1 of %2").arg(page).arg(sheet.pageCount()), paper::quietText, body.width(),
                         Qt::AlignRight)
            .paint(painter, foot);
    };
    return paper::paintedPages(sheet, input.size, frame, tr("Plan of work: %1").arg(input.instrument));
}

} // namespace hammerline::plan_sheet
