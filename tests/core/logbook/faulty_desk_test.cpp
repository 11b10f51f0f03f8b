// The lead's day on a failing disk: the file of an instrument, decisions, signature and revision, a spot check, a
// backup and an instrument taken over from another logbook.

#include "core/logbook/faulty_days.h"
#include "logbook/gauge_studies.h"
#include "logbook/hand_over.h"
#include "support/small_jpeg.h"

namespace hammerline::logbook {
namespace {

using decisions::Decision;
using keyboard::Note;

std::string uidOf(char digit)
{
    return std::string(32, digit);
}

const analysis::StudyPlan studyPlan{.notes = {Note(5), Note(40)}, .people = {"Ada", "Ben"}, .takes = 2, .seed = 11};

/// Everything there is about every instrument, and the pictures; the digest covers the rest.
std::string stateOf(const Logbook &book)
{
    std::string state = std::to_string(book.newestDeed()) + " deeds, " + book.digest(book.newestDeed());
    for (const auto &each : book.instruments())
        state += '\n' + book.handOver(each.id).value();
    return state;
}

std::vector<readings::Reading> octave()
{
    std::vector<readings::Reading> many;
    for (int note = 40; note <= 52; ++note)
        many.push_back(reading(letOff(note), 3'000'000 + note, "3"));
    return many;
}

Decision about(int note, const std::string &words)
{
    Decision item{.quantity = catalogue::Quantity::LetOff, .note = Note(note), .words = words};
    item.value = units::Length::nanometres(3'000'000 + note);
    return item;
}

/// Another workshop's piano; it is written once, on a sound disk.
const std::string &handedOver()
{
    static const std::string document = [] {
        auto one = upright("From elsewhere");
        one.uid = uidOf('e');
        const auto path = std::filesystem::temp_directory_path() / ("elsewhere-" + std::to_string(getpid()));
        std::filesystem::remove(path);
        std::string text;
        {
            auto book = Logbook::create(path.string(), ben).value();
            static_cast<void>(book.addInstrument(one, ben).value());
            static_cast<void>(book.importPass({.uid = uidOf('f'), .instrument = 1, .began = moment(3)}, octave(), ben));
            text = book.handOver(1).value();
        }
        std::filesystem::remove(path);
        return text;
    }();
    return document;
}

void fileStep(Logbook &book, int number)
{
    auto piano = upright();
    piano.uid = uidOf('a');
    switch (number) {
    case 1:
        static_cast<void>(book.addInstrument(piano, ada).value());
        break;
    case 2:
        static_cast<void>(book.importPass({.uid = uidOf('b'), .instrument = 1, .began = moment(1)}, octave(), ada));
        break;
    case 3:
        static_cast<void>(book.addWork(1, {.uid = uidOf('c'), .what = "hammers"}, ada).value());
        break;
    case 4:
        book.sayCondition(1, {}, {.words = "worn"}, ada);
        break;
    case 5: // larger than a page
        static_cast<void>(book.addPhotograph(1, {.uid = uidOf('d')},
                                             support::smallJpeg(8, 8, support::segment(0xe2, std::string(9000, 'x'))),
                                             ada)
                              .value());
        break;
    case 6:
        book.noteSale(1, {.buyer = "a school", .price = "1"}, ada);
        break;
    default:
        book.chooseActionSetup(1, {.setup = "full-upright", .aim = "in"}, ada);
    }
}

void deskStep(Desk &desk, int number)
{
    Logbook &book = *desk.book;
    const std::string copy = desk.path + "-copy";
    switch (number) {
    case 8:
        static_cast<void>(book.sendBack(1, {about(40, "again"), about(41, "again")}, ben).value());
        break;
    case 9:
        static_cast<void>(book.accept(1, {about(40, "the button is at its end")}, ben).value());
        break;
    case 10:
        book.takeBackDecision(1, catalogue::Quantity::LetOff, Note(41), ben);
        break;
    case 11:
        static_cast<void>(book.signPass(1, {.action = catalogue::ActionKind::Vertical}, {}, ben, "fit").value());
        break;
    case 12: // one that failed leaves none behind
        static_cast<void>(book.copyTo(copy).value());
        break;
    case 13:
        static_cast<void>(book.beginSpotCheck(
            {.uid = uidOf('9'), .instrument = 1, .began = moment(9)},
            {.checked = 1, .seed = 7, .notes = {Note(40)}, .quantities = {catalogue::Quantity::LetOff}}, ben));
        break;
    case 14:
        static_cast<void>(book.reopenPass(1, ben, "a string broke").value());
        break;
    case 15:
        static_cast<void>(book.takeOver(handedOver(), "elsewhere.json", ben, anySet).value());
        break;
    case 16:
        book.strikeWork(1, uidOf('c'), ben, "another piano");
        break;
    case 17:
        static_cast<void>(GaugeStudies(book).plan({.gauge = {.name = "rule"}, .plan = studyPlan}, ben).value());
        break;
    case 18:
        static_cast<void>(
            GaugeStudies(book).enter(1, orderOf(studyPlan).front(), units::Length::nanometres(5), "5", ben).value());
        break;
    default:
        static_cast<void>(book.undo(book.undoableOfInstrument(1).value(), ben));
    }
}

void step(Desk &desk, int number)
{
    if (number == 0)
        desk.book.emplace(Logbook::create(desk.path, ada).value());
    else if (number < 8)
        fileStep(*desk.book, number);
    else
        deskStep(desk, number);
}

class FaultyDeskTest : public FaultyDays {
protected:
    FaultyDeskTest() : FaultyDays({.steps = 20, .step = step, .stateOf = stateOf}) {}
};

TEST_F(FaultyDeskTest, AfterOneFailedCallNothingIsLostAndTheWorkGoesOn)
{
    eachFaultOnce();
}

TEST_F(FaultyDeskTest, AfterADiskThatStaysBrokenAllThatWasAcknowledgedIsThere)
{
    eachFaultForGood();
}

TEST_F(FaultyDeskTest, AfterAPowerCutAllThatWasAcknowledgedIsThere)
{
    eachPowerCut();
}

} // namespace
} // namespace hammerline::logbook
