#include "seal/trusted_keys.h"
#include "seal/workshop_key.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace hammerline::seal {
namespace {

namespace fs = std::filesystem;

class WorkshopKey : public testing::Test {
protected:
    WorkshopKey()
    {
        std::string pattern = (fs::temp_directory_path() / "workshop-key-XXXXXX").string();
        m_folder = ::mkdtemp(pattern.data());
    }
    ~WorkshopKey() override { fs::remove_all(m_folder); }

    [[nodiscard]] std::string path() const { return (m_folder / "hammerline" / "key.p12").string(); }

    const readings::Instant m_now = readings::parseRfc3339("2026-11-02T09:10:00Z").value();
    fs::path m_folder;
};

TEST_F(WorkshopKey, IsMadeOnceAndFoundEverAfter)
{
    const auto made = workshopKey(path(), "Invented Workshop", m_now);
    ASSERT_TRUE(made.ok()) << made.fault().text();
    EXPECT_EQ(made.value().name(), "Invented Workshop");
    EXPECT_EQ(fs::status(path()).permissions(), fs::perms::owner_read | fs::perms::owner_write);
    EXPECT_EQ(fs::status(m_folder / "hammerline").permissions(), fs::perms::owner_all);
    const auto found = workshopKey(path(), "Another Name", m_now);
    ASSERT_TRUE(found.ok()) << found.fault().text();
    EXPECT_EQ(found.value().certificate(), made.value().certificate());
}

TEST_F(WorkshopKey, OfNobodyKnownHasANameAllTheSame)
{
    EXPECT_EQ(workshopKey(path(), "", m_now).value().name(), "Hammerline workshop");
}

TEST_F(WorkshopKey, BearsTheNameOfTheWorkshopWhereItIsKnown)
{
    EXPECT_EQ(keyNameOf("Invented Workshop, Lane 1, Sampleton", "Ada Sample"), "Invented Workshop");
    EXPECT_EQ(keyNameOf("", "Ada Sample"), "Ada Sample");
    EXPECT_EQ(keyNameOf(" , Lane 1", "Ada Sample"), "Ada Sample");
    std::string umlauts = "a";
    for (int i = 0; i < 70; ++i)
        umlauts += "\u00fc";
    EXPECT_EQ(keyNameOf(umlauts, "").size(), 63u) << "no letter is cut in two";
    EXPECT_TRUE(makeSigningKey(keyNameOf(umlauts, ""), m_now).ok());
}

TEST_F(WorkshopKey, NeverReplacesWhatCannotBeUsed)
{
    fs::create_directory(m_folder / "hammerline");
    std::ofstream(path()) << "no key";
    fs::permissions(path(), fs::perms::owner_read | fs::perms::owner_write);
    EXPECT_FALSE(workshopKey(path(), "Invented Workshop", m_now).ok());
    EXPECT_EQ(fs::file_size(path()), 6u);
    fs::remove(path());
    fs::create_symlink(m_folder / "nowhere", path());
    EXPECT_FALSE(workshopKey(path(), "Invented Workshop", m_now).ok());
    EXPECT_FALSE(fs::exists(m_folder / "nowhere"));
}

TEST_F(WorkshopKey, StoredUnderAPassphraseOpensWithThatAlone)
{
    const auto made = workshopKey(path(), "Invented Workshop", m_now, "open sesame");
    ASSERT_TRUE(made.ok()) << made.fault().text();
    EXPECT_TRUE(asksForPassphrase(path()));
    EXPECT_FALSE(workshopKey(path(), "Invented Workshop", m_now).ok());
    EXPECT_FALSE(workshopKey(path(), "Invented Workshop", m_now, "open sesam").ok());
    EXPECT_EQ(workshopKey(path(), "", m_now, "open sesame").value().certificate(), made.value().certificate());
}

TEST_F(WorkshopKey, StandsOnItsOwnListOfTrustedKeysFromTheStart)
{
    const auto made = workshopKey(path(), "Invented Workshop", m_now).value();
    EXPECT_FALSE(asksForPassphrase(path()));
    const auto keys = trustedKeys(trustedKeysFile(path())).value();
    EXPECT_EQ(keys, (std::vector<TrustedKey>{{made.fingerprint(), "Invented Workshop", "2026-11-02"}}));
}

TEST_F(WorkshopKey, WithoutAPlaceIsRefused)
{
    EXPECT_FALSE(workshopKey("", "Invented Workshop", m_now).ok());
}

} // namespace
} // namespace hammerline::seal
