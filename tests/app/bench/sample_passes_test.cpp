// How many keys a reading takes, over whole sample passes typed with real keys and counted: plain; on a scale of
// its own for each quantity; and on that scale with a fixed number of digits. Millimetres are read to the tenth, as one
// reads them who declares a scale of tenths; inches and grams are typed as they were read.
#include "app/bench/bench_desk.h"

#include "exchange/exchange.h"
#include "exchange/readings_csv.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <iostream>

namespace hammerline::bench {
namespace {

using catalogue::Quantity;
namespace fs = std::filesystem;

/// First takes of one quantity by note.
using Column = std::map<keyboard::Note, readings::Reading>;
using Columns = std::map<Quantity, Column>;

Columns columnsOf(const fs::path &file)
{
    const exchange::CsvReadingOptions options{.file = file.string(),
                                              .compass = {keyboard::Note(-8), keyboard::Note(88)}};
    const auto readings = exchange::readReadingsCsv(exchange::readFile(file.string()).value(), options);
    Columns columns;
    for (const readings::Reading &reading : readings.value())
        if (reading.place.take == 1)
            columns[reading.place.quantity].emplace(reading.place.note, reading);
    return columns;
}

/// One quantity of one pass in whole steps of its scale, and how that scale is declared.
struct Steps {
    Typing typing{};
    std::map<keyboard::Note, int> counts{};
};

bool inInches(const Column &column)
{
    return std::ranges::any_of(column, [](const auto &one) { return one.second.typed.find('/') != std::string::npos; });
}

Scale scaleOf(const Column &column, Quantity quantity)
{
    if (catalogue::infoOf(quantity).dimension == units::Dimension::Mass)
        return Scale::Whole;
    if (inInches(column))
        return Scale::SixtyFourths;
    const auto mils = [](const auto &one) { return one.second.value.baseCount() % 25'400 == 0; };
    return std::ranges::all_of(column, mils) ? Scale::ThousandthsInch : Scale::Tenths;
}

double stepOf(Scale scale)
{
    return scale == Scale::SixtyFourths      ? 25.4 / 64
           : scale == Scale::ThousandthsInch ? 0.0254
           : scale == Scale::Tenths          ? 0.1
                                             : 1;
}

Steps stepsOf(const Column &column, Quantity quantity)
{
    Steps steps{{scaleOf(column, quantity)}, {}};
    for (const auto &[note, reading] : column) {
        const int count = static_cast<int>(std::lround(reading.value.inDisplay() / stepOf(steps.typing.scale)));
        steps.counts[note] = count;
    }
    return steps;
}

int bareOf(int count, const Typing &typing)
{
    return typing.scale == Scale::Tenths ? count - typing.from * 10 : count;
}

std::string inFull(int tenths)
{
    return std::to_string(tenths / 10) + '.' + std::to_string(tenths % 10);
}

/// The keys of one value: bare digits where they fit; behind a `+` what does not. Enter is the last, '\n'.
std::string keysOf(int count, const Typing &typing)
{
    const int bare = bareOf(count, typing);
    if (bare < 0)
        return (typing.digits > 0 ? "+" : "") + inFull(count) + '\n';
    const std::string digits = std::to_string(bare);
    const auto fixed = static_cast<std::size_t>(typing.digits);
    if (fixed > 0 && digits.size() > fixed)
        return '+' + digits + '\n';
    return digits.size() == fixed ? digits : digits + '\n';
}

/// What somebody would declare who knows about where the values lie: whole fives to be added, and the number of digits
/// that costs the fewest keys.
Typing bestTyping(const Steps &steps, bool fixedDigits)
{
    Typing best = steps.typing;
    std::size_t fewest = static_cast<std::size_t>(-1);
    for (int from = 0; from <= (best.scale == Scale::Tenths ? farthestFrom : 0); from += 5)
        for (int digits = fixedDigits ? 1 : 0; digits <= (fixedDigits ? 3 : 0); ++digits) {
            const Typing tried{steps.typing.scale, digits, from};
            std::size_t keys = 0;
            for (const auto &[note, count] : steps.counts)
                keys += keysOf(count, tried).size();
            if (keys < fewest)
                best = tried;
            fewest = std::min(fewest, keys);
        }
    return best;
}

/// Whole passes by the dozen: where the system keeps files in memory the logbook lies there, for keys are counted, not
/// the disk.
struct LogbookInMemory {
    LogbookInMemory()
    {
        if (fs::is_directory("/dev/shm"))
            qputenv("TMPDIR", "/dev/shm");
    }
    LogbookInMemory(const LogbookInMemory &) = delete;
    LogbookInMemory &operator=(const LogbookInMemory &) = delete;
    ~LogbookInMemory() { m_before.isNull() ? qunsetenv("TMPDIR") : qputenv("TMPDIR", m_before); }

private:
    QByteArray m_before = qgetenv("TMPDIR");
};

class SamplePasses : private LogbookInMemory, public BenchDesk {
protected:
    enum class Manner { Plain, Scaled, Fixed };

    void begin(Quantity quantity, const Typing &typing)
    {
        shop.pass = shop.begin(readings::Purpose::AsFound);
        instrument::Instrument played = shop.grand;
        played.compass.first = keyboard::Note(-8);
        if (!catalogue::has(played.action, quantity))
            played.action = catalogue::ActionKind::Vertical;
        auto it =
            std::make_unique<EntrySession>(shop.book, played, shop.pass, std::nullopt, [this] { return shop.stamp(); });
        it->choose({.quantities = {quantity}}, {{quantity, typing}});
        view.hide(); // painting is not what is counted
        view.work(std::move(it), quantity);
    }
    /// Notes without a reading in the sample are skipped, at a key each; where the bass is shorter it begins later.
    void goTo(Quantity quantity, keyboard::Note note, bool first)
    {
        if (first)
            return view.ask(quantity, note);
        while (view.session()->asked()->note != note) {
            press(Qt::Key_Down);
            ++keys;
        }
    }
    void click(char key)
    {
        QTest::keyClick(field(), key);
        ++keys;
    }
    void clicks(const std::string &text)
    {
        for (const char key : text)
            click(key);
    }
    void enter()
    {
        press(Qt::Key_Enter, Qt::KeypadModifier);
        ++keys;
    }
    void typePlainly(const Typing &typing, int count, const std::string &typed)
    {
        if (typing.scale != Scale::Tenths)
            clicks(typed);
        else if (count % 10 == 0)
            clicks(std::to_string(count / 10));
        else
            clicks((count < 10 ? "" : std::to_string(count / 10)) + '.' + std::to_string(count % 10));
        enter();
    }
    void typeOnScale(const Typing &typing, int count, int last)
    {
        const std::string text = keysOf(count, typing);
        for (const char key : count == last && text.size() > 2 ? std::string("=\n") : text)
            key == '\n' ? enter() : click(key);
    }
    /// A doubted value is the sample's own: it is confirmed, and that key is counted.
    void confirmWhereAsked()
    {
        if (!said("reason").isEmpty())
            enter();
    }
    void typeColumn(Quantity quantity, const Column &column, Manner manner)
    {
        const Steps steps = stepsOf(column, quantity);
        const Typing typing = bestTyping(steps, manner == Manner::Fixed);
        begin(quantity, manner == Manner::Plain ? Typing{} : typing);
        int last = -1;
        for (const auto &[note, count] : steps.counts) {
            goTo(quantity, note, last < 0);
            if (manner == Manner::Plain)
                typePlainly(typing, count, column.at(note).typed);
            else
                typeOnScale(typing, count, last);
            confirmWhereAsked();
            expectStored(quantity, note, typing.scale, count);
            last = count;
        }
        readings += static_cast<int>(steps.counts.size());
    }
    void expectStored(Quantity quantity, keyboard::Note note, Scale scale, int count)
    {
        const auto stored = view.session()->valueOf(quantity, note);
        ASSERT_TRUE(stored) << note.name() << ' ' << said("reason").toStdString();
        ASSERT_NEAR(stored->inDisplay(), count * stepOf(scale), 1e-6)
            << catalogue::idOf(quantity) << ' ' << note.name();
    }
    double meanKeys(Manner manner)
    {
        keys = readings = 0;
        for (const auto &entry : fs::directory_iterator(HAMMERLINE_SOURCE_DIR "/sample-data/readings"))
            for (const auto &[quantity, column] : columnsOf(entry.path()))
                if (!HasFatalFailure())
                    typeColumn(quantity, column, manner);
        return static_cast<double>(keys) / readings;
    }

    int keys = 0, readings = 0;
};

TEST_F(SamplePasses, TakeFewKeysAReading)
{
    const double plain = meanKeys(Manner::Plain);
    const double scaled = meanKeys(Manner::Scaled);
    const double fixed = meanKeys(Manner::Fixed);
    std::cout << "keys per reading over " << readings << " sample readings: plain " << plain << ", scaled " << scaled
              << ", scaled with fixed digits " << fixed << '\n';
    EXPECT_GT(readings, 6000);
    EXPECT_LE(plain, 4.5);
    EXPECT_LE(scaled, 3.0);
    EXPECT_LE(fixed, 2.1);
}

} // namespace
} // namespace hammerline::bench
