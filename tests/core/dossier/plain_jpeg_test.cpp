#include "dossier/plain_jpeg.h"

#include "support/small_jpeg.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::dossier {
namespace {

using support::segment;
using support::smallJpeg;
using testing::HasSubstr;

std::string problemOf(const std::string &jpeg)
{
    const auto size = sizeOfPicture(jpeg);
    return size ? "none" : size.fault().problem;
}

TEST(Picture, IsMeasuredByItsOwnHeader)
{
    const auto size = sizeOfPicture(smallJpeg(640, 480)).value();
    EXPECT_EQ(size.width, 640);
    EXPECT_EQ(size.height, 480);
}

TEST(Picture, MayCarryAColourProfile)
{
    EXPECT_EQ(problemOf(smallJpeg(8, 8, segment(0xe2, "ICC_PROFILE"))), "none");
}

TEST(Picture, IsRefusedWithCameraDataOrWordsInIt)
{
    EXPECT_THAT(problemOf(smallJpeg(8, 8, segment(0xe1, "Exif\0\0II*"))), HasSubstr("camera data"));
    EXPECT_THAT(problemOf(smallJpeg(8, 8, segment(0xe1, "http://ns.adobe.com/xap/1.0/"))), HasSubstr("camera data"));
    EXPECT_THAT(problemOf(smallJpeg(8, 8, segment(0xed, "Photoshop 3.0"))), HasSubstr("camera data"));
    EXPECT_THAT(problemOf(smallJpeg(8, 8, segment(0xfe, "taken at home"))), HasSubstr("camera data"));
}

TEST(Picture, IsRefusedWithBytesAfterItsEnd)
{
    EXPECT_THAT(problemOf(smallJpeg(8, 8) + "51.5 N"), HasSubstr("after its end"));
}

TEST(Picture, IsRefusedWhereverItIsCutOff)
{
    const std::string whole = smallJpeg(8, 8);
    for (std::size_t kept = 0; kept < whole.size(); ++kept)
        EXPECT_NE(problemOf(whole.substr(0, kept)), "none") << kept;
}

TEST(Picture, IsRefusedWhereItIsNoJpeg)
{
    EXPECT_THAT(problemOf("\x89PNG\r\n"), HasSubstr("no JPEG"));
    EXPECT_THAT(problemOf(""), HasSubstr("no JPEG"));
}

TEST(Picture, IsRefusedAboveFourMebibytes)
{
    EXPECT_THAT(problemOf(std::string(mostPictureBytes + 1, 'x')), HasSubstr("4 MiB"));
}

} // namespace
} // namespace hammerline::dossier
