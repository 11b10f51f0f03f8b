#include "demo_workshop/demo_workshop.h"

#include "exchange/tolerance_json.h"
#include "tolerance/judge.h"
#include "units/parse_amount.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace hammerline::demo_workshop {
namespace {

const Workshop &workshop()
{
    static const Workshop made = makeWorkshop();
    return made;
}

int outIn(const MadeInstrument &made, const MadePass &pass)
{
    const auto set = exchange::readToleranceSet(made.instrument.toleranceText, "set").value();
    const auto judged = tolerance::judge(readings::meansOf(pass.readings), set, made.instrument.compass, {});
    return static_cast<int>(std::ranges::count(judged.verdicts, tolerance::Status::Out, &tolerance::Verdict::status));
}

const MadePass *passFor(const MadeInstrument &made, readings::Purpose purpose)
{
    const auto found = std::ranges::find(made.passes, purpose, [](const MadePass &one) { return one.pass.purpose; });
    return found == made.passes.end() ? nullptr : &*found;
}

TEST(DemoWorkshop, TheSameSeedMakesTheSameWorkshop)
{
    const Workshop again = makeWorkshop();
    ASSERT_EQ(again.instruments.size(), workshop().instruments.size());
    for (std::size_t i = 0; i < again.instruments.size(); ++i) {
        EXPECT_EQ(again.instruments[i].instrument, workshop().instruments[i].instrument);
        for (std::size_t k = 0; k < again.instruments[i].passes.size(); ++k)
            EXPECT_EQ(again.instruments[i].passes[k].readings, workshop().instruments[i].passes[k].readings);
    }
}

TEST(DemoWorkshop, AnotherSeedMakesOtherReadings)
{
    EXPECT_NE(makeWorkshop(1).instruments[0].passes[0].readings, workshop().instruments[0].passes[0].readings);
}

TEST(DemoWorkshop, HoldsVerticalsAndGrandsWithShortAndExtendedCompasses)
{
    std::set<catalogue::ActionKind> actions;
    std::set<int> counts;
    for (const MadeInstrument &made : workshop().instruments) {
        actions.insert(made.instrument.action);
        counts.insert(made.instrument.compass.count());
    }
    EXPECT_GE(workshop().instruments.size(), 6u);
    EXPECT_EQ(actions.size(), 2u);
    EXPECT_TRUE(counts.contains(85));
    EXPECT_TRUE(counts.contains(97));
}

TEST(DemoWorkshop, EveryInstrumentIsOneThatTheLogbookTakes)
{
    for (const MadeInstrument &made : workshop().instruments) {
        const auto faults = instrument::faultsOf(made.instrument);
        EXPECT_TRUE(faults.empty()) << made.instrument.name << ": " << faults.front().text();
    }
}

TEST(DemoWorkshop, UidsAreThirtyTwoHexDigitsAndNeverTwice)
{
    std::set<std::string> uids;
    std::size_t count = 0;
    const auto note = [&](const std::string &uid) {
        EXPECT_EQ(uid.size(), 32u);
        EXPECT_EQ(uid.find_first_not_of("0123456789abcdef"), std::string::npos);
        uids.insert(uid);
        ++count;
    };
    for (const MadeInstrument &made : workshop().instruments) {
        note(made.instrument.uid);
        for (const MadePass &pass : made.passes)
            note(pass.pass.uid);
    }
    EXPECT_EQ(uids.size(), count);
}

TEST(DemoWorkshop, WhatWasTypedSaysTheValue)
{
    for (const MadeInstrument &made : workshop().instruments)
        for (const MadePass &pass : made.passes)
            for (const readings::Reading &reading : pass.readings) {
                const auto &info = catalogue::infoOf(reading.place.quantity);
                const units::TypedForm form{info.dimension, pass.pass.unit, info.mayBeNegative};
                ASSERT_EQ(units::parseAmount(reading.typed, form).value().value, reading.value) << reading.typed;
                ASSERT_TRUE(made.instrument.compass.contains(reading.place.note));
            }
}

TEST(DemoWorkshop, RegulationLeavesFewerNotesOutThanItFound)
{
    for (const MadeInstrument &made : workshop().instruments) {
        const MadePass *found = passFor(made, readings::Purpose::AsFound);
        const MadePass *left = passFor(made, readings::Purpose::AsLeft);
        if (found != nullptr && left != nullptr) {
            EXPECT_LT(outIn(made, *left), outIn(made, *found) / 2) << made.instrument.name;
        }
    }
}

TEST(DemoWorkshop, OneGrandIsLeftWithSeveralNotesOut)
{
    EXPECT_TRUE(std::ranges::any_of(workshop().instruments, [](const MadeInstrument &made) {
        const MadePass *left = passFor(made, readings::Purpose::AsLeft);
        return made.instrument.action == catalogue::ActionKind::Grand && left != nullptr && outIn(made, *left) >= 5;
    }));
}

TEST(DemoWorkshop, SomeNotesAreNotReadAndSomeFaultsAreHeard)
{
    bool gap = false;
    bool heard = false;
    for (const MadeInstrument &made : workshop().instruments)
        for (const MadePass &pass : made.passes) {
            const auto values = readings::meansOf(pass.readings);
            const auto &letOff = values.column(catalogue::Quantity::LetOff);
            gap = gap || (!letOff.empty() && static_cast<int>(letOff.size()) < made.instrument.compass.count());
            heard = heard || std::ranges::any_of(pass.readings, [](const auto &one) { return !one.remark.empty(); });
        }
    EXPECT_TRUE(gap);
    EXPECT_TRUE(heard);
}

TEST(DemoWorkshop, SaysThatItIsInvented)
{
    for (const MadeInstrument &made : workshop().instruments)
        EXPECT_NE(made.instrument.remark.find("Invented"), std::string::npos);
}

} // namespace
} // namespace hammerline::demo_workshop
