// Hand-overs that are no document, or that a logbook could not hold although their digests are right.
#include "core/logbook/hand_over_fixture.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;

class HandOverHurtTest : public HandOverTest {};

TEST_F(HandOverHurtTest, IsRefusedCutOffAnywhere)
{
    const std::string document = handedOver();
    for (std::size_t kept = 0; kept < document.size(); kept += 97)
        EXPECT_THAT(problemOf(document.substr(0, kept)), HasSubstr("piano.json:")) << kept;
    EXPECT_THAT(problemOf(document.substr(0, document.size() - 1)), HasSubstr("not written as it was"));
}

TEST_F(HandOverHurtTest, CutOffIsToldWithItsLine)
{
    const std::string document = handedOver();
    const std::size_t third = document.find("{\"at\"", document.find("\"deed\":2"));
    EXPECT_THAT(problemOf(document.substr(0, third + 20)),
                HasSubstr("piano.json:5: from here on it is no JSON; it was cut off"));
    EXPECT_THAT(problemOf("not even that"), HasSubstr("piano.json: this is no JSON document"));
    EXPECT_THAT(problemOf(""), HasSubstr("this is no JSON document"));
}

TEST_F(HandOverHurtTest, IsRefusedWithEverySingleMemberTakenOut)
{
    const auto whole = nlohmann::json::parse(handedOver());
    for (const char *name : {"format", "version", "instrument", "deeds", "pictures"})
        EXPECT_NE(problemOfForged([&](auto &json) { json.erase(name); }), "none") << name;
    for (const char *name : {"deed", "at", "person", "name", "subject", "rows"})
        EXPECT_NE(problemOfForged([&](auto &json) { json["deeds"][3].erase(name); }), "none") << name;
    for (const char *name : {"table", "pass", "quantity", "note", "take", "version"})
        EXPECT_NE(problemOfForged([&](auto &json) { json["deeds"][2]["rows"][0].erase(name); }), "none") << name;
    for (const char *name : {"digest", "jpeg_base64"})
        EXPECT_NE(problemOfForged([&](auto &json) { json["pictures"][0].erase(name); }), "none") << name;
    auto undigested = whole;
    undigested["deeds"][4].erase("digest");
    EXPECT_THAT(problemOf(undigested.dump()), HasSubstr("deed 5: \"digest\" is missing"));
    undigested = whole;
    undigested.erase("digest");
    EXPECT_THAT(problemOf(undigested.dump()), HasSubstr("\"digest\" is missing"));
}

