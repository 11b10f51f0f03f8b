#include "exchange/built_in.h"

#include "core/exchange/faults_of.h"
#include "exchange/setup_json.h"
#include "exchange/tolerance_json.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace hammerline::exchange {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using Json = nlohmann::json;

std::vector<std::string> idsOf(const std::vector<BuiltIn> &all)
{
    std::vector<std::string> ids;
    for (const auto &one : all)
        ids.push_back(one.id);
    return ids;
}

TEST(BuiltIn, thereIsASetAndASetupForEachKindOfInstrument)
{
    EXPECT_THAT(idsOf(builtInToleranceSets()),
                ElementsAre("console", "full-upright", "grand-over-2m", "grand-touch-weight", "grand-under-2m"));
    EXPECT_THAT(idsOf(builtInSetups()), ElementsAre("console", "full-upright", "grand-over-2m", "grand-under-2m"));
}

TEST(BuiltIn, everySetIsReadWithoutAFaultAndComesBackFromWriting)
{
    for (const auto &builtIn : builtInToleranceSets()) {
        const auto named = findToleranceSet(builtIn.id);
        ASSERT_THAT(faultTexts(named), IsEmpty()) << builtIn.id;
        EXPECT_EQ(named.value().id, builtIn.id);
        EXPECT_EQ(named.value().text, builtIn.text);
        const auto again = readToleranceSet(writeToleranceSet(named.value().set), "again");
        ASSERT_THAT(faultTexts(again), IsEmpty()) << builtIn.id;
        EXPECT_EQ(again.value(), named.value().set) << builtIn.id;
    }
}

TEST(BuiltIn, everySetupIsReadWithoutAFaultAndComesBackFromWriting)
{
    for (const auto &builtIn : builtInSetups()) {
        const auto setup = findSetup(builtIn.id);
        ASSERT_THAT(faultTexts(setup), IsEmpty()) << builtIn.id;
        const auto again = readSetup(writeSetup(setup.value()), "again");
        ASSERT_THAT(faultTexts(again), IsEmpty()) << builtIn.id;
        EXPECT_EQ(again.value(), setup.value()) << builtIn.id;
    }
}

TEST(BuiltIn, everySetSaysThatTheMakersManualOutranksIt)
{
    for (const auto &builtIn : builtInToleranceSets())
        EXPECT_THAT(findToleranceSet(builtIn.id).value().set.remark,
                    HasSubstr("manual for the instrument outranks it"));
}

/// "low: …; target: …; high: …" or "step: …": every number of the object is named in its source.
void expectNumbersNamed(const Json &object, const std::string &where)
{
    for (const auto &item : object.items()) {
        const std::string &key = item.key();
        if (!item.value().is_number() || key == "note" || key == "version")
            continue;
        const std::string name = key.substr(0, key.rfind('_'));
        EXPECT_TRUE(object.contains("source")) << where << " has a number without a source: " << key;
        EXPECT_THAT(object.value("source", ""), HasSubstr(name))
            << where << " does not say where " << key << " is from";
    }
}

void expectSourcesBelow(const Json &json, const std::string &where)
{
    if (json.is_object())
        expectNumbersNamed(json, where);
    if (!json.is_structured())
        return;
    for (const auto &item : json.items())
        expectSourcesBelow(item.value(), where + "/" + item.key());
}

TEST(BuiltIn, everyNumberOfASetNamesItsSourceOrSaysThatThereIsNone)
{
    for (const auto &builtIn : builtInToleranceSets())
        expectSourcesBelow(Json::parse(builtIn.text)["quantities"], builtIn.id);
}

TEST(BuiltIn, everyNumberOfASetupNamesItsSourceOrSaysThatThereIsNone)
{
    for (const auto &builtIn : builtInSetups()) {
        const Json json = Json::parse(builtIn.text);
        EXPECT_THAT(json["source"].get<std::string>(), HasSubstr("lever_ratio: ")) << builtIn.id;
        expectSourcesBelow(json["adjustments"], builtIn.id);
        if (json.contains("rails"))
            expectSourcesBelow(json["rails"], builtIn.id);
    }
}

TEST(BuiltIn, noSetupClaimsWhatATurnDoesBecauseNothingIsPublished)
{
    for (const auto &builtIn : builtInSetups()) {
        const action::Setup setup = findSetup(builtIn.id).value();
        EXPECT_TRUE(
            std::ranges::none_of(setup.adjustments, [](const auto &one) { return one.second.perTurn.has_value(); }));
        EXPECT_THAT(setup.remark, HasSubstr("make a trial turn"));
    }
}

TEST(BuiltIn, whatIsNeitherAnIdNorAFileIsRefusedWithTheIdsThatThereAre)
{
    EXPECT_THAT(
        faultTexts(findToleranceSet("full-uprihgt")),
        ElementsAre("full-uprihgt: cannot be read (No such file or directory); name a file that is there and may "
                    "be read, or a built-in one: console, full-upright, grand-over-2m, grand-touch-weight, "
                    "grand-under-2m"));
    EXPECT_THAT(faultTexts(findSetup("no-such-setup")),
                ElementsAre(HasSubstr("or a built-in one: console, full-upright")));
}

} // namespace
} // namespace hammerline::exchange
