#include "seal/trusted_keys.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

namespace hammerline::seal {
namespace {

namespace fs = std::filesystem;

class TrustedKeys : public testing::Test {
protected:
    TrustedKeys()
    {
        std::string pattern = (fs::temp_directory_path() / "trusted-keys-XXXXXX").string();
        m_folder = ::mkdtemp(pattern.data());
    }
    ~TrustedKeys() override { fs::remove_all(m_folder); }
    [[nodiscard]] std::string path() const { return trustedKeysFile((m_folder / "key.p12").string()); }
    void write(const std::string &text) const { std::ofstream(path()) << text; }

    const TrustedKey m_ada{std::string(64, 'a'), "Ada Sample"};
    const TrustedKey m_ben{std::string(64, 'b'), "Ben Example"};
    fs::path m_folder;
};

TEST_F(TrustedKeys, AListThatIsNotThereHoldsNone)
{
    EXPECT_TRUE(trustedKeys(path()).value().empty());
    EXPECT_TRUE(trustedKeys("").value().empty());
}

TEST_F(TrustedKeys, EachKeyStandsOnce)
{
    EXPECT_TRUE(trustKey(path(), m_ada).value());
    EXPECT_TRUE(trustKey(path(), m_ben).value());
    EXPECT_FALSE(trustKey(path(), {m_ada.fingerprint, "Another name"}).value());
    EXPECT_EQ(trustedKeys(path()).value(), (std::vector{m_ada, m_ben}));
}

TEST_F(TrustedKeys, TheFirstOneIsKeptWhereNoKeyWasMadeYet)
{
    const std::string list = (m_folder / "hammerline" / "trusted-keys.txt").string();
    EXPECT_TRUE(trustKey(list, m_ada).value());
    EXPECT_EQ(trustedKeys(list).value(), std::vector{m_ada});
    EXPECT_EQ(fs::status(m_folder / "hammerline").permissions(), fs::perms::owner_all);
}

TEST_F(TrustedKeys, WhatAPersonWroteStays)
{
    write("# by hand\n\n  # indented\n" + m_ada.fingerprint + "   Ada Sample  ");
    EXPECT_TRUE(trustKey(path(), m_ben).value());
    EXPECT_EQ(trustedKeys(path()).value(), (std::vector{m_ada, m_ben}));
    std::ifstream file(path());
    EXPECT_TRUE(std::string(std::istreambuf_iterator<char>(file), {}).starts_with("# by hand\n"));
}

TEST_F(TrustedKeys, ALineThatIsNoKeyRefusesTheList)
{
    write("# fine\nAda Sample\n");
    const auto keys = trustedKeys(path());
    ASSERT_FALSE(keys.ok());
    EXPECT_EQ(keys.fault().line, 2u);
    EXPECT_FALSE(trustKey(path(), m_ada).ok());
}

TEST_F(TrustedKeys, ANameThatBreaksTheLineAddsNoSecondKey)
{
    EXPECT_TRUE(trustKey(path(), {m_ada.fingerprint, "Ada\n" + m_ben.fingerprint + " Ben"}).value());
    EXPECT_EQ(trustedKeys(path()).value().size(), 1u);
}

TEST_F(TrustedKeys, TheDayIsKeptAndMayBeMissing)
{
    const TrustedKey dated{m_ada.fingerprint, "Ada Sample", "2026-03-02"};
    EXPECT_TRUE(trustKey(path(), dated).value());
    EXPECT_TRUE(trustKey(path(), m_ben).value());
    EXPECT_EQ(trustedKeys(path()).value(), (std::vector{dated, m_ben}));
}

TEST_F(TrustedKeys, OneIsTakenOffAndEveryOtherLineStays)
{
    write("# by hand\n" + m_ada.fingerprint + " Ada Sample\n  # indented\n" + m_ben.fingerprint + " Ben Example\n");
    EXPECT_TRUE(distrustKey(path(), m_ada.fingerprint).value());
    EXPECT_FALSE(distrustKey(path(), m_ada.fingerprint).value()) << "it is gone already";
    std::ifstream file(path());
    EXPECT_EQ(std::string(std::istreambuf_iterator<char>(file), {}),
              "# by hand\n  # indented\n" + m_ben.fingerprint + " Ben Example\n");
}

TEST_F(TrustedKeys, NothingIsTakenOffAListThatCannotBeRead)
{
    EXPECT_FALSE(distrustKey(path(), m_ada.fingerprint).value()) << "there is no list";
    write("no key\n");
    EXPECT_FALSE(distrustKey(path(), m_ada.fingerprint).ok());
}

TEST_F(TrustedKeys, AnotherKeyUnderAKnownNameIsToldApart)
{
    const std::vector trusted{m_ada};
    EXPECT_EQ(standingOf(m_ada, trusted), Standing::Trusted);
    EXPECT_EQ(standingOf({m_ada.fingerprint, "Whoever"}, trusted), Standing::Trusted);
    EXPECT_EQ(standingOf({m_ben.fingerprint, "Ada Sample"}, trusted), Standing::NameOfAnother);
    EXPECT_EQ(standingOf(m_ben, trusted), Standing::Unlisted);
}

} // namespace
} // namespace hammerline::seal
