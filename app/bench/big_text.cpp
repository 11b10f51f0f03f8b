#include "bench/big_text.h"

#include <QFontMetricsF>
#include <QKeyEvent>
#include <QPainter>
#include <QScreen>

#include <algorithm>
#include <cmath>

namespace hammerline::bench {

namespace {

constexpr double capsFromTwoMetresMm = 12;
constexpr double mmPerInch = 25.4;
constexpr double smallestShare = 0.3; ///< of the full size, before text may be cut
constexpr double lowestShare = 0.45;  ///< of the full height that a layout may leave
constexpr int fieldFrame = 10;
constexpr int typedDigits = 9; ///< what the field is wide enough for

double pixelsPerMm(const QWidget &widget)
{
    const QScreen *screen = widget.screen();
    const double dpi = screen ? screen->physicalDotsPerInch() : 0;
    return dpi < 70 || dpi > 250 ? 0 : dpi / mmPerInch;
}

QFont usualFont(wording::TextSize size)
{
    QFont font = wording::font(size);
    font.setPointSizeF(static_cast<double>(size));
    return font;
}

} // namespace

QFont readOutFont(const QWidget &widget)
{
    QFont font = usualFont(wording::TextSize::ReadOut);
    const double wanted = capsFromTwoMetresMm * pixelsPerMm(widget);
    const double caps = QFontMetricsF(font).capHeight();
    if (caps > 0 && caps < wanted)
        font.setPointSizeF(font.pointSizeF() * wanted / caps);
    return font;
}

BigText::BigText(wording::TextSize size, QWidget *parent) : QWidget(parent), m_size(size)
{
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
}

void BigText::setText(const QString &text)
{
    if (text == m_text)
        return;
    m_text = text;
    setAccessibleName(text);
    updateGeometry();
    update();
}

void BigText::setInk(const QColor &ink)
{
    m_ink = ink;
    update();
}

void BigText::setWidest(const QString &widest)
{
    m_widest = widest;
    updateGeometry();
}

QFont BigText::fullFont() const
{
    return m_size == wording::TextSize::ReadOut ? readOutFont(*this) : usualFont(m_size);
}

QSize BigText::sizeHint() const
{
    const QFontMetricsF metrics(fullFont());
    const double width = std::max(metrics.horizontalAdvance(m_text), metrics.horizontalAdvance(m_widest));
    return {static_cast<int>(std::ceil(width)) + 2, static_cast<int>(std::ceil(metrics.height()))};
}

QSize BigText::minimumSizeHint() const
{
    const QSize full = sizeHint();
    return {static_cast<int>(full.width() * smallestShare), static_cast<int>(full.height() * lowestShare)};
}

void BigText::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    QFont font = fullFont();
    const QFontMetricsF metrics(font);
    const double byWidth = (width() - 1) / std::max(1.0, metrics.horizontalAdvance(m_text));
    const double byHeight = height() / metrics.height();
    const double share = std::clamp(std::min(byWidth, byHeight), smallestShare, 1.0);
    font.setPointSizeF(font.pointSizeF() * share);
    painter.setFont(font);
    painter.setPen(m_ink.isValid() ? m_ink : palette().color(QPalette::WindowText));
    painter.drawText(rect(), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, m_text);
}

BigField::BigField(QWidget *parent) : QLineEdit(parent)
{
    setFont(readOutFont(*this));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

int BigField::fullHeight() const
{
    return static_cast<int>(std::ceil(QFontMetricsF(readOutFont(*this)).height())) + fieldFrame;
}

QSize BigField::sizeHint() const
{
    return {typedDigits * QFontMetrics(readOutFont(*this)).averageCharWidth(), fullHeight()};
}

QSize BigField::minimumSizeHint() const
{
    return {sizeHint().width() / 2, static_cast<int>(fullHeight() * lowestShare)};
}

bool BigField::event(QEvent *event)
{
    if (event->type() == QEvent::ShortcutOverride && text().isEmpty() &&
        static_cast<QKeyEvent *>(event)->modifiers().testFlag(Qt::ControlModifier)) {
        event->ignore();
        return true;
    }
    return QLineEdit::event(event);
}

void BigField::keyPressEvent(QKeyEvent *event)
{
    const bool undoes = event->matches(QKeySequence::Undo);
    if (!undoes && !event->matches(QKeySequence::Redo))
        return QLineEdit::keyPressEvent(event);
    if (undoes && !text().isEmpty()) {
        clear();
        emit textEdited({});
    }
}

void BigField::resizeEvent(QResizeEvent *event)
{
    QLineEdit::resizeEvent(event);
    QFont fitting = readOutFont(*this);
    const double share = std::clamp(static_cast<double>(height()) / fullHeight(), lowestShare, 1.0);
    fitting.setPointSizeF(fitting.pointSizeF() * share);
    if (fitting != font())
        setFont(fitting);
}

} // namespace hammerline::bench
