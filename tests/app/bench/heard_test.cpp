// What the bench lets be heard while a pass is typed.
#include "app/bench/bench_desk.h"
#include "support/recording_sounder.h"

#include <QSettings>
#include <QTemporaryDir>

namespace hammerline::bench {
namespace {

using sounding::ToneKind;

class HeardDesk : public BenchDesk {
protected:
    HeardDesk() { view.setSounder(&sounder); }
    void switchOn(bool tones, bool speech)
    {
        view.setHeard({tones, speech});
        sounder.said.clear();
    }

    support::RecordingSounder sounder;
};

TEST_F(HeardDesk, NothingIsHeardBeforeItIsSwitchedOn)
{
    type("3.1");
    type("abc");
    EXPECT_TRUE(sounder.tones.empty());
    EXPECT_TRUE(sounder.said.isEmpty());
}

TEST_F(HeardDesk, EachVerdictHasItsToneAndEachQuestionToo)
{
    switchOn(true, false);
    type("3.1");
    type("4.2");
    type("2.2");
    type("abc");
    press(Qt::Key_Escape);
    type("31");
    EXPECT_EQ(sounder.tones,
              (std::vector{ToneKind::In, ToneKind::OutHigh, ToneKind::OutLow, ToneKind::Doubt, ToneKind::Doubt}));
    EXPECT_TRUE(sounder.said.isEmpty());
}

TEST_F(HeardDesk, WhatWasTakenAndWhatIsAskedNextAreOneUtterance)
{
    switchOn(false, true);
    type("3.1");
    EXPECT_EQ(sounder.said.join('|').toStdString(), "three point one, in. A sharp 0");
    EXPECT_TRUE(sounder.tones.empty());
}

TEST_F(HeardDesk, GoingElsewhereSaysWhereAndStayingSaysNothing)
{
    switchOn(false, true);
    press(Qt::Key_Down);
    view.refresh();
    view.setForm({});
    view.ask(catalogue::Quantity::Drop, keyboard::Note(40));
    EXPECT_EQ(sounder.said.join('|').toStdString(), "A sharp 0|C 4, Drop");
}

TEST_F(HeardDesk, AWholePassIsHeardToItsEnd)
{
    switchOn(true, true);
    for (int note = 1; note <= 88; ++note)
        type("3.1");
    EXPECT_EQ(sounder.tones.size(), 88u);
    EXPECT_EQ(sounder.said.size(), 88);
    EXPECT_EQ(sounder.said.back(), "three point one, in. end of the route");
}

TEST_F(HeardDesk, TheChoiceIsRemembered)
{
    const QTemporaryDir folder;
    QSettings settings(folder.filePath("settings.ini"), QSettings::IniFormat);
    EXPECT_EQ(HeardChoice::from(settings), HeardChoice());
    HeardChoice{true, false}.store(settings);
    EXPECT_EQ(HeardChoice::from(settings), (HeardChoice{true, false}));
}

} // namespace
} // namespace hammerline::bench
