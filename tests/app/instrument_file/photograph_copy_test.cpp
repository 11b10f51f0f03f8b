#include "instrument_file/photograph_copy.h"

#include "dossier/plain_jpeg.h"

#include <QBuffer>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::instrument_file {
namespace {

using testing::HasSubstr;

QByteArray segment(char marker, const QByteArray &content)
{
    const auto length = static_cast<quint16>(content.size() + 2);
    return QByteArray("\xff") + marker + static_cast<char>(length >> 8) + static_cast<char>(length & 0xff) + content;
}

/// A photograph 300 wide and 200 high as a camera would write it: held on its side, with a place and a comment.
QByteArray fromCamera()
{
    QImage image(300, 200, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "JPEG");
    // Exif 2.3: one directory with the orientation 6, a quarter turn; what follows stands for the place.
    const QByteArray exif("Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0\x06\0\0\0\0\0\0\0GPS 51 28 38 N", 46);
    return bytes.insert(2, segment('\xe1', exif) + segment('\xfe', "taken in the front room"));
}

class PhotographCopy : public ::testing::Test {
protected:
    QString written(const char *name, const QByteArray &bytes)
    {
        const QString path = m_folder.filePath(name);
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path;
    }
    static dossier::PictureSize sizeOf(const QByteArray &jpeg)
    {
        const auto size = dossier::sizeOfPicture({jpeg.constData(), static_cast<std::size_t>(jpeg.size())});
        EXPECT_TRUE(size) << size.fault().problem;
        return size.value();
    }

    QTemporaryDir m_folder;
};

TEST_F(PhotographCopy, HoldsNothingOfWhatTheCameraWroteBesideThePicture)
{
    const QByteArray jpeg = photographCopy(written("camera.jpg", fromCamera())).value();
    for (const char *trace : {"Exif", "GPS", "51 28", "front room"})
        EXPECT_FALSE(jpeg.contains(trace)) << trace;
    static_cast<void>(sizeOf(jpeg));
}

TEST_F(PhotographCopy, StandsAsTheCameraWasHeld)
{
    const auto size = sizeOf(photographCopy(written("camera.jpg", fromCamera())).value());
    EXPECT_EQ(size.width, 200);
    EXPECT_EQ(size.height, 300);
}

TEST_F(PhotographCopy, IsMadeSmallerOnItsLongerSide)
{
    QImage image(4000, 1000, QImage::Format_RGB32);
    image.fill(Qt::gray);
    const QString path = m_folder.filePath("large.png");
    ASSERT_TRUE(image.save(path));
    const auto size = sizeOf(photographCopy(path).value());
    EXPECT_EQ(size.width, mostSide);
    EXPECT_EQ(size.height, mostSide / 4);
}

TEST_F(PhotographCopy, IsRefusedWhereThereIsNoPicture)
{
    EXPECT_THAT(photographCopy(written("text.jpg", "not a picture")).fault().text(), HasSubstr("no picture"));
    EXPECT_FALSE(photographCopy(m_folder.filePath("missing.jpg")));
    EXPECT_FALSE(photographCopy(written("cut.jpg", fromCamera().left(300))));
}

} // namespace
} // namespace hammerline::instrument_file
