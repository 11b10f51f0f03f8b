#pragma once
// Text laid out once, where the paper is known, and painted later: lines broken to a width, measured without hinting,
// so that what was measured is what stands on the page. All measures are points (1/72 in).

#include <QFont>
#include <QPointF>
#include <QString>

#include <utility>
#include <vector>

class QPainter;

namespace hammerline::paper {

struct TextStyle {
    int size = 9; ///< points
    bool bold = false;
    int grey = 0;          ///< 0 black to 255 white: paper is black alone
    double leading = 1.35; ///< from baseline to baseline, in sizes
};

/// The one family of the record, embedded in every file.
[[nodiscard]] QFont fontOf(const TextStyle &style);
[[nodiscard]] double widthOf(const QString &text, const TextStyle &style);
/// One line with an ellipsis where it is wider than `width`.
[[nodiscard]] QString elided(const QString &text, const TextStyle &style, double width);

/// What no font at hand can draw stands as U+FFFD: a page built to PDF/A points at no missing glyph.
[[nodiscard]] QString drawable(const QString &text);

/// How much of a text of this height stands before the break where a page has `room` left, in lines of height `step`:
/// at least three lines, and two behind the break. 0: it goes to the next page whole, as anything short does.
[[nodiscard]] double heightBeforeBreak(double height, double step, double room);
/// The least room that a text of this height asks for where it may break so.
[[nodiscard]] double leastBeforeBreak(double height, double step);

class TextBlock {
public:
    TextBlock() = default;
    /// Breaks at blanks and at '\n'; a word wider than `width` is broken inside. What is not drawable is replaced.
    TextBlock(const QString &text, const TextStyle &style, double width, Qt::Alignment alignment = Qt::AlignLeft);

    [[nodiscard]] double height() const { return m_height; }
    /// The lines that fit into `height`, and the rest.
    [[nodiscard]] std::pair<TextBlock, TextBlock> split(double height) const;
    /// Baseline of the first line, below the block's top.
    [[nodiscard]] double firstBaseline() const;
    void paint(QPainter &painter, QPointF topLeft) const;

private:
    struct Line {
        QString text;
        QPointF baseline;
    };
    void breakParagraph(const QString &paragraph, double width, Qt::Alignment alignment);

    TextStyle m_style;
    std::vector<Line> m_lines;
    double m_height = 0;
};

} // namespace hammerline::paper
