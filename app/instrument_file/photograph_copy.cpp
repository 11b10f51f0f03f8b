#include "instrument_file/photograph_copy.h"

#include "exchange/exchange.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QImageReader>
#include <QPainter>

#include <algorithm>

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

/// Qt takes no picture of more than 128 megabytes unless it is told to; mostPixels are more.
class RoomForPictures {
public:
    RoomForPictures() { QImageReader::setAllocationLimit(static_cast<int>(mostPixels * 8 >> 20)); }
    RoomForPictures(const RoomForPictures &) = delete;
    RoomForPictures &operator=(const RoomForPictures &) = delete;
    ~RoomForPictures() { QImageReader::setAllocationLimit(m_before); }

private:
    int m_before = QImageReader::allocationLimit();
};

/// A JPEG that was cut off on its way from the camera: readers fill up what is missing with grey and say nothing. Its
/// end mark (ITU-T T.81, B.1.1.3) cannot stand within the lines of the picture, but a preview in front of them has one.
bool isCutOff(const QByteArray &bytes)
{
    const auto at = [&bytes](qsizetype index) { return static_cast<unsigned char>(bytes[index]); };
    constexpr unsigned char mark = 0xff, startOfScan = 0xda;
    constexpr qsizetype header = 4;
    qsizetype place = 2;
    while (place + header <= bytes.size() && at(place) == mark && at(place + 1) != startOfScan)
        place += at(place + 1) == mark ? 1 : 2 + (at(place + 2) << 8 | at(place + 3));
    return bytes.indexOf("\xff\xd9", std::min(place, bytes.size())) < 0;
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
    const auto content = exchange::readFile(path.toStdString()); // Qt would open and close whatever it was handed
    if (!content)
        return content.faults();
    QByteArray bytes = QByteArray::fromStdString(content.value());
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true); // as the camera was held
    const QSize size = reader.size();
    if (size.isValid() && qint64{size.width()} * size.height() > mostPixels)
        return fault(path, tr("the picture has more than a hundred million pixels; make a smaller one"));
    if (reader.format() == "jpeg" && isCutOff(bytes))
        return fault(path, tr("this photograph is cut off: its end is missing; copy it from the camera once more"));
    if (size.width() > mostSide || size.height() > mostSide) // many times quicker where the format can do it
        reader.setScaledSize(size.scaled(mostSide, mostSide, Qt::KeepAspectRatio).expandedTo({1, 1}));
    const RoomForPictures room;
    QImage image = reader.read();
    if (image.isNull())
        return fault(path, tr("this is no picture that can be read; give a JPEG or PNG"));
    if (image.width() > mostSide || image.height() > mostSide) // its size was not known before
        image = image.scaled(mostSide, mostSide, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    return jpegOf(pixelsOf(image.convertToFormat(QImage::Format_ARGB32)));
}

} // namespace hammerline::instrument_file
