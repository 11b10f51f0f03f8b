// A day of all that stands beside the readings, on a failing disk: particulars, marks, the plan and its work, the set
// that was chosen, photographs, a study struck, and an instrument brought together with what another workshop did to
// it.

#include "core/logbook/faulty_days.h"
#include "logbook/gauge_studies.h"
#include "logbook/hand_over.h"
#include "support/small_jpeg.h"

#include <set>

namespace hammerline::logbook {
namespace {

using keyboard::Note;

std::string uidOf(char digit)
{
    return std::string(32, digit);
}

std::string stateOf(const Logbook &book)
{
    std::string state = std::to_string(book.newestDeed()) + " deeds, " + book.digest(book.newestDeed());
    for (const auto &each : book.instruments())
        state += '\n' + book.handOver(each.id).value();
    return state;
}

/// How the day begins, here and in the other workshop.
void begin(Logbook &book)
{
    auto piano = upright();
    piano.uid = uidOf('a');
    static_cast<void>(book.addInstrument(piano, ada).value());
}

void beginPass(Logbook &book)
{
    static_cast<void>(book.beginPass({.uid = uidOf('b'), .instrument = 1, .began = moment(1)}, ada));
}

/// The other workshop goes on with the instrument; written once, on a sound disk.
const std::string &whatOthersDid()
{
    static const std::string document = [] {
        const auto path = std::filesystem::temp_directory_path() / ("others-" + std::to_string(getpid()));
        std::filesystem::remove(path);
        std::string text;
        {
            auto book = Logbook::create(path.string(), ben).value();
            begin(book);
            beginPass(book);
            book.enter(1, reading(letOff(70), 3'100'000), ben);
            static_cast<void>(book.addWork(1, {.uid = uidOf('f'), .what = "dampers"}, ben).value());
            text = book.handOver(1).value();
        }
        std::filesystem::remove(path);
        return text;
    }();
    return document;
}

const PassTolerance chosenSet{.id = "house", .text = "{}"};
const ConfirmedSlip slip{letOff(41), units::Length::nanometres(31'000'000), "slipped-decimal"};

using Work = void (*)(Logbook &book);
constexpr Work atTheBench[] = {
    begin,
    beginPass,
    [](Logbook &book) {
        auto piano = book.instrument(1).value();
        piano.owner = "a school";
        static_cast<void>(book.changeInstrument(piano, ben, "was forgotten").value());
    },
    [](Logbook &book) {
        auto pass = book.pass(1).value();
        pass.gauge.name = "rule";
        book.changePass(pass, ben, "was forgotten");
    },
    [](Logbook &book) { book.rememberTolerance(1, chosenSet, ada); },
    [](Logbook &book) { book.chooseRoute(1, {.route = "by-note", .typing = "mm"}, ada); },
    [](Logbook &book) { book.enter(1, reading(letOff(40), 30'000'000), ada, {}, slip.suspicion); },
    [](Logbook &book) { book.enter(1, reading(letOff(41), 31'000'000), ada); },
    [](Logbook &book) { book.confirmSlip(1, slip, ada); },
    [](Logbook &book) {
        static_cast<void>(
            book.enterOver(units::Length::nanometres(31'000'000), 1, reading(letOff(41), 3'000'000), ben).value());
    },
    [](Logbook &book) {
        static_cast<void>(book.markFault(1, {Note(42), "blocking"}, ada));
    },
    [](Logbook &book) {
        static_cast<void>(book.clearFault(1, {Note(42), "blocking"}, ben, "eased"));
    },
    [](Logbook &book) { book.keepPlan(1, std::string(9000, 'p'), ada); }, // larger than a page
    [](Logbook &book) { static_cast<void>(book.logWork(1, "let_off 40", std::chrono::seconds(90), ada)); },
    [](Logbook &book) { static_cast<void>(book.takeBackWork(1, "let_off 40", ben)); },
    [](Logbook &book) { static_cast<void>(book.undo(book.undoable(1).value(), ben)); },
    [](Logbook &book) { static_cast<void>(book.redo(book.redoable(1).value(), ben)); },
};

constexpr Work atTheDesk[] = {
    [](Logbook &book) { static_cast<void>(book.addWork(1, {.uid = uidOf('c'), .what = "hammers"}, ada).value()); },
    [](Logbook &book) {
        static_cast<void>(
            book.changeWork(1, {.uid = uidOf('c'), .what = "hammers and butts"}, ben, "all of it").value());
    },
    [](Logbook &book) {
        static_cast<void>(book.addPhotograph(1, {.uid = uidOf('d')}, support::smallJpeg(8, 8), ada).value());
    },
    [](Logbook &book) {
        static_cast<void>(book.changePhotograph(1, {.uid = uidOf('d'), .caption = "the action"}, ben).value());
    },
    [](Logbook &book) { static_cast<void>(book.removePhotograph(1, uidOf('d'), ben)); },
    [](Logbook &book) { static_cast<void>(book.takeOver(whatOthersDid(), "others.json", ben, anySet).value()); },
    [](Logbook &book) {
        const analysis::StudyPlan plan{.notes = {Note(5), Note(40)}, .people = {"Ada", "Ben"}, .takes = 2, .seed = 11};
        static_cast<void>(GaugeStudies(book).plan({.gauge = {.name = "rule"}, .plan = plan}, ben).value());
    },
    [](Logbook &book) { static_cast<void>(GaugeStudies(book).strike(1, ben, "another rule")); },
};

constexpr int steps = 1 + static_cast<int>(std::size(atTheBench)) + static_cast<int>(std::size(atTheDesk));

void step(Desk &desk, int number)
{
    if (number == 0) {
        desk.book.emplace(Logbook::create(desk.path, ada).value());
        return;
    }
    const auto index = static_cast<std::size_t>(number) - 1;
    const Work work = index < std::size(atTheBench) ? atTheBench[index] : atTheDesk[index - std::size(atTheBench)];
    work(*desk.book);
}

class FaultyMarksTest : public FaultyDays {
protected:
    FaultyMarksTest() : FaultyDays({.steps = steps, .step = step, .stateOf = stateOf, .every = 29})
    {
        EXPECT_EQ(std::set(after.begin(), after.end()).size(), after.size()) << "a step did nothing";
    }
};

TEST_F(FaultyMarksTest, AfterOneFailedCallNothingIsLostAndTheWorkGoesOn)
{
    eachFaultOnce();
}

TEST_F(FaultyMarksTest, AfterADiskThatStaysBrokenAllThatWasAcknowledgedIsThere)
{
    eachFaultForGood();
}

TEST_F(FaultyMarksTest, AfterAPowerCutAllThatWasAcknowledgedIsThere)
{
    eachPowerCut();
}

} // namespace
} // namespace hammerline::logbook
