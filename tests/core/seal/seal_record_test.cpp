#include "seal/seal.h"

#include "outcome/outcome.h"
#include "small_pdf.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace hammerline::seal {
namespace {

using testing::HasSubstr;

TEST(SealRecord, ASealedRecordIsUnalteredAndHandsOutItsFiles)
{
    const SealReport report = verifyRecord(smallSealedRecord());
    EXPECT_EQ(report.verdict, SealVerdict::Unaltered) << report.reason;
    EXPECT_EQ(report.signer, "Invented Workshop");
    EXPECT_EQ(report.fingerprint, someKey().fingerprint());
    ASSERT_EQ(report.files.size(), 2u);
    EXPECT_EQ(report.files[0].name, "readings.csv");
    EXPECT_EQ(report.files[1].content, "{\"format\":\"x\"}\n");
}

TEST(SealRecord, TheExpectedKeyIsAcceptedAndAnotherOneOfTheSameNameIsNot)
{
    const std::string file = smallSealedRecord();
    EXPECT_EQ(verifyRecord(file, {std::string(64, '0'), someKey().fingerprint()}).verdict, SealVerdict::Unaltered);
    const auto impostor = makeSigningKey("Invented Workshop", someDay()).value();
    const auto forged = sealRecord(dress(smallPdf(), smallDressing()), impostor, someDay());
    const SealReport report = verifyRecord(forged, {someKey().fingerprint()});
    EXPECT_EQ(report.verdict, SealVerdict::UnknownKey);
    EXPECT_EQ(report.fingerprint, impostor.fingerprint());
    EXPECT_TRUE(report.files.empty());
}

TEST(SealRecord, ARecordWhoseSealWasNeverPutOrIsGoneIsNotUnaltered)
{
    const SealReport report = verifyRecord(dress(smallPdf(), smallDressing()));
    EXPECT_EQ(report.verdict, SealVerdict::Altered);
    EXPECT_THAT(report.reason, HasSubstr("no seal"));
}

TEST(SealRecord, WhatNeverWasARecordIsNotOurs)
{
    EXPECT_EQ(verifyRecord("").verdict, SealVerdict::NotOurs);
    EXPECT_EQ(verifyRecord(smallPdf()).verdict, SealVerdict::NotOurs);
    EXPECT_EQ(verifyRecord(std::string(100'000, 'x')).verdict, SealVerdict::NotOurs);
    EXPECT_EQ(verifyRecord("%PDF-1.6\nsomebody else's /ByteRange /ETSI.CAdES.detached\n%%EOF\n").verdict,
              SealVerdict::NotOurs);
}

TEST(SealRecord, WhatIsNoPdfCannotBeSealed)
{
    EXPECT_THROW((void)sealRecord("no document", someKey(), someDay()), outcome::BrokenWorld);
}

TEST(SealRecord, ALongNameOfWideLettersFits)
{
    std::string name;
    for (int i = 0; i < 16; ++i)
        name += "\xF0\x9D\x84\x9E"; // 16 clefs, 64 bytes
    const auto key = makeSigningKey(name, someDay()).value();
    EXPECT_EQ(verifyRecord(sealRecord(dress(smallPdf(), smallDressing()), key, someDay())).verdict,
              SealVerdict::Unaltered);
}

/// What other people's programs say of the seal. pdfsig's exit status says nothing of it; its words do.
class OthersOnTheSeal : public testing::Test {
protected:
    OthersOnTheSeal()
    {
        std::string pattern = (std::filesystem::temp_directory_path() / "seal-XXXXXX").string();
        m_folder = ::mkdtemp(pattern.data());
        std::ofstream(m_folder / "record.pdf", std::ios::binary) << smallSealedRecord();
    }
    ~OthersOnTheSeal() override { std::filesystem::remove_all(m_folder); }

    [[nodiscard]] std::string outputOf(const std::string &command) const
    {
        const std::string whole = "cd '" + m_folder.string() + "' && LC_ALL=C " + command + " > out.txt 2>&1";
        EXPECT_NE(std::system(whole.c_str()), -1);
        std::ifstream in(m_folder / "out.txt");
        return {std::istreambuf_iterator<char>(in), {}};
    }

    std::filesystem::path m_folder;
};

TEST_F(OthersOnTheSeal, PdfsigSaysValidAndTotal)
{
    const std::string said = outputOf("pdfsig record.pdf");
    EXPECT_THAT(said, HasSubstr("Signature is Valid"));
    EXPECT_THAT(said, HasSubstr("Total document signed"));
    EXPECT_THAT(said, HasSubstr("Invented Workshop"));
    EXPECT_THAT(said, HasSubstr("ETSI.CAdES.detached"));
}

TEST_F(OthersOnTheSeal, QpdfFindsNothingWrongInTheFile)
{
    EXPECT_THAT(outputOf("qpdf --check record.pdf"), HasSubstr("No syntax or stream encoding errors found"));
}

std::string unhexed(const std::string &hex)
{
    std::string bytes;
    for (std::size_t i = 0; i + 1 < hex.size(); i += 2)
        bytes += static_cast<char>(std::stoi(hex.substr(i, 2), nullptr, 16));
    return bytes;
}

TEST_F(OthersOnTheSeal, OpensslVerifiesTheBareSignatureOverTheBytes)
{
    const std::string file = smallSealedRecord();
    const std::size_t open = file.find("/Contents <") + 10;
    const std::size_t close = file.find('>', open) + 1;
    std::ofstream(m_folder / "content", std::ios::binary) << file.substr(0, open) << file.substr(close);
    std::ofstream(m_folder / "seal.der", std::ios::binary) << unhexed(file.substr(open + 1, close - open - 2));
    std::ofstream(m_folder / "certificate.der", std::ios::binary) << someKey().certificate();
    const std::string said =
        outputOf("sh -c 'openssl x509 -inform DER -in certificate.der "
                 "-out certificate.pem && openssl cms -verify -binary -cades -inform DER -in seal.der "
                 "-content content -CAfile certificate.pem -partial_chain -purpose any -out /dev/null'");
    EXPECT_THAT(said, HasSubstr("AdES Verification successful")) << said;
}

} // namespace
} // namespace hammerline::seal
