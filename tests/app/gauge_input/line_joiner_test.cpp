#include "gauge_input/line_joiner.h"

#include <gtest/gtest.h>

namespace hammerline::gauge_input {
namespace {

TEST(LineJoiner, JoinsPiecesUntilTheLineEnds)
{
    LineJoiner joiner;
    EXPECT_TRUE(joiner.take("3.1").isEmpty());
    EXPECT_TRUE(joiner.holdsUnfinishedLine());
    EXPECT_EQ(joiner.take("75\r"), QList<QByteArray>{"3.175"});
    EXPECT_EQ(joiner.take("\n3.2\n3.3\r\n"), (QList<QByteArray>{"3.2", "3.3"}));
}

TEST(LineJoiner, NeverTakesALineThatWasCut)
{
    LineJoiner joiner;
    EXPECT_TRUE(joiner.take("3.1").isEmpty());
    joiner.cut();
    EXPECT_EQ(joiner.take("3.4\n"), QList<QByteArray>{"3.4"});
}

TEST(LineJoiner, DropsTheDistrustedLineAndNoOther)
{
    LineJoiner joiner;
    joiner.distrustNextLine();
    EXPECT_EQ(joiner.take("175\r\n3.2\r\n"), QList<QByteArray>{"3.2"});
}

TEST(LineJoiner, DropsNoiseWithoutEnd)
{
    LineJoiner joiner;
    EXPECT_TRUE(joiner.take(QByteArray(100'000, '7')).isEmpty());
    EXPECT_EQ(joiner.take("\n3.2\n"), QList<QByteArray>{"3.2"});
}

} // namespace
} // namespace hammerline::gauge_input
