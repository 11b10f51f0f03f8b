// Crafted logbooks: the bytes say where a sound logbook is changed, four bytes a change (place, place, place, value).
// Whatever it is then, it is read, or refused as a broken world; nothing else.
#include "fuzz_folder.h"

#include "logbook/logbook.h"
#include "logbook/verify_history.h"

#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>

using namespace hammerline;

namespace {

std::string soundLogbook()
{
    const std::string path = fuzzFolder().file("sound");
    {
        const logbook::Stamp stamp{readings::Instant(std::chrono::milliseconds(1'770'000'000'000)), "Ada"};
        auto book = logbook::Logbook::create(path, stamp).value();
        static_cast<void>(book.addInstrument({.name = "Upright"}, stamp));
        static_cast<void>(book.beginPass({.instrument = 1, .began = stamp.at}, stamp));
        for (int note = 1; note <= 12; ++note)
            book.enter(1, {.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1}, .typed = "0,0"}, stamp);
        static_cast<void>(book.withdraw(1, {catalogue::Quantity::LetOff, keyboard::Note(3), 1}, stamp, "slip"));
    }
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

void readAll(const std::string &path)
{
    const auto book = logbook::Logbook::open(path, logbook::Access::ReadOnly);
    for (const auto &instrument : book.instruments())
        for (const auto &pass : book.passes(instrument.id)) {
            static_cast<void>(book.readings(pass.id));
            static_cast<void>(book.values(pass.id));
            static_cast<void>(book.undoable(pass.id));
        }
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
