// What verify says beyond the seal: do the verdicts inside follow from the readings inside, and does the logbook still
// hold the entry that the record was made at.

#include "core/seal/small_pdf.h"
#include "logbook/logbook.h"
#include "support/command_run.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace hammerline {
namespace {

using test_support::fileText;
using test_support::runCommand;
using test_support::ScratchFolder;
using testing::AllOf;
using testing::HasSubstr;
using Json = nlohmann::ordered_json;

class VerifyData : public ::testing::Test {
protected:
    static void SetUpTestSuite()
    {
        s_folder = std::make_unique<ScratchFolder>();
        ASSERT_EQ(runCommand({"demo", book()}).status, 0);
        ASSERT_EQ(runCommand({"record", book(), "--instrument", "1", "--to", pdf()}, key()).status, 0);
    }
    static void TearDownTestSuite() { s_folder.reset(); }

    static std::string book() { return s_folder->file("shop.hammerline"); }
    static std::string pdf() { return s_folder->file("record.pdf"); }
    static std::string key() { return s_folder->file("keys/key.p12"); }

    static std::vector<seal::EmbeddedFile> filesInside() { return seal::verifyRecord(fileText(pdf())).files; }
    static Json recordInside()
    {
        const auto files = filesInside();
        return Json::parse(std::ranges::find(files, "record.json", &seal::EmbeddedFile::name)->content);
    }

    /// verify of a file sealed with the workshop's own key over data that the workshop forged.
    [[nodiscard]] test_support::CommandRun verifyForged(const std::string &recordJson) const
    {
        seal::Dressing dressing = seal::smallDressing();
        dressing.attachments.clear();
        for (const seal::EmbeddedFile &file : filesInside())
            dressing.attachments.push_back(
                {file.name, "text/plain", "data", file.name == "record.json" ? recordJson : file.content});
        const auto sealed = seal::sealRecord(seal::dress(seal::smallPdf(), dressing), seal::loadKey(key(), "").value(),
                                             seal::someDay());
        return runCommand({"verify", m_folder.write("forged.pdf", sealed)}, key());
    }

    ScratchFolder m_folder;

private:
    inline static std::unique_ptr<ScratchFolder> s_folder;
};

TEST_F(VerifyData, ARecordAsTheProgramMakesItIsJudgedAnewAndAgrees)
{
    const auto ran = runCommand({"verify", pdf()}, key());
    EXPECT_THAT(ran.out, AllOf(HasSubstr("Judged anew: all 1056 verdicts follow"), HasSubstr(", revision 1 of 2026-"),
                               testing::ContainsRegex("stood at deed [0-9]+, digest [0-9a-f]{64}")));
    EXPECT_EQ(verifyForged(recordInside().dump()).status, 0);
}

TEST_F(VerifyData, AVerdictThatDoesNotFollowFromItsReadingIsNamed)
{
    Json record = recordInside();
    auto &verdicts = record["as_found"]["readings"];
    const auto out = std::ranges::find_if(verdicts, [](const Json &verdict) { return verdict["status"] == "out"; });
    ASSERT_NE(out, verdicts.end());
    (*out)["status"] = "in";
    const auto ran = verifyForged(record.dump());
    EXPECT_EQ(ran.status, 1);
    const std::string pair = (*out)["quantity"].get<std::string>() + ", " + (*out)["name"].get<std::string>();
    EXPECT_THAT(ran.out, AllOf(HasSubstr("DO NOT FOLLOW from the readings inside, in 1 place:"),
                               HasSubstr("as found, " + pair + ": status: the record says \"in\"")));
}

TEST_F(VerifyData, SealedDataThatNobodyCanReadIsNoGoodRecord)
{
    EXPECT_EQ(verifyForged("{}").status, 1);
    EXPECT_EQ(verifyForged("").status, 1);
    EXPECT_THAT(verifyForged(std::string(100'000, '[')).out, HasSubstr("CANNOT BE READ"));
}

TEST_F(VerifyData, ALogbookThatHoldsTheEntryOfARecordIsTold)
{
    const auto ran = runCommand({"verify", book(), "--record", pdf()}, key());
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, AllOf(HasSubstr("the history is whole"), HasSubstr("as the record (revision 1 of"),
                               HasSubstr("sealed and unaltered")));
}

TEST_F(VerifyData, AHistoryWrittenAnewOrCutIsToldByTheRecordThatLeftBefore)
{
    // Whole in itself, by the program's own hand, and yet not the one that the record was made from.
    const std::string anew = m_folder.file("anew.hammerline");
    auto other = logbook::Logbook::create(anew, {}).value();
    const auto verify = [&] { return runCommand({"verify", anew, "--record", pdf()}, key()); };
    const auto cut = verify();
    EXPECT_EQ(cut.status, 1);
    EXPECT_THAT(cut.out, AllOf(HasSubstr("the history is whole"), HasSubstr("REWRITTEN: the history holds no entry")));
    const auto deeds = logbook::Logbook::open(book(), logbook::Access::ReadOnly).newestDeed();
    while (other.newestDeed() < deeds)
        (void)other.addInstrument({.name = "Invented upright"}, {});
    EXPECT_EQ(runCommand({"verify", anew}).status, 0);
    const auto ran = verify();
    EXPECT_EQ(ran.status, 1);
    EXPECT_THAT(ran.out, AllOf(HasSubstr("REWRITTEN: entry "), HasSubstr("has another digest")));
}

TEST_F(VerifyData, OnlyALogbookAndARecordGoTogether)
{
    EXPECT_EQ(runCommand({"verify", pdf(), "--record", pdf()}).status, 2);
    EXPECT_EQ(runCommand({"verify", book(), "--record", book()}).status, 2);
    EXPECT_EQ(runCommand({"verify", book(), "--record", m_folder.file("missing.pdf")}).status, 2);
}

} // namespace
} // namespace hammerline