TEST_F(HandOverHurtTest, IsRefusedWhereItHoldsWhatALogbookCannotRead)
{
    const auto withRow = [&](std::size_t deed, const char *name, const nlohmann::json &value) {
        return problemOfForged([&](auto &json) { json["deeds"][deed]["rows"][0][name] = value; });
    };
    EXPECT_THAT(withRow(0, "action", "harp"), HasSubstr("holds what no logbook holds"));
    for (const char *runs : {"[[1]]", "[", "none", "{}", "[[\"bass\",1,2.0]]", "[[\"bass\",1,2]] ]", "[[[]]]"})
        EXPECT_THAT(withRow(0, "sections", runs), HasSubstr("holds what no logbook holds")) << runs;
    EXPECT_THAT(withRow(0, "name", ""), HasSubstr("no name"));
    EXPECT_THAT(withRow(0, "instrument", std::string(32, '0')), HasSubstr("another instrument"));
    EXPECT_THAT(withRow(1, "purpose", "for fun"), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(withRow(2, "quantity", "loudness"), HasSubstr("no quantity"));
    EXPECT_THAT(withRow(2, "note", 400), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(withRow(2, "take", 0), HasSubstr("holds what no logbook holds"));
    EXPECT_THAT(withRow(2, "value", 1e300), HasSubstr("deed 3: holds \"1e+300\", which is no whole number"));
    EXPECT_THAT(withRow(2, "value", "3.2"), HasSubstr("whole number"));
    EXPECT_THAT(withRow(2, "typed", 3), HasSubstr("no text"));
    EXPECT_THAT(withRow(2, "version", 2), HasSubstr("does not follow"));
    EXPECT_THAT(withRow(2, "colour", "red"), HasSubstr("newer one may"));
    EXPECT_THAT(withRow(2, "table", "history"), HasSubstr("does not know"));
    EXPECT_THAT(withRow(2, "pass", std::string(32, '0')), HasSubstr("pass"));
    EXPECT_THAT(withRow(2, "origin", 99), HasSubstr("not before it"));
}

TEST_F(HandOverHurtTest, WrongTypesAreRefusedWithTheirPlace)
{
    const auto withDeed = [&](const char *name, const nlohmann::json &value) {
        return problemOfForged([&](auto &json) { json["deeds"][3][name] = value; });
    };
    EXPECT_THAT(withDeed("at", "yesterday"), HasSubstr("deed 4: \"at\" is no moment"));
    EXPECT_THAT(withDeed("at", 5), HasSubstr("deed 4: \"at\" is not"));
    EXPECT_THAT(withDeed("rows", "none"), HasSubstr("deed 4: \"rows\" is not"));
    EXPECT_THAT(withDeed("rows", {1}), HasSubstr("deed 4"));
    EXPECT_THAT(withDeed("undoes", "1"), HasSubstr("deed 4 is no whole number"));
    EXPECT_THAT(withDeed("undoes", 4), HasSubstr("deed 4 refers to a deed that is not before it"));
    EXPECT_THAT(withDeed("deed", "4"), HasSubstr("deed 4 is missing or out of order"));
    EXPECT_THAT(withDeed("person", nullptr), HasSubstr("deed 4: holds null"));
    EXPECT_THAT(withDeed("person", true), HasSubstr("deed 4: holds true or false"));
    EXPECT_THAT(withDeed("undoes", std::uint64_t{1} << 60), HasSubstr("deed 4: holds 1152921504606846976"));
    EXPECT_THAT(problemOf(R"({"deeds":[{},null]})"), HasSubstr("piano.json: deed 2: holds null"));
    EXPECT_THAT(problemOf(R"({"pictures":[{"digest":1.5}]})"), HasSubstr("piano.json: pictures, 1: holds \"1.5\""));
    EXPECT_THAT(problemOf("[]"), HasSubstr("missing"));
    EXPECT_THAT(problemOf("7"), HasSubstr("missing"));
    auto headless = nlohmann::json::parse(handedOver());
    headless["deeds"][1] = 3;
    EXPECT_THAT(problemOf(headless.dump()), HasSubstr("deed 2 is none"));
    EXPECT_THAT(problemOfForged([](auto &json) { json["without"] = {"price"}; }), HasSubstr("without"));
}

TEST_F(HandOverHurtTest, UnknownMembersAreRefusedWithTheirPlace)
{
    EXPECT_THAT(problemOfForged([](auto &json) { json["deeds"][3]["mood"] = "good"; }),
                HasSubstr("deed 4 has \"mood\", which this program does not know; a newer one may"));
    EXPECT_THAT(problemOfForged([](auto &json) { json["pictures"][0]["mood"] = "good"; }), HasSubstr("has \"mood\""));
    auto json = nlohmann::json::parse(handedOver());
    json["mood"] = "good";
    EXPECT_THAT(problemOf(json.dump()), HasSubstr("the document has \"mood\""));
}

TEST_F(HandOverHurtTest, MembersThatStandTwiceAreRefusedWithTheirPlace)
{
    std::string document = handedOver();
    document.insert(document.find("\"person\"", document.find("\"deed\":7")), "\"person\":\"Ada\",");
    EXPECT_THAT(problemOf(document), HasSubstr("deed 7: \"person\" stands there twice"));
    document = handedOver();
    document.insert(1, "\"version\":1,");
    EXPECT_THAT(problemOf(document), HasSubstr("the document: \"version\" stands there twice"));
}

TEST_F(HandOverHurtTest, NothingHidesBehindANul)
{
    const std::string document = handedOver();
    EXPECT_THAT(problemOf(document + std::string(1, '\0') + document), HasSubstr("it was cut off or altered"));
}

TEST_F(HandOverHurtTest, DeepOnesAreRefusedAtOnce)
{
    EXPECT_THAT(problemOf(std::string(10'000'000, '[')), HasSubstr("piano.json: the document: objects and lists"));
    std::string document = handedOver();
    document.insert(document.find("\"rows\":[", document.find("\"deed\":7")) + 8, std::string(100'000, '['));
    EXPECT_THAT(problemOf(document), HasSubstr("deed 7: objects and lists are nested deeper"));
}

TEST_F(HandOverHurtTest, OfMoreValuesThanAnyHandOverIsRefused)
{
    std::string document = "{\"deeds\":[1";
    for (int count = 0; count < (16 << 20); ++count)
        document += ",1";
    EXPECT_THAT(problemOf(document), HasSubstr("more values"));
}

TEST_F(HandOverHurtTest, OfAnotherVersionOrAnotherKindIsRefused)
{
    EXPECT_THAT(problemOfForged([](auto &json) { json["version"] = 3; }), HasSubstr("version 3"));
    EXPECT_THAT(problemOfForged([](auto &json) { json["version"] = 1; }), HasSubstr("has \"digest\""));
    EXPECT_THAT(problemOfForged([](auto &json) { json["version"] = 0; }), HasSubstr("version 0"));
    EXPECT_THAT(problemOfForged([](auto &json) { json["format"] = "hammerline-check"; }), HasSubstr("format"));
}

/// As it was before documents had digests.
std::string ofVersion1(const std::string &document)
{
    auto json = nlohmann::json::parse(document);
    json.erase("digest");
    json["version"] = 1;
    for (auto &deed : json["deeds"])
        deed.erase("digest");
    return json.dump();
}

TEST_F(HandOverHurtTest, OfVersion1IsTakenOverAndSaidToBeVouchedForByNothing)
{
    const std::string old = ofVersion1(handedOver());
    EXPECT_FALSE(to.takeOver(old, "piano.json", ben, anySet, digestIn(handedOver())));
    const TakenOver taken = takenOver(old);
    EXPECT_TRUE(taken.isNew);
    EXPECT_TRUE(taken.digest.empty());
    EXPECT_EQ(to.handOver(2).value(), handedOver());
    auto gap = nlohmann::json::parse(old);
    gap["deeds"].erase(3);
    EXPECT_THAT(problemOf(gap.dump()), HasSubstr("deed 4 is missing or out of order"));
}

TEST_F(HandOverHurtTest, PicturesThatNobodyNamesOrThatAreNoneAreRefused)
{
    EXPECT_THAT(problemOfForged([](auto &json) { json["pictures"] = nlohmann::json::array(); }),
                HasSubstr("is missing"));
    for (const char *bytes : {"AAAA", "%", ""})
        EXPECT_THAT(problemOfForged([&](auto &json) { json["pictures"][0]["jpeg_base64"] = bytes; }),
                    HasSubstr("was altered"));
    EXPECT_THAT(problemOfForged([](auto &json) {
                    json["pictures"].push_back({{"digest", sha256Of("abc")}, {"jpeg_base64", "YWJj"}});
                }),
                HasSubstr("picture"));
}

} // namespace
} // namespace hammerline::logbook
