#include "seal/key_store.h"

#include "small_pdf.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sys/stat.h>

#include <filesystem>
#include <fstream>

namespace hammerline::seal {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

class KeyStore : public testing::Test {
protected:
    KeyStore()
    {
        std::string pattern = (fs::temp_directory_path() / "key-store-XXXXXX").string();
        m_folder = ::mkdtemp(pattern.data());
    }
    ~KeyStore() override { fs::remove_all(m_folder); }

    [[nodiscard]] std::string path() const { return (m_folder / "keys" / "workshop.p12").string(); }

    static unsigned modeOf(const fs::path &path)
    {
        struct stat state {};
        EXPECT_EQ(::stat(path.c_str(), &state), 0);
        return state.st_mode & 0777;
    }

    fs::path m_folder;
};

TEST_F(KeyStore, AKeyComesBackAsItWasStored)
{
    ASSERT_TRUE(storeKey(path(), someKey(), "").ok());
    const auto loaded = loadKey(path(), "");
    ASSERT_TRUE(loaded.ok()) << loaded.fault().text();
    EXPECT_EQ(loaded.value().certificate(), someKey().certificate());
    EXPECT_EQ(loaded.value().name(), "Invented Workshop");
}

TEST_F(KeyStore, OnlyTheOwnerMayReadTheFileAndItsFolder)
{
    ASSERT_TRUE(storeKey(path(), someKey(), "").ok());
    EXPECT_EQ(modeOf(path()), 0600u);
    EXPECT_EQ(modeOf(m_folder / "keys"), 0700u);
}

TEST_F(KeyStore, AKeyThatOthersMayReadIsRefused)
{
    ASSERT_TRUE(storeKey(path(), someKey(), "").ok());
    fs::permissions(path(), fs::perms::group_read, fs::perm_options::add);
    const auto refused = loadKey(path(), "");
    ASSERT_FALSE(refused.ok());
    EXPECT_THAT(refused.fault().problem, HasSubstr("mode 600"));
}

TEST_F(KeyStore, AKeyIsNeverOverwritten)
{
    ASSERT_TRUE(storeKey(path(), someKey(), "").ok());
    const auto other = makeSigningKey("Other", someDay()).value();
    EXPECT_FALSE(storeKey(path(), other, "").ok());
    EXPECT_EQ(loadKey(path(), "").value().certificate(), someKey().certificate());
    EXPECT_EQ(std::distance(fs::directory_iterator(m_folder / "keys"), fs::directory_iterator()), 1);
}

TEST_F(KeyStore, TheWrongPassphraseOpensNothing)
{
    ASSERT_TRUE(storeKey(path(), someKey(),
                         "gr\xC3\xBC"
                         "n")
                    .ok());
    EXPECT_FALSE(loadKey(path(), "").ok());
    EXPECT_FALSE(loadKey(path(), "green").ok());
    EXPECT_TRUE(loadKey(path(), "gr\xC3\xBC"
                                "n")
                    .ok());
}

TEST_F(KeyStore, WhatIsNoKeyIsNamedSo)
{
    fs::create_directories(m_folder / "keys");
    EXPECT_FALSE(loadKey(path(), "").ok()) << "nothing there";
    std::ofstream(path()) << "not a bundle";
    fs::permissions(path(), fs::perms::owner_read);
    const auto refused = loadKey(path(), "");
    ASSERT_FALSE(refused.ok());
    EXPECT_THAT(refused.fault().problem, HasSubstr("PKCS#12"));
}

TEST_F(KeyStore, ADamagedKeyFileIsRefusedWhereverItIsDamaged)
{
    ASSERT_TRUE(storeKey(path(), someKey(), "").ok());
    std::string whole;
    {
        std::ifstream in(path(), std::ios::binary);
        whole.assign(std::istreambuf_iterator<char>(in), {});
    }
    for (std::size_t at = 40; at + 100 < whole.size(); at += 53) {
        std::string damaged = whole;
        damaged[at] = static_cast<char>(damaged[at] ^ 0x10);
        std::ofstream(path(), std::ios::binary | std::ios::trunc) << damaged;
        EXPECT_FALSE(loadKey(path(), "").ok()) << at;
    }
}

TEST(SigningKey, TwoKeysOfOneNameAreToldApart)
{
    const auto other = makeSigningKey("Invented Workshop", someDay()).value();
    EXPECT_NE(other.fingerprint(), someKey().fingerprint());
}

TEST(SigningKey, NamesThatACertificateCannotHoldAreRefused)
{
    EXPECT_FALSE(makeSigningKey("", someDay()).ok());
    EXPECT_FALSE(makeSigningKey(std::string(65, 'a'), someDay()).ok());
    EXPECT_FALSE(makeSigningKey("\xff\xfe", someDay()).ok());
    EXPECT_EQ(makeSigningKey("Klavierwerkstatt K\xC3\xB6nig", someDay()).value().name(),
              "Klavierwerkstatt K\xC3\xB6nig");
}

TEST(Fingerprint, IsReadAsPeopleCopyIt)
{
    const std::string plain = someKey().fingerprint();
    EXPECT_EQ(parseFingerprint(groupedFingerprint(plain)).value(), plain);
    EXPECT_EQ(parseFingerprint(" " + plain + " ").value(), plain);
    EXPECT_FALSE(parseFingerprint(plain.substr(1)).ok());
    EXPECT_FALSE(parseFingerprint("not a fingerprint").ok());
}

TEST(Fingerprint, ACertificateIsReadFromDerAndFromNothingElseThanACertificate)
{
    EXPECT_EQ(readCertificate(someKey().certificate()).value(), someKey().certificate());
    EXPECT_FALSE(readCertificate(someKey().certificate() + "x").ok());
    EXPECT_FALSE(readCertificate("").ok());
}

} // namespace
} // namespace hammerline::seal
