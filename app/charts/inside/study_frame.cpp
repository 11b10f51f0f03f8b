#include "charts/inside/study_frame.h"

#include "wording/wording.h"

#include <QFontMetricsF>
#include <QPolygonF>

#include <algorithm>
#include <cmath>
#include <set>

namespace hammerline::charts {

namespace {

constexpr double wide = 1e6;

std::vector<double> ticksOf(const NiceRange &range)
{
    std::vector<double> ticks;
    const auto steps = std::lround((range.to - range.from) / range.step);
    for (long step = 0; step <= steps; ++step)
        ticks.push_back(range.from + static_cast<double>(step) * range.step);
    return ticks;
}

QPolygonF shapeOf(std::size_t corners, QPointF centre, double half, double turn)
{
    constexpr double round = 6.283185307179586;
    QPolygonF shape;
    for (std::size_t corner = 0; corner < corners; ++corner) {
        const double angle = turn + round * static_cast<double>(corner) / static_cast<double>(corners);
        shape << centre + QPointF(half * std::sin(angle), -half * std::cos(angle));
    }
    return shape;
}

} // namespace

StudyFrame::StudyFrame(QPainter &onto, const QRectF &rect, const StudyChartData &of, const ChartLook &in)
    : painter(onto),
      data(of),
      look(in),
      m_plot(rect.adjusted(look.pixelSize, look.pixelSize * 0.5, -look.pixelSize, -look.pixelSize * 0.5))
{
    painter.setRenderHint(QPainter::Antialiasing, true);
}

double StudyFrame::lineHeight() const
{
    return QFontMetricsF(look.smallFont()).height();
}

double StudyFrame::widthOf(const QString &text) const
{
    return QFontMetricsF(look.smallFont()).horizontalAdvance(text);
}

void StudyFrame::addHead()
{
    const auto line = [this](const QFont &font, const QString &text) {
        painter.setFont(font);
        painter.setPen(look.palette.ink);
        const QRectF needs = painter.boundingRect(QRectF(m_plot.left(), m_plot.top(), m_plot.width(), wide),
                                                  Qt::TextWordWrap | Qt::AlignHCenter, text);
        painter.drawText(QRectF(m_plot.left(), m_plot.top(), m_plot.width(), needs.height()),
                         Qt::TextWordWrap | Qt::AlignHCenter, text);
        m_plot.setTop(m_plot.top() + needs.height());
    };
    line(look.titleFont(),
         shortName(data.subject) + (data.subject.isEmpty() ? QString() : QStringLiteral(": ")) + titleOf(data));
    QFont plain = look.titleFont();
    plain.setBold(false);
    line(plain, answerOf(data));
    m_plot.setTop(m_plot.top() + lineHeight());
}

void StudyFrame::addLegend(const std::vector<LegendEntry> &entries)
{
    const double height = chartLegendHeight(entries, look.smallFont(), m_plot.width());
    paintChartLegend(painter, QRectF(m_plot.left(), m_plot.bottom() - height, m_plot.width(), height), entries,
                     look.smallFont(), look.palette.quiet);
    m_plot.setBottom(m_plot.bottom() - height - lineHeight() * 0.5);
}

void StudyFrame::write(const QRectF &into, int flags, const QString &text, bool quiet)
{
    painter.setFont(look.smallFont());
    painter.setPen(quiet ? look.palette.quiet : look.palette.ink);
    painter.drawText(into, flags | Qt::TextSingleLine, text);
}

void StudyFrame::writeLines(const QRectF &into, const QStringList &lines)
{
    QRectF place = into;
    for (const QString &line : lines) {
        write(place, Qt::AlignCenter | Qt::TextDontClip, line, false);
        place.translate(0, lineHeight());
    }
}

void StudyFrame::addVerticalAxis(const NiceRange &range, const QString &title)
{
    m_up = range;
    double figures = 0;
    const auto figureOf = [&](double tick) { return wording::numberText(tick, range.decimals, data.form); };
    for (const double tick : ticksOf(range))
        figures = std::max(figures, widthOf(figureOf(tick)));
    const QStringList lines = axisLines({title}, QFontMetricsF(look.smallFont()), m_plot.height());
    painter.save();
    painter.translate(m_plot.left(), m_plot.center().y());
    painter.rotate(-90);
    writeLines({-m_plot.height() / 2, 0, m_plot.height(), lineHeight()}, lines);
    painter.restore();
    keepLeft(lineHeight() * (static_cast<double>(lines.size()) + 0.5) + figures + look.pixelSize * 0.5);
    for (const double tick : ticksOf(range)) {
        painter.setPen(QPen(look.palette.faintLine, look.line() * 0.75));
        painter.drawLine(QPointF(m_plot.left(), y(tick)), QPointF(m_plot.right(), y(tick)));
    }
    const auto ticks = ticksOf(range);
    const double apart = m_plot.height() / std::max(1.0, static_cast<double>(ticks.size()) - 1);
    const auto every = static_cast<std::size_t>(std::max(1.0, std::ceil(lineHeight() / std::max(apart, 1.0))));
    for (std::size_t tick = 0; tick < ticks.size(); tick += every)
        write(QRectF(m_plot.left() - figures - look.pixelSize * 0.5, y(ticks[tick]) - lineHeight() / 2, figures,
                     lineHeight()),
              Qt::AlignRight | Qt::AlignVCenter, figureOf(ticks[tick]));
    painter.setPen(QPen(look.palette.line, look.line()));
    painter.drawLine(m_plot.topLeft(), m_plot.bottomLeft());
}

void StudyFrame::addHorizontalAxis(const NiceRange &range, const QString &title)
{
    m_across = range;
    const QStringList lines = axisLines({title}, QFontMetricsF(look.smallFont()), m_plot.width());
    keepFoot(static_cast<double>(lines.size()) + 1.6);
    writeLines({m_plot.left(), m_plot.bottom() + lineHeight() * 1.4, m_plot.width(), lineHeight()}, lines);
    for (const double tick : ticksOf(range)) {
        painter.setPen(QPen(look.palette.faintLine, look.line() * 0.75));
        painter.drawLine(QPointF(x(tick), m_plot.top()), QPointF(x(tick), m_plot.bottom()));
        write(QRectF(x(tick) - wide / 2, m_plot.bottom() + lineHeight() * 0.2, wide, lineHeight()), Qt::AlignCenter,
              wording::numberText(tick, range.decimals, data.form));
    }
    painter.setPen(QPen(look.palette.line, look.line()));
    painter.drawLine(m_plot.bottomLeft(), m_plot.bottomRight());
}

double StudyFrame::x(double value) const
{
    return m_plot.left() + m_plot.width() * (value - m_across.from) / (m_across.to - m_across.from);
}

double StudyFrame::y(double value) const
{
    return m_plot.bottom() - m_plot.height() * (value - m_up.from) / (m_up.to - m_up.from);
}

std::vector<std::string> peopleOf(const StudyChartData &data)
{
    std::set<std::string> people;
    for (const analysis::Trial &trial : data.trials)
        people.insert(trial.person);
    return {people.begin(), people.end()};
}

std::vector<keyboard::Note> notesOf(const StudyChartData &data)
{
    std::set<keyboard::Note> notes;
    for (const analysis::Trial &trial : data.trials)
        notes.insert(trial.note);
    return {notes.begin(), notes.end()};
}

std::vector<double> valuesOf(const StudyChartData &data, keyboard::Note note, const std::string &person)
{
    std::vector<double> values;
    for (const analysis::Trial &trial : data.trials)
        if (trial.note == note && trial.person == person)
            values.push_back(wording::inUnit(trial.value, data.form));
    return values;
}

double rangeOf(const std::vector<double> &values)
{
    if (values.empty())
        return 0;
    const auto [least, most] = std::ranges::minmax(values);
    return most - least;
}

double shown(double amount, const StudyChartData &data)
{
    return wording::inUnit(units::Amount::fromDisplay(catalogue::infoOf(data.quantity).dimension, amount), data.form);
}

QString unitOf(const StudyChartData &data)
{
    return wording::unitText(catalogue::infoOf(data.quantity).dimension, data.form);
}

void drawPerson(QPainter &painter, std::size_t person, QPointF centre, double size, const ChartLook &look)
{
    constexpr double eighth = 0.7853981633974483, half = 3.141592653589793;
    const std::size_t shape = person % 8;
    painter.setPen(QPen(look.palette.ink, look.line() * 1.25));
    painter.setBrush(shape % 2 == 0 ? QBrush(look.palette.ink) : QBrush(look.palette.paper));
    const double radius = size / 2;
    if (shape < 2)
        painter.drawEllipse(centre, radius * 0.8, radius * 0.8);
    else if (shape < 4)
        painter.drawPolygon(shapeOf(3, centre, radius, shape == 2 ? 0 : half));
    else if (shape < 6)
        painter.drawPolygon(shapeOf(4, centre, radius, shape == 4 ? 0 : eighth));
    else
        painter.drawPolygon(shapeOf(3, centre, radius, shape == 6 ? half : 0));
}

std::vector<LegendEntry> legendOfPeople(const StudyChartData &data, const ChartLook &look)
{
    std::vector<LegendEntry> entries;
    const auto people = peopleOf(data);
    for (std::size_t person = 0; person < people.size(); ++person)
        entries.push_back(
            {shortName(QString::fromStdString(people[person])), [person, look](QPainter &painter, const QRectF &box) {
                 drawPerson(painter, person, box.center(), look.markSize(), look);
             }});
    return entries;
}

} // namespace hammerline::charts
