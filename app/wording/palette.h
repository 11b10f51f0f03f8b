#pragma once
// Colours by role, sizes of type from one scale, and the theme of the whole program.
//
// Colour never speaks alone: what a colour says, a height, a shape and a word say too. The contrasts are tested against
// WCAG 2.1 (4.5 for text, 3 for graphics).

#include <QColor>
#include <QFont>
#include <QPalette>

class QApplication;
class QWidget;

namespace hammerline::wording {

enum class Theme { Light, Dark };

struct Palette {
    QColor paper;         ///< behind everything
    QColor ink;           ///< text, the selected key
    QColor quiet;         ///< second-rank text; still 4.5 on paper
    QColor line;          ///< outlines, axes, hairlines
    QColor faintLine;     ///< separators that carry no meaning
    QColor sharp;         ///< body of a sharp key, a step off the paper
    QColor field;         ///< where something is typed
    QColor band;          ///< the tolerance band, opaque
    QColor tooSmall;      ///< out, below the target
    QColor tooLarge;      ///< out, above the target
    QColor within;        ///< in
    QColor doubt;         ///< in, but nearer to a limit than the gauge can tell
    bool onPaper = false; ///< black alone, and the type of the paper
};

[[nodiscard]] const Palette &paletteOf(Theme theme);
/// Black alone on white, greys only for fields; shapes carry the meaning.
[[nodiscard]] const Palette &printPalette();
/// The theme a widget is shown in, read from its QPalette.
[[nodiscard]] Theme themeOf(const QPalette &palette);
[[nodiscard]] const Palette &paletteFor(const QWidget &widget);

/// The one scale of type, in points.
enum class TextSize { Small = 9, Body = 11, Heading = 14, Title = 20, Large = 32, ReadOut = 72 };
/// The system's sans at a size of the scale times the text scale. Desktops ship a sans whose figures are all of one
/// width.
[[nodiscard]] QFont font(TextSize size, bool bold = false);
/// The one face of everything printed, whatever the desktop's is, so that the same record gives the same bytes
/// anywhere: without hinting, and without ligatures, which a search for "finished" would not find in a PDF.
[[nodiscard]] QFont paperFont(int pixelSize, bool bold = false);
/// All text larger by this factor, 1 to 2, for what is built from now on.
void setTextScale(double scale);
[[nodiscard]] double textScale();

/// Space comes in steps of 4 px.
inline constexpr int gridStep = 4;

/// Palette, font and the small stylesheet of the house, for every window there is and will be.
void applyTheme(QApplication &application, Theme theme);

/// Contrast ratio of two opaque colours, 1 to 21 (WCAG 2.1, "contrast ratio" and "relative luminance").
[[nodiscard]] double contrastRatio(const QColor &a, const QColor &b);

} // namespace hammerline::wording
