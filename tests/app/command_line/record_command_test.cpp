// record, called as a script would: no display, no application object before.

#include "support/command_run.h"

#include "demo_workshop/demo_workshop.h"
#include "logbook/logbook.h"
#include "seal/seal.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <memory>

namespace hammerline {
namespace {

using test_support::fileText;
using test_support::runCommand;
using test_support::ScratchFolder;

/// The words of the pages, as another program finds them.
std::string pagesOf(const std::string &path)
{
    const std::unique_ptr<FILE, int (*)(FILE *)> pipe(popen(("pdftotext '" + path + "' -").c_str(), "r"), pclose);
    std::string text;
    for (int byte = std::fgetc(pipe.get()); byte != EOF; byte = std::fgetc(pipe.get()))
        text += static_cast<char>(byte);
    return text;
}

class RecordCommand : public ::testing::Test {
protected:
    RecordCommand() : m_book(m_folder.file("shop.hammerline")) { EXPECT_EQ(runCommand({"demo", m_book}).status, 0); }
    void expectRefused(const std::vector<std::string> &call, const std::string &says) const
    {
        const auto ran = runCommand(call);
        EXPECT_EQ(ran.status, 2);
        EXPECT_EQ(ran.out, "");
        EXPECT_NE(ran.err.find(says), std::string::npos) << ran.err;
    }
    /// A newly taken in instrument that nobody has measured; its id.
    std::string addUnread(const std::string &name, bool withSet) const
    {
        auto added = demo_workshop::makeWorkshop().instruments.front().instrument;
        added.uid.clear();
        added.name = name;
        if (!withSet) {
            added.toleranceId.clear();
            added.toleranceText.clear();
        }
        auto book = logbook::Logbook::open(m_book);
        return std::to_string(book.addInstrument(added, {}).value().id);
    }

