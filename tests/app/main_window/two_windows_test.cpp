#include "app/main_window/window_desk.h"

namespace hammerline::main_window {
namespace {

class TwoWindows : public WindowDesk {
protected:
    std::unique_ptr<MainWindow> mine = openWindow();
    std::unique_ptr<MainWindow> theirs = openWindow();
};

TEST_F(TwoWindows, SeeEachOthersReadingsWithinASecond)
{
    type(*mine, "3.2");
    const auto seen = [this] { return theirs->workshop().pass()->readings.size(); };
    QTRY_COMPARE_WITH_TIMEOUT(seen(), 1u, 1000);
}

TEST_F(TwoWindows, TypedTextSurvivesTheOthersDeeds)
{
    auto *field = part<QLineEdit>(*theirs, "entryField");
    QTest::keyClicks(field, "3.");
    type(*mine, "3.2");
    QTRY_COMPARE_WITH_TIMEOUT(theirs->workshop().pass()->readings.size(), 1u, 1000);
    EXPECT_EQ(field->text(), "3.");
}

TEST_F(TwoWindows, ANoteTakenByTheOtherIsNotOverwrittenUnseen)
{
    type(*mine, "46.2");
    type(*theirs, "45.8");
    EXPECT_EQ(part<QLineEdit>(*theirs, "entryField")->text(), "45.8");
    EXPECT_FALSE(part<QLabel>(*theirs, "reason")->text().isEmpty());
    EXPECT_EQ(stored(), 1u);
}

TEST_F(TwoWindows, ANewInstrumentAppearsInTheOther)
{
    instrument::Instrument upright;
    upright.name = "Blue upright";
    ASSERT_TRUE(shop.book.addInstrument(upright, shop.stamp()));
    QTRY_COMPARE_WITH_TIMEOUT(theirs->workshop().instruments().size(), 2u, 1000);
}

} // namespace
} // namespace hammerline::main_window
