#include "wording/plain_name.h"

#include <gtest/gtest.h>

namespace hammerline::wording {
namespace {

TEST(PlainName, HoldsNothingThatAFileSystemRefuses)
{
    EXPECT_EQ(plainName("Rule 3"), "rule-3");
    EXPECT_EQ(plainName("a/b\\c\"d'e:*?<>|\n\tf"), "a-b-c-d-e-f");
    EXPECT_EQ(plainName(QString::fromUtf8("Fl\u00fcgel No. 3")), QString::fromUtf8("fl\u00fcgel-no-3"));
    EXPECT_EQ(plainName("../../etc"), "-etc");
    EXPECT_EQ(plainName(QString(1, QChar(0))), "-");
}

TEST(PlainName, ALongOneIsCutBehindAWholeLetter)
{
    EXPECT_EQ(plainName(QString(10'000, 'n')), QString(90, 'n'));
    const QString far = QString::fromUtf8("\U00020000"); // a letter of four bytes
    EXPECT_EQ(plainName(far.repeated(10'000)), far.repeated(22));
    EXPECT_LE(plainName(QString::fromUtf8("e\u0301").repeated(5'000)).toUtf8().size(), 90);
    EXPECT_TRUE(plainName(QString::fromUtf8("e\u0301").repeated(5'000)).endsWith(QChar(0x301)));
}

} // namespace
} // namespace hammerline::wording
