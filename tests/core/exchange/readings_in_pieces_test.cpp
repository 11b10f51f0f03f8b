// A readings file that comes in pieces and leaves in batches says the same as its whole text, wherever it is cut.
#include "exchange/readings_csv.h"

#include "core/exchange/cut_text.h"
#include "core/exchange/faults_of.h"

#include <gmock/gmock.h>

#include <random>

namespace hammerline::exchange {
namespace {

using readings::mostInBatch;
using readings::Reading;
using testing::ElementsAre;
using testing::HasSubstr;

const CsvReadingOptions options{.file = "r.csv"};

struct Answer {
    std::vector<Reading> readings{};
    std::vector<outcome::Fault> faults{};
    bool operator==(const Answer &) const = default;
};

Answer ofWhole(const std::string &text)
{
    auto read = readReadingsCsv(text, options);
    return read ? Answer{std::move(read).value(), {}} : Answer{{}, read.faults()};
}

Answer inBatches(CsvReadings &file)
{
    Answer answer;
    std::vector<Reading> batch;
    for (;;) {
        const auto more = file.next(batch);
        if (!more)
            return {{}, file.faults()};
        EXPECT_EQ(more.value(), !batch.empty());
        EXPECT_LE(batch.size(), mostInBatch);
        if (!more.value())
            break;
        answer.readings.insert(answer.readings.end(), batch.begin(), batch.end());
    }
    EXPECT_EQ(file.count(), answer.readings.size());
    return answer;
}

Answer ofCut(const std::string &text, std::size_t first, std::size_t piece)
{
    CsvReadings file(std::make_unique<CutText>(text, first, piece), options);
    return inBatches(file);
}

constexpr std::size_t all = 1'000'000;

/// Cut once at each place, and all through in pieces of each length.
void expectSameWhereverCut(const std::string &text)
{
    const Answer whole = ofWhole(text);
    for (std::size_t at = 1; at <= text.size(); ++at) {
        EXPECT_EQ(ofCut(text, at, all), whole) << "cut at " << at << " of\n" << text;
        EXPECT_EQ(ofCut(text, at, at), whole) << "in pieces of " << at << " of\n" << text;
    }
}

TEST(ReadingsInPieces, everyCutThroughAGoodFileGivesTheSameReadings)
{
    for (const std::string text : {
             "\xEF\xBB\xBFnote,let_off (mm),dip\r\n1,3.2,10\r\n\r\n,,\r\nA4,1/8,\"9,9\"\r\n",
             "note,quantity,value,remark\r\n1,dip,10,\"two\r\nlines, \"\"so\"\"\rand\nmore\"\r\n2,dip,9,\"\"\r\n",
             "note,quantity,value,take,remark\r1,dip,10,1,caf\xC3\xA9\r1,dip,10,2,'=1\r\r88,dip,10,1,\"\"\"\"",
             "note,dip\n1,1\n\n\r\r\n2,2",
             "\xEF\xBBnote,dip\n1,1\n",
         })
        expectSameWhereverCut(text);
}

TEST(ReadingsInPieces, everyCutThroughAFaultyFileGivesTheSameFaults)
{
    for (const std::string text : {
             "",
             "\xEF\xBB\xBF",
             "\n",
             "note,dip\r\n\r\n1,\r\n",
             "note,colour,dip\n1,2,x\n1,2,3\n",
             "note,quantity,value,take\n1,dip,1,9\n1,dip,1,3\r\n1,dip,1,9\n1,dip,,3\nH4,dip,1,1\n1,dip,1\n",
             "note,dip\n1,1\n2,\"open, and\r\nnever closed\n3,3\n",
             "note,dip\n1,\"1\"x\n2,a\"b\n3,\xC3\n4,\xC3(\n5,5\n",
             "note,quantity,value,remark\n1,dip,1,\"a\nb\"\"\"\n1,dip,2,\"c\r\n\"\n",
             "dip\n1\n",
         })
        expectSameWhereverCut(text);
}

TEST(ReadingsInPieces, aTextOfAnySignsSaysTheSame)
{
    std::mt19937 dice(5); // NOLINT(bugprone-random-generator-seed): the same texts every time
    const std::vector<std::string> signs{"\"", "\"\"", "\r", "\n", ",", "1", "dip", ",1\n", "\xC3\xA9", "\xEF", " "};
    std::uniform_int_distribution<std::size_t> sign(0, signs.size() - 1);
    for (int round = 0; round < 60; ++round) {
        std::string text = round % 2 == 0 ? "note,dip\n" : "note,quantity,value,remark\n1,dip,1,";
        for (int count = 0; count < 12; ++count)
            text += signs[sign(dice)];
        expectSameWhereverCut(text);
    }
}

std::string manyTakes(std::size_t count)
{
    std::string text = "note,quantity,value,take\r\n";
    for (std::size_t take = 1; take <= count; ++take)
        text += "40,dip,10," + std::to_string(take) + "\r\n";
    return text;
}

TEST(ReadingsInPieces, batchesHaveAllReadingsInTheirOrderAroundTheirBorders)
{
    for (const std::size_t count : {mostInBatch - 1, mostInBatch, mostInBatch + 1, 2 * mostInBatch}) {
        const std::string text = manyTakes(count);
        EXPECT_EQ(ofCut(text, 0, all), ofWhole(text)) << count;
    }
}

TEST(ReadingsInPieces, aFaultAfterManyBatchesIsToldWithAllOthersAndTheLineSpokenOfBefore)
{
    const std::size_t last = 2 * mostInBatch;
    const std::string text = manyTakes(last) + "40,dip,10,1\r\n40,dip,10," + std::to_string(last) + "\r\nx,dip,1,1\r\n";
    const Answer answer = ofCut(text, 0, all);
    EXPECT_EQ(answer, ofWhole(text));
    ASSERT_EQ(answer.faults.size(), 3u);
    EXPECT_THAT(answer.faults[0].text(),
                HasSubstr("r.csv:32770: dip of note C4, take 1 stands here again, after line 2;"));
    EXPECT_THAT(answer.faults[1].text(), HasSubstr("after line 32769;"));
    EXPECT_EQ(answer.faults[2].line, last + 4);
}

TEST(ReadingsInPieces, aTextThatBreaksOffIsRefusedForThatAlone)
{
    const outcome::Fault broken{"r.csv", 0, "cannot be read (Input/output error)"};
    for (const std::string text :
         {"", "note", "note,dip\n", "note,dip\n1,1\n", "note,dip\n1,x\n1,", "note,dip\n1,\"1"}) {
        auto source = std::make_unique<CutText>(text, 0, all);
        source->breakAtEnd(broken);
        CsvReadings file(std::move(source), options);
        EXPECT_THAT(inBatches(file).faults, ElementsAre(broken)) << text;
    }
}

/// Counts what it is asked for, and gives rows without end.
class EndlessText : public TextSource {
public:
    explicit EndlessText(std::size_t &most) : m_most(&most) {}
    outcome::Outcome<std::size_t> read(std::span<char> into) override
    {
        *m_most = std::max(*m_most, into.size());
        if (m_take == 0)
            m_text = "note,quantity,value,take\n";
        while (m_text.size() < into.size())
            m_text += "40,dip,10," + std::to_string(++m_take) + '\n';
        const std::size_t count = m_text.copy(into.data(), into.size());
        m_text.erase(0, count);
        return count;
    }
    void rewind() override {}

private:
    std::size_t *m_most;
    std::string m_text{};
    int m_take = 0;
};

TEST(ReadingsInPieces, noMoreOfTheTextIsAskedForAtATimeHoweverLongItIs)
{
    std::size_t most = 0;
    CsvReadings file(std::make_unique<EndlessText>(most), options);
    std::vector<Reading> batch;
    ASSERT_TRUE(file.next(batch));
    const std::size_t atFirst = most;
    for (int count = 0; count < 10; ++count) {
        ASSERT_TRUE(file.next(batch));
        ASSERT_EQ(batch.size(), mostInBatch);
    }
    EXPECT_EQ(most, atFirst);
    EXPECT_LE(most, std::size_t{1} << 16);
}

} // namespace
} // namespace hammerline::exchange
