#include "charts/bars.h"
#include "charts/charts.h"
#include "charts/inside/picture_export.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFileInfo>
#include <QImage>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QSvgGenerator>

namespace hammerline::charts {

namespace {

constexpr QSize pictureSize(1600, 900);
constexpr int picturePixelSize = 18;
constexpr int paperPixelSize = 9; ///< points
constexpr double pointsPerInch = 72;

QByteArray png(const Picture &picture, const wording::Palette &palette)
{
    QImage image(pictureSize, QImage::Format_RGB32);
    image.fill(palette.paper);
    QPainter painter(&image);
    picture.render(painter, image.rect(), palette, picturePixelSize);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

/// XML has no place for control characters, not even as references (XML 1.0, 2.2), and a name may hold some.
QByteArray fitForXml(QByteArray bytes)
{
    for (char &byte : bytes)
        if (static_cast<unsigned char>(byte) < 0x20 && byte != '\t' && byte != '\n' && byte != '\r')
            byte = '?';
    return bytes.replace("\xEF\xBF\xBE", "?").replace("\xEF\xBF\xBF", "?");
}

QByteArray svg(const Picture &picture, const wording::Palette &palette)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(pictureSize);
    generator.setViewBox(QRect(QPoint(0, 0), pictureSize));
    generator.setTitle(picture.title);
    generator.setDescription(picture.description);
    QPainter painter(&generator);
    picture.render(painter, QRectF(QPointF(0, 0), pictureSize), palette, picturePixelSize);
    painter.end();
    return fitForXml(std::move(bytes));
}

QByteArray pdf(const Picture &picture)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(picture.title);
    writer.setPageSize(QPageSize(QPageSize::A4));
    writer.setPageOrientation(QPageLayout::Landscape);
    QPainter painter(&writer);
    const double scale = writer.resolution() / pointsPerInch;
    painter.scale(scale, scale);
    const QSizeF paper = QSizeF(writer.width(), writer.height()) / scale;
    picture.render(painter, QRectF(QPointF(0, 0), paper), wording::printPalette(), paperPixelSize);
    painter.end();
    return bytes;
}

/// What is saved ends on paper and in letters: never white on black, whatever the screen's theme is.
const wording::Palette &onPaper(const wording::Palette &shown)
{
    const bool isDark = shown.paper.lightness() < shown.ink.lightness();
    return isDark ? wording::paletteOf(wording::Theme::Light) : shown;
}

void write(const QString &path, const QByteArray &bytes)
{
    QSaveFile file(path);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
    if (!written)
        throw outcome::BrokenWorld(QCoreApplication::translate(
                                       "charts", "The chart could not be written to %1: %2. Nothing was changed there; "
                                                 "choose another folder or make room and try again.")
                                       .arg(path, file.errorString())
                                       .toStdString());
}

} // namespace

outcome::Outcome<QString> exportPicture(const Picture &picture, const QString &path, const wording::Palette &palette)
{
    const QString suffix = QFileInfo(path).suffix().toLower();
    if (suffix == QLatin1String("png"))
        write(path, png(picture, onPaper(palette)));
    else if (suffix == QLatin1String("svg"))
        write(path, svg(picture, onPaper(palette)));
    else if (suffix == QLatin1String("pdf"))
        write(path, pdf(picture));
    else if (suffix == QLatin1String("csv"))
        write(path, QByteArray::fromStdString(picture.csv()));
    else
        return outcome::Fault{.file = path.toStdString(),
                              .problem =
                                  "a chart is written as .png, .svg, .pdf or .csv; the name must end in one of them"};
    return path;
}

outcome::Outcome<QString> exportChart(const ChartData &data, const QString &path, const wording::Palette &palette)
{
    return exportPicture({.title = titleOf(data),
                          .description = answerOf(data),
                          .render = [&](QPainter &painter, const QRectF &rect, const wording::Palette &ink,
                                        int pixelSize) { renderChart(painter, rect, data, ink, pixelSize); },
                          .csv = [&] { return chartCsv(data); }},
                         path, palette);
}

outcome::Outcome<QString> exportBars(const BarsData &data, const QString &path, const wording::Palette &palette)
{
    return exportPicture({.title = data.title,
                          .description = data.answer,
                          .render = [&](QPainter &painter, const QRectF &rect, const wording::Palette &ink,
                                        int pixelSize) { renderBars(painter, rect, data, ink, pixelSize); },
                          .csv = [&] { return data.csv; }},
                         path, palette);
}

} // namespace hammerline::charts
