// What stands beside the bench: switched on in the menu, kept in the settings.
#include "app/main_window/window_desk.h"

#include <QTableView>

namespace hammerline::main_window {
namespace {

using BenchToolsDesk = WindowDesk;

TEST_F(BenchToolsDesk, TonesAndSpeechAreOffUntilChosenAndThenStay)
{
    {
        const auto window = openWindow();
        type(*window, "3.1");
        EXPECT_TRUE(sounder.tones.empty());
        trigger(*window, "tones");
        trigger(*window, "speech");
        type(*window, "3.1");
        EXPECT_EQ(sounder.tones.size(), 1u);
        EXPECT_FALSE(sounder.said.isEmpty());
    }
    const auto window = openWindow();
    type(*window, "3.2");
    EXPECT_EQ(sounder.tones.size(), 2u);
}

TEST_F(BenchToolsDesk, WithoutSoundTheProgramSaysSoOnceAndIsWhole)
{
    MainWindow window({prompts, settings, [this] { return shop.stamp().at; }});
    ASSERT_TRUE(window.openLogbook(QString::fromStdString(shop.path())));
    window.show();
    trigger(window, "tones");
    ASSERT_EQ(prompts.notices().size(), 1u);
    EXPECT_TRUE(prompts.notices().front().text.contains("tones"));
    type(window, "3.1");
    EXPECT_EQ(stored(), 1u);
}

TEST_F(BenchToolsDesk, TakesThatDifferTooMuchAreMarkedInTheTable)
{
    readings::Pass pass = shop.pass;
    pass.gauge.expandedUncertainty = units::Length::millimetres(0.2);
    shop.book.changePass(pass, shop.stamp(), {});
    const auto window = openWindow();
    type(*window, "46.1");
    QTest::keyClick(part<QLineEdit>(*window, "entryField"), '/');
    type(*window, "46.5");
    trigger(*window, "viewReadings");
    const auto *model = part<QTableView>(*window, "readingsTable")->model();
    const QModelIndex first = model->index(0, 0);
    EXPECT_TRUE(first.data().toString().startsWith("↕")) << first.data().toString().toStdString();
    EXPECT_TRUE(first.data(Qt::ToolTipRole).toString().contains("0.40 mm"));
}

} // namespace
} // namespace hammerline::main_window
