#include "core/logbook/logbook_fixture.h"

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

} // namespace
} // namespace hammerline::logbook
