#include "app/main_window/window_desk.h"

namespace hammerline::main_window {
namespace {

class OpeningPage : public WindowDesk {
protected:
    /// What the page in front says while the window has not been painted yet.
    static QStringList said(const MainWindow &window)
    {
        QStringList words;
        for (const QLabel *label : window.findChildren<QLabel *>())
            if (label->isVisibleTo(&window))
                words << label->text();
        return words;
    }
};

TEST_F(OpeningPage, TheFirstPaintSaysWhatIsOpenedAndTheLogbookFollows)
{
    MainWindow window(surroundings());
    window.openOncePainted(QString::fromStdString(shop.path()));
    EXPECT_EQ(said(window), QStringList("Opening " + QFileInfo(QString::fromStdString(shop.path())).baseName() + "…"));
    EXPECT_FALSE(window.workshop().isOpen());
    window.show();
    EXPECT_TRUE(QTest::qWaitFor([&] { return window.workshop().isOpen(); }));
    EXPECT_TRUE(part<QLineEdit>(window, "entryField")->isVisible());
    EXPECT_EQ(window.focusWidget(), part<QLineEdit>(window, "entryField"));
    type(window, "46.2");
    EXPECT_EQ(stored(), 1U);
}

TEST_F(OpeningPage, AFileThatCannotBeOpenedIsToldAndTheStartPageFollows)
{
    MainWindow window(surroundings());
    window.openOncePainted(folder.filePath("not there.hammerline"));
    window.show();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !prompts.notices().empty(); }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return part<QWidget>(window, "startPage")->isVisible(); }));
    EXPECT_FALSE(window.workshop().isOpen());
}

} // namespace
} // namespace hammerline::main_window
