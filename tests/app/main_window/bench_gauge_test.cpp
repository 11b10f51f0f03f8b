// A gauge on a bad cable, at work in the window: chosen in its dialog, heard at the bench.
#include "app/main_window/window_desk.h"
#include "gauge_desk/gauge_dialog.h"
#include "main_window/bench_tools.h"
#include "support/bad_cable.h"

#include <QComboBox>
#include <QPushButton>
#include <QTableWidget>

namespace hammerline::main_window {
namespace {

using gauge_desk::GaugeState;

class BenchGauge : public WindowDesk {
protected:
    void plugIn()
    {
        settings.setValue("gauge/device", link);
        settings.setValue("gauge/wanted", true);
        window = openWindow();
        tools().gauge().setRetryInterval(20);
        awaitState(GaugeState::Waiting);
    }
    [[nodiscard]] BenchTools &tools() { return *window->findChild<BenchTools *>("benchTools"); }
    void awaitState(GaugeState state)
    {
        ASSERT_TRUE(QTest::qWaitFor([&] { return tools().gauge().state() == state; }));
        QTest::qWait(30); // a hand is slower than this
    }
    void replug()
    {
        cable.unplug();
        awaitState(GaugeState::Unplugged);
        cable.plugIn();
        awaitState(GaugeState::Waiting);
    }
    [[nodiscard]] bool awaitStored(std::size_t count)
    {
        return QTest::qWaitFor([&] { return stored() == count; }) && (QTest::qWait(5), stored() == count);
    }
    [[nodiscard]] QLineEdit *field() { return part<QLineEdit>(*window, "entryField"); }
    [[nodiscard]] QString reason() { return part<QLabel>(*window, "reason")->text(); }
    [[nodiscard]] QString gaugeState() { return part<QPushButton>(*window, "gaugeState")->text(); }

