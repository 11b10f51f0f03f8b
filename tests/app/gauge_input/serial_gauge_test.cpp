// A pseudo-terminal that behaves as badly as a workshop's cable.
#include "gauge_input/serial_gauge.h"
#include "support/bad_cable.h"

#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace hammerline::gauge_input {
namespace {

using support::BadCable;

class SerialGaugeTest : public ::testing::Test {
protected:
    void SetUp() override
    {
        gauge.setRetryInterval(20);
        QObject::connect(&gauge, &SerialGauge::readingArrived, &gauge,
                         [this](const GaugeReading &reading) { readings += reading.typed; });
        gauge.listen({.device = link});
        ASSERT_TRUE(QTest::qWaitFor([this] { return gauge.link() == SerialGauge::Link::Listening; }));
        QTest::qWait(30); // a hand is slower than this
    }
    [[nodiscard]] bool arrive(const QStringList &expected)
    {
        return QTest::qWaitFor([&] { return readings == expected; });
    }
    void replug()
    {
        cable.unplug();
        ASSERT_TRUE(QTest::qWaitFor([this] { return gauge.link() == SerialGauge::Link::Lost; }));
        cable.plugIn();
        ASSERT_TRUE(QTest::qWaitFor([this] { return gauge.link() == SerialGauge::Link::Listening; }));
        QTest::qWait(30);
    }

    QTemporaryDir folder;
    QString link = folder.filePath(QStringLiteral("gauge"));
    BadCable cable{link};
    SerialGauge gauge;
    QStringList readings;
};

TEST_F(SerialGaugeTest, TakesEachLineOnceHoweverItIsCutIntoPieces)
{
    for (const char *piece : {"3.", "17", "5 mm\r", "\n", "3.2", "mm\r\n3.3mm\r\n"}) {
        cable.say(piece);
        QTest::qWait(5);
    }
    EXPECT_TRUE(arrive({QStringLiteral("3.175mm"), QStringLiteral("3.2mm"), QStringLiteral("3.3mm")}))
        << readings.join(u' ').toStdString();
}

TEST_F(SerialGaugeTest, SurvivesUnpluggingWithoutLosingOrDoublingAReading)
{
    cable.say("3.1mm\n3.2mm\n");
    ASSERT_TRUE(arrive({QStringLiteral("3.1mm"), QStringLiteral("3.2mm")}));
    for (int round = 0; round < 3; ++round)
        replug();
    cable.say("3.3mm\n");
    EXPECT_TRUE(arrive({QStringLiteral("3.1mm"), QStringLiteral("3.2mm"), QStringLiteral("3.3mm")}));
}

TEST_F(SerialGaugeTest, NeverTakesALineThatUnpluggingCut)
{
    cable.say("3.1mm\n19");
    ASSERT_TRUE(arrive({QStringLiteral("3.1mm")}));
    replug();
    cable.say("9.5mm\n");
    EXPECT_TRUE(arrive({QStringLiteral("3.1mm"), QStringLiteral("9.5mm")})) << readings.join(u' ').toStdString();
}

TEST_F(SerialGaugeTest, SpinsNotWhileTheGaugeIsAway)
{
    const QSignalSpy links(&gauge, &SerialGauge::linkChanged);
    cable.unplug();
    ASSERT_TRUE(QTest::qWaitFor([this] { return gauge.link() == SerialGauge::Link::Lost; }));
    QTest::qWait(100);
    EXPECT_EQ(links.count(), 1);
    EXPECT_FALSE(gauge.trouble().isEmpty());
}

TEST_F(SerialGaugeTest, ShowsNoiseAndTakesNoneOfIt)
{
    const QSignalSpy lines(&gauge, &SerialGauge::lineArrived);
    const QSignalSpy refused(&gauge, &SerialGauge::lineRefused);
    cable.say(QByteArray("\0\xff\x02 low battery\n", 16));
    cable.say(QByteArray(2000, 'x') + "\n");
    cable.say("3.1mm\n");
    EXPECT_TRUE(arrive({QStringLiteral("3.1mm")}));
    EXPECT_EQ(lines.count(), 2);
    EXPECT_EQ(refused.count(), 1);
}

TEST_F(SerialGaugeTest, SaysWhereADeviceCannotBeOpened)
{
    gauge.listen({.device = folder.filePath(QStringLiteral("nothing-here"))});
    EXPECT_EQ(gauge.link(), SerialGauge::Link::Lost);
    EXPECT_FALSE(gauge.trouble().isEmpty());
}

} // namespace
} // namespace hammerline::gauge_input
