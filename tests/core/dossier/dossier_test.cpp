#include "dossier/dossier.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::dossier {
namespace {

using keyboard::Note;

constexpr keyboard::Compass compass{Note(1), Note(85)};

WorkEntry sound()
{
    WorkEntry entry;
    entry.what = "hammers";
    entry.notes = keyboard::NoteRange{Note(1), Note(85)};
    entry.took = std::chrono::minutes(600);
    return entry;
}

std::string only(const WorkEntry &entry)
{
    const auto faults = faultsOf(entry, compass);
    return faults.size() == 1 ? faults.front().problem : std::to_string(faults.size()) + " faults";
}

TEST(WorkEntryFaults, AreNoneInSoundWork)
{
    EXPECT_THAT(faultsOf(sound(), compass), testing::IsEmpty());
}

TEST(WorkEntryFaults, NameWorkThatSaysNothing)
{
    WorkEntry entry = sound();
    entry.what = " \t";
    EXPECT_THAT(only(entry), testing::HasSubstr("does not say what was done"));
}

TEST(WorkEntryFaults, NameADepartureWithoutItsReason)
{
    WorkEntry entry = sound();
    entry.departure = true;
    EXPECT_THAT(only(entry), testing::HasSubstr("needs its reason"));
    entry.why = "the old pattern is no longer made";
    EXPECT_THAT(faultsOf(entry, compass), testing::IsEmpty());
}

TEST(WorkEntryFaults, NameNotesThatTheInstrumentHasNot)
{
    WorkEntry entry = sound();
    entry.notes = keyboard::NoteRange{Note(80), Note(88)};
    EXPECT_THAT(only(entry), testing::HasSubstr("80-88"));
    entry.notes = keyboard::NoteRange{Note(20), Note(10)};
    EXPECT_THAT(only(entry), testing::HasSubstr("low note first"));
}

TEST(WorkEntryFaults, NameTimesThatNobodyWorks)
{
    WorkEntry entry = sound();
    entry.took = std::chrono::minutes(-1);
    EXPECT_THAT(only(entry), testing::HasSubstr("10 000 hours"));
    entry.took = std::chrono::hours(10'001);
    EXPECT_THAT(only(entry), testing::HasSubstr("10 000 hours"));
}

TEST(WorkEntryFaults, CountCharactersAndNotBytes)
{
    WorkEntry entry = sound();
    for (int i = 0; i < 2000; ++i)
        entry.remark += "ö";
    EXPECT_THAT(faultsOf(entry, compass), testing::IsEmpty());
    entry.remark += "ö";
    EXPECT_THAT(only(entry), testing::HasSubstr("2000 characters"));
}

TEST(DossierIds, LeadBackToWhatTheyName)
{
    for (int kind = 0; kind < workKinds; ++kind)
        EXPECT_EQ(findWorkKind(idOf(static_cast<WorkKind>(kind))), static_cast<WorkKind>(kind));
    for (int area = 0; area < areas; ++area)
        EXPECT_EQ(findArea(idOf(static_cast<Area>(area))), static_cast<Area>(area));
    for (const Moment moment : {Moment::AsReceived, Moment::AsItLeaves})
        EXPECT_EQ(findMoment(idOf(moment)), moment);
    EXPECT_FALSE(findWorkKind("polished"));
    EXPECT_FALSE(findArea(""));
    EXPECT_FALSE(findMoment("later"));
}

TEST(PhotographPairs, PutTheSameViewOfBothMomentsSideBySide)
{
    const std::vector<Photograph> photographs{{.uid = "1", .moment = Moment::AsItLeaves, .view = "front"},
                                              {.uid = "2", .moment = Moment::AsReceived, .view = "keys"},
                                              {.uid = "3", .moment = Moment::AsReceived, .view = "front"}};
    const auto pairs = pairsOf(photographs);
    ASSERT_EQ(pairs.size(), 2u);
    EXPECT_EQ(pairs[0].view, "front");
    EXPECT_EQ(pairs[0].received, &photographs[2]);
    EXPECT_EQ(pairs[0].leaving, &photographs[0]);
    EXPECT_EQ(pairs[1].received, &photographs[1]);
    EXPECT_EQ(pairs[1].leaving, nullptr);
}

TEST(PhotographPairs, BeginAnewWhereAViewWasTakenTwiceAtOneMoment)
{
    const std::vector<Photograph> photographs{{.uid = "1", .moment = Moment::AsReceived, .view = "front"},
                                              {.uid = "2", .moment = Moment::AsReceived, .view = "front"}};
    const auto pairs = pairsOf(photographs);
    ASSERT_EQ(pairs.size(), 2u);
    EXPECT_EQ(pairs[1].received, &photographs[1]);
}

TEST(Dossier, KnowsItsDeparturesAndTheTimeThatIsKnown)
{
    Dossier dossier;
    dossier.work = {sound(), sound(), sound()};
    dossier.work[1].departure = true;
    dossier.work[1].took.reset();
    EXPECT_THAT(dossier.departures(), testing::ElementsAre(dossier.work[1]));
    EXPECT_EQ(dossier.timeWorked(), std::chrono::minutes(1200));
}

TEST(IsoDay, ReadsWhatItWrites)
{
    for (const char *text : {"1700-01-01", "1999-12-31", "2000-02-29", "2100-12-31"})
        EXPECT_EQ(isoDay(parseIsoDay(text).value()), text);
}

TEST(IsoDay, RefusesWhatIsNoDay)
{
    for (const char *text : {"", "2026-02-30", "2026-13-01", "2026-00-10", "26-01-01", "2026/01/01", "2026-1-011",
                             "-026-01-01", "1699-12-31", "2026-01-01T00:00:00Z", "2026--1-01"})
        EXPECT_FALSE(parseIsoDay(text)) << text;
}

} // namespace
} // namespace hammerline::dossier
