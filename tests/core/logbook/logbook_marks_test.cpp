#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

const FaultMark blocking{keyboard::Note(40), "blocking"};
const FaultMark click{keyboard::Note(3), "click"};

TEST_F(LogbookTest, MarksComeByNoteAndStayAfterReopening)
{
    {
        Logbook logbook = withPass();
        EXPECT_TRUE(logbook.markFault(1, blocking, ada));
        EXPECT_TRUE(logbook.markFault(1, click, ada));
        EXPECT_TRUE(logbook.markFault(1, {keyboard::Note(40), "a \"free\" id"}, ada));
    }
    EXPECT_EQ(Logbook::open(file()).faultMarks(1),
              (std::vector{click, FaultMark{keyboard::Note(40), "a \"free\" id"}, blocking}));
}

TEST_F(LogbookTest, MarkingTwiceOrClearingNothingWritesNothing)
{
    Logbook logbook = withPass();
    EXPECT_FALSE(logbook.clearFault(1, blocking, ada));
    EXPECT_TRUE(logbook.markFault(1, blocking, ada));
    EXPECT_FALSE(logbook.markFault(1, blocking, ben));
    EXPECT_EQ(logbook.newestDeed(), 4);
    EXPECT_TRUE(logbook.clearFault(1, blocking, ben, "eased the centre"));
    EXPECT_TRUE(logbook.faultMarks(1).empty());
    EXPECT_EQ(logbook.deed(5)->name, "fault-cleared");
    EXPECT_EQ(logbook.deed(5)->subject, "blocking C4");
    EXPECT_TRUE(logbook.markFault(1, blocking, ben));
    EXPECT_EQ(logbook.faultMarks(1), std::vector{blocking});
}

TEST_F(LogbookTest, TheRouteAndAConfirmedSlipStayAfterReopening)
{
    const PassRoute route{"chromatic", "let_off tenths 2"};
    const ConfirmedSlip slip{{catalogue::Quantity::LetOff, keyboard::Note(3), 2},
                             units::Amount(units::Length::millimetres(9)),
                             "far-from-neighbours"};
    {
        Logbook logbook = withPass();
        EXPECT_FALSE(logbook.route(1));
        logbook.chooseRoute(1, route, ada);
        logbook.confirmSlip(1, slip, ada);
    }
    Logbook again = Logbook::open(file());
    EXPECT_EQ(again.route(1), route);
    EXPECT_EQ(again.confirmedSlips(1), std::vector{slip});
    again.undo(*again.undoable(1), ada);
    EXPECT_TRUE(again.confirmedSlips(1).empty());
}

TEST_F(LogbookTest, AConfirmedReadingIsOneDeedUndoneAndRedoneWithItsMark)
{
    Logbook logbook = withPass();
    const readings::Reading nine = reading(letOff(3), 9);
    const std::vector slip{ConfirmedSlip{nine.place, nine.value, "ten-times-off"}};
    const DeedId before = logbook.newestDeed();
    EXPECT_EQ(logbook.enterOver(std::nullopt, 1, nine, ada, {}, "ten-times-off"), before + 1);
    EXPECT_EQ(logbook.newestDeed(), before + 1);
    EXPECT_EQ(logbook.confirmedSlips(1), slip);
    logbook.undo(*logbook.undoable(1), ada);
    EXPECT_TRUE(logbook.readings(1).empty());
    EXPECT_TRUE(logbook.confirmedSlips(1).empty());
    logbook.redo(*logbook.redoable(1), ada);
    EXPECT_EQ(logbook.readings(1).size(), 1u);
    EXPECT_EQ(logbook.confirmedSlips(1), slip);
    EXPECT_TRUE(verifyHistory(file()).whole());
}

TEST_F(LogbookTest, MarksCanBeUndone)
{
    Logbook logbook = withPass();
    logbook.markFault(1, blocking, ada);
    logbook.undo(logbook.undoable(1).value(), ada);
    EXPECT_TRUE(logbook.faultMarks(1).empty());
    logbook.redo(logbook.redoable(1).value(), ada);
    EXPECT_EQ(logbook.faultMarks(1), std::vector{blocking});
}

TEST_F(LogbookTest, ThePassRemembersWhatItIsJudgedBy)
{
    Logbook logbook = withPass();
    EXPECT_FALSE(logbook.tolerance(1).has_value());
    logbook.rememberTolerance(1, {"first", "{}"}, ada);
    logbook.rememberTolerance(1, {"second", "{\"x\": 1}"}, ada);
    EXPECT_EQ(logbook.tolerance(1), (PassTolerance{"second", "{\"x\": 1}"}));
    logbook.undo(logbook.undoable(1).value(), ada);
    EXPECT_EQ(logbook.tolerance(1), (PassTolerance{"first", "{}"}));
}

} // namespace
} // namespace hammerline::logbook
