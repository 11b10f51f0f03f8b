#include "charts/charts.h"

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

QByteArray png(const ChartData &data, const wording::Palette &palette)
{
    QImage image(pictureSize, QImage::Format_RGB32);
    image.fill(palette.paper);
    QPainter painter(&image);
    renderChart(painter, image.rect(), data, palette, picturePixelSize);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

QByteArray svg(const ChartData &data, const wording::Palette &palette)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(pictureSize);
    generator.setViewBox(QRect(QPoint(0, 0), pictureSize));
    generator.setTitle(titleOf(data));
    generator.setDescription(answerOf(data));
    QPainter painter(&generator);
    renderChart(painter, QRectF(QPointF(0, 0), pictureSize), data, palette, picturePixelSize);
    painter.end();
    return bytes;
}

QByteArray pdf(const ChartData &data, const wording::Palette &palette)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(titleOf(data));
    writer.setPageSize(QPageSize(QPageSize::A4));
    writer.setPageOrientation(QPageLayout::Landscape);
    QPainter painter(&writer);
    const double scale = writer.resolution() / pointsPerInch;
    painter.scale(scale, scale);
    const QSizeF paper = QSizeF(writer.width(), writer.height()) / scale;
    renderChart(painter, QRectF(QPointF(0, 0), paper), data, palette, paperPixelSize);
    painter.end();
    return bytes;
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

outcome::Outcome<QString> exportChart(const ChartData &data, const QString &path, const wording::Palette &palette)
{
    const QString suffix = QFileInfo(path).suffix().toLower();
    if (suffix == QLatin1String("png"))
        write(path, png(data, palette));
    else if (suffix == QLatin1String("svg"))
        write(path, svg(data, palette));
    else if (suffix == QLatin1String("pdf"))
        write(path, pdf(data, palette));
    else if (suffix == QLatin1String("csv"))
        write(path, QByteArray::fromStdString(chartCsv(data)));
    else
        return outcome::Fault{.file = path.toStdString(),
                              .problem =
                                  "a chart is written as .png, .svg, .pdf or .csv; the name must end in one of them"};
    return path;
}

} // namespace hammerline::charts
