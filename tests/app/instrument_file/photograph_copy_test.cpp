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

TEST_F(PhotographCopy, IsRefusedWhereTheEndOfTheFileIsMissingThoughMostOfThePictureIsThere)
{
    const QByteArray whole = fromCamera();
    // A preview as cameras write it, with an end mark of its own, in front of the picture.
    QByteArray preview = whole;
    preview.insert(2, segment('\xe1', QByteArray("Exif\0\0", 6) + "\xff\xd8 a preview \xff\xd9"));
    for (const QByteArray &jpeg : {whole, preview}) {
        EXPECT_TRUE(photographCopy(written("whole.jpg", jpeg)));
        EXPECT_TRUE(photographCopy(written("more.jpg", jpeg + "what some cameras add behind it")));
        const auto cut = photographCopy(written("cut.jpg", jpeg.left(jpeg.size() - 40)));
        ASSERT_FALSE(cut) << "half a photograph would be kept without a word";
        EXPECT_THAT(cut.fault().text(), HasSubstr("cut off"));
    }
}

TEST_F(PhotographCopy, IsMadeOfAPictureThatTakesMoreMemoryThanQtAllowsByItself)
{
    QImage image(6000, 6000, QImage::Format_RGB32); // 144 MB; 128 are allowed
    image.fill(Qt::darkCyan);
    for (const char *name : {"large.jpg", "large.png"}) {
        const QString path = m_folder.filePath(name);
        ASSERT_TRUE(image.save(path));
        const auto copy = photographCopy(path);
        ASSERT_TRUE(copy) << copy.fault().text();
        EXPECT_EQ(sizeOf(copy.value()).width, mostSide);
    }
}

TEST_F(PhotographCopy, ShowsWhiteWhereThePictureIsTransparentAndTakesAnyNameOfAFile)
{
    QImage image(60, 40, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    const QString path = m_folder.filePath(QString::fromUtf8("the \"front\", l'été; 50 %1.png"));
    ASSERT_TRUE(image.save(path));
    const QImage copy = QImage::fromData(photographCopy(path).value(), "JPEG");
    EXPECT_EQ(copy.pixelColor(30, 20), QColor(Qt::white));
}

} // namespace
} // namespace hammerline::instrument_file
