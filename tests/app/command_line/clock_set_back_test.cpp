// A computer whose clock was set back: all that stands in the logbook is dated years after today. What is done comes in
// the order in which it was done, whatever the clock says, and nothing is refused or lost for it.

#include "support/command_run.h"

#include "demo_workshop/demo_workshop.h"
#include "logbook/logbook.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace hammerline {
namespace {

using nlohmann::json;
using test_support::runCommand;
using test_support::ScratchFolder;

/// The commands run on 2 November 2026.
const readings::Instant yearsLater = readings::parseRfc3339("2031-05-01T08:00:00Z").value();
const logbook::Stamp later{yearsLater, "Ada Sample"};
const logbook::Stamp earlier{yearsLater - std::chrono::hours(24 * 365 * 6), "Ben Sample"};

readings::Reading letOff(int note, std::int64_t nanometres)
{
    return {.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1},
            .value = units::Length::nanometres(nanometres),
            .typed = "3"};
}

class ClockSetBack : public ::testing::Test {
protected:
    ClockSetBack()
    {
        auto piano = demo_workshop::makeWorkshop().instruments.front().instrument;
        piano.id = 0;
        static_cast<void>(book.addInstrument(piano, later).value());
        static_cast<void>(book.beginPass({.instrument = 1, .began = later.at, .person = "Ada Sample"}, later));
        for (int note = 40; note <= 52; ++note)
            book.enter(1, letOff(note, 3'000'000 + note), later);
    }
    void done(const std::vector<std::string> &call)
    {
        const auto ran = runCommand(call);
        EXPECT_NE(ran.status, 2) << call.front() << ": " << ran.err;
    }
    [[nodiscard]] bool whole() const { return logbook::verifyHistory(book.path()).whole(); }

    ScratchFolder folder;
    std::string path = folder.file("shop.hammerline");
    logbook::Logbook book = logbook::Logbook::create(path, later).value();
};

TEST_F(ClockSetBack, TheLaterEntryStandsThoughItIsDatedEarlier)
{
    book.enter(1, letOff(40, 9), earlier);
    EXPECT_EQ(book.readings(1).front().value, units::Amount(units::Length::nanometres(9)));
    const auto versions = book.versions(1, {catalogue::Quantity::LetOff, keyboard::Note(40), 1});
    ASSERT_EQ(versions.size(), 2u);
    EXPECT_EQ(versions.back().stamp.at, earlier.at);
    EXPECT_TRUE(whole());
}

TEST_F(ClockSetBack, WhatIsTakenBackIsWhatWasDoneLast)
{
    const auto entered = book.enter(1, letOff(53, 9), earlier);
    EXPECT_EQ(book.undoable(1)->id, entered);
    book.undo(*book.undoable(1), earlier);
    EXPECT_EQ(book.readingCount(1), 13);
    book.redo(*book.redoable(1), {earlier.at - std::chrono::hours(1), "Ben Sample"});
    EXPECT_EQ(book.readingCount(1), 14);
    EXPECT_TRUE(whole());
}

TEST_F(ClockSetBack, APassIsSignedAndOpenedAgainBeforeItsReadingsByTheClock)
{
    tolerance::ToleranceSet set;
    set.action = book.instrument(1)->action;
    ASSERT_TRUE(book.signPass(1, set, {.id = "plain", .text = "{}"}, earlier, "fit"));
    EXPECT_TRUE(book.refusal(1));
    ASSERT_TRUE(book.reopenPass(1, {earlier.at - std::chrono::hours(1), "Ben Sample"}, "a string broke"));
    EXPECT_FALSE(book.refusal(1));
    book.enter(1, letOff(40, 9), earlier);
    EXPECT_TRUE(whole());
}

TEST_F(ClockSetBack, EveryCommandGoesOn)
{
    const std::string csv = folder.write("in.csv", "note,let_off\nA0,3\nC4,3.1\n");
    const std::string document = folder.file("piano.json");
    const std::string pdf = folder.file("record.pdf");
    done({"import", path, csv, "--instrument", "1", "--purpose", "as-left"});
    EXPECT_EQ(json::parse(runCommand({"passes", path, "--instrument", "1", "--json"}).out)["passes"].size(), 2u);
    for (const std::vector<std::string> &call :
         std::vector<std::vector<std::string>>{{"instruments", path},
                                               {"passes", path, "--instrument", "1"},
                                               {"review", path},
                                               {"rejudge", path, "--tolerances", "full-upright"},
                                               {"export", path, "--instrument", "1", "--to", folder.file("out.csv")},
                                               {"record", path, "--instrument", "1", "--to", pdf},
                                               {"verify", pdf},
                                               {"hand-over", path, "--instrument", "1", "--to", document},
                                               {"take-over", folder.file("other.hammerline"), document, "--new"},
                                               {"backup", path, "--to", folder.file("copy.hammerline")}})
        done(call);
    for (const std::string &each : {path, folder.file("other.hammerline"), folder.file("copy.hammerline"), pdf})
        EXPECT_EQ(runCommand({"verify", each}).status, 0) << each;
}

} // namespace
} // namespace hammerline
