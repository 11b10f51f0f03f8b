// One invented instrument goes the whole way, and the logbook that holds it was never written past its own rules.

#include "demo_workshop/write_logbook.h"

#include "logbook/logbook.h"
#include "logbook/to_review.h"
#include "logbook/verify_history.h"
#include "support/small_jpeg.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

namespace hammerline::demo_workshop {
namespace {

namespace fs = std::filesystem;

class DemoChain : public ::testing::Test {
protected:
    /// Made once: nobody writes into it.
    static void SetUpTestSuite()
    {
        std::string name = (fs::temp_directory_path() / "hammerline-XXXXXX").string();
        m_folder = mkdtemp(name.data());
        EXPECT_TRUE(writeLogbook(makeWorkshop(),
                                 {.path = path(),
                                  .overwrite = false,
                                  .scratchPath = (m_folder / "scratch").string(),
                                  .drawer = [](const dossier::Photograph &) { return support::smallJpeg(64, 48); }}));
    }
    static void TearDownTestSuite() { fs::remove_all(m_folder); }

    static std::string path() { return (m_folder / "shop.hammerline").string(); }
    static logbook::Logbook book() { return logbook::Logbook::open(path(), logbook::Access::ReadOnly); }
    static instrument::Instrument named(const logbook::Logbook &book, const std::string &name)
    {
        const auto all = book.instruments();
        const auto found = std::ranges::find(all, name, &instrument::Instrument::name);
        EXPECT_NE(found, all.end());
        return *found;
    }
    static readings::Pass passFor(const logbook::Logbook &book, const instrument::Instrument &of,
                                  readings::Purpose purpose)
    {
        const auto passes = book.passes(of.id);
        return *std::ranges::find(passes, purpose, &readings::Pass::purpose);
    }

    inline static fs::path m_folder;
};

TEST_F(DemoChain, HistoryIsWhole)
{
    EXPECT_TRUE(logbook::verifyHistory(path()).whole());
}

TEST_F(DemoChain, APassWasSignedOpenedAgainForAReasonAndSignedAgain)
{
    const auto shop = book();
    const auto left = passFor(shop, named(shop, "Quillerby 131"), readings::Purpose::AsLeft);
    const auto standing = shop.decisions(left.id).standing;
    ASSERT_EQ(standing.size(), 3u);
    EXPECT_TRUE(decisions::isSigned(standing));
    EXPECT_EQ(decisions::revisionOf(standing), 2);
    EXPECT_NE(standing[1].words, "");
    EXPECT_NE(standing[0].person, left.person) << "the lead is a second person";
}

TEST_F(DemoChain, WhatWasSentBackSaysWhatToDoAndWasReadAgain)
{
    const Workshop made = makeWorkshop();
    const MadePass &left = made.instruments.front().passes[2];
    const auto sent = std::ranges::find_if(
        left.deeds, [](const LeadDeed &deed) { return std::holds_alternative<SendBack>(deed.what); });
    ASSERT_NE(sent, left.deeds.end());
    const auto again = std::ranges::find_if(
        left.deeds, [](const LeadDeed &deed) { return std::holds_alternative<ReadAgain>(deed.what); });
    for (const decisions::SentBack &item : std::get<SendBack>(sent->what).items) {
        EXPECT_NE(item.words, "");
        const auto &readings = std::get<ReadAgain>(again->what).readings;
        EXPECT_TRUE(std::ranges::any_of(readings, [&](const readings::Reading &reading) {
            return item.isOf(reading.place.quantity, reading.place.note) && reading.at > sent->at;
        }));
    }
}

TEST_F(DemoChain, ARevisitAYearLaterIsSignedWithConcessionsThatSayWhy)
{
    const auto shop = book();
    const auto upright = named(shop, "Quillerby 131");
    const auto recheck = passFor(shop, upright, readings::Purpose::Recheck);
    const auto left = passFor(shop, upright, readings::Purpose::AsLeft);
    EXPECT_GE(recheck.began - left.began, std::chrono::days(360));
    const auto decided = shop.decisions(recheck.id);
    EXPECT_TRUE(decisions::isSigned(decided.standing));
    EXPECT_FALSE(decided.concessions.empty());
    for (const auto &concession : decided.concessions)
        EXPECT_NE(concession.words, "");
    EXPECT_EQ(upright.state, instrument::State::SignedOff);
}

TEST_F(DemoChain, ASecondPersonReadASample)
{
    const auto shop = book();
    const auto checks = shop.spotChecks(named(shop, "Quillerby 131").id);
    ASSERT_EQ(checks.size(), 2u) << "before it was signed, and at the revisit";
    const auto check = shop.spotCheck(checks.front().id);
    EXPECT_EQ(check->notes.size(), 13u);
    EXPECT_NE(checks.front().person, shop.pass(check->checked)->person);
    EXPECT_GE(shop.readingCount(checks.front().id), 30);
}

TEST_F(DemoChain, SomethingStillWaitsForTheTechnicianWithTheLeadsWord)
{
    const auto shop = book();
    const auto grand = passFor(shop, named(shop, "Zirrow 188"), readings::Purpose::AsLeft);
    const auto waiting = logbook::sentBackTo(shop, grand);
    EXPECT_GE(waiting.size(), 3u);
    for (const decisions::SentBack &item : waiting)
        EXPECT_NE(item.words, "");
}

TEST_F(DemoChain, TheFileHoldsWorkDeparturesConditionsAndPhotographsOfBothMoments)
{
    const auto shop = book();
    const auto file = shop.dossier(named(shop, "Quillerby 131").id);
    EXPECT_GE(file.work.size(), 5u);
    EXPECT_EQ(file.departures().size(), 2u);
    for (const auto &pair : dossier::pairsOf(file.photographs)) {
        EXPECT_NE(pair.received, nullptr);
        EXPECT_NE(pair.leaving, nullptr);
    }
    EXPECT_EQ(file.photographs.size(), 4u);
    EXPECT_TRUE(file.conditions.contains({dossier::Moment::AsItLeaves, dossier::Area::Action}));
    EXPECT_TRUE(shop.dossier(named(shop, "Ondelmark 108").id).sale.said());
}

TEST_F(DemoChain, NothingIsDoneBeforeWhatItIsAbout)
{
    for (const MadeInstrument &made : makeWorkshop().instruments)
        for (const MadePass &pass : made.passes) {
            readings::Instant last = pass.pass.began;
            for (const LeadDeed &deed : pass.deeds) {
                EXPECT_GE(deed.at, last) << made.instrument.name;
                last = deed.at;
            }
        }
}

} // namespace
} // namespace hammerline::demo_workshop
