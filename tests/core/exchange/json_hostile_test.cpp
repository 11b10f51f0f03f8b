// JSON written to hurt: a reader of ours refuses it at once, with a fault and nothing worse.
#include "exchange/setup_json.h"
#include "exchange/tolerance_json.h"

#include "core/exchange/faults_of.h"

#include <gmock/gmock.h>

namespace hammerline::exchange {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

std::vector<std::string> faultsOf(const std::string &json)
{
    return faultTexts(readToleranceSet(json, "evil.json"));
}

std::string withTarget(const std::string &number)
{
    return R"({"format": "hammerline-tolerance-set", "version": 1, "action": "vertical", "quantities": {"blow": {"points": [
              {"note": 1, "target_mm": )" +
           number + "}]}}}";
}

TEST(HostileJson, aMillionOpenBracketsAreRefusedWithoutRecursion)
{
    EXPECT_THAT(faultsOf(std::string(1'000'000, '[')),
                ElementsAre(HasSubstr("nested deeper than any document of ours")));
    std::string objects;
    for (int depth = 0; depth < 100'000; ++depth)
        objects += "{\"a\":";
    EXPECT_THAT(faultsOf(objects), ElementsAre(HasSubstr("nested deeper than any document of ours")));
}

TEST(HostileJson, numbersBeyondADoubleOrBeyondAllSenseAreRefused)
{
    EXPECT_THAT(faultsOf(withTarget("1e400")), ElementsAre(HasSubstr("not valid JSON")));
    EXPECT_THAT(faultsOf(withTarget("1e300")),
                ElementsAre(HasSubstr("target_mm: must lie between -1000000 and 1000000")));
    EXPECT_THAT(faultsOf(withTarget("99999999999999999999999999")), ElementsAre(HasSubstr("must lie between")));
    EXPECT_THAT(faultsOf(withTarget("NaN")), ElementsAre(HasSubstr("evil.json:2: this is not valid JSON")));
    EXPECT_THAT(faultsOf(withTarget("-Infinity")), ElementsAre(HasSubstr("not valid JSON")));
    EXPECT_THAT(faultsOf(withTarget("1.0e-400")), testing::IsEmpty()) << "too small to tell from 0, and 0 is a target";
}

TEST(HostileJson, aKeyGivenTwiceIsRefusedBecauseNobodyKnowsWhichOneIsMeant)
{
    EXPECT_THAT(faultsOf(R"({"format": "hammerline-tolerance-set", "version": 1, "version": 1})"),
                ElementsAre("evil.json: the key \"version\" stands twice in one object; once would be right"));
}

TEST(HostileJson, brokenTextIsRefusedWithTheLineItBreaksOn)
{
    EXPECT_THAT(faultsOf(""), ElementsAre(HasSubstr("evil.json:1: this is not valid JSON")));
    EXPECT_THAT(faultsOf("{\n\"format\": \"x\",\n}"), ElementsAre(HasSubstr("evil.json:3: this is not valid JSON")));
    EXPECT_THAT(faultsOf("{} {}"), ElementsAre(HasSubstr("not valid JSON")));
    EXPECT_THAT(faultsOf("{\"format\": \"\xff\"}"), ElementsAre(HasSubstr("not valid JSON")));
    EXPECT_THAT(faultsOf(std::string("{\"a\": \"\0\"}", 10)), ElementsAre(HasSubstr("not valid JSON")));
}

TEST(HostileJson, aMessageStaysShortHoweverLongTheValue)
{
    const auto faults = faultsOf(withTarget('"' + std::string(100'000, 'x') + '"'));
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_LT(faults[0].size(), 200u);
    const std::string name = '"' + std::string(100'000, 'x') + "\":1,";
    EXPECT_LT(faultsOf('{' + name + name + "\"z\":1}").at(0).size(), 300u) << "a key given twice";
    EXPECT_LT(faultsOf('{' + name + "zzz}").at(0).size(), 400u);
}

TEST(HostileJson, NothingHidesBehindANul)
{
    const auto hidden = faultsOf(withTarget("3") + std::string("\n\0{}", 4));
    EXPECT_THAT(hidden, ElementsAre(HasSubstr("evil.json:3: this is not valid JSON")));
}

// Were each key looked for among all before it one by one, the test would not end within its limit (tests.cmake).
TEST(HostileJson, aMillionKeysAreReadAndNoneIsSearchedForAmongAllOthers)
{
    std::string json = "{";
    for (int key = 0; key < 1'000'000; ++key)
        json += "\"k" + std::to_string(key) + "\":0,";
    EXPECT_THAT(faultsOf(json + "\"z\":0}"), testing::SizeIs(2))
        << "format and version are missing, no more is looked at";
}

TEST(HostileJson, aSetupIsReadByTheSameRules)
{
    EXPECT_THAT(faultTexts(readSetup(std::string(5000, '['), "s.json")), ElementsAre(HasSubstr("nested deeper")));
    EXPECT_THAT(faultTexts(readSetup("null", "s.json")), ElementsAre("s.json: must be an object in braces, not null"));
}

} // namespace
} // namespace hammerline::exchange
