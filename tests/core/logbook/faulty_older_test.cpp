// An older logbook is brought up to date on a failing disk: it is backed up first, it is whole whatever fails, and
// nothing that stood in it is lost.

#include "core/logbook/faulty_days.h"

namespace hammerline::logbook {
namespace {

/// Whether one of the copies that lie beside it is whole; one that a power cut left half made is none.
bool isBackedUp(const std::string &path)
{
    const std::filesystem::path file(path);
    for (const auto &entry : std::filesystem::directory_iterator(file.parent_path()))
        if (entry.path().filename().string().starts_with(file.filename().string() + ".schema-"))
            try {
                if (const HistoryCheck check = verifyHistory(entry.path().string()); check.whole() && check.deeds > 0)
                    return true;
            } catch (const outcome::BrokenWorld &) {
            }
    return false;
}

std::string stateOf(const Logbook &book)
{
    std::string state = std::to_string(book.newestDeed()) + " deeds, " + book.digest(book.newestDeed());
    for (const auto &each : book.instruments())
        state += '\n' + book.handOver(each.id).value();
    return state + (isBackedUp(book.path()) ? "" : "\nno backup");
}

void step(Desk &desk, int number)
{
    switch (number) {
    case 0:
        desk.book.emplace(Logbook::open(desk.path));
        break;
    case 1:
        desk.book->enter(1, reading(letOff(60), 3'000'000), ben);
        break;
    case 2: // the evening, the next morning
        desk.book.reset();
        desk.book.emplace(Logbook::open(desk.path));
        break;
    default:
        static_cast<void>(desk.book->undo(desk.book->undoable(1).value(), ben));
    }
}

template <int structure>
class FaultyStep : public FaultyDays {
protected:
    FaultyStep()
        : FaultyDays({.steps = 4,
                      .step = step,
                      .stateOf = stateOf,
                      .kept = HAMMERLINE_SOURCE_DIR "/sample-data/logbooks/structure-" + std::to_string(structure) +
                              ".hammerline",
                      .every = 17})
    {
        EXPECT_EQ(after.front().find("no backup"), std::string::npos);
    }
};

class FirstStructureOnAFaultyDisk : public FaultyStep<1> {};
class ThirdStructureOnAFaultyDisk : public FaultyStep<3> {};

TEST_F(FirstStructureOnAFaultyDisk, AfterOneFailedCallNothingIsLostAndTheWorkGoesOn)
{
    eachFaultOnce();
}

TEST_F(FirstStructureOnAFaultyDisk, AfterADiskThatStaysBrokenAllThatStoodThereIsThere)
{
    eachFaultForGood();
}

TEST_F(FirstStructureOnAFaultyDisk, AfterAPowerCutAllThatStoodThereIsThere)
{
    eachPowerCut();
}

TEST_F(ThirdStructureOnAFaultyDisk, AfterOneFailedCallNothingIsLostAndTheWorkGoesOn)
{
    eachFaultOnce();
}

TEST_F(ThirdStructureOnAFaultyDisk, AfterADiskThatStaysBrokenAllThatStoodThereIsThere)
{
    eachFaultForGood();
}

TEST_F(ThirdStructureOnAFaultyDisk, AfterAPowerCutAllThatStoodThereIsThere)
{
    eachPowerCut();
}

} // namespace
} // namespace hammerline::logbook
