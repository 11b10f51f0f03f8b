#include "support/sample_records.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

namespace hammerline::support {

namespace {

using catalogue::Quantity;
using keyboard::Note;
using units::Amount;
using units::Length;
using units::Mass;

/// Target at A0 and at C8, half-width, largest even step; mm, or g for the weights. Invented for these tests.
struct Promise {
    Quantity quantity;
    double bass;
    double treble;
    double half;
    double step;
};

constexpr std::array<Promise, 9> promises{{{Quantity::Blow, 46, 45, 1.5, 1.2},
                                           {Quantity::LostMotion, 0.2, 0.2, 0.2, 0.3},
                                           {Quantity::LetOff, 3.2, 1.6, 0.5, 0.5},
                                           {Quantity::Drop, 1.2, 1.0, 0.4, 0.5},
                                           {Quantity::Dip, 10.2, 10.0, 0.4, 0.3},
                                           {Quantity::Aftertouch, 1.1, 1.0, 0.3, 0.4},
                                           {Quantity::Checking, 16, 15, 2, 2},
                                           {Quantity::DownWeight, 52, 48, 4, 4},
                                           {Quantity::UpWeight, 24, 22, 4, 4}}};

Amount amount(Quantity quantity, double display)
{
    return Amount::fromDisplay(catalogue::infoOf(quantity).dimension, display);
}

tolerance::Point pointOf(const Promise &promise, int note, double target)
{
    tolerance::Point point;
    point.note = Note(note);
    point.low = amount(promise.quantity, target - promise.half);
    point.target = amount(promise.quantity, target);
    point.high = amount(promise.quantity, target + promise.half);
    return point;
}

tolerance::ToleranceSet sampleSet(const SampleWish &wish)
{
    tolerance::ToleranceSet set;
    set.name = wish.action == catalogue::ActionKind::Grand ? "Workshop grand" : "Workshop upright";
    set.action = wish.action;
    set.source = "House rules of an invented workshop";
    for (const Promise &promise : promises) {
        if (!catalogue::has(wish.action, promise.quantity))
            continue;
        tolerance::Entry entry;
        entry.both = {pointOf(promise, 1, promise.bass), pointOf(promise, 88, promise.treble)};
        entry.both.front().source = "common practice, no source";
        entry.step = amount(promise.quantity, promise.step);
        if (wish.guarded) {
            entry.rule = tolerance::Rule::Guarded;
            entry.expandedUncertainty = amount(promise.quantity, promise.half / 4);
        }
        set.entries[promise.quantity] = entry;
    }
    return set;
}

instrument::Instrument sampleInstrument(const SampleWish &wish)
{
    const bool grand = wish.action == catalogue::ActionKind::Grand;
    instrument::Instrument instrument;
    instrument.id = 1;
    instrument.name = grand ? "Music room grand" : "Schoolhouse upright";
    instrument.action = wish.action;
    instrument.compass = {Note(1), Note(wish.lastNote)};
    instrument.sections = {
        {"bass", {Note(1), Note(28)}}, {"tenor", {Note(29), Note(52)}}, {"treble", {Note(53), Note(wish.lastNote)}}};
    instrument.stringing = {{{Note(1), Note(12)}, "one wound string"},
                            {{Note(13), Note(28)}, "two wound strings"},
                            {{Note(29), Note(wish.lastNote)}, "three plain strings"}};
    instrument.dampers = {{{Note(1), Note(28)}, "wedge"}, {{Note(29), Note(66)}, "flat felt"}};
    instrument.condition = "Hammers grooved, dampers hard, bass bridle straps gone; strings and pin block sound.";
    instrument.maker = "Ambrose & Fell";
    instrument.model = grand ? "Salon" : "Concordia";
    instrument.serial = "31 207";
    instrument.year = 1924;
    instrument.size = Length::millimetres(grand ? 1860 : 1310);
    return instrument;
}

readings::Pass samplePass(readings::Purpose purpose, int day)
{
    readings::Pass pass;
    pass.id = day;
    pass.instrument = 1;
    pass.purpose = purpose;
    pass.began = readings::Instant(std::chrono::sys_days(std::chrono::year(2026) / 2 / 1) + std::chrono::days(day) +
                                   std::chrono::hours(9));
    pass.person = "Technician One";
    pass.climate = {20.5, 48.0};
    pass.gauge = {"Depth gauge, dial", Length::millimetres(0.05), Length::millimetres(0.1)};
    return pass;
}

/// Readings of every promised quantity, drawn around the targets; every fortieth place stays unread.
std::vector<readings::Reading> sampleReadings(const SampleWish &wish, double spread, std::mt19937 &random)
{
    std::vector<readings::Reading> taken;
    for (const Promise &promise : promises) {
        if (!catalogue::has(wish.action, promise.quantity))
            continue;
        for (int note = 1; note <= wish.lastNote; ++note) {
            // std::normal_distribution differs between libraries: a sum of uniforms does not.
            double noise = -6;
            for (int i = 0; i < 12; ++i)
                noise += static_cast<double>(random()) / 4294967295.0;
            if (random() % 40 == 0)
                continue;
            const double target = promise.bass + (promise.treble - promise.bass) * (note - 1) / 87.0;
            const double value = std::max(0.0, target + noise * spread * promise.half);
            readings::Reading reading;
            reading.place = {promise.quantity, Note(note), 1};
            reading.value = amount(promise.quantity, std::round(value * 20) / 20);
            taken.push_back(reading);
        }
    }
    return taken;
}

} // namespace

sale_record::RecordInput sampleInput(const SampleWish &wish)
{
    std::mt19937 random(wish.seed);
    sale_record::RecordInput input;
    input.instrument = sampleInstrument(wish);
    input.set = sampleSet(wish);
    if (wish.withAsFound)
        input.passes.emplace_back(samplePass(readings::Purpose::AsFound, 11), sampleReadings(wish, 1.6, random));
    input.passes.emplace_back(samplePass(readings::Purpose::AsLeft, 30),
                              sampleReadings(wish, wish.spreadAsLeft, random));
    input.issued = readings::Instant(std::chrono::sys_days(std::chrono::year(2026) / 3 / 4));
    input.issuedBy = "Invented Workshop";
    input.programVersion = "0.1.0";
    return input;
}

sale_record::SaleRecord sampleRecord(const SampleWish &wish)
{
    return sale_record::assemble(sampleInput(wish)).value();
}

} // namespace hammerline::support
