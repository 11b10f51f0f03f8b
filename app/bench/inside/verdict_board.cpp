#include "bench/inside/verdict_board.h"

#include "keyboard_strip/strip_model.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QPainter>

#include <algorithm>

namespace hammerline::bench {

namespace {

constexpr double shownHalfWidths = 3;

QColor inkOf(const tolerance::Verdict &verdict, const wording::Palette &colours)
{
    switch (verdict.status) {
    case tolerance::Status::Out:
        return verdict.deviation && verdict.deviation->baseCount() < 0 ? colours.tooSmall : colours.tooLarge;
    case tolerance::Status::Marginal:
        return colours.doubt;
    case tolerance::Status::In:
        return colours.within;
    case tolerance::Status::Missing:
    case tolerance::Status::Unjudged:
        break;
    }
    return colours.ink;
}

void paintMark(QPainter &painter, QPointF at, double size, double height)
{
    QPolygonF mark;
    if (height > 1)
        mark << QPointF(0, -size) << QPointF(size, size) << QPointF(-size, size);
    else if (height < -1)
        mark << QPointF(0, size) << QPointF(size, -size) << QPointF(-size, -size);
    else
        mark << QPointF(-size, -size / 3) << QPointF(size, -size / 3) << QPointF(size, size / 3)
             << QPointF(-size, size / 3);
    painter.drawPolygon(mark.translated(at));
}

QString apartText(const tolerance::TakesApart &apart, const wording::NumberForm &form)
{
    return VerdictBoard::tr("◆ The takes differ by %1, more than the gauge's uncertainty of %2. Look once more.")
        .arg(wording::amountText(apart.spread, form), wording::amountText(apart.uncertainty, form));
}

} // namespace

GaugePicture::GaugePicture(QWidget *parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
}

void GaugePicture::setVerdict(const std::optional<tolerance::Verdict> &verdict)
{
    m_verdict = verdict;
    update();
}

QSize GaugePicture::sizeHint() const
{
    return {48, 96};
}

void GaugePicture::paintEvent(QPaintEvent *)
{
    if (!m_verdict || !m_verdict->limits || !m_verdict->value)
        return;
    const auto height = keyboard_strip::heightOf(*m_verdict->value, *m_verdict->limits);
    const auto target = keyboard_strip::heightOf(m_verdict->limits->target, *m_verdict->limits);
    if (!height || !target)
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const wording::Palette &colours = wording::paletteFor(*this);
    const QRectF area = QRectF(rect()).adjusted(1, 1, -1, -1);
    const double unit = area.height() / 2 / (shownHalfWidths + 0.4);
    const double middle = area.center().y();
    painter.setPen(QPen(colours.line, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(area, 3, 3);
    painter.fillRect(QRectF(area.left() + 1, middle - unit, area.width() - 2, 2 * unit), colours.band);
    painter.setPen(QPen(colours.ink, 1));
    const double hairline = middle - *target * unit;
    painter.drawLine(QPointF(area.left() + 1, hairline), QPointF(area.right() - 1, hairline));
    const double shown = std::clamp(*height, -shownHalfWidths, shownHalfWidths);
    painter.setPen(Qt::NoPen);
    painter.setBrush(inkOf(*m_verdict, colours));
    paintMark(painter, {area.center().x(), middle - shown * unit}, 11, *height);
}

VerdictBoard::VerdictBoard(QWidget *parent)
    : QWidget(parent),
      m_gauge(new GaugePicture),
      m_note(new BigText(wording::TextSize::ReadOut)),
      m_value(new BigText(wording::TextSize::ReadOut)),
      m_change(new BigText(wording::TextSize::ReadOut)),
      m_sentence(new BigText(wording::TextSize::Large)),
      m_remark(new QLabel)
{
    m_remark->setObjectName("lastRemark");
    m_remark->setFont(wording::font(wording::TextSize::Heading));
    m_remark->setWordWrap(true);
    m_remark->hide();
    m_note->setObjectName("lastNote");
    m_value->setObjectName("lastValue");
    m_change->setObjectName("lastDeviation");
    m_sentence->setObjectName("lastVerdict");
    m_note->setWidest(QStringLiteral("C♯4"));
    auto *row = new QHBoxLayout;
    row->setSpacing(6 * wording::gridStep);
    row->addWidget(m_gauge);
    row->addWidget(m_note);
    row->addWidget(m_value);
    row->addWidget(m_change);
    row->addStretch(1);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(wording::gridStep);
    column->addLayout(row);
    column->addWidget(m_sentence);
    column->addWidget(m_remark);
}

void VerdictBoard::tell(const Entered &entered, int takes, const wording::NumberForm &form, const QString &instead)
{
    const auto &verdict = entered.verdict;
    const units::Amount value = verdict && verdict->value ? *verdict->value : entered.reading.value;
    m_gauge->setVerdict(verdict);
    m_note->setText(wording::nameOf(entered.reading.place.note));
    m_value->setText(wording::bareText(value, form));
    const QColor ink = verdict ? inkOf(*verdict, wording::paletteFor(*this)) : QColor();
    m_change->setInk(ink);
    QString change = verdict && verdict->deviation ? wording::changeText(*verdict->deviation, form) : QString();
    m_change->setText(change.section(' ', 0, 0));
    QString sentence = verdict ? wording::verdictSentence(*verdict, form) : tr("stored; no tolerance set is chosen");
    if (takes > 1)
        sentence = tr("mean of %n takes: ", nullptr, takes) + sentence;
    constexpr int mostLetters = 12;
    if (!instead.isEmpty())
        sentence = tr("stored instead of %1: %2").arg(instead.left(mostLetters), sentence);
    m_sentence->setText(sentence);
    const QString remark = entered.takesApart ? apartText(*entered.takesApart, form) : QString();
    m_remark->setText(remark);
    m_remark->setVisible(!remark.isEmpty());
    setAccessibleName(m_note->text() + ' ' + m_value->text() + ": " + sentence + ' ' + remark);
}

void VerdictBoard::say(const QString &sentence)
{
    m_gauge->setVerdict({});
    for (BigText *part : {m_note, m_value, m_change})
        part->setText({});
    m_sentence->setText(sentence);
    m_remark->hide();
    setAccessibleName(sentence);
}

} // namespace hammerline::bench
