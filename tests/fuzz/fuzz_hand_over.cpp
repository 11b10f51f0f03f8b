// Instruments handed over: the bytes are a document, or, where they do not begin as one, say where a sound document is
// changed, three bytes a change (place, place, value). A changed one is refused: it no longer vouches for itself. Then
// every digest in it is made anew, as a forger would: it is taken over, and then the history is whole, or it is refused
// and nothing is written.
#include "fuzz_folder.h"

#include "logbook/hand_over.h"
#include "logbook/verify_history.h"
#include "support/vouched_anew.h"

#include <cstdint>
#include <cstdlib>
#include <optional>
#include <string>

using namespace hammerline;

namespace {

const logbook::Stamp stamp{readings::Instant(std::chrono::milliseconds(1'770'000'000'000)), "Ada"};

std::string soundDocument()
{
    auto book = logbook::Logbook::create(fuzzFolder().file("sound"), stamp).value();
    static_cast<void>(book.addInstrument({.uid = std::string(32, 'a'), .name = "Upright"}, stamp));
    static_cast<void>(book.beginPass({.uid = std::string(32, 'b'), .instrument = 1, .began = stamp.at}, stamp));
    for (int note = 1; note <= 4; ++note)
        book.enter(1, {.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1}, .typed = "0,0"}, stamp);
    static_cast<void>(book.undo(*book.undoable(1), stamp));
    static_cast<void>(book.addWork(1, {.uid = std::string(32, 'c'), .what = "hammers"}, stamp));
    decisions::Decision missing{.note = keyboard::Note(7), .kind = decisions::Kind::Missing, .words = "no hammer"};
    static_cast<void>(book.accept(1, {missing}, stamp));
    static_cast<void>(book.sendBack(1, {missing}, stamp));
    static_cast<void>(book.signPass(1, {.action = catalogue::ActionKind::Vertical}, {}, stamp, "fit"));
    return book.handOver(1).value();
}

const std::string &sound()
{
    static const std::string document = soundDocument();
    return document;
}

std::string documentOf(const std::uint8_t *data, std::size_t size)
{
    if (size > 0 && data[0] == '{')
        return {reinterpret_cast<const char *>(data), size};
    std::string changed = sound();
    for (std::size_t at = 0; at + 3 <= size; at += 3)
        changed[(data[at] | std::size_t{data[at + 1]} << 8) % changed.size()] = static_cast<char>(data[at + 2]);
    return changed;
}

/// A logbook that nothing was taken over into yet.
logbook::Logbook &freshBook(bool used)
{
    static std::optional<logbook::Logbook> book;
    static int count = 0;
    if (!book || used)
        book.emplace(logbook::Logbook::create(fuzzFolder().file("to" + std::to_string(++count)), stamp).value());
    return *book;
}

/// Whether it was taken over, whole; where not, nothing is written.
bool takes(const std::string &document)
{
    logbook::Logbook &book = freshBook(false);
    const logbook::DeedId before = book.newestDeed();
    const auto taken = book.takeOver(document, "fuzz.json", stamp);
    const bool wrote = taken && taken.value().added > 0 && taken.value().conflicts.empty();
    if (!wrote && book.newestDeed() != before)
        std::abort();
    if (wrote) {
        if (!logbook::verifyHistory(book.path()).whole() || !book.handOver(taken.value().instrument))
            std::abort();
        freshBook(true);
    }
    return wrote;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string document = documentOf(data, size);
    const bool changed = (size == 0 || data[0] != '{') && document != sound();
    if (takes(document) && changed)
        std::abort();
    const auto json = nlohmann::json::parse(document, nullptr, false);
    if (json.is_object())
        static_cast<void>(takes(support::vouchedAnew(json)));
    return 0;
}