    QString link = folder.filePath("gauge");
    support::BadCable cable{link};
    std::unique_ptr<MainWindow> window;
};

TEST_F(BenchGauge, AWholePassComesThroughABadCableAndEachReadingOnce)
{
    plugIn();
    for (int note = 1; note <= 88; ++note) {
        const QByteArray line = "01A+000" + QByteArray::number(45.5 + note % 10 * 0.1, 'f', 2) + " mm\r\n";
        const auto cut = static_cast<qsizetype>(note % line.size());
        cable.say(line.left(cut));
        QTest::qWait(note % 3);
        cable.say(line.mid(cut));
        ASSERT_TRUE(awaitStored(static_cast<std::size_t>(note))) << note << ' ' << reason().toStdString();
        if (note % 11 == 0)
            cable.say(QByteArray("\x02\xff?? low battery\r\n\r\n"));
        if (note % 22 == 0) {
            cable.say("47."); // cut by the unplugging: never a reading
            replug();
        }
    }
    for (const readings::Reading &reading : shop.book.readings(shop.pass.id))
        EXPECT_DOUBLE_EQ(reading.value.inDisplay(), std::round(455 + reading.place.note.number() % 10) / 10)
            << reading.place.note.name();
}

TEST_F(BenchGauge, TheBenchSaysHowTheGaugeIs)
{
    plugIn();
    trigger(*window, "tones");
    EXPECT_TRUE(gaugeState().contains("waiting")) << gaugeState().toStdString();
    cable.say("46.1mm\n");
    ASSERT_TRUE(awaitStored(1));
    EXPECT_TRUE(gaugeState().contains("connected")) << gaugeState().toStdString();
    cable.unplug();
    awaitState(GaugeState::Unplugged);
    EXPECT_TRUE(gaugeState().contains("unplugged")) << gaugeState().toStdString();
    EXPECT_EQ(sounder.tones.back(), sounding::ToneKind::Doubt);
}

TEST_F(BenchGauge, ADoubtedReadingWaitsAndTheNextOneReplacesIt)
{
    plugIn();
    for (int note = 1; note <= 3; ++note) {
        cable.say("46.1mm\n");
        ASSERT_TRUE(awaitStored(static_cast<std::size_t>(note)));
    }
    cable.say("4.61mm\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !reason().isEmpty(); }));
    EXPECT_EQ(stored(), 3u);
    cable.say("46.2mm\n");
    EXPECT_TRUE(awaitStored(4));
    EXPECT_EQ(askedNote(*window), "C♯1");
}

TEST_F(BenchGauge, AReadingNeverTramplesOnWhatIsBeingTyped)
{
    plugIn();
    QTest::keyClicks(field(), "45.");
    cable.say("46.3mm\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return reason().contains("46.3mm"); }));
    EXPECT_EQ(field()->text(), "45.");
    QTest::keyClicks(field(), "9");
    QTest::keyClick(field(), Qt::Key_Return);
    EXPECT_EQ(stored(), 1u);
    EXPECT_EQ(field()->text(), "46.3mm");
    QTest::keyClick(field(), Qt::Key_Return);
    EXPECT_EQ(stored(), 2u);
    EXPECT_EQ(field()->text(), "");
}

TEST_F(BenchGauge, AnotherDimensionIsRefusedAndSaid)
{
    plugIn();
    cable.say("52 g\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return reason().contains("gauge"); }));
    EXPECT_EQ(stored(), 0u);
    EXPECT_EQ(field()->text(), "");
}

TEST_F(BenchGauge, TheDialogShowsWhatComesKeepsItFromTheBenchAndIsRemembered)
{
    window = openWindow();
    EXPECT_FALSE(part<QPushButton>(*window, "gaugeState")->isVisible());
    trigger(*window, "chooseGauge");
    auto *dialog = part<QDialog>(*window, "gaugeDialog");
    auto *lines = part<QTableWidget>(*dialog, "gaugeLines");
    auto *pattern = part<QLineEdit>(*dialog, "gaugePattern");
    tools().gauge().setRetryInterval(20);
    part<QComboBox>(*dialog, "gaugePort")->setEditText(link);
    emit part<QComboBox>(*dialog, "gaugePort")->lineEdit()->editingFinished();
    awaitState(GaugeState::Waiting);
    cable.say("a7 46.1\nlow battery\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return lines->rowCount() == 2; }));
    EXPECT_EQ(lines->item(1, 0)->text(), "a7 46.1");
    EXPECT_EQ(lines->item(1, 1)->text(), "46.1mm");
    EXPECT_TRUE(lines->item(0, 1)->text().startsWith("▲"));
    pattern->setText("(");
    EXPECT_FALSE(part<QPushButton>(*dialog, "gaugeConnect")->isEnabled());
    pattern->setText(R"(a(?<value>\d))");
    EXPECT_EQ(lines->item(1, 1)->text(), "7mm");
    EXPECT_EQ(stored(), 0u);
    part<QPushButton>(*dialog, "gaugeUsualPattern")->click();
    part<QPushButton>(*dialog, "gaugeConnect")->click();
    cable.say("46.2\n");
    EXPECT_TRUE(awaitStored(1));
    EXPECT_EQ(gauge_desk::GaugeChoice::from(settings).device, link);
    EXPECT_TRUE(gauge_desk::GaugeChoice::from(settings).wanted);
}

TEST_F(BenchGauge, ADialogThoughtBetterOfLeavesTheGaugeAsItWasAndDisconnectingLeavesItOff)
{
    plugIn();
    trigger(*window, "chooseGauge");
    part<QComboBox>(*window, "gaugePort")->setEditText("nothing-here");
    part<QDialog>(*window, "gaugeDialog")->reject();
    awaitState(GaugeState::Waiting);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    trigger(*window, "chooseGauge");
    part<QPushButton>(*window, "gaugeDisconnect")->click();
    EXPECT_EQ(tools().gauge().state(), GaugeState::Off);
    EXPECT_FALSE(settings.value("gauge/wanted").toBool());
}

} // namespace
} // namespace hammerline::main_window
