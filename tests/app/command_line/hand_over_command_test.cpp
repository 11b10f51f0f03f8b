// hand-over, take-over and backup on the invented workshop.

#include "logbook/logbook.h"
#include "support/command_run.h"
#include "support/json_schema.h"
#include "support/vouched_anew.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline {
namespace {

using test_support::fileText;
using test_support::runCommand;
using test_support::ScratchFolder;
using testing::HasSubstr;
using testing::IsEmpty;

class HandOverCommands : public ::testing::Test {
protected:
    HandOverCommands()
    {
        EXPECT_EQ(runCommand({"demo", m_book}).status, 0);
        EXPECT_EQ(runCommand({"demo", m_other}).status, 0);
    }
    /// Instrument `id` of `book` written into `name`.
    std::string handedOver(const std::string &book, const std::string &id, const std::string &name)
    {
        const std::string file = m_folder.file(name);
        const auto ran = runCommand({"hand-over", book, "--instrument", id, "--to", file});
        EXPECT_EQ(ran.status, 0) << ran.err;
        return file;
    }

    ScratchFolder m_folder;
    std::string m_book = m_folder.file("shop.hammerline");
    std::string m_other = m_folder.file("other.hammerline");
};

TEST_F(HandOverCommands, TheDocumentKeepsToItsSchema)
{
    const std::string text = fileText(handedOver(m_book, "1", "piano.json"));
    EXPECT_THAT(support::JsonSchema("hand-over").faultsOf(text), IsEmpty());
}

TEST_F(HandOverCommands, AnInstrumentGoesOverWithEveryReading)
{
    const std::string fresh = m_folder.file("fresh.hammerline");
    const std::string file = handedOver(m_book, "2", "piano.json");
    const auto taken = runCommand({"take-over", fresh, file, "--new"});
    ASSERT_EQ(taken.status, 0) << taken.err;
    EXPECT_THAT(taken.out, HasSubstr("is instrument 1, taken over with"));
    const std::string id = "1";
    const std::string here = m_folder.file("here.csv");
    const std::string there = m_folder.file("there.csv");
    ASSERT_EQ(runCommand({"export", m_book, "--instrument", "2", "--to", there}).status, 0);
    ASSERT_EQ(runCommand({"export", fresh, "--instrument", id, "--to", here}).status, 0);
    EXPECT_EQ(fileText(here), fileText(there));
    EXPECT_EQ(fileText(handedOver(fresh, id, "again.json")), fileText(file));
    EXPECT_EQ(runCommand({"verify", fresh}).status, 0);
}

TEST_F(HandOverCommands, WithoutALogbookToTakeItOverIntoSaysHowToMakeOne)
{
    const std::string file = handedOver(m_book, "1", "piano.json");
    const std::string fresh = m_folder.file("fresh.hammerline");
    const auto ran = runCommand({"take-over", fresh, file});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.err, fresh + ": no logbook is there; give --new to make it, or name one that is there\n");
    EXPECT_FALSE(std::filesystem::exists(fresh));
}

TEST_F(HandOverCommands, ANewLogbookIsMadeOnlyForWhatIsTakenOver)
{
    const std::string fresh = m_folder.file("fresh.hammerline");
    EXPECT_EQ(runCommand({"take-over", fresh, m_other, "--new"}).status, 2);
    const std::string file = handedOver(m_book, "1", "piano.json");
    EXPECT_EQ(runCommand({"take-over", fresh, file, "--new", "--digest", std::string(64, 'a')}).status, 2);
    for (const char *ending : {"", "-wal", "-shm"})
        EXPECT_FALSE(std::filesystem::exists(fresh + ending)) << ending;
    EXPECT_EQ(runCommand({"take-over", m_folder.file("no/folder"), file, "--new"}).status, 2);
    EXPECT_EQ(runCommand({"take-over", m_other, file, "--new"}).status, 0);
    EXPECT_GT(logbook::Logbook::open(m_other).instruments().size(), 1u);
}

