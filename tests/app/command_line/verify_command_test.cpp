// verify, at the end of the chain that a script would call: demo, record, verify; and after somebody tampered.

#include "support/command_run.h"

#include "seal/key_store.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <cstdio>
#include <random>

namespace hammerline {
namespace {

using test_support::CommandRun;
using test_support::fileText;
using test_support::runCommand;
using test_support::ScratchFolder;
using testing::HasSubstr;

/// One logbook and one sealed record for all tests; each tampers with copies.
class VerifyCommand : public ::testing::Test {
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
    static seal::SigningKey signer() { return seal::loadKey(key(), "").value(); }

    /// How verify ends for a file of these bytes.
    [[nodiscard]] int statusFor(const std::string &bytes) const
    {
        return runCommand({"verify", m_folder.write("tampered.pdf", bytes)}, key()).status;
    }
    /// verify of a copy of the logbook that another program has changed with `sql`.
    [[nodiscard]] CommandRun afterSql(const std::string &sql) const
    {
        const auto copy = m_folder.file("copy.hammerline");
        std::filesystem::copy_file(book(), copy, std::filesystem::copy_options::overwrite_existing);
        sqlite3 *database = nullptr;
        EXPECT_EQ(sqlite3_open(copy.c_str(), &database), SQLITE_OK);
        EXPECT_EQ(sqlite3_exec(database, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK)
            << sqlite3_errmsg(database);
        EXPECT_GT(sqlite3_total_changes(database), 0);
        sqlite3_close(database);
        return runCommand({"verify", copy});
    }

    ScratchFolder m_folder;

private:
    inline static std::unique_ptr<ScratchFolder> s_folder;
};

std::string outputOf(const std::string &call)
{
    std::string text;
    FILE *pipe = popen(call.c_str(), "r");
    for (int c = 0; pipe != nullptr && (c = std::fgetc(pipe)) != EOF;)
        text += static_cast<char>(c);
    EXPECT_TRUE(pipe != nullptr && pclose(pipe) == 0) << call;
    return text;
}

TEST_F(VerifyCommand, ARecordAsItWasSealedIsTold)
{
    const auto ran = runCommand({"verify", pdf()}, key());
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    EXPECT_THAT(ran.out, HasSubstr("sealed and unaltered"));
    EXPECT_THAT(ran.out, HasSubstr("Ada Sample"));
    EXPECT_THAT(ran.out, HasSubstr(seal::groupedFingerprint(signer().fingerprint())));
}

TEST_F(VerifyCommand, AnotherProgramFindsTheSignatureValidAndTotal)
{
    const std::string said = outputOf("pdfsig '" + pdf() + "'");
    EXPECT_THAT(said, HasSubstr("Signature is Valid"));
    EXPECT_THAT(said, HasSubstr("Total document signed"));
}

TEST_F(VerifyCommand, EveryBitTurnedIsFound)
{
    const std::string sealed = fileText(pdf());
    std::mt19937 random(20261102);
    for (int i = 0; i < 200; ++i) {
        std::string turned = sealed;
        const std::size_t at = random() % sealed.size();
        const int bit = static_cast<int>(random() % 8);
        turned[at] = static_cast<char>(turned[at] ^ (1 << bit));
        ASSERT_EQ(statusFor(turned), 1) << "byte " << at << ", bit " << bit;
    }
}

TEST_F(VerifyCommand, EveryByteAppendedCutOrPutInIsFound)
{
    const std::string sealed = fileText(pdf());
    EXPECT_EQ(statusFor(sealed), 0);
    for (const std::string &end : {std::string("\n"), std::string(" "), std::string(1, '\0'), sealed})
        EXPECT_NE(statusFor(sealed + end), 0);
    std::mt19937 random(7);
    for (int i = 0; i < 50; ++i) {
        const std::size_t at = random() % sealed.size();
        EXPECT_NE(statusFor(sealed.substr(0, at)), 0) << "cut at " << at;
        EXPECT_NE(statusFor(std::string(sealed).insert(at, 1, ' ')), 0) << "put in at " << at;
        EXPECT_NE(statusFor(std::string(sealed).erase(at, 1)), 0) << "taken out at " << at;
    }
}

TEST_F(VerifyCommand, TheKeyExpectedMayBeAFingerprintOrACertificate)
{
    const auto certificate = m_folder.write("workshop.der", signer().certificate());
    for (const std::string &pinned :
         {signer().fingerprint(), seal::groupedFingerprint(signer().fingerprint()), certificate}) {
        const auto ran = runCommand({"verify", pdf(), "--key", pinned});
        EXPECT_EQ(ran.status, 0) << ran.err;
    }
    EXPECT_EQ(runCommand({"verify", pdf(), "--key", "0123"}).status, 2);
    EXPECT_EQ(runCommand({"verify", pdf(), "--key", pdf()}).status, 2);
}

TEST_F(VerifyCommand, AnotherKeyOfTheSameNameIsToldApart)
{
    const auto forged = m_folder.file("forged.pdf");
    ASSERT_EQ(
        runCommand({"record", book(), "--instrument", "1", "--to", forged, "--key-file", m_folder.file("other.p12")})
            .status,
        0);
    const std::string nobodysKey = m_folder.file("elsewhere/key.p12");
    EXPECT_EQ(runCommand({"verify", forged}, nobodysKey).status, 0) << "where nobody is trusted, the reader compares";
    const auto pinned = runCommand({"verify", forged, "--key", signer().fingerprint()});
    EXPECT_EQ(pinned.status, 1);
    EXPECT_THAT(pinned.out, HasSubstr("not among those expected"));
    const auto listed = runCommand({"verify", forged}, key());
    EXPECT_EQ(listed.status, 1) << "the workshop's own key is on its list since it was made";
    EXPECT_THAT(listed.out, HasSubstr("ANOTHER KEY"));
}

TEST_F(VerifyCommand, AKeyThatIsTrustedOnceIsKnownFromThenOn)
{
    const std::string elsewhere = m_folder.file("key.p12");
    EXPECT_THAT(runCommand({"verify", pdf()}, elsewhere).out, HasSubstr("Compare the fingerprint"));
    EXPECT_EQ(runCommand({"verify", m_folder.write("cut.pdf", fileText(pdf()) + " "), "--trust"}, elsewhere).status, 1)
        << "altered, and its key is not trusted";
    EXPECT_EQ(runCommand({"verify", pdf(), "--trust"}, elsewhere).status, 0);
    EXPECT_THAT(runCommand({"verify", pdf()}, elsewhere).out, HasSubstr("on the list of trusted keys"));
    EXPECT_THAT(fileText(m_folder.file("trusted-keys.txt")),
                HasSubstr(signer().fingerprint() + " 2026-11-02 Ada Sample\n"));
    (void)m_folder.write("trusted-keys.txt", "not a key\n");
    EXPECT_EQ(runCommand({"verify", pdf()}, elsewhere).status, 2);
}

TEST_F(VerifyCommand, AWholeLogbookIsToldWithItsNewestDigest)
{
    const auto ran = runCommand({"verify", book()});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, testing::ContainsRegex("Deeds: [1-9]"));
    EXPECT_THAT(ran.out, testing::ContainsRegex("Newest digest: [0-9a-f]{64}"));
}

TEST_F(VerifyCommand, ARowThatAnotherProgramTouchedIsNamed)
{
    const std::string row = "pass=1 AND quantity=2 AND note=1 AND take=1 AND version=1";
    const auto altered = afterSql("UPDATE reading SET value=value+1 WHERE " + row);
    EXPECT_EQ(altered.status, 1) << altered.err;
    EXPECT_THAT(altered.out, HasSubstr("EDITED by another program, in 1 place:"));
    EXPECT_THAT(altered.out, HasSubstr("pass 1, quantity 2, note 1, take 1, version 1"));
    // A row that is gone has no name left: its deed tells.
    const auto removed = afterSql("DELETE FROM reading WHERE " + row);
    EXPECT_EQ(removed.status, 1) << removed.err;
    EXPECT_THAT(removed.out, testing::ContainsRegex("deed [0-9]+: 1 of the [0-9]+ rows .* removed"));
    EXPECT_EQ(afterSql("UPDATE history SET person='Nobody' WHERE deed=2").status, 1);
    EXPECT_EQ(afterSql("UPDATE instrument SET serial='1'").status, 1);
}

TEST_F(VerifyCommand, WhatIsNeitherIsRefused)
{
    for (const std::string &file : {m_folder.write("notes.txt", "buy felt\n"), m_folder.write("empty", ""),
                                    m_folder.write("other.pdf", "%PDF-1.7\n%%EOF\n"), m_folder.file("missing"),
                                    m_folder.write("half.db", std::string("SQLite format 3\0", 16))}) {
        const auto ran = runCommand({"verify", file});
        EXPECT_EQ(ran.status, 2) << file;
        EXPECT_EQ(ran.out, "");
        EXPECT_THAT(ran.err, HasSubstr(file));
    }
    EXPECT_EQ(runCommand({"verify", book(), "--key", signer().fingerprint()}).status, 2);
}

} // namespace
} // namespace hammerline
