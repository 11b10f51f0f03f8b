// A pseudo-terminal that behaves as badly as a workshop's cable.
#include "gauge_input/serial_gauge.h"

#include <QElapsedTimer>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>
#include <pty.h>
#include <termios.h>
#include <unistd.h>

namespace hammerline::gauge_input {
namespace {

/// A gauge behind a link, so that pulling it and putting it back gives the same device name another terminal.
class BadCable {
public:
    explicit BadCable(QString link) : m_link(std::move(link)) { plugIn(); }
    ~BadCable() { unplug(); }
    BadCable(const BadCable &) = delete;
    BadCable &operator=(const BadCable &) = delete;

    void plugIn()
    {
        char name[128] = {};
        termios raw{};
        cfmakeraw(&raw);
        ASSERT_EQ(openpty(&m_master, &m_slave, name, &raw, nullptr), 0);
        QFile::remove(m_link);
        QFile::link(QString::fromLocal8Bit(name), m_link);
    }
    void unplug()
    {
        if (m_master < 0)
            return;
        QFile::remove(m_link);
        ::close(m_slave);
        ::close(m_master);
        m_master = m_slave = -1;
    }
    void say(const QByteArray &bytes) const
    {
        ASSERT_EQ(::write(m_master, bytes.constData(), static_cast<size_t>(bytes.size())), bytes.size());
    }

private:
    QString m_link;
    int m_master = -1;
    int m_slave = -1;
};

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