    ScratchFolder m_folder;
    std::string m_book;
};

TEST_F(RecordCommand, WritesAPdfOfEitherPaper)
{
    for (const char *paper : {"a4", "letter"}) {
        const auto to = m_folder.file(std::string(paper) + ".pdf");
        const auto ran = runCommand({"record", m_book, "--instrument", "1", "--to", to, "--paper", paper});
        ASSERT_EQ(ran.status, 0) << ran.err;
        EXPECT_TRUE(fileText(to).starts_with("%PDF-"));
    }
    EXPECT_NE(fileText(m_folder.file("a4.pdf")), fileText(m_folder.file("letter.pdf")));
    expectRefused({"record", m_book, "--instrument", "1", "--to", m_folder.file("x.pdf"), "--paper", "foolscap"},
                  "--paper");
}

TEST_F(RecordCommand, OverwritesOnlyWhenForced)
{
    const auto to = m_folder.write("record.pdf", "mine");
    expectRefused({"record", m_book, "--instrument", "5", "--to", to}, to);
    EXPECT_EQ(fileText(to), "mine");
    EXPECT_EQ(runCommand({"record", m_book, "--instrument", "5", "--to", to, "--force"}).status, 0);
    EXPECT_TRUE(fileText(to).starts_with("%PDF-"));
}

TEST_F(RecordCommand, AReissueNamesTheRecordThatItTakesThePlaceOf)
{
    const auto first = m_folder.file("first.pdf");
    const auto second = m_folder.file("second.pdf");
    ASSERT_EQ(runCommand({"record", m_book, "--instrument", "1", "--to", first}).status, 0);
    ASSERT_EQ(runCommand({"record", m_book, "--instrument", "1", "--to", second, "--replaces", first}).status, 0);
    const auto report = seal::verifyRecord(fileText(second));
    ASSERT_EQ(report.verdict, seal::SealVerdict::Unaltered);
    const auto json = std::ranges::find(report.files, "record.json", &seal::EmbeddedFile::name)->content;
    EXPECT_NE(json.find("\"revision\": 2"), std::string::npos);
    EXPECT_NE(json.find(seal::digestOf(fileText(first))), std::string::npos);
}

TEST_F(RecordCommand, ARecordOfAHistoryThatIsNotHereIsReplacedWithAWord)
{
    const auto first = m_folder.file("first.pdf");
    const auto piano = m_folder.file("piano.json");
    const auto fresh = m_folder.file("fresh.hammerline");
    ASSERT_EQ(runCommand({"record", m_book, "--instrument", "1", "--to", first}).status, 0);
    ASSERT_EQ(runCommand({"hand-over", m_book, "--instrument", "1", "--to", piano}).status, 0);
    ASSERT_EQ(runCommand({"take-over", fresh, piano, "--new"}).status, 0);
    const auto held =
        runCommand({"record", m_book, "--instrument", "1", "--to", m_folder.file("here.pdf"), "--replaces", first});
    EXPECT_EQ(held.status, 0);
    EXPECT_EQ(held.err, "");
    const auto moved =
        runCommand({"record", fresh, "--instrument", "1", "--to", m_folder.file("there.pdf"), "--replaces", first});
    EXPECT_EQ(moved.status, 0);
    EXPECT_NE(moved.err.find(first + ": was made from entry "), std::string::npos) << moved.err;
    EXPECT_NE(moved.err.find("Either the instrument came here out of another logbook"), std::string::npos);
    EXPECT_TRUE(fileText(m_folder.file("there.pdf")).starts_with("%PDF-"));
}

TEST_F(RecordCommand, OnlyASoundRecordOfTheSameInstrumentCanBeReplaced)
{
    const auto other = m_folder.file("other.pdf");
    const auto to = m_folder.file("new.pdf");
    ASSERT_EQ(runCommand({"record", m_book, "--instrument", "2", "--to", other}).status, 0);
    expectRefused({"record", m_book, "--instrument", "1", "--to", to, "--replaces", other}, "another instrument");
    const auto altered = m_folder.write("altered.pdf", fileText(other) + " ");
    expectRefused({"record", m_book, "--instrument", "2", "--to", to, "--replaces", altered}, "only a sealed record");
    EXPECT_FALSE(std::filesystem::exists(to));
}

TEST_F(RecordCommand, SpeaksTheLanguageThatIsAskedFor)
{
    const auto to = m_folder.file("bericht.pdf");
    ASSERT_EQ(runCommand({"record", m_book, "--instrument", "1", "--to", to, "--language", "de"}).status, 0);
    EXPECT_NE(fileText(to).find("/Lang (de)"), std::string::npos);
    expectRefused({"record", m_book, "--instrument", "1", "--to", m_folder.file("x.pdf"), "--language", "xx"},
                  "--language");
}

TEST_F(RecordCommand, BuyerAndPriceStayOutOfPagesAndDataUnlessAskedFor)
{
    const auto silent = m_folder.file("silent.pdf");
    const auto telling = m_folder.file("telling.pdf");
    ASSERT_EQ(runCommand({"record", m_book, "--instrument", "4", "--to", silent}).status, 0);
    ASSERT_EQ(runCommand({"record", m_book, "--instrument", "4", "--to", telling, "--with-sale"}).status, 0);
    for (const char *word : {"An invented family", "2400 (invented)", "Fetched on a dry day"}) {
        const auto holdsIt = [word](const seal::EmbeddedFile &file) {
            return file.content.find(word) != std::string::npos;
        };
        const auto quiet = seal::verifyRecord(fileText(silent)).files;
        EXPECT_EQ(quiet.size(), 4u);
        EXPECT_TRUE(std::ranges::none_of(quiet, holdsIt)) << word;
        EXPECT_EQ(pagesOf(silent).find(word), std::string::npos) << word;
        EXPECT_EQ(fileText(silent).find(word), std::string::npos) << word;
        EXPECT_NE(pagesOf(telling).find(word), std::string::npos) << word;
        const auto told = seal::verifyRecord(fileText(telling)).files;
        EXPECT_EQ(std::ranges::count_if(told, holdsIt), 1) << word << ": record.json alone";
    }
}

TEST_F(RecordCommand, AKeyUnderAPassphraseSealsForThoseWhoKnowIt)
{
    const auto key = m_folder.file("key.p12");
    const auto words = m_folder.write("words", "open sesame\nnot this\n");
    const auto call = [&](const std::string &to, const std::string &file) {
        return runCommand({"record", m_book, "--instrument", "1", "--to", m_folder.file(to), "--key-file", key,
                           "--passphrase-file", file});
    };
    EXPECT_EQ(call("a.pdf", words).status, 0);
    EXPECT_EQ(call("b.pdf", words).status, 0);
    EXPECT_EQ(call("c.pdf", m_folder.write("others", "open barley\n")).status, 2);
    EXPECT_EQ(call("d.pdf", m_folder.file("missing")).status, 2);
    expectRefused({"record", m_book, "--instrument", "1", "--to", m_folder.file("e.pdf"), "--key-file", key},
                  "passphrase");
}

TEST_F(RecordCommand, AnInstrumentWithoutReadingsGetsNone)
{
    const auto to = m_folder.file("record.pdf");
    expectRefused({"record", m_book, "--instrument", addUnread("Not measured", true), "--to", to}, "reading");
    expectRefused({"record", m_book, "--instrument", addUnread("Without a set", false), "--to", to}, "tolerance set");
    EXPECT_FALSE(std::filesystem::exists(to));
}

} // namespace
} // namespace hammerline
