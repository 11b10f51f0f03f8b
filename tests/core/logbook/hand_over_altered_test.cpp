// A hand-over vouches for itself: whatever is altered in it is found and named, and nothing is written.
#include "core/logbook/hand_over_fixture.h"

#include <gmock/gmock.h>

#include <sstream>

namespace hammerline::logbook {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class HandOverAlteredTest : public HandOverTest {
protected:
    /// The document after its first `what` behind `behind` became `now`.
    std::string replaced(const std::string &behind, const std::string &what, const std::string &now)
    {
        std::string document = handedOver();
        document.replace(document.find(what, document.find(behind)), what.size(), now);
        return document;
    }
    /// The document with its lines changed; the third holds the first deed.
    std::string withLines(const std::function<void(std::vector<std::string> &)> &change)
    {
        std::vector<std::string> lines;
        std::istringstream in(handedOver());
        for (std::string line; std::getline(in, line);)
            lines.push_back(line);
        change(lines);
        std::string document;
        for (const std::string &line : lines)
            document += line + '\n';
        return document;
    }
};

TEST_F(HandOverAlteredTest, VouchesAsTheHeaderTells)
{
    const std::string document = handedOver();
    EXPECT_EQ(vouchedAnew(nlohmann::json::parse(document)), document);
}

TEST_F(HandOverAlteredTest, TellsTheSameDigestAtBothEnds)
{
    const std::string document = handedOver();
    const TakenOver taken = takenOver(document);
    EXPECT_EQ(taken.digest.size(), 64u);
    EXPECT_EQ(taken.digest, digestIn(document));
    EXPECT_EQ(takenOver(document).digest, taken.digest);
}

TEST_F(HandOverAlteredTest, AValueAltered)
{
    EXPECT_THAT(problemOf(replaced("\"deed\":3,", "3175000", "3275000")),
                HasSubstr("piano.json: deed 3, reading let_off C4: was altered after it was handed over"));
}

TEST_F(HandOverAlteredTest, ANameAltered)
{
    EXPECT_THAT(problemOf(replaced("\"deed\":5,", "\"Ben\"", "\"Bea\"")),
                HasSubstr("deed 5, reading let_off C4: was altered"));
    EXPECT_THAT(problemOf(replaced("\"deed\":1,", "\"Upright in the corner\"", "\"Grand in the corner\"")),
                HasSubstr("deed 1, instrument Upright in the corner: was altered"));
}

TEST_F(HandOverAlteredTest, AMomentAltered)
{
    EXPECT_THAT(problemOf(replaced("\"at\"", "2026-02-02", "2026-02-01")), HasSubstr("deed 1, "));
}

TEST_F(HandOverAlteredTest, APhotographAltered)
{
    const auto altered = [&](const char *now) { return problemOf(replaced("jpeg_base64", "\"/9j/", now)); };
    EXPECT_THAT(altered("\"/9j+"), AllOf(HasSubstr("picture "), HasSubstr("was altered")));
    auto json = nlohmann::json::parse(handedOver());
    json["pictures"] = nlohmann::json::array();
    EXPECT_THAT(problemOf(json.dump()), HasSubstr("is missing"));
}

TEST_F(HandOverAlteredTest, ADeedTakenOut)
{
    for (const std::size_t line : {1u, 2u, 5u, 9u})
        EXPECT_THAT(problemOf(withLines([&](auto &lines) { lines.erase(lines.begin() + std::ptrdiff_t(line) + 1); })),
                    HasSubstr("deed " + std::to_string(line) + " is missing or out of order"));
}

TEST_F(HandOverAlteredTest, ADeedTakenOutAndTheOthersNumberedAnew)
{
    auto json = nlohmann::json::parse(handedOver());
    json["deeds"].erase(5);
    int number = 0;
    for (auto &deed : json["deeds"])
        deed["deed"] = ++number;
    EXPECT_THAT(problemOf(json.dump()), HasSubstr("deed 6, "));
}

TEST_F(HandOverAlteredTest, TheLastDeedsTakenOut)
{
    auto json = nlohmann::json::parse(handedOver());
    json["deeds"].erase(json["deeds"].size() - 1);
    EXPECT_THAT(problemOf(json.dump()), HasSubstr("the document was altered after it was handed over"));
}

TEST_F(HandOverAlteredTest, TwoDeedsSwapped)
{
    EXPECT_THAT(problemOf(withLines([](auto &lines) { std::swap(lines[4], lines[5]); })),
                HasSubstr("deed 3 is missing or out of order"));
    auto json = nlohmann::json::parse(handedOver());
    std::swap(json["deeds"][2], json["deeds"][3]);
    std::swap(json["deeds"][2]["deed"], json["deeds"][3]["deed"]);
    EXPECT_THAT(problemOf(json.dump()), HasSubstr("deed 3, reading let_off C4 take 2: was altered"));
}

TEST_F(HandOverAlteredTest, ADigestAltered)
{
    auto json = nlohmann::json::parse(handedOver());
    json["deeds"][6]["digest"] = std::string(64, 'a');
    EXPECT_THAT(problemOf(json.dump()), HasSubstr("deed 7, "));
    json = nlohmann::json::parse(handedOver());
    json["digest"] = std::string(64, 'a');
    EXPECT_THAT(problemOf(json.dump()), HasSubstr("the document was altered"));
}

TEST_F(HandOverAlteredTest, WrittenAnewWithOtherBlanksIsRefusedThoughItSaysTheSame)
{
    const auto json = nlohmann::json::parse(handedOver());
    EXPECT_THAT(problemOf(json.dump(2)), HasSubstr("piano.json:1: this line is not written as it was"));
    EXPECT_THAT(problemOf(handedOver() + "\n"), HasSubstr("not written as it was"));
    EXPECT_THAT(problemOf(withLines([](auto &lines) { lines[6] += '\r'; })), HasSubstr("piano.json:7: this line"));
}

TEST_F(HandOverAlteredTest, WithEveryDigestMadeAnewItIsFoundByTheDigestThatWasTold)
{
    const std::string told = digestIn(handedOver());
    const std::string document =
        forged(handedOver(), [](auto &json) { json["deeds"][2]["rows"][0]["value"] = 3'275'000; });
    const auto taken = to.takeOver(document, "piano.json", ben, anySet, told);
    ASSERT_FALSE(taken);
    EXPECT_THAT(taken.fault().problem, HasSubstr("not the one you gave"));
    EXPECT_EQ(to.instruments().size(), 1u);
    EXPECT_TRUE(to.takeOver(handedOver(), "piano.json", ben, anySet, told));
}

TEST_F(HandOverAlteredTest, AReadingThatCannotBeTypedCannotBeTakenOver)
{
    for (const std::int64_t value : {std::int64_t{-5'000'000}, std::int64_t{1'000'000'001}}) {
        const auto problem = problemOfForged([value](auto &json) {
            for (auto &deed : json["deeds"])
                for (auto &row : deed["rows"])
                    if (row["table"] == "reading" && row["quantity"] == "let_off" && row.contains("value"))
                        row["value"] = value;
        });
        EXPECT_THAT(problem, HasSubstr("holds what no logbook holds")) << value;
    }
}

/// A small one: the document of an instrument, a pass and a reading.
TEST_F(HandOverAlteredTest, NoSingleBitIsFlippedUnseen)
{
    Logbook small = Logbook::create(file("small.hammerline"), ada).value();
    static_cast<void>(small.addInstrument(upright("U"), ada));
    static_cast<void>(small.beginPass({.instrument = 1, .began = moment(2)}, ada));
    small.enter(1, reading(letOff(40), 3'175'000, "1/8"), ada);
    std::string document = small.handOver(1).value();
    for (char &letter : document)
        for (unsigned bit = 0; bit < 8; ++bit) {
            const char was = std::exchange(letter, static_cast<char>(static_cast<unsigned char>(letter) ^ (1u << bit)));
            ASSERT_NE(problemOf(document), "none") << "bit " << bit << " of byte " << &letter - document.data();
            letter = was;
        }
    EXPECT_TRUE(to.takeOver(document, "piano.json", ben, anySet));
}

/// A whole one, with photographs.
TEST_F(HandOverAlteredTest, NoByteIsChangedTakenOutOrPutInUnseen)
{
    const std::string document = handedOver();
    for (std::size_t at = 0; at < document.size(); at += 23) {
        std::string changed = document;
        changed[at] = changed[at] == '0' ? '1' : '0';
        ASSERT_NE(problemOf(changed), "none") << at;
        ASSERT_NE(problemOf(std::string(document).erase(at, 1)), "none") << at;
        ASSERT_NE(problemOf(std::string(document).insert(at, 1, document[at])), "none") << at;
        ASSERT_NE(problemOf(std::string(document).insert(at, 1, ' ')), "none") << at;
    }
}

} // namespace
} // namespace hammerline::logbook
