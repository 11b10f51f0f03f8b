#include "app/study_desk/study_fixture.h"

namespace hammerline::study_desk {
namespace {

TEST_F(StudyTest, TheStopsAreAskedForInTheOrderThatWasDrawn)
{
    const auto study = planned();
    Taking taking(shop.book, study, clock());
    EXPECT_EQ(taking.all(), 12u);
    for (const analysis::StudyStop &stop : orderOf(study.plan)) {
        EXPECT_EQ(taking.asked(), stop);
        const auto entered = taking.enter("3.2");
        ASSERT_TRUE(entered.ok());
        EXPECT_EQ(entered.value(), stop);
    }
    EXPECT_FALSE(taking.asked());
    EXPECT_FALSE(taking.enter("3.2").ok());
}

TEST_F(StudyTest, ItGoesOnWhereItStoodAfterARestart)
{
    const auto study = planned();
    std::optional<analysis::StudyStop> next;
    {
        Taking taking(shop.book, study, clock());
        ASSERT_TRUE(taking.enter("3.2").ok());
        ASSERT_TRUE(taking.enter("1/8").ok());
        next = taking.asked();
    }
    logbook::Logbook again = logbook::Logbook::open(shop.path());
    const Taking taking(again, logbook::GaugeStudies(again).find(study.id).value(), clock());
    EXPECT_EQ(taking.taken(), 2u);
    EXPECT_EQ(taking.asked(), next);
}

TEST_F(StudyTest, TheLastValueIsMendedByReadingAgain)
{
    const auto study = planned();
    Taking taking(shop.book, study, clock());
    EXPECT_FALSE(taking.mendLast());
    const auto first = taking.asked();
    ASSERT_TRUE(taking.enter("3.2").ok());
    EXPECT_TRUE(taking.mendLast());
    EXPECT_EQ(taking.asked(), first);
    EXPECT_FALSE(taking.mendLast()) << "the plan itself is not mended away";
    ASSERT_TRUE(taking.enter("3.4").ok());
    EXPECT_EQ(logbook::GaugeStudies(shop.book).trials(study.id).front().value,
              units::Amount(units::Length::millimetres(3.4)));
}

TEST_F(StudyTest, WhatCannotBeReadIsNotKeptAndAskedForAgain)
{
    const auto study = planned();
    Taking taking(shop.book, study, clock());
    const auto first = taking.asked();
    EXPECT_FALSE(taking.enter("x").ok());
    EXPECT_FALSE(taking.enter("-3").ok());
    EXPECT_FALSE(taking.enter("5g").ok());
    EXPECT_EQ(taking.asked(), first);
    EXPECT_TRUE(logbook::GaugeStudies(shop.book).trials(study.id).empty());
}

TEST_F(StudyTest, ATrialIsEnteredInTheNameOfWhoReadIt)
{
    const auto study = planned();
    Taking taking(shop.book, study, clock());
    const auto stop = taking.asked();
    ASSERT_TRUE(taking.enter("3.2").ok());
    EXPECT_EQ(shop.book.deed(shop.book.newestDeed())->stamp.person, stop->person);
}

TEST_F(StudyTest, AnotherWindowsTrialIsPassedOverNotOverwritten)
{
    const auto study = planned();
    Taking here(shop.book, study, clock());
    logbook::Logbook other = logbook::Logbook::open(shop.path());
    Taking there(other, study, clock());
    ASSERT_TRUE(there.enter("3.2").ok());
    EXPECT_FALSE(here.enter("4.0").ok());
    EXPECT_EQ(here.taken(), 1u);
    ASSERT_TRUE(here.enter("4.0").ok());
    EXPECT_EQ(logbook::GaugeStudies(shop.book).trials(study.id).size(), 2u);
}

} // namespace
} // namespace hammerline::study_desk
