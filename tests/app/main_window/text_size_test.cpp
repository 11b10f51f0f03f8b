#include "app/main_window/window_desk.h"

#include <QApplication>

namespace hammerline::main_window {
namespace {

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
