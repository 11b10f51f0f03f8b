#include "paper/text_block.h"

#include "wording/palette.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>

namespace hammerline::paper {

QFont fontOf(const TextStyle &style)
{
    // The painter is scaled to points: a point size would be scaled twice.
    return wording::paperFont(style.size, style.bold);
}

double widthOf(const QString &text, const TextStyle &style)
{
    return QFontMetricsF(fontOf(style)).horizontalAdvance(text);
}

TextBlock::TextBlock(const QString &text, const TextStyle &style, double width, Qt::Alignment alignment)
    : m_style(style)
{
    if (text.isEmpty())
        return;
    for (const QString &paragraph : text.split(QLatin1Char('\n')))
        breakParagraph(paragraph, width, alignment);
}

double TextBlock::firstBaseline() const
{
    return m_lines.empty() ? 0 : m_lines.front().baseline.y();
}

void TextBlock::breakParagraph(const QString &paragraph, double width, Qt::Alignment alignment)
{
    const double step = m_style.size * m_style.leading;
    const QFontMetricsF metrics(fontOf(m_style));
    QTextLayout layout(paragraph, fontOf(m_style));
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setUseDesignMetrics(true);
    layout.setTextOption(option);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        const QString text = paragraph.mid(line.textStart(), line.textLength()).trimmed();
        const double left = (alignment & Qt::AlignRight)     ? width - metrics.horizontalAdvance(text)
                            : (alignment & Qt::AlignHCenter) ? (width - metrics.horizontalAdvance(text)) / 2
                                                             : 0;
        // The line's body stands in the middle of its step.
        const double baseline = m_height + (step + metrics.capHeight()) / 2;
        m_lines.push_back({text, {left, baseline}});
        m_height += step;
    }
    layout.endLayout();
}

void TextBlock::paint(QPainter &painter, QPointF topLeft) const
{
    painter.setFont(fontOf(m_style));
    painter.setPen(QColor(m_style.grey, m_style.grey, m_style.grey));
    for (const Line &line : m_lines)
        painter.drawText(topLeft + line.baseline, line.text);
}

} // namespace hammerline::paper
