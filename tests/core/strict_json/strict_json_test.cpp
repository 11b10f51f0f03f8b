// What may stand in a tree, what ends the reading of one, and that a hostile text costs no more than a sound one.
// The valid and broken texts are from the grammar of RFC 8259, sections 2 to 8.
#include "strict_json/strict_json.h"

#include <gmock/gmock.h>

#include <optional>

namespace hammerline::strict_json {
namespace {

using testing::HasSubstr;

constexpr Bounds plain{.kinds = Kinds::TextsAndWholeNumbers};

/// What ended the reading; absent: nothing.
std::optional<Stop> stopOf(std::string_view text, const Bounds &bounds = {})
{
    std::optional<Stop> stopped;
    const auto tree = read(text, bounds, [&](const Stop &stop) {
        stopped = stop;
        return outcome::Fault{"f", stop.line, "stopped"};
    });
    EXPECT_EQ(tree.ok(), !stopped.has_value());
    return stopped;
}

/// "deeds/3/rows"; "none" where nothing ended it.
std::string pathOf(std::string_view text, const Bounds &bounds = {})
{
    const auto stop = stopOf(text, bounds);
    if (!stop)
        return "none";
    std::string path;
    for (const Step &step : stop->path)
        path += (path.empty() ? "" : "/") + (step.element == 0 ? step.member : std::to_string(step.element));
    return path;
}

std::optional<Why> whyOf(std::string_view text, const Bounds &bounds = {})
{
    const auto stop = stopOf(text, bounds);
    return stop ? std::optional(stop->why) : std::nullopt;
}

Json treeOf(std::string_view text, const Bounds &bounds = {})
{
    return read(text, bounds, [](const Stop &stop) { return outcome::Fault{{}, 0, stop.said}; }).value();
}

TEST(StrictJson, TheTreeHasWhatTheTextSays)
{
    const auto text = R"( {"a": [1, -2, 0.5, 1e2, "x\u00e4\n", true, false, null, {}, []], "b": {"a": {"a": ""}}} )";
    EXPECT_EQ(treeOf(text), Json::parse(text));
    EXPECT_EQ(treeOf("7"), 7);
    EXPECT_EQ(treeOf(R"({"deeds":[{"a":1},{"a":2}]})", plain), Json::parse(R"({"deeds":[{"a":1},{"a":2}]})"));
}

TEST(StrictJson, WholeNumbersAreSignedWhere64BitsHoldThem)
{
    EXPECT_EQ(treeOf("9223372036854775807").type(), Json::value_t::number_integer);
    EXPECT_EQ(treeOf("1", plain).type(), Json::value_t::number_integer);
    EXPECT_EQ(treeOf("9223372036854775808").type(), Json::value_t::number_unsigned);
    EXPECT_EQ(treeOf("18446744073709551616").type(), Json::value_t::number_float);
}

TEST(StrictJson, AMemberThatStandsTwiceInOneObjectEndsTheReading)
{
    const auto stop = stopOf(R"({"a": [{"b": 1}, {"b": 1, "c": {}, "b": 2}]})");
    ASSERT_TRUE(stop);
    EXPECT_EQ(stop->why, Why::MemberTwice);
    EXPECT_EQ(stop->said, "b");
    EXPECT_EQ(whyOf(R"({"a": {"a": {"a": 1}}, "b": [{"a": 1}, {"a": 1}]})"), std::nullopt) << "each in its own object";
    EXPECT_EQ(whyOf(R"({"ab": 1, "\u0061b": 1})"), Why::MemberTwice) << "however it is written";
    EXPECT_EQ(whyOf(R"({"a": null, "a": 1})"), Why::MemberTwice);
}

TEST(StrictJson, TheDepthIsThatOfObjectsAndListsInsideOneAnother)
{
    EXPECT_EQ(whyOf("[{\"a\": [1]}, [[2]]]", {.depth = 3}), std::nullopt);
    EXPECT_EQ(whyOf("[{\"a\": [1]}, [[2]]]", {.depth = 2}), Why::TooDeep);
    EXPECT_EQ(whyOf("1", {.depth = 0}), std::nullopt);
    EXPECT_EQ(whyOf("[]", {.depth = 0}), Why::TooDeep);
}

TEST(StrictJson, NoDepthIsRecursedInto)
{
    EXPECT_EQ(whyOf(std::string(10'000'000, '[')), Why::TooDeep);
    std::string objects;
    for (int depth = 0; depth < 100'000; ++depth)
        objects += "{\"a\":";
    EXPECT_EQ(whyOf(objects), Why::TooDeep);
}

TEST(StrictJson, EveryValueCountsObjectsAndListsAmongThem)
{
    EXPECT_EQ(whyOf("[1, {\"a\": []}]", {.values = 4}), std::nullopt);
    EXPECT_EQ(whyOf("[1, {\"a\": []}]", {.values = 3}), Why::TooManyValues);
    EXPECT_EQ(whyOf("[1, {\"a\": \"\"}]", {.values = 3}), Why::TooManyValues);
    EXPECT_EQ(whyOf("1", {.values = 0}), Why::TooManyValues);
}

TEST(StrictJson, ALargerTextIsNotLookedAt)
{
    EXPECT_EQ(whyOf("[1]", {.bytes = 3}), std::nullopt);
    EXPECT_EQ(whyOf("@@@@", {.bytes = 3}), Why::TooLarge);
}

TEST(StrictJson, WhereTextsAndWholeNumbersAloneMayStandTheOthersEndTheReading)
{
    EXPECT_EQ(whyOf(R"(["", 0, -0, -9007199254740992, 9007199254740992, [], {}])", plain), std::nullopt);
    EXPECT_EQ(whyOf("null", plain), Why::Null);
    EXPECT_EQ(whyOf("true", plain), Why::Boolean);
    EXPECT_EQ(whyOf("[false]", plain), Why::Boolean);
    for (const char *number : {"1.5", "1.0", "1e2", "-1E+2", "18446744073709551616", "-9223372036854775809"}) {
        const auto stop = stopOf(number, plain);
        ASSERT_TRUE(stop) << number;
        EXPECT_EQ(stop->why, Why::NoWholeNumber) << number;
        EXPECT_EQ(stop->said, number);
    }
    for (const char *number : {"9007199254740993", "18446744073709551615", "-9007199254740993"}) {
        const auto stop = stopOf(number, plain);
        ASSERT_TRUE(stop) << number;
        EXPECT_EQ(stop->why, Why::BeyondExact) << number;
        EXPECT_EQ(stop->said, number);
    }
}

TEST(StrictJson, ThePathLeadsFromTheRootToWhatMayNotStand)
{
    EXPECT_EQ(pathOf("null", plain), "");
    EXPECT_EQ(pathOf("[null]", plain), "1");
    EXPECT_EQ(pathOf("[1, [2], null]", plain), "3");
    EXPECT_EQ(pathOf(R"({"deeds": [{"a": 1}, {"a": {"b": 1}, "c": 1.5}]})", plain), "deeds/2/c");
    EXPECT_EQ(pathOf(R"({"deeds": [{"a": 1}], "pictures": [{}, {"b": 1, "b": 2}]})", plain), "pictures/2/b");
    EXPECT_EQ(pathOf(R"({"a": {"b": {"c": 1}, "d": true}})", plain), "a/d");
    EXPECT_EQ(pathOf(R"({"a": 1, "b": [[[]]]})", {.depth = 3}), "b/1/1");
    EXPECT_EQ(pathOf(R"({"a": [1, 2, 3]})", {.values = 4}), "a/3");
}

TEST(StrictJson, WhatIsNoJsonIsToldWithTheLineItBreaksOn)
{
    const auto lineOf = [](std::string_view text) { return stopOf(text).value_or(Stop{}).line; };
    EXPECT_EQ(lineOf(""), 1u);
    EXPECT_EQ(lineOf("[1,\n2"), 2u);
    EXPECT_EQ(lineOf("[1,\n2,\n"), 3u);
    EXPECT_EQ(lineOf("[\n\"a\nb\"]"), 2u) << "the line end in a text breaks the line it ends";
    EXPECT_EQ(lineOf("{\n\"format\": \"x\",\n}"), 3u);
    EXPECT_EQ(lineOf("[\n1e400]"), 2u) << "beyond a double";
}

TEST(StrictJson, NoLeniencyIsShownToAnyText)
{
    for (const char *text : {"{} {}",
                             "[1,]",
                             "{\"a\":1,}",
                             "// x\n1",
                             "NaN",
                             "-Infinity",
                             "01",
                             "+1",
                             ".5",
                             "1.",
                             "'a'",
                             "{a:1}",
                             "\"\xff\"",
                             "\"\xed\xa0\x80\"",
                             "\"\\ud800\"",
                             "\"\t\"",
                             "1e400",
                             "tru",
                             "[",
                             "\"",
                             "\xef\xbb\xbf\xef\xbb\xbf"
                             "1"})
        EXPECT_EQ(whyOf(text), Why::NotJson) << text;
}

TEST(StrictJson, NothingIsHiddenBehindANul)
{
    const std::string nul(1, '\0');
    for (const std::string &text : {"1" + nul, "{}\n" + nul + "{\"a\":1}", "\"" + nul + "\"", "[" + nul + "]", nul})
        EXPECT_EQ(whyOf(text), Why::NotJson) << text;
    EXPECT_EQ(stopOf("[\n1]" + nul)->line, 2u);
}

TEST(StrictJson, WhatTheParserExpectedIsSaidAndStaysShortHoweverLongTheText)
{
    EXPECT_THAT(stopOf("[1")->said, HasSubstr("unexpected end of input"));
    EXPECT_THAT(stopOf("nul")->said, HasSubstr("invalid literal; last read: 'nul'"));
    const std::string deceitful = "[\"; last read: ': \n";
    EXPECT_THAT(stopOf(deceitful)->said, HasSubstr("control character"))
        << "a text has no say in how its fault is told";
    const std::string lengthy(1'000'000, 'x');
    for (const std::string &text : {'"' + lengthy, "{\"" + lengthy + "\":1,\"" + lengthy + "\":1}"}) {
        const auto stop = stopOf(text);
        ASSERT_TRUE(stop);
        EXPECT_LE(stop->said.size(), 200u);
        for (const Step &step : stop->path)
            EXPECT_LE(step.member.size(), 200u);
    }
}

TEST(StrictJson, TheFaultIsTheOneThatTheWordsMakeOfTheStop)
{
    const auto tree = read("[\n}", {}, [](const Stop &stop) { return outcome::Fault{"f.json", stop.line, "is none"}; });
    ASSERT_FALSE(tree);
    EXPECT_EQ(tree.faults().size(), 1u);
    EXPECT_EQ(tree.fault().text(), "f.json:2: is none");
}

TEST(Clipped, AMessageHoldsWholeLettersOfUtf8)
{
    EXPECT_EQ(clipped("12345", 5), "12345");
    EXPECT_EQ(clipped("123456", 5), "12...");
    EXPECT_EQ(clipped("1äää", 5), "1...") << "the second letter would be cut in two";
    EXPECT_EQ(clipped("ääää", 5), "ä...");
    EXPECT_EQ(clipped(std::string(100, 'x')).size(), 80u);
    EXPECT_EQ(clipped("\x80\x80\x80\x80", 3), "...");
}

} // namespace
} // namespace hammerline::strict_json
