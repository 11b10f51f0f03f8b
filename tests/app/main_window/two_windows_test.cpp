#include "app/main_window/window_desk.h"

#include <QListWidget>

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

/// The lead signs in one window while a technician types in the other, which has not looked since.
class OneSignsTheOtherTypes : public WindowDesk {
protected:
    OneSignsTheOtherTypes()
    {
        auto small = shop.grand;
        small.compass = {keyboard::Note(40), keyboard::Note(41)};
        small.sections.clear();
        tolerance::ToleranceSet set = support::plainSet();
        set.entries.erase(catalogue::Quantity::Drop);
        set.entries.erase(catalogue::Quantity::Blow);
        small.toleranceText = exchange::writeToleranceSet(set);
        EXPECT_TRUE(shop.book.changeInstrument(small, shop.stamp(), {}));
        leads = openWindow();
        typing = openWindow();
        for (const auto &window : {leads.get(), typing.get()})
            window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(40));
        prompts.willType("Lea");
        trigger(*leads, "person");
    }
    void sign()
    {
        prompts.willType("fit to go");
        trigger(*leads, "signPass");
    }
    [[nodiscard]] bool isSigned() const { return decisions::isSigned(shop.book.decisions(shop.pass.id).standing); }
    [[nodiscard]] double valueAt(std::size_t index) const
    {
        return shop.book.readings(shop.pass.id)[index].value.asLength().inMillimetres();
    }

    std::unique_ptr<MainWindow> leads;
    std::unique_ptr<MainWindow> typing;
};

TEST_F(OneSignsTheOtherTypes, WhatIsTypedAfterTheSignatureIsRefusedWithItsNameAndStaysInTheField)
{
    type(*typing, "3.2");
    type(*typing, "3.3");
    typing->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(40));
    auto *field = part<QLineEdit>(*typing, "entryField");
    QTest::keyClicks(field, "3.1");
    sign();
    ASSERT_TRUE(isSigned()) << prompts.notices().back().detail.toStdString();
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(field->text(), "3.1") << "nothing typed is lost";
    const QString reason = part<QLabel>(*typing, "reason")->text();
    EXPECT_TRUE(reason.contains("Lea") && reason.contains("open it again")) << reason.toStdString();
    EXPECT_FALSE(part(*typing, "troubleBar")->isVisible()) << "nobody's disk is broken";
    EXPECT_EQ(valueAt(0), 3.2) << "what was signed stands";
    prompts.willType("the button had slipped");
    trigger(*leads, "reopenPass");
    QTest::keyClick(field, Qt::Key_Return);
    QTest::keyClick(field, Qt::Key_Return); // where it asks once more, since another value stands
    EXPECT_EQ(valueAt(0), 3.1) << "kept and entered once the pass is open again";
}

TEST_F(OneSignsTheOtherTypes, WhatIsTypedBeforeTheSignatureIsSeenByItThoughTheLeadsWindowHasNotLooked)
{
    type(*typing, "3.2");
    type(*typing, "5");
    sign();
    EXPECT_FALSE(isSigned());
    EXPECT_TRUE(part<QListWidget>(*leads, "openItemList")->item(0)->text().startsWith("C♯4"));
    EXPECT_EQ(stored(), 2u);
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
