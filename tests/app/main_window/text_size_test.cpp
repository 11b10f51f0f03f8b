#include "app/main_window/window_desk.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QTabBar>
#include <QTableView>

namespace hammerline::main_window {
namespace {

/// On a small screen.
class LargeText : public WindowDesk {
protected:
    ~LargeText() override { setScale(1); }
    static void setScale(double scale)
    {
        wording::setTextScale(scale);
        wording::applyTheme(*qApp, wording::Theme::Light);
    }
    /// Four quantities of the whole keyboard, some notes of each out.
    void fillShop()
    {
        for (const auto &[quantity, middle] : {std::pair(catalogue::Quantity::Blow, 46.0),
                                               {catalogue::Quantity::LetOff, 3.2},
                                               {catalogue::Quantity::Drop, 1.8},
                                               {catalogue::Quantity::Dip, 10.1}})
            for (int note = 1; note <= 88; ++note) {
                readings::Reading reading{.place = {quantity, keyboard::Note(note), 1}, .typed = "x"};
                reading.value = units::Length::millimetres(middle + 0.05 * ((note * 29) % 21 - 10));
                shop.book.enter(shop.pass.id, reading, shop.stamp());
            }
    }
    [[nodiscard]] std::unique_ptr<MainWindow> smallWindow()
    {
        auto window = openWindow();
        window->resize(1366, 768);
        return window;
    }
    /// Rows that are seen whole without scrolling anything.
    static int rowsSeen(const QTableView &table)
    {
        const QRect seen = table.viewport()->visibleRegion().boundingRect();
        int rows = 0;
        for (int row = 0; row < table.model()->rowCount(); ++row) {
            const int top = table.rowViewportPosition(row);
            rows += top >= seen.top() && top + table.rowHeight(row) <= seen.bottom() + 1 ? 1 : 0;
        }
        return rows;
    }
};

TEST_F(LargeText, EveryNameOfAViewIsSeen)
{
    for (const double scale : {1.0, 1.5, 2.0}) {
        setScale(scale);
        const auto window = smallWindow();
        trigger(*window, "viewShop");
        QCoreApplication::processEvents();
        const auto *names = part<QTabBar>(*window, "viewNames");
        ASSERT_EQ(names->count(), 9);
        for (int name = 0; name < names->count(); ++name) {
            EXPECT_TRUE(names->rect().contains(names->tabRect(name))) << scale << ' ' << name;
            EXPECT_GE(names->tabRect(name).width(), names->fontMetrics().horizontalAdvance(names->tabText(name)));
        }
        EXPECT_GE(names->font().pointSizeF(), 9 * scale);
    }
}

TEST_F(LargeText, NamesOfViewsGrowAgainWithTheWindow)
{
    setScale(2);
    const auto window = smallWindow();
    window->resize(2560, 768);
    QCoreApplication::processEvents();
    EXPECT_DOUBLE_EQ(part<QTabBar>(*window, "viewNames")->font().pointSizeF(), 28);
}

TEST_F(LargeText, TheQuestionsToTheShopStandWhereNothingPushesThemAway)
{
    fillShop();
    for (const double scale : {1.0, 2.0}) {
        setScale(scale);
        const auto window = smallWindow();
        trigger(*window, "viewShop");
        part<QComboBox>(*window, "shopBy")->setCurrentIndex(1);
        for (int turn = 0; turn < 100; ++turn)
            QCoreApplication::processEvents();
        for (const char *name : {"shopOut", "shopHours", "shopRejudge", "shopExport", "shopSaveChart"}) {
            const auto *button = part<QAbstractButton>(*window, name);
            EXPECT_EQ(button->visibleRegion().boundingRect(), button->rect()) << scale << ' ' << name;
        }
        const ShopView *shown = window->views().shop(); // whatever is longer than the screen is reached by scrolling
        for (const auto *bars : shown->findChildren<charts::BarsPane *>())
            if (bars->isVisible()) {
                EXPECT_GE(bars->height(), bars->minimumHeight()) << scale;
                EXPECT_LE(bars->mapTo(shown, QPoint(0, bars->height())).y(), shown->height()) << scale;
            }
    }
}

TEST_F(LargeText, ALongNameLeavesTheFiguresOfTheShopInSight)
{
    const readings::Reading reading{.place = {catalogue::Quantity::LetOff, keyboard::Note(40), 1},
                                    .value = units::Length::millimetres(3.1),
                                    .typed = "3.1"};
    const std::string name(10'000, 'N');
    static_cast<void>(shop.book.importPass({.instrument = shop.grand.id, .began = shop.stamp().at, .person = name},
                                           {reading}, shop.stamp()));
    const auto window = smallWindow();
    trigger(*window, "viewShop");
    for (int turn = 0; turn < 100; ++turn)
        QCoreApplication::processEvents();
    const auto *table = part<QTableView>(*window, "shopTable");
    EXPECT_LT(table->columnWidth(0), table->viewport()->width() / 2);
    EXPECT_TRUE(table->model()->index(0, 0).data(Qt::ToolTipRole).toString().contains(QString::fromStdString(name)));
}

TEST_F(LargeText, ATableShowsSeveralOfItsRows)
{
    fillShop();
    setScale(2);
    const auto window = smallWindow();
    for (const auto &[view, name, least] : {std::tuple("viewReadings", "readingsTable", 4),
                                            {"viewPlan", "planTable", 4},
                                            {"viewWorst", "worstTable", 1},
                                            {"viewReview", "reviewTable", 1},
                                            {"viewShop", "shopTable", 1}}) {
        trigger(*window, view);
        for (int turn = 0; turn < 100; ++turn) // the shop is read in slices
            QCoreApplication::processEvents();
        EXPECT_GE(rowsSeen(*part<QTableView>(*window, name)), least) << view;
    }
}

TEST_F(WindowDesk, AnotherTextSizeKeepsTheNoteAndIsRemembered)
{
    auto *window = new MainWindow(surroundings());
    window->setAttribute(Qt::WA_DeleteOnClose);
    window->openLogbook(QString::fromStdString(shop.path()));
    window->show();
    window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(30));
    const auto sizes = window->findChildren<QAction *>("textSize");
    ASSERT_EQ(sizes.size(), 4);
    sizes.back()->trigger();
    EXPECT_EQ(Settings(settings).textPercent(), 200);
    MainWindow *larger = nullptr;
    for (QWidget *widget : QApplication::topLevelWidgets())
        if (widget->isVisible() && qobject_cast<MainWindow *>(widget))
            larger = qobject_cast<MainWindow *>(widget);
    ASSERT_NE(larger, nullptr);
    EXPECT_NE(larger, window);
    EXPECT_EQ(askedNote(*larger), "D3");
    EXPECT_DOUBLE_EQ(wording::textScale(), 2);
    delete larger;
    wording::setTextScale(1);
    wording::applyTheme(*qApp, wording::Theme::Light);
}

TEST_F(WindowDesk, AtTwiceTheTextOnASmallScreenTheBenchNeedsNoScrolling)
{
    wording::setTextScale(2);
    wording::applyTheme(*qApp, wording::Theme::Light);
    {
        const auto window = openWindow();
        window->resize(1366, 768);
        type(*window, "3.85");
        QCoreApplication::processEvents();
        const QWidget *bench = window->views().bench();
        const QRect seen = bench->parentWidget()->rect();
        for (const char *name :
             {"askedNote", "entryField", "askedLimits", "lastNote", "lastDeviation", "lastVerdict"}) {
            const auto *shown = part<QWidget>(*window, name);
            const QRect place(shown->mapTo(bench->parentWidget(), QPoint()), shown->size());
            EXPECT_TRUE(seen.contains(place)) << name << " ends at " << place.bottom() << " of " << seen.height();
        }
        EXPECT_TRUE(part<QWidget>(*window, "strip")->isVisible());
    }
    wording::setTextScale(1);
    wording::applyTheme(*qApp, wording::Theme::Light);
}

} // namespace
} // namespace hammerline::main_window
