// The way through a pass: order, scale, digits, steps, slips and felt faults, with real keys.
#include "app/bench/bench_desk.h"

#include <QComboBox>

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
};

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

TEST_F(Way, WhatTheLeadSentBackIsAskedForWithTheWordUntilItIsReadAgain)
{
    type("3.2");
    type("3.3");
    decisions::Decision word{.quantity = Quantity::LetOff, .note = keyboard::Note(2), .kind = decisions::Kind::Uneven};
    word.value = units::Length::millimetres(3.3);
    word.words = "even it out";
    ASSERT_TRUE(shop.book.sendBack(shop.pass.id, {word}, {shop.stamp().at, "Lea"}));
    choose(route::Order::OnlyOut, Scale::Whole, 0);
    EXPECT_EQ(askedNote(), "A#0") << "though it lies inside";
    EXPECT_TRUE(said("askedLimits").contains("sent back by Lea: even it out")) << said("askedLimits").toStdString();
    type("3.2");
    choose(route::Order::Chromatic, Scale::Whole, 0);
    view.ask(Quantity::LetOff, keyboard::Note(2));
    EXPECT_FALSE(said("askedLimits").contains("sent back"));
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

TEST_F(Way, ALengthInTheWrongUnitIsDoubtedUnderAScaleToo)
{
    choose(route::Order::Chromatic, Scale::Tenths, 2);
    for (int note = 1; note <= 5; ++note)
        QTest::keyClicks(field(), "31");
    type("1/8"); // 3.175 mm: a fraction is inches whatever the scale
    EXPECT_EQ(stored(), 6u);
    press('+');
    QTest::keyClicks(field(), "3.1in");
    press(Qt::Key_Return);
    EXPECT_EQ(stored(), 6u);
    EXPECT_TRUE(said("reason").contains("3.1")) << said("reason").toStdString();
    press(Qt::Key_Escape);
    QTest::keyClicks(field(), "13"); // 1/8 in thought of, 1.3 mm typed
    EXPECT_EQ(stored(), 6u);
    EXPECT_FALSE(said("reason").isEmpty());
}

TEST_F(Way, WhatAllValuesHaveInCommonIsNotTyped)
{
    auto it = session(shop.pass);
    it->choose({.quantities = {Quantity::Blow}}, {{Quantity::Blow, {Scale::Tenths, 2, 40}}});
    view.work(std::move(it), Quantity::Blow);
    EXPECT_TRUE(said("askedLimits").contains("31 is read as 43.1 mm"));
    QTest::keyClicks(field(), "6179");
    EXPECT_DOUBLE_EQ(storedMm(1, 1, Quantity::Blow), 46.1);
    EXPECT_DOUBLE_EQ(storedMm(2, 1, Quantity::Blow), 47.9);
    press('+');
    QTest::keyClicks(field(), "51.2");
    press(Qt::Key_Return);
    EXPECT_DOUBLE_EQ(storedMm(3, 1, Quantity::Blow), 51.2);
}

TEST_F(Way, UndoOfTheWayFollowsTheOneBeforeWhileTheViewIsOpen)
{
    choose(route::Order::Chromatic, Scale::Tenths, 2);
    choose(route::Order::NaturalsThenSharps, Scale::Hundredths, 3);
    QTest::keyClicks(field(), "310");
    EXPECT_EQ(askedNote(), "B0");
    view.undo(); // the reading
    view.undo(); // the second way
    EXPECT_TRUE(said("askedLimits").contains("31 is read as 3.1 mm")) << said("askedLimits").toStdString();
    QTest::keyClicks(field(), "32");
    EXPECT_DOUBLE_EQ(storedMm(1), 3.2);
    EXPECT_EQ(askedNote(), "A#0");
    view.undo();
    view.undo(); // the first way
    type("3.3");
    EXPECT_DOUBLE_EQ(storedMm(1), 3.3);
}

TEST_F(Way, RedoOfTheWayFollowsItAgain)
{
    choose(route::Order::NaturalsThenSharps, Scale::Tenths, 2);
    view.undo();
    view.redo();
    QTest::keyClicks(field(), "31");
    EXPECT_EQ(askedNote(), "B0");
}

TEST_F(Way, AnotherProgramRunResumesAtTheSameNote)
{
    choose(route::Order::SamplesFirst, Scale::Tenths, 2);
    QTest::keyClicks(field(), "3132");
    const std::string asked = askedNote();
    view.work(nullptr, {});
    {
        auto reopened = logbook::Logbook::open(shop.path());
        BenchView later;
        later.work(std::make_unique<EntrySession>(reopened, *reopened.instrument(shop.grand.id),
                                                  *reopened.pass(shop.pass.id), std::nullopt,
                                                  [this] { return shop.stamp(); }),
                   Quantity::Blow);
        EXPECT_EQ(later.session()->asked()->note.name(), asked);
        EXPECT_EQ(later.session()->asked()->quantity, Quantity::LetOff);
        EXPECT_EQ(later.session()->typing(), (Typing{Scale::Tenths, 2}));
        later.work(nullptr, {});
    }
}

TEST_F(Way, AllQuantitiesInTurnIsKeptAndResumed)
{
    auto *chooser = view.findChild<QComboBox *>("quantityChooser");
    chooser->setCurrentIndex(chooser->findText("All quantities in turn"));
    const route::Choice kept = view.keepChoice();
    EXPECT_GT(kept.quantities.size(), 5u);
    work(Quantity::Blow);
    EXPECT_EQ(view.session()->route().size(), 88 * kept.quantities.size());
    EXPECT_EQ(chooser->currentText(), "All quantities in turn");
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
    const Typings typings{{Quantity::LetOff, {Scale::Tenths, 2}},
                          {Quantity::Blow, {Scale::Whole, 2}},
                          {Quantity::Dip, {Scale::Hundredths, 3, 10}}};
    EXPECT_EQ(parseTypings(textOf(typings)), typings);
}

} // namespace
} // namespace hammerline::bench
