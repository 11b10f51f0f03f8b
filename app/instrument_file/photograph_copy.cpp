#include "instrument_file/photograph_copy.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QImageReader>
#include <QPainter>

namespace hammerline::instrument_file {

namespace {

constexpr qint64 mostPixels = 100'000'000;
constexpr int jpegQuality = 85;

QString tr(const char *text)
{
    return QCoreApplication::translate("photograph", text);
}

outcome::Fault fault(const QString &path, const QString &problem)
{
    return {.file = path.toStdString(), .problem = problem.toStdString()};
}

/// The pixels alone: an image read from a file carries its texts along, and would write them again.
QImage pixelsOf(const QImage &image)
{
    QImage plain(image.size(), QImage::Format_RGB32);
    plain.fill(Qt::white);
    QPainter painter(&plain);
    painter.drawImage(QPoint(0, 0),
                      QImage(image.constBits(), image.width(), image.height(), image.bytesPerLine(), image.format()));
    return plain;
}

QByteArray jpegOf(const QImage &image)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "JPEG", jpegQuality);
    return bytes;
}

} // namespace

outcome::Outcome<QByteArray> photographCopy(const QString &path)
{
    QImageReader reader(path);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true); // as the camera was held
    const QSize size = reader.size();
    if (size.isValid() && qint64{size.width()} * size.height() > mostPixels)
        return fault(path, tr("the picture has more than a hundred million pixels; make a smaller one"));
    QImage image = reader.read();
    if (image.isNull())
        return fault(path, tr("this is no picture that can be read; give a JPEG or PNG"));
    if (image.width() > mostSide || image.height() > mostSide)
        image = image.scaled(mostSide, mostSide, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    return jpegOf(pixelsOf(image.convertToFormat(QImage::Format_ARGB32)));
}

} // namespace hammerline::instrument_file
