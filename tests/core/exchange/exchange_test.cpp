#include "exchange/exchange.h"

#include "core/exchange/faults_of.h"

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <sys/stat.h>
#include <thread>
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

std::string restOf(TextSource &text)
{
    std::string rest;
    char piece[5];
    for (;;) {
        const auto count = text.read(piece);
        if (!count)
            return count.fault().problem;
        if (count.value() == 0)
            return rest;
        rest.append(piece, count.value());
    }
}

TEST_F(Files, aTextInPiecesIsTheFileAndCanBeReadAgain)
{
    ASSERT_TRUE(writeFile(at("x"), "twelve bytes", Overwrite::No));
    const auto text = openText(at("x")).value();
    EXPECT_EQ(restOf(*text), "twelve bytes");
    EXPECT_EQ(restOf(*text), "");
    text->rewind();
    EXPECT_EQ(restOf(*text), "twelve bytes");
}

TEST_F(Files, aTextInPiecesIsRefusedLikeAWholeFile)
{
    ASSERT_TRUE(writeFile(at("big"), std::string(2u << 20, 'x'), Overwrite::No));
    ASSERT_TRUE(writeFile(at("book"), std::string("SQLite format 3\0and more", 24), Overwrite::No));
    fs::create_directory(at("folder"));
    for (const std::string &path : {at("none"), at("folder"), at("big"), at("book"), std::string("/dev/zero")})
        EXPECT_EQ(faultTexts(openText(path, 1u << 20)), faultTexts(readFile(path, 1u << 20))) << path;
    EXPECT_THAT(faultTexts(openText(at("book"))), ElementsAre(HasSubstr("is a logbook or another database")));
}

TEST_F(Files, aFileThatIsWrittenToWhileItIsReadIsRefusedAtItsEnd)
{
    ASSERT_TRUE(writeFile(at("x"), "twelve bytes", Overwrite::No));
    const auto longer = openText(at("x")).value();
    std::ofstream(at("x"), std::ios::app) << " and more";
    EXPECT_THAT(restOf(*longer), HasSubstr("was changed while it was read"));

    const auto other = openText(at("x")).value();
    fs::last_write_time(at("x"), fs::last_write_time(at("x")) + std::chrono::seconds(1));
    EXPECT_THAT(restOf(*other), HasSubstr("was changed while it was read"));
}

TEST_F(Files, aFileThatIsReplacedWhileItIsReadIsReadAsItWas)
{
    ASSERT_TRUE(writeFile(at("x"), "as it was", Overwrite::No));
    const auto text = openText(at("x")).value();
    ASSERT_TRUE(writeFile(at("x"), "another", Overwrite::Yes));
    EXPECT_EQ(restOf(*text), "as it was");
}

TEST_F(Files, aPipeIsReadWholeBeforeAnyPieceIsGiven)
{
    ASSERT_EQ(::mkfifo(at("pipe").c_str(), 0600), 0);
    bool written = false;
    std::thread writer([&] {
        std::ofstream(at("pipe")) << "from somebody else";
        written = true;
    });
    const auto text = openText(at("pipe")).value();
    writer.join();
    EXPECT_TRUE(written);
    EXPECT_EQ(restOf(*text), "from somebody else");
    text->rewind();
    EXPECT_EQ(restOf(*text), "from somebody else");
}

} // namespace
} // namespace hammerline::exchange
