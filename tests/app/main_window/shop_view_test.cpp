// The shop's view over many instruments, in the window.
#include "app/main_window/window_desk.h"

#include <QComboBox>
#include <QFile>
#include <QPushButton>
#include <QRadioButton>
#include <QTableWidget>

namespace hammerline::main_window {
namespace {

using catalogue::Quantity;
using keyboard::Note;

class ShopViewTest : public WindowDesk {
protected:
    void put(const readings::Pass &pass, int note, double mm)
    {
        const units::Amount value = units::Length::millimetres(mm);
        shop.book.enter(pass.id, {.place = {Quantity::LetOff, Note(note), 1}, .value = value, .typed = "x"},
                        shop.stamp());
    }
    std::unique_ptr<MainWindow> openShop()
    {
        auto window = openWindow();
        trigger(*window, "viewShop");
        wait(*window);
        return window;
    }
    static void wait(MainWindow &window)
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !window.views().shop()->isReading(); }, 20'000));
    }
    static QString cell(const MainWindow &window, int row, int column)
    {
        return part<QTableWidget>(window, "shopTable")->item(row, column)->text();
    }
};

TEST_F(ShopViewTest, ShowsWhatEachPersonFoundAndLeft)
{
    put(shop.pass, 1, 9);
    put(shop.pass, 2, 3.2);
    put(shop.begin(readings::Purpose::AsLeft), 1, 3.2);
    const auto window = openShop();
    ASSERT_EQ(part<QTableWidget>(*window, "shopTable")->rowCount(), 1);
    EXPECT_EQ(cell(*window, 0, 0), "Ada");
    EXPECT_EQ(cell(*window, 0, 3), "3");
    EXPECT_TRUE(cell(*window, 0, 4).startsWith("50")) << cell(*window, 0, 4).toStdString();
    EXPECT_TRUE(cell(*window, 0, 5).startsWith("0"));
}

TEST_F(ShopViewTest, IsAlsoByQuantityAndMonthAndOpensByControlNine)
{
    put(shop.pass, 1, 9);
    const auto window = openShop();
    EXPECT_EQ(part<QAction>(*window, "viewShop")->shortcut(), QKeySequence("Ctrl+9"));
    part<QComboBox>(*window, "shopBy")->setCurrentIndex(1);
    EXPECT_EQ(cell(*window, 0, 0), "Let-off");
    part<QComboBox>(*window, "shopBy")->setCurrentIndex(2);
    EXPECT_EQ(cell(*window, 0, 0), "2026-03");
}

TEST_F(ShopViewTest, AFilterLeavesOutWhatIsNotAskedFor)
{
    put(shop.pass, 1, 9);
    const auto window = openShop();
    auto *state = part<QComboBox>(*window, "shopState");
    state->setCurrentIndex(state->findData(static_cast<int>(instrument::State::Delivered)));
    EXPECT_EQ(part<QTableWidget>(*window, "shopTable")->rowCount(), 0);
    EXPECT_EQ(part<QLabel>(*window, "shopTotal")->text(), "Nothing was read or done that fits.");
    state->setCurrentIndex(0);
    EXPECT_EQ(part<QTableWidget>(*window, "shopTable")->rowCount(), 1);
    EXPECT_EQ(part<QComboBox>(*window, "shopFrom")->count(), 2);
}

TEST_F(ShopViewTest, FollowsWhatIsReadMeanwhile)
{
    put(shop.pass, 1, 9);
    const auto window = openShop();
    put(shop.pass, 2, 9);
    EXPECT_TRUE(QTest::qWaitFor([&] { return window->views().shop()->rows().at(0).figures.readings == 2; }, 20'000));
}

TEST_F(ShopViewTest, TableAndChartAreWritten)
{
    put(shop.pass, 1, 9);
    const auto window = openShop();
    const QString table = folder.filePath("shop.csv"), drawing = folder.filePath("shop.svg");
    prompts.willPick(table);
    part<QPushButton>(*window, "shopExport")->click();
    prompts.willPick(drawing);
    part<QRadioButton>(*window, "shopHours")->click();
    part<QPushButton>(*window, "shopSaveChart")->click();
    QFile written(table);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_TRUE(written.readAll().contains("\r\nAda,1,1,1,1,1,0,0,0.00,0.00,0,0.00\r\n"));
    QFile drawn(drawing);
    ASSERT_TRUE(drawn.open(QIODevice::ReadOnly));
    EXPECT_TRUE(drawn.readAll().contains("Do the planned hours hold?"));
}

} // namespace
} // namespace hammerline::main_window
