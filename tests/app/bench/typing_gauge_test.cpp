// Gauges that type like a keyboard: a burst of keys, with Enter, with Tab or with nothing behind it.
#include "app/bench/bench_desk.h"

namespace hammerline::bench {
namespace {

using catalogue::Quantity;

class TypingGauge : public BenchDesk {
protected:
    void burst(const QString &text) { QTest::keyClicks(field(), text); }
    void byHand(const QString &text) { QTest::keyClicks(field(), text, Qt::NoModifier, 60); }
    [[nodiscard]] bool awaitStored(std::size_t count)
    {
        return QTest::qWaitFor([&] { return stored() == count; }, 2000);
    }
};

TEST_F(TypingGauge, UnitsCommasPaddingAndAPlusAreUnderstood)
{
    int note = 0;
    for (const char *text :
         {"3.175mm", "3,175mm", "3,175 mm", ".125in", "+0003.175mm", "0.125\"", "+3.175", "125mil"}) {
        burst(text);
        press(Qt::Key_Enter);
        EXPECT_DOUBLE_EQ(storedMm(++note), 3.175) << text << ' ' << said("reason").toStdString();
    }
}

TEST_F(TypingGauge, AMinusIsNeverLostToAStep)
{
    burst("3.1");
    press(Qt::Key_Enter);
    burst("-3.2mm");
    press(Qt::Key_Enter);
    EXPECT_EQ(stored(), 1u);
    EXPECT_EQ(field()->text(), "-3.2mm");
    EXPECT_FALSE(said("reason").isEmpty());
}

TEST_F(TypingGauge, ATabRightBehindTheReadingTakesItToo)
{
    burst("3.15mm");
    press(Qt::Key_Tab);
    EXPECT_DOUBLE_EQ(storedMm(1), 3.15);
    EXPECT_TRUE(field()->hasFocus() || !view.isActiveWindow());
}

TEST_F(TypingGauge, WithoutEnterTheReadingIsTakenWhenTheBurstEnds)
{
    view.setGaugeTypes(true);
    for (const char *text : {"3.15mm", "3,25", "0.125in"}) {
        const std::size_t before = stored();
        burst(text);
        EXPECT_TRUE(awaitStored(before + 1)) << text;
    }
    EXPECT_DOUBLE_EQ(storedMm(1), 3.15);
    EXPECT_DOUBLE_EQ(storedMm(2), 3.25);
    EXPECT_DOUBLE_EQ(storedMm(3), 3.175);
}

TEST_F(TypingGauge, AnEnterThatComesAfterAllTakesTheReadingOnce)
{
    view.setGaugeTypes(true);
    burst("3.15mm");
    press(Qt::Key_Enter);
    QTest::qWait(150);
    EXPECT_EQ(stored(), 1u);
    EXPECT_EQ(askedNote(), "A#0");
}

TEST_F(TypingGauge, WhatFingersTypeWaitsForEnter)
{
    view.setGaugeTypes(true);
    byHand("3.15");
    QTest::qWait(150);
    EXPECT_EQ(stored(), 0u);
    EXPECT_EQ(field()->text(), "3.15");
}

TEST_F(TypingGauge, ABurstIsNotTakenAsSoonAsItsDigitsSuffice)
{
    auto it = session(shop.pass);
    route::Choice choice;
    choice.quantities = {Quantity::Blow};
    it->choose(choice, {{Quantity::Blow, {Scale::Whole, 2}}});
    view.work(std::move(it), Quantity::Blow);
    view.setGaugeTypes(true);
    burst("46.25mm");
    EXPECT_TRUE(awaitStored(1));
    EXPECT_DOUBLE_EQ(storedMm(1, 1, Quantity::Blow), 46.25);
    byHand("46");
    EXPECT_TRUE(awaitStored(2));
    EXPECT_DOUBLE_EQ(storedMm(2, 1, Quantity::Blow), 46);
}

TEST_F(TypingGauge, OffUnlessChosen)
{
    burst("3.15mm");
    QTest::qWait(150);
    EXPECT_EQ(stored(), 0u);
}

} // namespace
} // namespace hammerline::bench
