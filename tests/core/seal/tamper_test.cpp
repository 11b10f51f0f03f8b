// Every bit turned, every byte appended, cut or put in: found every time.

#include "seal/seal.h"

#include "small_pdf.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace hammerline::seal {
namespace {

bool passesFor(const std::string &file)
{
    return verifyRecord(file).verdict == SealVerdict::Unaltered;
}

/// One test a bit, so that they can run side by side.
class TurnedBit : public testing::TestWithParam<int> {};

TEST_P(TurnedBit, IsFoundInEveryByte)
{
    std::string file = smallSealedRecord();
    ASSERT_TRUE(passesFor(file));
    std::size_t missed = 0;
    std::size_t notKnownForOurs = 0;
    for (char &byte : file) {
        const char whole = byte;
        byte = static_cast<char>(byte ^ (1 << GetParam()));
        const SealVerdict verdict = verifyRecord(file).verdict;
        missed += verdict == SealVerdict::Unaltered || verdict == SealVerdict::UnknownKey ? 1 : 0;
        notKnownForOurs += verdict == SealVerdict::NotOurs ? 1 : 0;
        byte = whole;
    }
    EXPECT_EQ(missed, 0u) << "of " << file.size();
    EXPECT_EQ(notKnownForOurs, 0u) << "a record with one bit turned is an altered record, not somebody else's file";
}

INSTANTIATE_TEST_SUITE_P(Tampering, TurnedBit, testing::Range(0, 8));

TEST(Tampering, BytesAppendedOrPutInFrontAreFound)
{
    const std::string file = smallSealedRecord();
    for (const char *added : {" ", "\n", "x", "%%EOF\n", "\n%%EOF\n", "%PDF-1.6\n"}) {
        EXPECT_FALSE(passesFor(file + added)) << added;
        EXPECT_FALSE(passesFor(added + file)) << added;
    }
    EXPECT_FALSE(passesFor(file + std::string(1, '\0')));
    EXPECT_FALSE(passesFor(file + file));
}

TEST(Tampering, CutFilesAreFoundWhereverTheyAreCut)
{
    const std::string file = smallSealedRecord();
    for (std::size_t left = 0; left < file.size(); left += 7) {
        EXPECT_FALSE(passesFor(file.substr(0, left))) << left;
        EXPECT_FALSE(passesFor(file.substr(file.size() - left))) << left;
    }
    EXPECT_FALSE(passesFor(file.substr(0, file.size() - 1)));
    EXPECT_FALSE(passesFor(file.substr(1)));
}

TEST(Tampering, BytesPutInOrTakenOutAnywhereAreFound)
{
    const std::string file = smallSealedRecord();
    for (std::size_t at = 0; at < file.size(); at += 3) {
        std::string longer = file;
        longer.insert(at, 1, at % 2 == 0 ? ' ' : '0');
        EXPECT_FALSE(passesFor(longer)) << at;
        std::string shorter = file;
        shorter.erase(at, 1);
        EXPECT_FALSE(passesFor(shorter)) << at;
    }
}

TEST(Tampering, TheSameSealInOtherLettersIsFound)
{
    std::string file = smallSealedRecord();
    const std::size_t open = file.find("/Contents <") + 10;
    const auto letter = std::find_if(file.begin() + static_cast<std::ptrdiff_t>(open), file.end(),
                                     [](char c) { return c >= 'a' && c <= 'f'; });
    *letter = static_cast<char>(*letter - 'a' + 'A');
    EXPECT_FALSE(passesFor(file)) << "hex digits in capitals mean the same bytes to every other program";
}

TEST(Tampering, TheSealOfAnotherRecordIsFound)
{
    Dressing other = smallDressing();
    other.attachments.front().content = "{\"format\":\"y\"}\n";
    const std::string mine = smallSealedRecord();
    const std::string theirs = sealRecord(dress(smallPdf(), other), someKey(), someDay());
    ASSERT_EQ(mine.size(), theirs.size());
    const std::size_t open = mine.find("/Contents <");
    const std::size_t length = mine.find('>', open) - open;
    std::string grafted = mine;
    grafted.replace(open, length, theirs.substr(theirs.find("/Contents <"), length));
    EXPECT_FALSE(passesFor(grafted));
}

} // namespace
} // namespace hammerline::seal
