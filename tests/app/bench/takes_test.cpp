// Further takes at the bench, and takes that differ by more than the gauge explains.
#include "app/bench/bench_desk.h"
#include "support/recording_sounder.h"

namespace hammerline::bench {
namespace {

class Takes : public BenchDesk {
protected:
    Takes()
    {
        readings::Pass pass = shop.pass;
        pass.gauge.expandedUncertainty = units::Length::millimetres(0.2);
        view.work(session(pass), catalogue::Quantity::LetOff);
    }
    void typeTake(const QString &text)
    {
        press('/');
        type(text);
    }
    [[nodiscard]] QString remark()
    {
        const auto *label = view.findChild<QLabel *>("lastRemark");
        return label->isVisibleTo(&view) ? label->text() : QString();
    }
};

TEST_F(Takes, TakesWithinTheUncertaintyAreAveragedWithoutAWord)
{
    type("3.1");
    typeTake("3.3");
    EXPECT_EQ(big("lastValue"), "3.20");
    EXPECT_EQ(remark(), "");
}

TEST_F(Takes, TakesFurtherApartAreStoredAndSaidOnce)
{
    type("3.1");
    typeTake("3.4");
    EXPECT_EQ(stored(), 2u);
    EXPECT_TRUE(remark().contains("0.30 mm")) << remark().toStdString();
    EXPECT_TRUE(remark().contains("0.20 mm")) << remark().toStdString();
    typeTake("3.20");
    EXPECT_EQ(remark(), "");
    EXPECT_EQ(stored(), 3u);
}

TEST_F(Takes, TheRemarkIsGoneWithTheNextNoteAndHeldNobodyUp)
{
    type("3.1");
    typeTake("3.5");
    EXPECT_EQ(askedNote(), "A#0");
    type("3.20");
    EXPECT_EQ(remark(), "");
}

TEST_F(Takes, ACorrectedTakeThatAgreesAgainMayDifferAnew)
{
    type("3.1");
    typeTake("3.5");
    view.undo();
    EXPECT_EQ(remark(), "");
    typeTake("3.6");
    EXPECT_NE(remark(), "");
}

TEST_F(Takes, TheVoiceSaysSoToo)
{
    support::RecordingSounder sounder;
    view.setSounder(&sounder);
    view.setHeard({false, true});
    type("3.1");
    typeTake("3.5");
    EXPECT_TRUE(sounder.said.back().contains("the takes differ")) << sounder.said.back().toStdString();
    view.setSounder(nullptr);
}

} // namespace
} // namespace hammerline::bench
