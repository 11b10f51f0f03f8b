// Every value: a slot a note, in it a place a person, the takes side by side, a dash at the person's mean; behind them
// the limits of the note, where a set judges it.
#include "charts/inside/study_frame.h"

#include "wording/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace hammerline::charts {

namespace {

/// Values and limits; a limit further off than this many times what the values spread is left beyond the scale.
NiceRange rangeOfAll(const StudyChartData &data)
{
    constexpr int ticks = 6;
    constexpr double farthest = 2;
    double least = wording::inUnit(data.trials.front().value, data.form);
    double most = least;
    for (const analysis::Trial &trial : data.trials) {
        least = std::min(least, wording::inUnit(trial.value, data.form));
        most = std::max(most, wording::inUnit(trial.value, data.form));
    }
    const double reach = farthest * (most - least), lowest = least - reach, highest = most + reach;
    for (const auto &[note, limits] : data.limits) {
        if (limits.low)
            least = std::min(least, std::max(lowest, wording::inUnit(*limits.low, data.form)));
        if (limits.high)
            most = std::max(most, std::min(highest, wording::inUnit(*limits.high, data.form)));
    }
    return niceRange(least, most, ticks);
}

/// The field of one note's limits, with an edge at each that is on the scale, and its target.
void paintLimits(StudyFrame &frame, const tolerance::Limits &limits, const QRectF &slot)
{
    const auto heightOf = [&](units::Amount amount) { return frame.y(wording::inUnit(amount, frame.data.form)); };
    const auto across = [&](double at, const QPen &pen) {
        frame.painter.setPen(pen);
        if (at >= slot.top() && at <= slot.bottom())
            frame.painter.drawLine(QPointF(slot.left(), at), QPointF(slot.right(), at));
    };
    const double top = limits.high ? std::clamp(heightOf(*limits.high), slot.top(), slot.bottom()) : slot.top();
    const double bottom = limits.low ? std::clamp(heightOf(*limits.low), slot.top(), slot.bottom()) : slot.bottom();
    if (limits.low || limits.high)
        frame.painter.fillRect(QRectF(QPointF(slot.left(), top), QPointF(slot.right(), bottom)),
                               frame.look.palette.band);
    for (const auto &edge : {limits.low, limits.high})
        if (edge)
            across(heightOf(*edge), QPen(frame.look.palette.ink, frame.look.line()));
    across(heightOf(limits.target), QPen(frame.look.palette.line, frame.look.line(), Qt::DashLine));
}

QString storyOf(const StudyFrame &frame, keyboard::Note note, const std::string &person, double value)
{
    const auto dimension = catalogue::infoOf(frame.data.quantity).dimension;
    const QString story = QCoreApplication::translate("desktop_charts", "%1, %2: %3 %4")
                              .arg(wording::nameOf(note), QString::fromStdString(person),
                                   wording::numberText(value, frame.data.form.decimalsFor(dimension), frame.data.form),
                                   unitOf(frame.data));
    const auto limits = frame.data.limits.find(note);
    return limits == frame.data.limits.end() ? story
                                             : QCoreApplication::translate("desktop_charts", "%1. Set: %2.")
                                                   .arg(story, wording::limitsText(limits->second, frame.data.form));
}

void paintPerson(StudyFrame &frame, keyboard::Note note, std::size_t person, double centre, double width)
{
    const std::string name = peopleOf(frame.data)[person];
    const auto values = valuesOf(frame.data, note, name);
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
    frame.painter.setPen(QPen(frame.look.palette.line, frame.look.line() * 1.5));
    frame.painter.drawLine(QPointF(centre - width * 0.45, frame.y(mean)),
                           QPointF(centre + width * 0.45, frame.y(mean)));
    const double step = width * 0.7 / static_cast<double>(values.size());
    const double size = std::min(frame.look.markSize(), std::max(width * 0.6, frame.look.pixelSize * 0.35));
    double at = centre - step * (static_cast<double>(values.size()) - 1) / 2;
    for (const double value : values) {
        drawPerson(frame.painter, person, {at, frame.y(value)}, size, frame.look);
        frame.placed.push_back({QRectF(at - size * 0.7, frame.y(value) - size * 0.7, size * 1.4, size * 1.4), note,
                                storyOf(frame, note, name, value)});
        at += step;
    }
}

void paintSlot(StudyFrame &frame, keyboard::Note note, const QRectF &slot, bool named)
{
    if (const auto limits = frame.data.limits.find(note); limits != frame.data.limits.end())
        paintLimits(frame, limits->second, slot);
    frame.painter.setPen(QPen(frame.look.palette.faintLine, frame.look.line() * 0.75));
    frame.painter.drawLine(slot.topRight(), slot.bottomRight());
    if (named)
        frame.write(QRectF(slot.left() - slot.width(), slot.bottom() + frame.lineHeight() * 0.2, 3 * slot.width(),
                           frame.lineHeight()),
                    Qt::AlignCenter, wording::nameOf(note));
    const auto people = peopleOf(frame.data);
    const double width = slot.width() * 0.9 / static_cast<double>(people.size());
    for (std::size_t person = 0; person < people.size(); ++person)
        paintPerson(frame, note, person,
                    slot.left() + slot.width() * 0.05 + width * (static_cast<double>(person) + 0.5), width);
}

} // namespace

void paintStudyValues(StudyFrame &frame)
{
    auto legend = legendOfPeople(frame.data, frame.look);
    if (!frame.data.limits.empty())
        legend.push_back(
            legendOfBand(QCoreApplication::translate("desktop_charts", "within the limits of its note; dashed: target"),
                         frame.look));
    frame.addLegend(legend);
    frame.keepFoot(1.4);
    frame.addVerticalAxis(rangeOfAll(frame.data), QCoreApplication::translate("desktop_charts", "%1 (%2)")
                                                      .arg(wording::nameOf(frame.data.quantity), unitOf(frame.data)));
    const auto notes = notesOf(frame.data);
    const double width = frame.plot().width() / static_cast<double>(notes.size());
    const auto every =
        static_cast<std::size_t>(std::max(1.0, std::ceil(frame.widthOf(QStringLiteral("G♯4 ")) / width)));
    for (std::size_t note = 0; note < notes.size(); ++note)
        paintSlot(frame, notes[note],
                  QRectF(frame.plot().left() + width * static_cast<double>(note), frame.plot().top(), width,
                         frame.plot().height()),
                  note % every == 0);
}

} // namespace hammerline::charts
