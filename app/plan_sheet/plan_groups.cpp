#include "plan_sheet/plan_groups.h"

#include "plan_sheet/plan_words.h"
#include "wording/wording.h"

#include <QCoreApplication>

#include <algorithm>

namespace hammerline::plan_sheet {

namespace {

std::string sectionOf(const keyboard::Sections &sections, keyboard::Note note)
{
    const auto found = std::ranges::find_if(
        sections, [note](const keyboard::Section &section) { return section.notes.contains(note); });
    return found == sections.end() ? std::string() : found->name;
}

} // namespace

std::vector<PlanGroup> groupsOf(const std::vector<action::Move> &moves, const keyboard::Sections &sections)
{
    std::vector<PlanGroup> groups;
    for (std::size_t i = 0; i < moves.size(); ++i) {
        const std::string section = sectionOf(sections, moves[i].note);
        if (groups.empty() || groups.back().adjust != moves[i].adjust || groups.back().section != section)
            groups.push_back({.adjust = moves[i].adjust, .section = section, .first = i});
        groups.back().last = i + 1;
        groups.back().minutes += moves[i].minutes;
    }
    return groups;
}

QString headingOf(const PlanGroup &group)
{
    const QString adjust = wording::nameOf(group.adjust);
    const QString where =
        group.section.empty() ? adjust : adjust + QStringLiteral(", ") + QString::fromStdString(group.section);
    const auto notes = static_cast<int>(group.last - group.first);
    const QString count = notes == 1 ? QCoreApplication::translate("plan_sheet", "1 note")
                                     : QCoreApplication::translate("plan_sheet", "%1 notes").arg(notes);
    return where + QStringLiteral(": ") + count + QStringLiteral(", ") + timeText(group.minutes);
}

QString notesOf(const action::RailMove &rail)
{
    if (!rail.notes)
        return QCoreApplication::translate("plan_sheet", "all");
    return QCoreApplication::translate("plan_sheet", "%1 to %2")
        .arg(wording::nameOf(rail.notes->first), wording::nameOf(rail.notes->last));
}

} // namespace hammerline::plan_sheet
