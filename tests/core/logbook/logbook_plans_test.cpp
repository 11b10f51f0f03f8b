#include "core/logbook/logbook_fixture.h"

#include "logbook/verify_history.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using std::chrono::seconds;

TEST_F(LogbookTest, APlanIsKeptWithItsPassAndAnotherOneFollowsIt)
{
    {
        Logbook logbook = withPass();
        EXPECT_FALSE(logbook.keptPlan(1).has_value());
        logbook.keepPlan(1, "{\"aim\":\"in\"}", ada);
        logbook.keepPlan(1, "{\"aim\":\"target\"}", ben);
    }
    Logbook logbook = Logbook::open(file());
    EXPECT_EQ(logbook.keptPlan(1), "{\"aim\":\"target\"}");
    logbook.undo(logbook.undoable(1).value(), ada);
    EXPECT_EQ(logbook.keptPlan(1), "{\"aim\":\"in\"}");
}

TEST_F(LogbookTest, WorkIsLoggedOnceWithPersonMomentAndMinutes)
{
    Logbook logbook = withPass();
    EXPECT_TRUE(logbook.logWork(1, "let_off 40", seconds(30), ada));
    EXPECT_FALSE(logbook.logWork(1, "let_off 40", seconds(30), ben));
    const auto done = logbook.workDone(1);
    ASSERT_EQ(done.size(), 1U);
    EXPECT_EQ(done[0], (WorkDone{"let_off 40", seconds(30), ada.person, ada.at}));
}

TEST_F(LogbookTest, WorkThatIsTakenBackStaysInTheHistory)
{
    Logbook logbook = withPass();
    EXPECT_FALSE(logbook.takeBackWork(1, "let_off 40", ada));
    logbook.logWork(1, "let_off 40", seconds(30), ada);
    EXPECT_TRUE(logbook.takeBackWork(1, "let_off 40", ben));
    EXPECT_TRUE(logbook.workDone(1).empty());
    EXPECT_EQ(logbook.deed(logbook.newestDeed())->name, "work-taken-back");
    EXPECT_TRUE(logbook.logWork(1, "let_off 40", seconds(30), ben));
    EXPECT_EQ(logbook.workDone(1).front().person, ben.person);
}

TEST_F(LogbookTest, TheSetupOfAnActionIsTheInstrumentsAndAnotherOneFollowsIt)
{
    {
        Logbook logbook = withPass();
        EXPECT_FALSE(logbook.actionSetup(1).has_value());
        logbook.chooseActionSetup(1, {"first setup", "in"}, ada);
        logbook.chooseActionSetup(1, {"measured setup", "target"}, ben);
    }
    Logbook logbook = Logbook::open(file());
    EXPECT_EQ(logbook.actionSetup(1), (ActionSetup{"measured setup", "target"}));
    logbook.undo(logbook.undoableOfInstrument(1).value(), ada);
    EXPECT_EQ(logbook.actionSetup(1), (ActionSetup{"first setup", "in"}));
    EXPECT_TRUE(verifyHistory(file()).whole());
    EXPECT_THROW(logbook.chooseActionSetup(7, {"setup", "in"}, ada), outcome::BrokenWorld);
}

} // namespace
} // namespace hammerline::logbook
