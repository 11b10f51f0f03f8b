#include "instrument/instrument.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::instrument {
namespace {

using keyboard::Note;

Instrument sound()
{
    Instrument instrument;
    instrument.name = "Old upright from the school";
    instrument.sections = {{"bass", {Note(1), Note(28)}}, {"treble", {Note(29), Note(88)}}};
    instrument.stringing = {{{Note(29), Note(88)}, "three plain strings"}};
    instrument.dampers = {{{Note(1), Note(66)}, "flat felt"}};
    instrument.year = 1923;
    instrument.size = units::Length::millimetres(1280);
    return instrument;
}

std::string only(const Instrument &instrument)
{
    const auto faults = faultsOf(instrument);
    return faults.size() == 1 ? faults.front().problem : std::to_string(faults.size()) + " faults";
}

TEST(InstrumentFaults, AreNoneInASoundInstrument)
{
    EXPECT_THAT(faultsOf(sound()), testing::IsEmpty());
}

TEST(InstrumentFaults, AreNoneWhereOnlyTheNameIsKnown)
{
    Instrument instrument;
    instrument.name = "x";
    EXPECT_THAT(faultsOf(instrument), testing::IsEmpty());
}

TEST(InstrumentFaults, TellAMissingName)
{
    auto instrument = sound();
    instrument.name = " \t"; // a tab is a control character, too
    EXPECT_THAT(faultsOf(instrument), testing::SizeIs(2));
    instrument.name = "  ";
    EXPECT_THAT(only(instrument), testing::HasSubstr("no name"));
}

TEST(InstrumentFaults, CountTheNameInCharactersNotBytes)
{
    auto instrument = sound();
    instrument.name.clear();
    for (int i = 0; i < 200; ++i)
        instrument.name += "\u00fc";
    EXPECT_THAT(faultsOf(instrument), testing::IsEmpty());
    instrument.name += "x";
    EXPECT_THAT(only(instrument), testing::HasSubstr("200 characters"));
}

TEST(InstrumentFaults, TellControlCharactersInTheName)
{
    auto instrument = sound();
    instrument.name = "two\nlines";
    EXPECT_THAT(only(instrument), testing::HasSubstr("control characters"));
    instrument.name = std::string("nul\0here", 8);
    EXPECT_THAT(only(instrument), testing::HasSubstr("control characters"));
}

TEST(InstrumentFaults, TellSectionsThatOverlapOrFall)
{
    auto instrument = sound();
    instrument.sections[1].notes.first = Note(28);
    EXPECT_THAT(only(instrument), testing::HasSubstr("'treble' begins before 'bass' has ended"));
    std::swap(instrument.sections[0], instrument.sections[1]);
    EXPECT_THAT(only(instrument), testing::HasSubstr("'bass' begins before 'treble'"));
}

TEST(InstrumentFaults, TellWhatLiesOutsideTheCompass)
{
    auto instrument = sound();
    instrument.compass.last = Note(85);
    const auto faults = faultsOf(instrument);
    ASSERT_THAT(faults, testing::SizeIs(2));
    EXPECT_THAT(faults[0].problem, testing::HasSubstr("section 'treble' lies on notes 29-88"));
    EXPECT_THAT(faults[1].problem, testing::HasSubstr("stringing 'three plain strings'"));
}

TEST(InstrumentFaults, TellRangesThatRunDownwards)
{
    auto instrument = sound();
    instrument.dampers[0].notes = {Note(66), Note(1)};
    EXPECT_THAT(only(instrument), testing::HasSubstr("dampers 'flat felt'"));
}

TEST(InstrumentFaults, TellACompassThatIsNone)
{
    Instrument instrument;
    instrument.name = "x";
    instrument.compass = {Note(88), Note(1)};
    EXPECT_THAT(only(instrument), testing::HasSubstr("compass"));
    instrument.compass = {Note(-21), Note(88)};
    EXPECT_THAT(only(instrument), testing::HasSubstr("compass"));
}

TEST(InstrumentFaults, TellAYearOutsideThreeCenturies)
{
    auto instrument = sound();
    for (const int year : {1700, 2100}) {
        instrument.year = year;
        EXPECT_THAT(faultsOf(instrument), testing::IsEmpty());
    }
    for (const int year : {1699, 2101, -5}) {
        instrument.year = year;
        EXPECT_THAT(only(instrument), testing::HasSubstr("year"));
    }
}

TEST(InstrumentFaults, TellASizeThatIsNone)
{
    auto instrument = sound();
    instrument.size = units::Length();
    EXPECT_THAT(only(instrument), testing::HasSubstr("size"));
}

TEST(State, IsFoundByItsId)
{
    for (const State state : {State::TakenIn, State::InWork, State::InReview, State::SignedOff, State::Delivered})
        EXPECT_EQ(findState(idOf(state)), state);
    EXPECT_EQ(idOf(State::SignedOff), "signed-off");
    EXPECT_FALSE(findState("signed off"));
}

} // namespace
} // namespace hammerline::instrument
