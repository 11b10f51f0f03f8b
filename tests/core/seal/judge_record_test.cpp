#include "seal/judge_record.h"

#include "small_pdf.h"

#include <gtest/gtest.h>

namespace hammerline::seal {
namespace {

TEST(JudgeRecord, DataThatIsNoRecordsIsToldThoughTheSealHolds)
{
    const RecordJudgement judged = judgeRecord(smallSealedRecord(), {});
    EXPECT_EQ(judged.finding, Finding::Unreadable);
    EXPECT_TRUE(judged.sealHolds());
    EXPECT_FALSE(judged.reason.empty());
    EXPECT_FALSE(judged.check);
}

TEST(JudgeRecord, AnotherKeyThanThePinnedIsToldAndNothingInsideIsRead)
{
    const RecordJudgement judged = judgeRecord(smallSealedRecord(), {.pinned = std::string(64, '0')});
    EXPECT_EQ(judged.finding, Finding::AnotherKey);
    EXPECT_EQ(judged.fingerprint, someKey().fingerprint());
}

TEST(JudgeRecord, AKeyUnderTheNameOfATrustedOneIsToldApartButNotWhereItIsPinned)
{
    ExpectedKeys expected{.trusted = {{std::string(64, 'a'), someKey().name()}}};
    EXPECT_EQ(judgeRecord(smallSealedRecord(), expected).finding, Finding::NameOfAnother);
    expected.pinned = someKey().fingerprint();
    EXPECT_EQ(judgeRecord(smallSealedRecord(), expected).finding, Finding::Unreadable);
}

TEST(JudgeRecord, SaysHowTheKeyStands)
{
    EXPECT_EQ(judgeRecord(smallSealedRecord(), {}).standing, Standing::Unlisted);
    const ExpectedKeys expected{.trusted = {{someKey().fingerprint(), "Whoever"}}};
    EXPECT_EQ(judgeRecord(smallSealedRecord(), expected).standing, Standing::Trusted);
}

TEST(JudgeRecord, OfWhatIsAlteredOrNotOursNoSignerIsNamed)
{
    std::string turned = smallSealedRecord();
    turned[turned.size() / 2] = static_cast<char>(turned[turned.size() / 2] ^ 1);
    const RecordJudgement altered = judgeRecord(turned, {});
    EXPECT_EQ(altered.finding, Finding::Altered);
    EXPECT_FALSE(altered.sealHolds());
    EXPECT_EQ(judgeRecord("a letter", {}).finding, Finding::NotOurs);
}

TEST(JudgeRecord, TheNameInACertificateIsRead)
{
    EXPECT_EQ(nameIn(someKey().certificate()), someKey().name());
    EXPECT_EQ(nameIn("no certificate"), "");
}

} // namespace
} // namespace hammerline::seal