TEST_F(HandOverCommands, TheDigestIsToldAtBothEndsAndCanBeGiven)
{
    const std::string file = m_folder.file("piano.json");
    const auto handed = runCommand({"hand-over", m_book, "--instrument", "1", "--to", file});
    const auto lineOf = [](const std::string &out) {
        for (const std::string &line : test_support::linesOf(out))
            if (line.starts_with("Digest: "))
                return line;
        return std::string();
    };
    const std::string told = lineOf(handed.out);
    ASSERT_EQ(told.size(), std::string("Digest: ").size() + 64 + 15);
    EXPECT_EQ(lineOf(runCommand({"take-over", m_other, file}).out), told);
    const auto given = runCommand({"take-over", m_other, file, "--digest", told.substr(8)});
    EXPECT_EQ(given.status, 0) << given.err;
    EXPECT_THAT(given.out, HasSubstr("It is the one you gave."));
    const auto other = runCommand({"take-over", m_other, file, "--digest", std::string(64, 'a')});
    EXPECT_EQ(other.status, 2);
    EXPECT_THAT(other.err, HasSubstr("not the one you gave"));
    EXPECT_THAT(runCommand({"take-over", m_other, file, "--digest", "12"}).err, HasSubstr("is no digest"));
}

TEST_F(HandOverCommands, EditedByHandIsRefusedWithTheDeedNamed)
{
    std::string text = fileText(handedOver(m_book, "1", "piano.json"));
    const auto at = text.find("\"value\":", text.find("\"deed\":5,")) + 8;
    text[at] = text[at] == '1' ? '2' : '1';
    const auto ran = runCommand({"take-over", m_folder.file("fresh"), m_folder.write("edited.json", text), "--new"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr("edited.json: deed "));
    EXPECT_THAT(ran.err, HasSubstr("was altered after it was handed over"));
}

TEST_F(HandOverCommands, BuyerAndPriceCanStayBehind)
{
    const std::string file = m_folder.file("unsold.json");
    const auto ran = runCommand({"hand-over", m_book, "--instrument", "4", "--to", file, "--without-sale"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr(", without buyer and price."));
    EXPECT_THAT(support::JsonSchema("hand-over").faultsOf(fileText(file)), IsEmpty());
    EXPECT_EQ(fileText(file).find("An invented family"), std::string::npos);
    const std::string fresh = m_folder.file("fresh");
    EXPECT_THAT(runCommand({"take-over", fresh, file, "--new"}).out, HasSubstr("Buyer and price were left out"));
    const std::string whole = handedOver(m_book, "4", "whole.json");
    EXPECT_NE(fileText(whole).find("An invented family"), std::string::npos);
    EXPECT_THAT(runCommand({"take-over", fresh, whole}).out, HasSubstr("gone on with 2 deeds.")) << "sale and delivery";
    EXPECT_EQ(logbook::Logbook::open(fresh).dossier(1).sale.buyer, "An invented family");
}

TEST_F(HandOverCommands, OneDemonstrationTakenOverIntoAnotherDoublesNothing)
{
    for (const char *id : {"1", "2", "3", "4", "5", "6", "7"}) {
        const auto taken = runCommand({"take-over", m_other, handedOver(m_book, id, std::string(id) + ".json")});
        EXPECT_EQ(taken.status, 0) << taken.err;
        EXPECT_THAT(taken.out, HasSubstr("was here already"));
    }
}

TEST_F(HandOverCommands, TakenOverTwiceIsToldAndAddsNothing)
{
    const std::string file = handedOver(m_book, "1", "piano.json");
    const std::string before = fileText(handedOver(m_book, "1", "before.json"));
    const auto again = runCommand({"take-over", m_book, file});
    EXPECT_EQ(again.status, 0) << again.err;
    EXPECT_THAT(again.out, HasSubstr("was here already"));
    EXPECT_EQ(fileText(handedOver(m_book, "1", "after.json")), before);
}

TEST_F(HandOverCommands, AFileIsOverwrittenOnlyWhenForced)
{
    const std::string file = handedOver(m_book, "1", "piano.json");
    EXPECT_EQ(runCommand({"hand-over", m_book, "--instrument", "2", "--to", file}).status, 2);
    EXPECT_EQ(runCommand({"hand-over", m_book, "--instrument", "2", "--to", file, "--force"}).status, 0);
}

TEST_F(HandOverCommands, WhatIsNoHandOverIsRefusedByName)
{
    const auto ran = runCommand({"take-over", m_book, m_other});
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr(m_other + ": is a logbook or another database"));
    const std::string letter = m_folder.write("letter.txt", "Dear buyer,");
    EXPECT_THAT(runCommand({"take-over", m_book, letter}).err, HasSubstr(letter + ": this is no JSON document"));
    EXPECT_EQ(runCommand({"take-over", m_book, m_folder.file("missing.json")}).status, 2);
}

TEST_F(HandOverCommands, ABackupIsALogbookOfItsOwnAndRestoresTheOther)
{
    const std::string copy = m_folder.file("copy.hammerline");
    const auto ran = runCommand({"backup", m_book, "--to", copy});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("all whole"));
    const std::string before = runCommand({"review", m_book, "--json"}).out;
    std::ofstream(m_book, std::ios::binary | std::ios::trunc) << "spoiled";
    EXPECT_EQ(runCommand({"review", m_book}).status, 2);
    std::filesystem::copy_file(copy, m_book, std::filesystem::copy_options::overwrite_existing);
    EXPECT_EQ(runCommand({"review", m_book, "--json"}).out, before);
    EXPECT_EQ(runCommand({"verify", m_book}).status, 0);
}

