#include "exchange/exchange.h"

#include "core/exchange/faults_of.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <unistd.h>

namespace hammerline::exchange {
namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::HasSubstr;

class Files : public testing::Test {
protected:
    Files()
    {
        std::string pattern = (fs::temp_directory_path() / "hammerline-exchange-XXXXXX").string();
        m_folder = ::mkdtemp(pattern.data());
    }
    ~Files() override { fs::remove_all(m_folder); }
    [[nodiscard]] std::string at(const std::string &name) const { return (m_folder / name).string(); }
    [[nodiscard]] std::size_t countOfFiles() const
    {
        return static_cast<std::size_t>(std::distance(fs::directory_iterator(m_folder), {}));
    }

private:
    fs::path m_folder;
};

TEST_F(Files, whatIsWrittenIsReadBackByteByByteAndNothingElseIsLeftBeside)
{
    const std::string content("a\0b\r\n\xff", 6);
    ASSERT_TRUE(writeFile(at("x"), content, Overwrite::No));
    EXPECT_EQ(readFile(at("x")).value(), content);
    EXPECT_EQ(countOfFiles(), 1u);
}

TEST_F(Files, anExistingFileStaysUnlessOverwritingIsAllowed)
{
    ASSERT_TRUE(writeFile(at("x"), "old", Overwrite::No));
    EXPECT_THAT(faultTexts(writeFile(at("x"), "new", Overwrite::No)),
                ElementsAre(at("x") + ": is there already; choose another name or allow overwriting (--force)"));
    EXPECT_EQ(readFile(at("x")).value(), "old");
    ASSERT_TRUE(writeFile(at("x"), "new", Overwrite::Yes));
    EXPECT_EQ(readFile(at("x")).value(), "new");
    EXPECT_EQ(countOfFiles(), 1u);
}

TEST_F(Files, overwritingKeepsRightsAndWritesThroughASymbolicLink)
{
    ASSERT_TRUE(writeFile(at("x"), "old", Overwrite::No));
    fs::permissions(at("x"), fs::perms::owner_read | fs::perms::owner_write);
    fs::create_symlink("x", at("link"));
    ASSERT_TRUE(writeFile(at("link"), "new", Overwrite::Yes));
    EXPECT_TRUE(fs::is_symlink(at("link")));
    EXPECT_EQ(readFile(at("x")).value(), "new");
    EXPECT_EQ(fs::status(at("x")).permissions(), fs::perms::owner_read | fs::perms::owner_write);
}

TEST_F(Files, aPlaceThatCannotBeWrittenIsAFault)
{
    EXPECT_THAT(faultTexts(writeFile(at("no/such/folder"), "x", Overwrite::No)),
                ElementsAre(HasSubstr("cannot be written here (No such file or directory)")));
    fs::create_directory(at("folder"));
    EXPECT_THAT(faultTexts(writeFile(at("folder"), "x", Overwrite::Yes)),
                ElementsAre(HasSubstr("is a folder; name a file")));
    EXPECT_THAT(faultTexts(writeFile("", "x", Overwrite::Yes)), ElementsAre(HasSubstr("is no file name")));
}

TEST_F(Files, aFullDiskIsABrokenWorld)
{
    EXPECT_THROW((void)writeFile("/dev/full", "x", Overwrite::Yes), outcome::BrokenWorld);
    EXPECT_THAT(faultTexts(writeFile("/dev/full", "x", Overwrite::No)), ElementsAre(HasSubstr("is there already")));
}

TEST_F(Files, whatCannotBeReadIsAFault)
{
    EXPECT_THAT(faultTexts(readFile(at("none"))), ElementsAre(HasSubstr("cannot be read (No such file or directory)")));
    EXPECT_THAT(faultTexts(readFile(at(""))), ElementsAre(HasSubstr("is a folder; name a file")));
    ASSERT_TRUE(writeFile(at("big"), std::string(2u << 20, 'x'), Overwrite::No));
    EXPECT_THAT(faultTexts(readFile(at("big"), 1u << 20)), ElementsAre(HasSubstr("is larger than 1 MiB")));
    EXPECT_THAT(faultTexts(readFile("/dev/zero", 1u << 20)), ElementsAre(HasSubstr("is larger than 1 MiB")));
}

TEST_F(Files, aLongFileNameIsStillWrittenBesideItself)
{
    const std::string name(250, 'n');
    ASSERT_TRUE(writeFile(at(name), "x", Overwrite::No));
    EXPECT_EQ(countOfFiles(), 1u);
}

} // namespace
} // namespace hammerline::exchange
