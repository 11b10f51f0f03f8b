// What the lead decided changes what waits.
#include "review/review.h"

#include <gtest/gtest.h>

namespace hammerline::review {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using tolerance::Status;

tolerance::Verdict letOff(int note, Status status, double millimetres)
{
    tolerance::Verdict verdict;
    verdict.quantity = Quantity::LetOff;
    verdict.note = Note(note);
    verdict.status = status;
    if (status != Status::Missing)
        verdict.value = units::Length::millimetres(millimetres);
    return verdict;
}

decisions::Decision about(int note, Kind kind, double millimetres)
{
    decisions::Decision decision;
    decision.quantity = Quantity::LetOff;
    decision.note = Note(note);
    decision.kind = kind;
    decision.value = units::Length::millimetres(millimetres);
    decision.words = "said";
    return decision;
}

JudgedPass judged(std::vector<tolerance::Verdict> verdicts)
{
    return {.instrument = 1, .pass = 7, .judgement = {std::move(verdicts)}};
}

TEST(ReviewDecisions, AnAcceptedItemWaitsNoLongerAndIsToldApart)
{
    JudgedPass pass = judged({letOff(1, Status::Out, 5), letOff(2, Status::Out, 6)});
    pass.decided.concessions = {about(1, Kind::Out, 5)};
    ASSERT_EQ(itemsOf(pass).size(), 1u);
    EXPECT_EQ(itemsOf(pass)[0].verdict.note, Note(2));
    ASSERT_EQ(concededOf(pass).size(), 1u);
    EXPECT_EQ(concededOf(pass)[0].decision.words, "said");
}

TEST(ReviewDecisions, AnotherValueOpensAnAcceptedItemAgain)
{
    JudgedPass pass = judged({letOff(1, Status::Out, 5.1)});
    pass.decided.concessions = {about(1, Kind::Out, 5)};
    ASSERT_EQ(itemsOf(pass).size(), 1u);
    EXPECT_EQ(itemsOf(pass)[0].course, Course::Open);
    EXPECT_TRUE(concededOf(pass).empty());
}

TEST(ReviewDecisions, WhatWasSentBackStaysUntilItIsMended)
{
    JudgedPass pass = judged({letOff(1, Status::Out, 5)});
    pass.decided.sentBack = {about(1, Kind::Out, 5)};
    ASSERT_EQ(itemsOf(pass).size(), 1u);
    EXPECT_EQ(itemsOf(pass)[0].course, Course::SentBack);

    pass.judgement.verdicts = {letOff(1, Status::Out, 4.5)};
    ASSERT_EQ(itemsOf(pass).size(), 1u);
    EXPECT_EQ(itemsOf(pass)[0].course, Course::ReadAgain);
    EXPECT_TRUE(mendedOf(pass).empty());

    pass.judgement.verdicts = {letOff(1, Status::In, 3)};
    EXPECT_TRUE(itemsOf(pass).empty());
    ASSERT_EQ(mendedOf(pass).size(), 1u);
    EXPECT_EQ(mendedOf(pass)[0].item.kind, Kind::Out);
}

TEST(ReviewDecisions, WhatIsMendedAtItsNeighbourIsListedThoughItsOwnValueStayed)
{
    JudgedPass pass = judged({letOff(1, Status::In, 3)});
    pass.decided.sentBack = {about(1, Kind::Uneven, 3)};
    EXPECT_TRUE(itemsOf(pass).empty());
    ASSERT_EQ(mendedOf(pass).size(), 1u) << "nothing leaves silently";
    EXPECT_EQ(mendedOf(pass)[0].item.kind, Kind::Uneven);
}

TEST(ReviewDecisions, TheWordOfAnOlderPassGoesAlongToTheNewerOneThatReadTheNote)
{
    JudgedPass older = judged({letOff(1, Status::Out, 5), letOff(2, Status::Out, 5), letOff(3, Status::Out, 5)});
    older.decided.sentBack = {about(1, Kind::Out, 5), about(2, Kind::Out, 5), about(3, Kind::Out, 5)};
    JudgedPass newer = judged({letOff(1, Status::In, 3), letOff(2, Status::Out, 4.5), letOff(3, Status::Missing, 0)});
    takeWordsAlong(older, newer);
    ASSERT_EQ(mendedOf(newer).size(), 1u);
    EXPECT_EQ(mendedOf(newer)[0].item.verdict.note, Note(1));
    const auto items = itemsOf(newer);
    ASSERT_EQ(items.size(), 2u);
    EXPECT_EQ(items[0].course, Course::ReadAgain);
    EXPECT_EQ(items[1].course, Course::Open) << "not read there: it waits in the older pass";
    older.decided.sentBack[0].words = "older still";
    takeWordsAlong(older, newer);
    EXPECT_EQ(mendedOf(newer)[0].decision.words, "said") << "the newer word stands";
}

TEST(ReviewDecisions, AnItemTellsWhoReadItLastAndWhen)
{
    JudgedPass pass = judged({letOff(1, Status::Out, 5), letOff(2, Status::Missing, 0)});
    const readings::Instant noon{std::chrono::hours(12)};
    pass.person = "Ada";
    pass.readings = {{.place = {Quantity::LetOff, Note(1), 1}, .person = "Ben", .at = noon},
                     {.place = {Quantity::LetOff, Note(1), 2}, .person = "Cid", .at = noon + std::chrono::hours(1)}};
    const auto items = itemsOf(pass);
    ASSERT_EQ(items.size(), 2u);
    EXPECT_EQ(items[0].person, "Cid");
    EXPECT_EQ(items[0].at, noon + std::chrono::hours(1));
    EXPECT_EQ(items[1].person, "Ada");
}

TEST(ReviewDecisions, WhatWasSentBackIsLeftBehindUntilANewerPassJudgesIt)
{
    JudgedPass older = judged({letOff(1, Status::Out, 5), letOff(2, Status::Out, 5), letOff(3, Status::Out, 5)});
    older.decided.sentBack = {about(1, Kind::Out, 5), about(2, Kind::Out, 5)};
    const JudgedPass newer = judged({letOff(1, Status::In, 3)});
    const auto items = itemsOf(leftBehind(older, {newer}));
    ASSERT_EQ(items.size(), 1u);
    EXPECT_EQ(items[0].verdict.note, Note(2));
}

} // namespace
} // namespace hammerline::review
