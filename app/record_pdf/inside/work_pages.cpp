// What a buyer must be told beyond readings: the work that was done, departures from the original build, the condition
// by area as it came and as it leaves, photographs side by side.

#include "paper/table.h"
#include "record_pdf/inside/dossier_words.h"
#include "record_pdf/inside/pages.h"

#include <QPainter>

#include <algorithm>

namespace hammerline::record_pdf {

namespace {

using dossier::Area;
using dossier::Condition;
using dossier::Moment;
using dossier::WorkEntry;

constexpr TextStyle tableText{8, false, 0, 1.4};
constexpr double captionGap = 4; ///< below its photograph

QString joined(const QStringList &parts)
{
    QStringList said = parts;
    said.removeAll(QString());
    return said.join(QStringLiteral(", "));
}

void setWork(Sheet &sheet, const Context &context)
{
    const auto &work = context.record.dossier.work;
    if (work.empty()) {
        sheet.paragraph(Record::tr("The log of work holds no entry."));
        return;
    }
    Table table(sheet,
                {{Record::tr("day"), 94},
                 {Record::tr("work"), 120},
                 {Record::tr("notes"), 60},
                 {Record::tr("material, remark"), 104},
                 {Record::tr("by whom, time"), 0}},
                tableText);
    for (const WorkEntry &entry : work)
        table.row({dayOf(entry, context.options.locale), workText(entry), rangeText(entry),
                   joined({fromCore(entry.material), fromCore(entry.remark)}),
                   joined({fromCore(entry.person), tookText(entry)})});
    table.end();
    sheet.skip(8);
}

void setDepartures(Sheet &sheet, const Context &context)
{
    const auto departures = context.record.dossier.departures();
    sheet.heading(Record::tr("Departures from the original build"));
    if (departures.empty()) {
        sheet.paragraph(Record::tr("None is recorded."));
        return;
    }
    Table table(sheet, {{Record::tr("work"), 150}, {Record::tr("notes"), 90}, {Record::tr("why"), 0}}, tableText);
    for (const WorkEntry &entry : departures)
        table.row({workText(entry), rangeText(entry), fromCore(entry.why)}, {true});
    table.end();
    sheet.skip(8);
}

QString conditionText(const dossier::Conditions &conditions, Moment moment, Area area)
{
    const auto found = conditions.find({moment, area});
    if (found == conditions.end())
        return QStringLiteral("\u2013");
    const Condition &condition = found->second;
    QStringList parts;
    if (condition.grade)
        parts << Record::tr("%1 (%2 of 5)").arg(nameOf(*condition.grade)).arg(static_cast<int>(*condition.grade));
    if (!condition.words.empty())
        parts << fromCore(condition.words);
    return parts.join(QStringLiteral(": "));
}

void setConditions(Sheet &sheet, const Context &context)
{
    const auto &conditions = context.record.dossier.conditions;
    if (conditions.empty())
        return;
    sheet.heading(Record::tr("Condition by area"));
    const double width = (sheet.body().width() - 94) / 2;
    Table table(sheet, {{QString(), 94}, {nameOf(Moment::AsReceived), width}, {nameOf(Moment::AsItLeaves), width}},
                tableText);
    for (int i = 0; i < dossier::areas; ++i) {
        const auto area = static_cast<Area>(i);
        const bool said =
            conditions.contains({Moment::AsReceived, area}) || conditions.contains({Moment::AsItLeaves, area});
        if (said)
            table.row({nameOf(area), conditionText(conditions, Moment::AsReceived, area),
                       conditionText(conditions, Moment::AsItLeaves, area)},
                      {true});
    }
    table.end({Record::tr("By the workshop's eye on the day, on five steps from unserviceable (1) to as new (5).")});
}

QString captionOf(const dossier::Photograph &photograph)
{
    return joined({nameOf(photograph.moment), fromCore(photograph.view), fromCore(photograph.caption)});
}

/// Null: nothing stands there.
TextBlock captionBlock(const dossier::Photograph *photograph, double width)
{
    return photograph ? TextBlock(captionOf(*photograph), quietText, width) : TextBlock();
}

void setPhotograph(Sheet &sheet, const Context &context, const dossier::Photograph *photograph, const QRectF &place)
{
    if (photograph == nullptr)
        return;
    sheet.later([picture = pictureOf(context.record, *photograph), place](QPainter &painter) {
        paintPicture(painter, place, picture);
    });
}

/// Both below their photographs; what is longer than the page goes on behind the break.
void setCaptions(Sheet &sheet, TextBlock left, TextBlock right, double rightAt)
{
    const auto set = [&](const TextBlock &block, double x) {
        sheet.later(
            [block, at = QPointF(sheet.body().left() + x, sheet.y())](QPainter &painter) { block.paint(painter, at); });
    };
    while (std::max(left.height(), right.height()) > 0) {
        auto [leftHere, leftRest] = left.split(sheet.room());
        auto [rightHere, rightRest] = right.split(sheet.room());
        set(leftHere, 0);
        set(rightHere, rightAt);
        sheet.skip(std::max(leftHere.height(), rightHere.height()));
        left = std::move(leftRest);
        right = std::move(rightRest);
        if (std::max(left.height(), right.height()) > 0)
            sheet.newPage();
    }
}

void setPhotographs(Sheet &sheet, const Context &context)
{
    const auto pairs = dossier::pairsOf(context.record.dossier.photographs);
    if (pairs.empty())
        return;
    constexpr double gap = 12;
    const double width = (sheet.body().width() - gap) / 2;
    const double height = width * 0.75;
    sheet.needRoom(height + 70); // the heading stands over a picture
    sheet.heading(Record::tr("Photographs"));
    for (const dossier::PhotographPair &pair : pairs) {
        const TextBlock received = captionBlock(pair.received, width);
        const TextBlock leaving = captionBlock(pair.leaving, width);
        sheet.needRoom(
            height + captionGap +
            paper::leastBeforeBreak(std::max(received.height(), leaving.height()), quietText.size * quietText.leading));
        const QRectF left(sheet.body().left(), sheet.y(), width, height);
        setPhotograph(sheet, context, pair.received, left);
        setPhotograph(sheet, context, pair.leaving, left.translated(width + gap, 0));
        sheet.skip(height + captionGap);
        setCaptions(sheet, received, leaving, width + gap);
        sheet.skip(10);
    }
}

} // namespace

void setWorkDone(Sheet &sheet, const Context &context)
{
    sheet.chapterHere(Record::tr("What was done"), roomOfAShortStart);
    setWork(sheet, context);
    setDepartures(sheet, context);
    setConditions(sheet, context);
    setPhotographs(sheet, context);
}

} // namespace hammerline::record_pdf
