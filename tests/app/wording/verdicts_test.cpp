#include "wording/wording.h"

#include <gtest/gtest.h>

namespace hammerline::wording {
namespace {

units::Amount mm(double value)
{
    return units::Amount::fromDisplay(units::Dimension::Length, value);
}

NumberForm tenths()
{
    NumberForm form;
    form.lengthDecimals = 1;
    form.locale = QLocale::c();
    return form;
}

/// Let-off of note 1 with target 3.2 and limits 2.4 to 4.0 mm.
tolerance::Verdict letOff(double value, tolerance::Status status)
{
    tolerance::Verdict verdict;
    verdict.quantity = catalogue::Quantity::LetOff;
    verdict.note = keyboard::Note(1);
    verdict.status = status;
    verdict.value = mm(value);
    verdict.takes = 1;
    verdict.limits = tolerance::Limits{.low = mm(2.4), .target = mm(3.2), .high = mm(4.0)};
    verdict.deviation = *verdict.value - mm(3.2);
    return verdict;
}

TEST(Verdicts, AnOutVerdictSaysHowMuchWhichWayAndWhatToDo)
{
    EXPECT_EQ(verdictSentence(letOff(4.2, tolerance::Status::Out), tenths()),
              "1.0 mm too far from the string; a little later");
    EXPECT_EQ(verdictSentence(letOff(2.2, tolerance::Status::Out), tenths()),
              "1.0 mm too close to the string; a little earlier");
}

TEST(Verdicts, BeyondTwoHalfWidthsALittleIsNoLongerSaid)
{
    EXPECT_EQ(verdictSentence(letOff(4.9, tolerance::Status::Out), tenths()), "1.7 mm too far from the string; later");
}

TEST(Verdicts, InsideTheLimitsTheSideIsStillTold)
{
    EXPECT_EQ(verdictSentence(letOff(3.2, tolerance::Status::In), tenths()), "On target");
    EXPECT_EQ(verdictSentence(letOff(3.5, tolerance::Status::In), tenths()), "0.3 mm above target, within limits");
    EXPECT_EQ(verdictSentence(letOff(2.9, tolerance::Status::In), tenths()), "0.3 mm below target, within limits");
    EXPECT_EQ(verdictSentence(letOff(3.9, tolerance::Status::Marginal), tenths()),
              "0.7 mm above target; too close to the limit for this gauge to be sure");
}

TEST(Verdicts, AnOutVerdictNeverSaysZero)
{
    auto verdict = letOff(3.22, tolerance::Status::Out);
    EXPECT_TRUE(verdictSentence(verdict, tenths()).startsWith("0.02 mm too far"));
}

TEST(Verdicts, MissingAndUnjudgedHaveSentencesOfTheirOwn)
{
    auto missing = letOff(3.2, tolerance::Status::Missing);
    missing.value.reset();
    missing.deviation.reset();
    EXPECT_EQ(verdictSentence(missing, tenths()), "Not read yet");
    auto unjudged = letOff(3.2, tolerance::Status::Unjudged);
    unjudged.deviation.reset();
    unjudged.limits = std::nullopt;
    EXPECT_EQ(verdictSentence(unjudged, tenths()), "Not judged by this set");
}

TEST(Verdicts, AnUnevenStepIsAdded)
{
    auto verdict = letOff(3.5, tolerance::Status::In);
    verdict.uneven = true;
    verdict.stepFromBelow = mm(-0.7);
    EXPECT_EQ(verdictSentence(verdict, tenths()),
              "0.3 mm above target, within limits; uneven, a step of 0.7 mm from the note below");
}

TEST(Verdicts, NoSentenceOfAnyQuantityShouts)
{
    for (const auto &info : catalogue::all())
        for (const double value : {2.0, 4.9}) {
            auto verdict = letOff(value, tolerance::Status::Out);
            verdict.quantity = info.quantity;
            const QString sentence = verdictSentence(verdict, tenths());
            EXPECT_FALSE(sentence.contains(u'!'));
            EXPECT_FALSE(sentence.contains(u'%')) << sentence.toStdString();
            EXPECT_TRUE(sentence.contains("mm too") || sentence.contains("mm caught")) << sentence.toStdString();
        }
}

TEST(Verdicts, LimitsAreToldWithOneUnit)
{
    const auto form = tenths();
    EXPECT_EQ(limitsText({.low = mm(2.4), .target = mm(3.2), .high = mm(4)}, form), "2.4 to 4.0 mm, target 3.2");
    EXPECT_EQ(limitsText({.low = mm(2.4), .target = mm(3.2)}, form), "at least 2.4 mm, target 3.2");
    EXPECT_EQ(limitsText({.target = mm(3.2), .high = mm(4)}, form), "at most 4.0 mm, target 3.2");
    EXPECT_EQ(limitsText({.target = mm(3.2)}, form), "target 3.2 mm");
}

TEST(Verdicts, TheStoryOfAKeyNamesNoteQuantityValueVerdictAndLimits)
{
    auto verdict = letOff(4.2, tolerance::Status::Out);
    verdict.takes = 3;
    EXPECT_EQ(keyStory(verdict, tenths()), "A0, Let-off 4.2 mm (mean of 3 takes): 1.0 mm too far from the string; a "
                                           "little later. Set: 2.4 to 4.0 mm, target 3.2.");
}

TEST(Verdicts, WhatIsInOnlyWithinTheGaugesDoubtIsSaidPlainly)
{
    auto verdict = letOff(3.9, tolerance::Status::In);
    verdict.doubt = tolerance::Doubt{.gauge = 0.1, .resolution = 0.05};
    verdict.conformanceProbability = 0.8144;
    EXPECT_EQ(verdictSentence(verdict, tenths()), "0.7 mm above target, in, but within the gauge's doubt");
    EXPECT_EQ(doubtSentence(verdict, tenths()),
              "Doubt: 0.2 mm either way, 20 % of its variance from how finely it was read off; truly inside with a "
              "probability of 81 %.");
    verdict.value = mm(3.2);
    verdict.deviation = mm(0);
    EXPECT_EQ(verdictSentence(verdict, tenths()), "On target");
}

TEST(Verdicts, WhatIsOutOnlyWithinTheGaugesDoubtIsSaidPlainly)
{
    auto verdict = letOff(4.1, tolerance::Status::Out);
    EXPECT_EQ(verdictSentence(verdict, tenths()), "0.9 mm too far from the string; a little later");
    verdict.doubt = tolerance::Doubt{.gauge = 0.1, .resolution = 0.05};
    EXPECT_EQ(verdictSentence(verdict, tenths()),
              "0.9 mm too far from the string; a little later; out, but within the gauge's doubt");
    verdict.value = mm(4.3);
    verdict.deviation = mm(1.1);
    EXPECT_EQ(verdictSentence(verdict, tenths()), "1.1 mm too far from the string; a little later")
        << "0.3 mm out, which a doubt of 0.22 mm does not reach";
}

TEST(Verdicts, AProbabilityIsNeverCertain)
{
    auto verdict = letOff(3.2, tolerance::Status::In);
    verdict.doubt = tolerance::Doubt{.gauge = 0.1, .resolution = 0};
    for (const auto &[probability, words] : {std::pair{1.0, "more than 99 %."}, std::pair{0.0, "less than 1 %."}}) {
        verdict.conformanceProbability = probability;
        EXPECT_TRUE(doubtSentence(verdict, tenths()).endsWith(words));
    }
}

} // namespace
} // namespace hammerline::wording
