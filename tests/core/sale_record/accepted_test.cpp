// What was accepted in earlier passes stays told until the note has been read again and is as promised.

#include "sale_record/accepted.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::sale_record {
namespace {

using catalogue::Quantity;
using decisions::Kind;
using keyboard::Note;
using readings::Purpose;
using units::Amount;
using units::Length;

Amount mm(double value)
{
    return Length::millimetres(value);
}

/// Let-off 3 mm with limits 2 and 4, on every note.
tolerance::ToleranceSet letOffOnly()
{
    tolerance::ToleranceSet set;
    tolerance::Point point;
    point.note = Note(1);
    point.low = mm(2);
    point.target = mm(3);
    point.high = mm(4);
    set.entries[Quantity::LetOff].both = {point};
    return set;
}

/// A pass that reads let-off on notes; the day is its number.
DecidedPass passWith(readings::PassId id, const std::map<int, double> &letOff)
{
    DecidedPass pass;
    pass.pass.id = id;
    pass.pass.began = readings::Instant(std::chrono::hours(24 * id));
    std::vector<readings::Reading> taken;
    for (const auto &[note, value] : letOff) {
        readings::Reading reading;
        reading.place = {Quantity::LetOff, Note(note), 1};
        reading.value = mm(value);
        taken.push_back(reading);
    }
    pass.judgement = tolerance::judge(readings::meansOf(taken), letOffOnly(), {Note(40), Note(44)}, {});
    return pass;
}

void accept(DecidedPass &pass, int note, Kind kind, std::optional<Amount> value)
{
    pass.decided.concessions.push_back(
        {Quantity::LetOff, Note(note), kind, value, "the rail is bent here", "Lead One", pass.pass.began});
}

EarlierConcession only(const std::vector<EarlierConcession> &all)
{
    EXPECT_EQ(all.size(), 1u);
    return all.empty() ? EarlierConcession{} : all.front();
}

TEST(Accepted, ANoteThatNobodyReadAgainStandsAsItWasAccepted)
{
    std::vector<DecidedPass> passes{passWith(1, {{40, 5}}), passWith(2, {{41, 3}})};
    accept(passes[0], 40, Kind::Out, mm(5));
    const EarlierConcession earlier = only(earlierConcessionsOf(passes));
    EXPECT_EQ(earlier.fate, Fate::Stands);
    EXPECT_EQ(earlier.valueNow, std::nullopt);
    EXPECT_EQ(earlier.pass.id, 1);
    EXPECT_EQ(earlier.made.reason, "the rail is bent here");
}

TEST(Accepted, ANoteThatIsStillOutStandsWithItsNewValue)
{
    std::vector<DecidedPass> passes{passWith(1, {{40, 5}}), passWith(2, {{40, 5.5}})};
    accept(passes[0], 40, Kind::Out, mm(5));
    const EarlierConcession earlier = only(earlierConcessionsOf(passes));
    EXPECT_EQ(earlier.fate, Fate::Stands);
    EXPECT_EQ(earlier.made.value, mm(5));
    EXPECT_EQ(earlier.valueNow, mm(5.5));
}

TEST(Accepted, ANoteReadSinceWithinItsLimitsIsMendedThoughTheLastPassLeavesItOut)
{
    std::vector<DecidedPass> passes{passWith(1, {{40, 5}}), passWith(2, {{40, 3}}), passWith(3, {{41, 3}})};
    accept(passes[0], 40, Kind::Out, mm(5));
    const EarlierConcession earlier = only(earlierConcessionsOf(passes));
    EXPECT_EQ(earlier.fate, Fate::Mended);
    EXPECT_EQ(earlier.valueNow, mm(3));
}

TEST(Accepted, ANoteMendedAndOutAgainStandsOnceMore)
{
    std::vector<DecidedPass> passes{passWith(1, {{40, 5}}), passWith(2, {{40, 3}}), passWith(3, {{40, 5}})};
    accept(passes[0], 40, Kind::Out, mm(5));
    EXPECT_EQ(only(earlierConcessionsOf(passes)).fate, Fate::Stands);
}

TEST(Accepted, AMissingNoteStandsUntilItIsRead)
{
    std::vector<DecidedPass> passes{passWith(1, {{41, 3}}), passWith(2, {{41, 3}})};
    accept(passes[0], 40, Kind::Missing, std::nullopt);
    EXPECT_EQ(only(earlierConcessionsOf(passes)).fate, Fate::Stands);
    passes.push_back(passWith(3, {{40, 3}, {41, 3}}));
    EXPECT_EQ(only(earlierConcessionsOf(passes)).fate, Fate::Mended);
}

TEST(Accepted, ALaterConcessionTakesThePlaceOfTheEarlier)
{
    std::vector<DecidedPass> passes{passWith(1, {{40, 5}}), passWith(2, {{40, 5.5}})};
    accept(passes[0], 40, Kind::Out, mm(5));
    accept(passes[1], 40, Kind::Out, mm(5.5));
    EXPECT_EQ(only(earlierConcessionsOf(passes)).fate, Fate::AcceptedAgain);
    EXPECT_EQ(concessionsOf(passes[1].judgement, passes[1].decided).size(), 1u);
}

TEST(Accepted, ReadAnewInTheSamePassItIsToldAsEarlierToo)
{
    std::vector<DecidedPass> passes{passWith(1, {{40, 3}})};
    accept(passes[0], 40, Kind::Out, mm(5));
    EXPECT_EQ(only(earlierConcessionsOf(passes)).fate, Fate::Mended);
    EXPECT_TRUE(concessionsOf(passes[0].judgement, passes[0].decided).empty());
}

TEST(Accepted, WhatHoldsInTheLastPassIsNoEarlierOne)
{
    std::vector<DecidedPass> passes{passWith(1, {{40, 5}})};
    accept(passes[0], 40, Kind::Out, mm(5));
    EXPECT_TRUE(earlierConcessionsOf(passes).empty());
}

TEST(Accepted, AQuantityThatTheSetJudgesNoMoreCountsNotAsMended)
{
    std::vector<DecidedPass> passes{passWith(1, {{40, 5}}), passWith(2, {{40, 3}})};
    accept(passes[0], 40, Kind::Out, mm(5));
    for (DecidedPass &pass : passes)
        for (tolerance::Verdict &verdict : pass.judgement.verdicts)
            verdict.status = tolerance::Status::Unjudged;
    EXPECT_EQ(only(earlierConcessionsOf(passes)).fate, Fate::Stands);
}

} // namespace
} // namespace hammerline::sale_record
