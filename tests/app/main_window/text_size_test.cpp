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

} // namespace
} // namespace hammerline::main_window
