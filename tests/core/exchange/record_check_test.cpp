#include "exchange/record_check.h"

#include "exchange/answers_json.h"
#include "exchange/built_in.h"
#include "exchange/readings_csv.h"
#include "support/json_schema.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::exchange {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using support::JsonSchema;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using Json = nlohmann::ordered_json;

units::Amount mm(double value)
{
    return units::Length::millimetres(value);
}

sale_record::SaleRecord assembled()
{
    sale_record::RecordInput input;
    input.instrument.name = "Blue upright";
    input.instrument.uid = std::string(32, 'b');
    input.instrument.compass = {Note(1), Note(4)};
    input.instrument.sections = {{"bass", {Note(1), Note(4)}}};
    input.set = findToleranceSet("full-upright").value().set;
    input.issued = readings::parseRfc3339("2026-03-03T10:00:00Z").value();
    readings::Pass pass;
    pass.id = 1;
    pass.purpose = readings::Purpose::AsLeft;
    std::vector<readings::Reading> taken;
    for (const auto &[note, value] : {std::pair(1, 3.0), std::pair(2, 9.0), std::pair(3, 3.175)})
        taken.push_back({.place = {Quantity::LetOff, Note(note), 1}, .value = mm(value)});
    taken.push_back({.place = {Quantity::LetOff, Note(1), 2}, .value = mm(3.05)});
    input.passes.emplace_back(pass, taken);
    input.history = {41, std::string(64, 'a')};
    input.replaces = sale_record::Replaced{2, input.issued, std::string(64, 'c')};
    input.concessions = {{Quantity::LetOff, Note(2), mm(9), "rail is bent", "Ada Sample", input.issued}};
    input.signatures = {{"Ada Sample", input.issued, 1, ""}};
    return sale_record::assemble(input).value();
}

Json asJson()
{
    return Json::parse(recordJson(assembled()));
}

std::vector<std::string> disagreementsOf(const Json &record)
{
    const auto check = checkRecord({.recordJson = record.dump()});
    EXPECT_TRUE(check.ok());
    return check ? check.value().disagreements : std::vector<std::string>{"unread"};
}

TEST(RecordCheck, WhatTheRecordCarriesIsReadBack)
{
    const std::string text = recordJson(assembled());
    EXPECT_THAT(JsonSchema("record").faultsOf(text), IsEmpty());
    const auto check = checkRecord({.recordJson = text}).value();
    EXPECT_EQ(check.revision, 3);
    EXPECT_EQ(check.history, (sale_record::HistoryPin{41, std::string(64, 'a')}));
    EXPECT_EQ(check.instrumentUid, std::string(32, 'b'));
    EXPECT_GT(check.verdicts, 4);
    EXPECT_THAT(check.disagreements, IsEmpty());
}

TEST(RecordCheck, AnotherStatusLimitValueOrCountIsNamed)
{
    Json record = asJson();
    for (Json &verdict : record["as_left"]["readings"])
        if (verdict["quantity"] == "let_off" && verdict["note"] == 2)
            verdict["status"] = "in";
    record["pairs_inside"] = 99;
    EXPECT_THAT(disagreementsOf(record),
                ElementsAre("as left, let_off, A#0: status: the record says \"in\", its readings give \"out\"",
                            HasSubstr("pairs_inside: the record says 99")));
}

TEST(RecordCheck, AReadingChangedUnderItsVerdictIsNamed)
{
    Json record = asJson();
    record["as_left"]["takes"][0]["value_mm"] = 3.5;
    EXPECT_THAT(disagreementsOf(record), testing::Contains(HasSubstr("as left, let_off, A0: ")));
}

TEST(RecordCheck, AnExceptionOrVerdictLeftOutOrPutInIsNamed)
{
    Json record = asJson();
    record["exceptions"].erase(0);
    EXPECT_THAT(disagreementsOf(record), ElementsAre("exceptions, let_off, A#0: is left out"));
    record = asJson();
    record["as_left"]["readings"].erase(0);
    EXPECT_THAT(disagreementsOf(record), ElementsAre(HasSubstr("no verdict stands in the record")));
    record = asJson();
    record["as_left"]["readings"].push_back(record["as_left"]["readings"][0]);
    record["as_left"]["readings"].push_back({{"note", 88}, {"quantity", "let_off"}});
    record["as_left"]["readings"].push_back({{"note", 4'000'000'000}, {"quantity", "let_off"}});
    EXPECT_EQ(disagreementsOf(record).size(), 3u);
}

TEST(RecordCheck, TheReadingsFileMustHoldTheSameReadings)
{
    const auto record = assembled();
    const std::string json = recordJson(record);
    std::string csv = writeReadingsCsv(record.asLeft.readings);
    EXPECT_THAT(checkRecord({.recordJson = json, .readingsCsv = csv}).value().disagreements, IsEmpty());
    csv.replace(csv.find("3.175"), 5, "3.185");
    EXPECT_THAT(checkRecord({.recordJson = json, .readingsCsv = csv}).value().disagreements,
                ElementsAre("readings.csv: holds other readings than record.json"));
}

TEST(RecordCheck, WhatIsNoRecordIsRefused)
{
    for (const char *text : {"", "{}", "[]", R"({"format":"hammerline-check","version":1})",
                             R"({"format":"hammerline-record","version":2})",
                             R"({"format":"hammerline-record","version":1,"as_left":{"takes":7}})"})
        EXPECT_FALSE(checkRecord({.recordJson = text}).ok()) << text;
}

} // namespace
} // namespace hammerline::exchange
