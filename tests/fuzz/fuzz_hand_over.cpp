// Instruments handed over. The bytes are a document where they begin as one; behind a '~' they say which values of a
// wide document are something else, three bytes a change (which, which, what); otherwise where the text of a small one
// is changed, three bytes a change (place, place, value). A changed one is refused: it no longer vouches for itself.
// Then every digest in it is made anew, as a forger would: it is taken over, and then the history is whole, or it is
// refused and nothing is written.
#include "fuzz_folder.h"

#include "exchange/tolerance_json.h"
#include "logbook/hand_over.h"
#include "logbook/verify_history.h"
#include "support/small_jpeg.h"
#include "support/vouched_anew.h"

#include <cstdint>
#include <cstdlib>
#include <optional>
#include <string>
#include <vector>

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

void fillTheFile(logbook::Logbook &book)
{
    static_cast<void>(book.addPhotograph(1, {.uid = std::string(32, 'd')}, support::smallJpeg(8, 8), stamp));
    book.sayCondition(1, {}, {.words = "worn"}, stamp);
    book.noteSale(1, {.buyer = "a school"}, stamp);
    book.chooseActionSetup(1, {.setup = "full-upright"}, stamp);
    static_cast<void>(book.addWork(1, {.uid = std::string(32, 'c'), .what = "hammers"}, stamp));
    book.strikeWork(1, std::string(32, 'c'), stamp, "another piano");
}

void fillThePass(logbook::Logbook &book)
{
    const readings::Place place{catalogue::Quantity::LetOff, keyboard::Note(40), 1};
    const units::Amount value = units::Length::nanometres(3'000'000);
    book.enter(1, {.place = place, .value = value, .typed = "3"}, stamp, {}, "slipped-decimal");
    book.enter(1, {.place = {place.quantity, keyboard::Note(41), 2}, .value = value, .typed = "3"}, stamp);
    static_cast<void>(book.withdraw(1, {place.quantity, keyboard::Note(41), 2}, stamp, "slip"));
    static_cast<void>(book.markFault(1, {keyboard::Note(42), "blocking"}, stamp));
    book.rememberTolerance(1, {.id = "x", .text = "{}"}, stamp);
    book.keepPlan(1, "{}", stamp);
    book.chooseRoute(1, {.route = "by-note"}, stamp);
    static_cast<void>(book.logWork(1, "let_off 40", std::chrono::seconds(9), stamp));
    static_cast<void>(book.undo(*book.undoable(1), stamp));
    const decisions::Decision item{
        .quantity = place.quantity, .note = place.note, .value = value, .words = "the button is at its end"};
    static_cast<void>(book.accept(1, {item}, stamp));
    static_cast<void>(book.signPass(1, {.action = catalogue::ActionKind::Vertical}, {}, stamp, "fit"));
    static_cast<void>(book.reopenPass(1, stamp, "a string broke"));
    static_cast<void>(
        book.beginSpotCheck({.uid = std::string(32, 'e'), .instrument = 1, .began = stamp.at},
                            {.checked = 1, .seed = 7, .notes = {place.note}, .quantities = {place.quantity}}, stamp));
}

/// Every kind of row there is.
const nlohmann::json &wide()
{
    static const nlohmann::json document = [] {
        auto book = logbook::Logbook::create(fuzzFolder().file("wide"), stamp).value();
        static_cast<void>(book.addInstrument({.uid = std::string(32, 'a'), .name = "Upright"}, stamp));
        static_cast<void>(book.beginPass({.uid = std::string(32, 'b'), .instrument = 1, .began = stamp.at}, stamp));
        fillThePass(book);
        fillTheFile(book);
        return nlohmann::json::parse(book.handOver(1).value());
    }();
    return document;
}

/// The values of the wide document, one behind another.
const std::vector<nlohmann::json::json_pointer> &valuesOfWide()
{
    static const auto all = [] {
        std::vector<nlohmann::json::json_pointer> found;
        const auto flat = wide().flatten();
        for (const auto &[pointer, value] : flat.items())
            found.emplace_back(pointer);
        return found;
    }();
    return all;
}

nlohmann::json somethingElse(std::uint8_t what)
{
    const nlohmann::json others[] = {nullptr,
                                     true,
                                     0,
                                     1,
                                     -1,
                                     2,
                                     89,
                                     1.5,
                                     std::int64_t{1} << 53,
                                     INT64_MIN,
                                     "",
                                     "x",
                                     "undone",
                                     std::string(32, 'f'),
                                     nlohmann::json::array(),
                                     nlohmann::json::object(),
                                     "2026-01-01T00:00:00Z",
                                     "\x1b\n",
                                     std::string(3000, 'z')};
    if (what < std::size(others))
        return others[what];
    return wide().at(valuesOfWide()[what % valuesOfWide().size()]);
}

std::string changedValues(const std::uint8_t *data, std::size_t size)
{
    constexpr std::uint8_t gone = 255;
    auto document = wide();
    for (std::size_t at = 0; at + 3 <= size; at += 3) {
        const auto &place = valuesOfWide()[(data[at] | std::size_t{data[at + 1]} << 8) % valuesOfWide().size()];
        if (data[at + 2] != gone) {
            if (document.contains(place))
                document[place] = somethingElse(data[at + 2]);
        } else if (document.contains(place) && document.at(place.parent_pointer()).is_object()) {
            document.at(place.parent_pointer()).erase(place.back());
        }
    }
    return support::vouchedAnew(document);
}

std::string documentOf(const std::uint8_t *data, std::size_t size)
{
    if (size > 0 && data[0] == '{')
        return {reinterpret_cast<const char *>(data), size};
    if (size > 0 && data[0] == '~')
        return changedValues(data + 1, size - 1);
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

/// An empty object stands for a set.
std::vector<outcome::Fault> setFaults(const std::string &text, const std::string &file)
{
    return text == "{}" ? std::vector<outcome::Fault>() : exchange::toleranceSetFaults(text, file);
}

/// Whether it was taken over, whole; where not, nothing is written.
bool takes(const std::string &document)
{
    logbook::Logbook &book = freshBook(false);
    const logbook::DeedId before = book.newestDeed();
    const auto taken = book.takeOver(document, "fuzz.json", stamp, setFaults);
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
    const bool vouchedFor = size > 0 && (data[0] == '{' || data[0] == '~');
    const bool changed = !vouchedFor && document != sound();
    if (takes(document) && changed)
        std::abort();
    const auto json = nlohmann::json::parse(document, nullptr, false);
    if (json.is_object())
        static_cast<void>(takes(support::vouchedAnew(json)));
    return 0;
}
