// What the window does when disk or file refuse.
#include "app/main_window/window_desk.h"
#include "main_window/guarded_application.h"

#include <QFile>

namespace hammerline::main_window {
namespace {

TEST_F(WindowDesk, AFileThatIsNoLogbookIsToldAndNothingOpens)
{
    const QString path = folder.filePath("letter.hammerline");
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("Dear customer, the piano is ready.");
    file.close();
    MainWindow window(surroundings());
    window.show();
    EXPECT_FALSE(window.openLogbook(path));
    ASSERT_EQ(prompts.notices().size(), 1u);
    EXPECT_FALSE(prompts.notices().front().text.isEmpty());
    EXPECT_TRUE(part(window, "startPage")->isVisible());
}

TEST_F(WindowDesk, WhenTheDiskRefusesWhatIsTypedStaysAndTheBarSaysWhatIsSafe)
{
    const auto window = openWindow();
    auto *field = part<QLineEdit>(*window, "entryField");
    QTest::keyClicks(field, "46.2");
    const QString asked = askedNote(*window);
    const bool fine = guarded(field, [] { throw outcome::BrokenWorld("the disk is full"); });
    EXPECT_FALSE(fine);
    EXPECT_TRUE(part(*window, "troubleBar")->isVisible());
    EXPECT_EQ(part<QLabel>(*window, "troubleText")->text(), "the disk is full");
    EXPECT_EQ(field->text(), "46.2");
    EXPECT_EQ(askedNote(*window), asked);
    QTest::mouseClick(part(*window, "troubleAgain"), Qt::LeftButton);
    EXPECT_FALSE(part(*window, "troubleBar")->isVisible());
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(stored(), 1u);
}

TEST_F(WindowDesk, AReadOnlyLogbookShowsItsReadingsAndRefusesNewOnesAloud)
{
    const auto window = openWindow();
    type(*window, "46.2");
    auto readOnly = logbook::Logbook::open(shop.path(), logbook::Access::ReadOnly);
    bench::EntrySession session(readOnly, shop.grand, shop.pass, std::nullopt, [this] { return shop.stamp(); });
    session.follow({.quantities = {catalogue::Quantity::Blow}});
    const auto told = guarded(window.get(), [&session] { static_cast<void>(session.enter("46")); });
    EXPECT_FALSE(told);
    EXPECT_TRUE(part(*window, "troubleBar")->isVisible());
    EXPECT_EQ(stored(), 1u);
}

} // namespace
} // namespace hammerline::main_window
