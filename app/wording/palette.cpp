#include "wording/palette.h"

#include <QFontDatabase>
#include <QWidget>

#include <algorithm>
#include <cmath>

namespace hammerline::wording {

namespace {

const Palette lightPalette{
    .paper = QColor(0xfb, 0xfa, 0xf7),
    .ink = QColor(0x23, 0x21, 0x1e),
    .quiet = QColor(0x62, 0x5d, 0x55),
    .line = QColor(0x82, 0x7d, 0x74),
    .faintLine = QColor(0xdc, 0xd8, 0xd0),
    .sharp = QColor(0xea, 0xe7, 0xe1),
    .field = QColor(0xff, 0xff, 0xff),
    .band = QColor(0xda, 0xe6, 0xd6),
    .tooSmall = QColor(0x1f, 0x5f, 0xa8),
    .tooLarge = QColor(0xb4, 0x53, 0x0a),
    .within = QColor(0x5f, 0x70, 0x5a),
    .doubt = QColor(0x7a, 0x6a, 0x00),
};

const Palette darkPalette{
    .paper = QColor(0x1c, 0x1b, 0x1a),
    .ink = QColor(0xef, 0xec, 0xe6),
    .quiet = QColor(0xb6, 0xb1, 0xa8),
    .line = QColor(0x8f, 0x8a, 0x82),
    .faintLine = QColor(0x3a, 0x38, 0x35),
    .sharp = QColor(0x2c, 0x2a, 0x28),
    .field = QColor(0x26, 0x24, 0x23),
    .band = QColor(0x35, 0x40, 0x33),
    .tooSmall = QColor(0x7f, 0xb3, 0xf0),
    .tooLarge = QColor(0xf0, 0xa0, 0x60),
    .within = QColor(0xa9, 0xb8, 0xa3),
    .doubt = QColor(0xe0, 0xcf, 0x70),
};

const Palette blackPalette{
    .paper = Qt::white,
    .ink = Qt::black,
    .quiet = Qt::black,
    .line = QColor(0x60, 0x60, 0x60),
    .faintLine = QColor(0xc8, 0xc8, 0xc8),
    .sharp = QColor(0xf0, 0xf0, 0xf0),
    .field = Qt::white,
    .band = QColor(0xdc, 0xdc, 0xdc),
    .tooSmall = Qt::black,
    .tooLarge = Qt::black,
    .within = Qt::black,
    .doubt = Qt::black,
    .onPaper = true,
};

constexpr double darkBelow = 0.18; ///< relative luminance: the middle grey between white paper and black

/// WCAG 2.1: sRGB channel to linear light.
double linear(double channel)
{
    return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double &scaleNow()
{
    static double scale = 1;
    return scale;
}

double luminance(const QColor &colour)
{
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

} // namespace

const Palette &paletteOf(Theme theme)
{
    return theme == Theme::Light ? lightPalette : darkPalette;
}

const Palette &printPalette()
{
    return blackPalette;
}

Theme themeOf(const QPalette &palette)
{
    return luminance(palette.color(QPalette::Window)) < darkBelow ? Theme::Dark : Theme::Light;
}

const Palette &paletteFor(const QWidget &widget)
{
    return paletteOf(themeOf(widget.palette()));
}

void setTextScale(double scale)
{
    scaleNow() = std::clamp(scale, 1.0, 2.0);
}

double textScale()
{
    return scaleNow();
}

QFont font(TextSize size, bool bold)
{
    QFont face = QFontDatabase::systemFont(QFontDatabase::GeneralFont);
    face.setPointSizeF(static_cast<double>(size) * scaleNow());
    face.setBold(bold);
    return face;
}

QFont paperFont(int pixelSize, bool bold)
{
    // The least spacing that Qt's fixed point can hold: any spacing at all makes it leave ligatures out.
    constexpr double leastSpacing = 1.0 / 64;
    QFont face(QStringLiteral("DejaVu Sans"));
    face.setPixelSize(pixelSize);
    face.setBold(bold);
    face.setHintingPreference(QFont::PreferNoHinting);
    face.setLetterSpacing(QFont::AbsoluteSpacing, leastSpacing);
    return face;
}

double contrastRatio(const QColor &a, const QColor &b)
{
    const auto [darker, lighter] = std::minmax({luminance(a), luminance(b)});
    return (lighter + 0.05) / (darker + 0.05);
}

} // namespace hammerline::wording
