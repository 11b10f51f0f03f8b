// The way through a pass: order, scale, digits, steps, slips and felt faults, with real keys; and how many of them.
#include "app/bench/bench_desk.h"

#include <iostream>

namespace hammerline::bench {
namespace {

using catalogue::Quantity;

class Way : public BenchDesk {
protected:
    void choose(route::Order order, Scale scale, int digits, Quantity quantity = Quantity::LetOff)
    {
        auto it = session(shop.pass);
        route::Choice choice;
        choice.order = order;
        choice.quantities = {quantity};
        it->choose(choice, {{quantity, {scale, digits}}});
        view.work(std::move(it), Quantity::Blow);
    }
    /// Types `tenths` of a millimetre on every note and counts the keys.
    double keysPerReading(int digits, bool scaled)
    {
        int keys = 0;
        for (int note = 1; note <= 88; ++note) {
            const int tenths = 29 + note % 7;
            QString text = QString::number(tenths);
            if (!scaled)
                text.insert(1, '.');
            keys += static_cast<int>(text.size());
            QTest::keyClicks(field(), text);
            if (digits == 0) {
                press(Qt::Key_Enter, Qt::KeypadModifier);
                ++keys;
            }
            EXPECT_DOUBLE_EQ(storedMm(note), tenths / 10.0);
        }
        return keys / 88.0;
    }
};

TEST_F(Way, AWholePassTakesFewKeys)
{
    const double plain = keysPerReading(0, false);
    shop.pass = shop.begin(readings::Purpose::Setting);
    choose(route::Order::Chromatic, Scale::Tenths, 0);
    const double scaled = keysPerReading(0, true);
    shop.pass = shop.begin(readings::Purpose::AsLeft);
    choose(route::Order::Chromatic, Scale::Tenths, 2);
    const double fixed = keysPerReading(2, true);
    std::cout << "keys per reading: plain " << plain << ", scaled " << scaled << ", scaled with fixed digits " << fixed
              << '\n';
    EXPECT_LE(plain, 4.0);
    EXPECT_LE(scaled, 3.0);
    EXPECT_LE(fixed, 2.1);
}

TEST_F(Way, TheOrderIsKeptAndResumesAtTheSameNote)
{
    choose(route::Order::NaturalsThenSharps, Scale::Whole, 0);
    type("3.1");
    type("3.2");
    EXPECT_EQ(askedNote(), "C1");
    work(Quantity::Blow);
    EXPECT_EQ(askedNote(), "C1");
    EXPECT_EQ(view.session()->asked()->quantity, Quantity::LetOff);
}

TEST_F(Way, TheScaleIsShownPlainly)
{
    choose(route::Order::Chromatic, Scale::Tenths, 2);
    EXPECT_TRUE(said("askedLimits").contains("31 is read as 3.1 mm"));
}

TEST_F(Way, AScaleOfSixtyFourthsReadsFiveAsFiveSixtyFourths)
{
    choose(route::Order::Chromatic, Scale::SixtyFourths, 0);
    type("8");
    EXPECT_DOUBLE_EQ(storedMm(1), 3.175);
}

TEST_F(Way, AMarkOrAUnitOverridesTheScale)
{
    choose(route::Order::Chromatic, Scale::Tenths, 0);
    type("3.2");
    type("1/8");
    EXPECT_DOUBLE_EQ(storedMm(1), 3.2);
    EXPECT_DOUBLE_EQ(storedMm(2), 3.175);
}

TEST_F(Way, StepsAndSameGoFromTheValueBefore)
{
    type("3.1");
    press('+');
    press('+');
    press(Qt::Key_Enter);
    EXPECT_DOUBLE_EQ(storedMm(2), 3.3);
    press('-');
    press(Qt::Key_Enter);
    EXPECT_DOUBLE_EQ(storedMm(3), 3.2);
    press('=');
    press(Qt::Key_Enter);
    EXPECT_DOUBLE_EQ(storedMm(4), 3.2);
}

TEST_F(Way, ASlipIsAskedOnceAndKeptAndMarkedIfConfirmed)
{
    for (int note = 1; note <= 5; ++note)
        type("3.1");
    type("31");
    EXPECT_EQ(stored(), 5u);
    EXPECT_TRUE(said("reason").contains("3.1")) << said("reason").toStdString();
    press(Qt::Key_Enter);
    EXPECT_DOUBLE_EQ(storedMm(6), 31);
    ASSERT_EQ(shop.book.confirmedSlips(shop.pass.id).size(), 1u);
    EXPECT_EQ(shop.book.confirmedSlips(shop.pass.id).front().place.note, keyboard::Note(6));
}

TEST_F(Way, TypingReplacesADoubtedValue)
{
    for (int note = 1; note <= 5; ++note)
        type("3.1");
    type("31");
    type("3.2");
    EXPECT_DOUBLE_EQ(storedMm(6), 3.2);
    EXPECT_TRUE(shop.book.confirmedSlips(shop.pass.id).empty());
}

TEST_F(Way, ALetterMarksAFeltFaultAndShiftClearsIt)
{
    press('b');
    ASSERT_EQ(shop.book.faultMarks(shop.pass.id).size(), 1u);
    EXPECT_EQ(shop.book.faultMarks(shop.pass.id).front().fault, "blocking");
    EXPECT_TRUE(said("askedLimits").contains("BLOCKING"));
    press(Qt::Key_B, Qt::ShiftModifier);
    EXPECT_TRUE(shop.book.faultMarks(shop.pass.id).empty());
    EXPECT_EQ(askedNote(), "A0");
}

TEST_F(Way, UndoAtTheBenchStopsBeforeThePassItself)
{
    type("3.1");
    view.undo();
    view.undo();
    view.undo();
    EXPECT_TRUE(shop.book.pass(shop.pass.id));
}

TEST(FaultWords, TheListReadsBackAndLeavesOutWhatHasNoLetter)
{
    EXPECT_EQ(parseFaultWords(textOf(usualFaults())), usualFaults());
    EXPECT_EQ(parseFaultWords("z zinging; 1 one; z again; nothing").size(), 1u);
}

TEST(Typing, TheTextReadsBack)
{
    const Typings typings{{Quantity::LetOff, {Scale::Tenths, 2}}, {Quantity::Blow, {Scale::Whole, 2}}};
    EXPECT_EQ(parseTypings(textOf(typings)), typings);
}

} // namespace
} // namespace hammerline::bench
