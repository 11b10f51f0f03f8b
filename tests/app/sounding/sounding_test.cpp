#include "sounding/sounding.h"

#include "support/recording_sounder.h"

#include <QCoreApplication>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::sounding {
namespace {

tolerance::Verdict verdictWith(tolerance::Status status, int deviationMicrometres)
{
    tolerance::Verdict verdict;
    verdict.status = status;
    verdict.deviation = units::Length::nanometres(1000 * deviationMicrometres);
    return verdict;
}

TEST(Sounding, EveryVerdictHasItsTone)
{
    using tolerance::Status;
    EXPECT_EQ(toneOf(verdictWith(Status::In, 100)), ToneKind::In);
    EXPECT_EQ(toneOf(verdictWith(Status::Marginal, 0)), ToneKind::Marginal);
    EXPECT_EQ(toneOf(verdictWith(Status::Marginal, -100)), ToneKind::MarginalLow);
    EXPECT_EQ(toneOf(verdictWith(Status::Marginal, 100)), ToneKind::MarginalHigh);
    EXPECT_EQ(toneOf(verdictWith(Status::Out, -100)), ToneKind::OutLow);
    EXPECT_EQ(toneOf(verdictWith(Status::Out, 100)), ToneKind::OutHigh);
    EXPECT_EQ(toneOf({}), ToneKind::Taken) << "read, not judged";
}

TEST(Sounding, NothingReadIsNotHeard)
{
    EXPECT_EQ(toneOf(verdictWith(tolerance::Status::Missing, 0)), std::nullopt);
}

/// Points every sound server that Qt may find to where there is none, and keeps what Qt says.
class WithoutASoundServer : public testing::Test {
protected:
    WithoutASoundServer()
    {
        qputenv("PULSE_SERVER", "unix:/nonexistent/pulse");
        qputenv("PULSE_CLIENTCONFIG", "/dev/null");
    }
};

TEST_F(WithoutASoundServer, TonesAndWordsAreSilentAndHarmTheProgramNothing)
{
    testing::internal::CaptureStderr();
    {
        const auto sounder = makeSounder();
        EXPECT_FALSE(sounder->available().tones);
        for (int kind = 0; kind < toneKindCount; ++kind)
            sounder->tone(static_cast<ToneKind>(kind));
        sounder->say(QStringLiteral("C sharp 4, three point one, a little low"));
        sounder->say({});
        QCoreApplication::processEvents();
    }
    const std::string remarks = testing::internal::GetCapturedStderr();
    EXPECT_EQ(remarks.find("PulseAudio"), std::string::npos) << remarks;
    EXPECT_EQ(remarks.find("plug-ins"), std::string::npos) << remarks;
}

TEST_F(WithoutASoundServer, OtherRemarksOfQtAreHeardAsBefore)
{
    const auto sounder = makeSounder();
    (void)sounder->available();
    testing::internal::CaptureStderr();
    qWarning("No text-to-speech plug-ins: said by somebody else");
    EXPECT_THAT(testing::internal::GetCapturedStderr(), testing::HasSubstr("somebody else"));
}

TEST(Sounding, TheSilentSounderOffersNothing)
{
    SilentSounder sounder;
    sounder.tone(ToneKind::In);
    sounder.say(QStringLiteral("in"));
    EXPECT_EQ(sounder.available(), Available{});
}

TEST(Sounding, TheRecordingSounderRemembersInOrder)
{
    support::RecordingSounder sounder;
    sounder.tone(ToneKind::OutLow);
    sounder.tone(ToneKind::In);
    sounder.say(QStringLiteral("C 4"));
    EXPECT_THAT(sounder.tones, testing::ElementsAre(ToneKind::OutLow, ToneKind::In));
    EXPECT_EQ(sounder.said, QStringList{QStringLiteral("C 4")});
}

} // namespace
} // namespace hammerline::sounding
