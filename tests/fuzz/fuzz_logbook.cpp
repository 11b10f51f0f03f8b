// Crafted logbooks: the bytes say where a sound logbook is changed, four bytes a change (place, place, place, value).
// Whatever it is then, it is read, or refused as a broken world; nothing else.
#include "fuzz_folder.h"

#include "logbook/gauge_studies.h"
#include "logbook/hand_over.h"
#include "logbook/logbook.h"
#include "logbook/verify_history.h"

#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>

using namespace hammerline;

namespace {

const logbook::Stamp stamp{readings::Instant(std::chrono::milliseconds(1'770'000'000'000)), "Ada"};

void writeTheDesk(logbook::Logbook &book)
{
    decisions::Decision item{.quantity = catalogue::Quantity::LetOff, .note = keyboard::Note(1), .words = "stays"};
    item.value = units::Length::nanometres(0);
    static_cast<void>(book.accept(1, {item}, stamp).value());
    item.note = keyboard::Note(2);
    static_cast<void>(book.sendBack(1, {item}, stamp).value());
    book.rememberTolerance(1, {.id = "x", .text = "{}"}, stamp);
    static_cast<void>(book.signPass(1, {.action = catalogue::ActionKind::Vertical}, {}, stamp, "fit").value());
    static_cast<void>(book.beginSpotCheck(
        {.uid = std::string(32, 'c'), .instrument = 1, .began = stamp.at},
        {.checked = 1, .seed = 7, .notes = {keyboard::Note(1)}, .quantities = {catalogue::Quantity::LetOff}}, stamp));
}

void writeTheFile(logbook::Logbook &book)
{
    static_cast<void>(book.addWork(1, {.uid = std::string(32, 'd'), .what = "hammers"}, stamp).value());
    book.sayCondition(1, {}, {.words = "worn"}, stamp);
    book.noteSale(1, {.buyer = "a school"}, stamp);
    book.chooseActionSetup(1, {.setup = "full-upright"}, stamp);
    logbook::GaugeStudies studies(book);
    const analysis::StudyPlan plan{
        .notes = {keyboard::Note(5), keyboard::Note(40)}, .people = {"Ada", "Ben"}, .takes = 2, .seed = 11};
    static_cast<void>(studies.plan({.gauge = {.name = "rule"}, .plan = plan}, stamp).value());
    static_cast<void>(studies.enter(1, orderOf(plan).front(), units::Length::nanometres(5), "5", stamp).value());
}

std::string soundLogbook()
{
    const std::string path = fuzzFolder().file("sound");
    {
        auto book = logbook::Logbook::create(path, stamp).value();
        static_cast<void>(book.addInstrument({.uid = std::string(32, 'a'), .name = "Upright"}, stamp));
        static_cast<void>(book.beginPass({.uid = std::string(32, 'b'), .instrument = 1, .began = stamp.at}, stamp));
        for (int note = 1; note <= 12; ++note)
            book.enter(1, {.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1}, .typed = "0,0"}, stamp);
        static_cast<void>(book.withdraw(1, {catalogue::Quantity::LetOff, keyboard::Note(3), 1}, stamp, "slip"));
        writeTheDesk(book);
        writeTheFile(book);
    }
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

void readPass(const logbook::Logbook &book, readings::PassId pass)
{
    static_cast<void>(book.readings(pass));
    static_cast<void>(book.values(pass));
    static_cast<void>(book.undoable(pass));
    static_cast<void>(book.decisions(pass));
    static_cast<void>(book.refusal(pass));
    static_cast<void>(book.spotCheck(pass));
    static_cast<void>(book.tolerance(pass));
}

void readAll(const std::string &path)
{
    auto book = logbook::Logbook::open(path, logbook::Access::ReadOnly);
    for (const auto &instrument : book.instruments()) {
        for (const auto &pass : book.passes(instrument.id))
            readPass(book, pass.id);
        for (const auto &check : book.spotChecks(instrument.id))
            readPass(book, check.id);
        static_cast<void>(book.dossier(instrument.id));
        static_cast<void>(book.actionSetup(instrument.id));
        static_cast<void>(book.handOver(instrument.id).ok());
    }
    const logbook::GaugeStudies studies(book);
    for (const auto &study : studies.all())
        static_cast<void>(studies.trials(study.id));
    static_cast<void>(book.deeds(0, 100));
    static_cast<void>(logbook::verifyHistory(path).whole());
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    static const std::string sound = soundLogbook();
    std::string crafted = sound;
    for (std::size_t at = 0; at + 4 <= size; at += 4) {
        const std::size_t place = data[at] | std::size_t{data[at + 1]} << 8 | std::size_t{data[at + 2]} << 16;
        crafted[place % crafted.size()] = static_cast<char>(data[at + 3]);
    }
    const std::string path = fuzzFolder().file("crafted");
    std::ofstream(path, std::ios::binary | std::ios::trunc) << crafted;
    try {
        readAll(path);
    } catch (const outcome::BrokenWorld &) {
        return 0; // refused, in words
    }
    return 0;
}
