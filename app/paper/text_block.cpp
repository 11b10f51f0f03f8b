#include "paper/text_block.h"

#include "wording/palette.h"

#include <QFontMetricsF>
#include <QPaintDevice>
#include <QPainter>
#include <QTextLayout>

#include <algorithm>
#include <cmath>

namespace hammerline::paper {

namespace {

/// Stands in for the PDF while text is measured: letter spacing grows with the resolution of the device, and lines
/// measured for a screen would run over their width on paper.
class PaperAhead : public QPaintDevice {
public:
    [[nodiscard]] QPaintEngine *paintEngine() const override { return nullptr; }

protected:
    [[nodiscard]] int metric(PaintDeviceMetric metric) const override
    {
        const bool resolution =
            metric == PdmDpiX || metric == PdmDpiY || metric == PdmPhysicalDpiX || metric == PdmPhysicalDpiY;
        return resolution ? paperDpi : QPaintDevice::metric(metric);
    }

private:
    static constexpr int paperDpi = 1200; ///< as QPdfWriter has it
};

PaperAhead &paperAhead()
{
    static PaperAhead device;
    return device;
}

QFontMetricsF metricsOf(const TextStyle &style)
{
    return QFontMetricsF(fontOf(style), &paperAhead());
}

} // namespace

QFont fontOf(const TextStyle &style)
{
    // The painter is scaled to points: a point size would be scaled twice.
    return wording::paperFont(style.size, style.bold);
}

double widthOf(const QString &text, const TextStyle &style)
{
    return metricsOf(style).horizontalAdvance(text);
}

QString elided(const QString &text, const TextStyle &style, double width)
{
    return metricsOf(style).elidedText(text, Qt::ElideRight, width, Qt::TextSingleLine);
}

QString drawable(const QString &text)
{
    constexpr char32_t plain = 0x250; // Latin: every font has it
    constexpr char32_t replacement = 0xfffd;
    if (std::ranges::all_of(text, [](QChar letter) { return letter.unicode() < plain; }))
        return text;
    const QFontMetricsF face = metricsOf({});
    QString shown;
    for (const char32_t point : text.toUcs4()) {
        const bool isShown = point < plain || QChar::category(point) == QChar::Other_Format || face.inFontUcs4(point);
        shown += QString::fromUcs4(isShown ? &point : &replacement, 1);
    }
    return shown;
}

namespace {

constexpr int mostLinesUnbroken = 6;
constexpr int linesBeforeBreak = 3;
constexpr int linesBehindBreak = 2;
constexpr double aHair = 0.01; ///< sums of line heights are no whole numbers

bool mayBreak(double height, double step)
{
    return height > mostLinesUnbroken * step + aHair;
}

} // namespace

double heightBeforeBreak(double height, double step, double room)
{
    if (!mayBreak(height, step) || room < linesBeforeBreak * step)
        return 0;
    return std::min(room, height - linesBehindBreak * step) + aHair;
}

double leastBeforeBreak(double height, double step)
{
    return mayBreak(height, step) ? linesBeforeBreak * step : height;
}

TextBlock::TextBlock(const QString &text, const TextStyle &style, double width, Qt::Alignment alignment)
    : m_style(style)
{
    if (text.isEmpty())
        return;
    for (const QString &paragraph : drawable(text).split(QLatin1Char('\n')))
        breakParagraph(paragraph, width, alignment);
}

std::pair<TextBlock, TextBlock> TextBlock::split(double height) const
{
    const double step = m_style.size * m_style.leading;
    const auto lines = static_cast<std::ptrdiff_t>(std::min(std::floor(height / step), std::round(m_height / step)));
    const double taken = static_cast<double>(lines) * step;
    TextBlock first = *this;
    TextBlock rest = *this;
    first.m_lines.erase(first.m_lines.begin() + lines, first.m_lines.end());
    first.m_height = taken;
    rest.m_lines.erase(rest.m_lines.begin(), rest.m_lines.begin() + lines);
    rest.m_height = static_cast<double>(rest.m_lines.size()) * step;
    for (Line &line : rest.m_lines)
        line.baseline.ry() -= taken;
    return {first, rest};
}

double TextBlock::firstBaseline() const
{
    return m_lines.empty() ? 0 : m_lines.front().baseline.y();
}

void TextBlock::breakParagraph(const QString &paragraph, double width, Qt::Alignment alignment)
{
    const double step = m_style.size * m_style.leading;
    const QFontMetricsF metrics = metricsOf(m_style);
    QTextLayout layout(paragraph, fontOf(m_style), &paperAhead());
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