TEST_F(HandOverCommands, ABackupOfAnEditedLogbookIsMadeAndSaysSo)
{
    ASSERT_EQ(runCommand({"verify", m_book}).status, 0);
    ASSERT_EQ(std::system(("sqlite3 '" + m_book + "' 'UPDATE reading SET value = value + 1 WHERE pass = 1'").c_str()),
              0);
    const std::string copy = m_folder.file("copy.hammerline");
    const auto ran = runCommand({"backup", m_book, "--to", copy});
    EXPECT_EQ(ran.status, 1);
    EXPECT_THAT(ran.err, HasSubstr("edited by another program"));
    EXPECT_EQ(runCommand({"verify", copy}).status, 1);
}

/// As only another program can leave it there.
void spoilSet(const std::string &path)
{
    auto book = logbook::Logbook::open(path);
    auto spoiled = book.instrument(2).value();
    spoiled.toleranceText = R"({"a":1})";
    ASSERT_TRUE(book.changeInstrument(spoiled, {}, {}));
}

TEST_F(HandOverCommands, ASetThatCannotBeReadBarsItsOwnInstrumentAlone)
{
    spoilSet(m_book);
    const auto ran = runCommand({"review", m_book});
    EXPECT_EQ(ran.status, 0);
    EXPECT_THAT(ran.out, HasSubstr("Zirrow"));
    EXPECT_THAT(ran.err, HasSubstr("Tamsel"));
}

TEST_F(HandOverCommands, ASetThatCannotBeReadIsNeverTakenOver)
{
    const std::string sound = handedOver(m_book, "2", "sound.json");
    spoilSet(m_book);
    const std::string fresh = m_folder.file("fresh.hammerline");
    ASSERT_EQ(runCommand({"take-over", fresh, sound, "--new"}).status, 0);
    const std::string before = fileText(handedOver(fresh, "1", "before.json"));
    const auto ran = runCommand({"take-over", fresh, handedOver(m_book, "2", "spoiled.json")});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    EXPECT_THAT(ran.err, HasSubstr("spoiled.json: deed "));
    EXPECT_THAT(ran.err, HasSubstr("].rows[0].tolerance_text: the tolerance set cannot be read"));
    EXPECT_THAT(ran.err, HasSubstr("would be right"));
    EXPECT_EQ(fileText(handedOver(fresh, "1", "after.json")), before);
}

TEST_F(HandOverCommands, ADeliveryStaysBehindWithTheSaleOrIsToldToGoAlong)
{
    const std::string file = m_folder.file("piano.json");
    const std::vector<std::string> call{"hand-over", m_book, "--instrument",   "4",
                                        "--to",      file,   "--without-sale", "--force"};
    const auto change = [&](const std::function<void(instrument::Instrument &)> &how) {
        auto book = logbook::Logbook::open(m_book);
        auto changed = book.instrument(4).value();
        how(changed);
        ASSERT_TRUE(book.changeInstrument(changed, {}, {}));
    };
    change([](auto &changed) { changed.state = instrument::State::SignedOff; });
    change([](auto &changed) { changed.state = instrument::State::Delivered; });
    EXPECT_THAT(runCommand(call).out, HasSubstr(", without buyer and price.\n"));
    change([](auto &changed) { changed.remark = "stands by a window"; });
    EXPECT_THAT(runCommand(call).out, HasSubstr("That it was delivered is in its history all the same"));
    EXPECT_THAT(fileText(file), HasSubstr(R"("state":"delivered")"));
}

TEST_F(HandOverCommands, ABackupNeverOverwrites)
{
    const std::string before = fileText(m_other);
    const auto ran = runCommand({"backup", m_book, "--to", m_other});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(fileText(m_other), before);
}

} // namespace
} // namespace hammerline
