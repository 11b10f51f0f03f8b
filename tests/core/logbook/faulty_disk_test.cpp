// The bench's day on a failing disk: readings entered, corrected, withdrawn, imported, undone.

#include "core/logbook/faulty_days.h"

namespace hammerline::logbook {
namespace {

std::string stateOf(const Logbook &book)
{
    std::string state =
        std::to_string(book.newestDeed()) + " deeds, " + std::to_string(book.instruments().size()) + " instruments";
    for (const readings::PassId pass : {1, 2})
        for (const auto &found : book.readings(pass))
            state += '\n' + std::to_string(pass) + ' ' + found.place.note.name() + ' ' +
                     std::to_string(found.place.take) + ' ' + units::exactDecimal(found.value) + ' ' + found.typed;
    return state;
}

std::vector<readings::Reading> wholePass()
{
    std::vector<readings::Reading> many;
    for (int note = 1; note <= 88; ++note)
        many.push_back(reading(letOff(note), note, "typed on note " + std::to_string(note)));
    return many;
}

void step(Desk &desk, int number)
{
    switch (number) {
    case 0:
        desk.book.emplace(Logbook::create(desk.path, ada).value());
        break;
    case 1:
        static_cast<void>(desk.book->addInstrument(upright(), ada).value());
        break;
    case 2:
        static_cast<void>(desk.book->beginPass({.instrument = 1, .began = moment(1)}, ada));
        break;
    case 6: // corrected
        desk.book->enter(1, reading(letOff(3), 33), ben, "slipped");
        break;
    case 7:
        static_cast<void>(desk.book->withdraw(1, letOff(4), ben, "gauge fell"));
        break;
    case 8:
        static_cast<void>(desk.book->importPass({.instrument = 1, .began = moment(2)}, wholePass(), ada));
        break;
    case 9: // the evening, the next morning
        desk.book.reset();
        desk.book.emplace(Logbook::open(desk.path));
        break;
    case 11:
        static_cast<void>(desk.book->undo(desk.book->undoable(1).value(), ben));
        break;
    default:
        desk.book->enter(1, reading(letOff(number), number), ada);
    }
}

class FaultyDiskTest : public FaultyDays {
protected:
    FaultyDiskTest() : FaultyDays({.steps = 13, .step = step, .stateOf = stateOf}) {}
};

TEST_F(FaultyDiskTest, AfterOneFailedCallNothingIsLostAndTheWorkGoesOn)
{
    eachFaultOnce();
}

TEST_F(FaultyDiskTest, AfterADiskThatStaysBrokenAllThatWasAcknowledgedIsThere)
{
    eachFaultForGood();
}

TEST_F(FaultyDiskTest, AfterAPowerCutThatDropsAndTearsUnflushedWritesAllThatWasAcknowledgedIsThere)
{
    eachPowerCut();
}

TEST_F(FaultyDiskTest, WithoutFlushesACutWouldLoseReadingsSoTheseTestsCanFail)
{
    disk.forgetFlushes();
    int lost = 0;
    for (unsigned seed = 1; seed <= 10; ++seed)
        lost += survivesCut(calls - 20, seed) ? 0 : 1;
    EXPECT_GT(lost, 0);
}

} // namespace
} // namespace hammerline::logbook
