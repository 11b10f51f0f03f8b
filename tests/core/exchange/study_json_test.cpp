#include "exchange/study_json.h"

#include "exchange/trials_csv.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace hammerline::exchange {
namespace {

using Parsed = nlohmann::ordered_json;

Parsed study(std::string_view rows)
{
    const auto trials = readTrialsCsv("note,person,take,value\n" + std::string(rows), {}).value();
    return Parsed::parse(gaugeStudyJson(analysis::gaugeStudy(trials).value()));
}

std::vector<std::string> keysOf(const Parsed &json)
{
    std::vector<std::string> keys;
    for (const auto &[key, value] : json.items())
        keys.push_back(key);
    return keys;
}

TEST(GaugeStudyJson, HasEveryKeyOfTheContract)
{
    const auto json = study("1,X,1,1.0\n1,X,2,1.2\n2,X,1,2.0\n2,X,2,2.2\n1,Y,1,1.3\n1,Y,2,1.5\n2,Y,1,2.3\n2,Y,2,2.5\n");
    EXPECT_EQ(keysOf(json),
              (std::vector<std::string>{"format", "version", "notes", "people", "takes", "interaction_pooled", "anova",
                                        "variance", "sd", "percent_of_total_sd", "distinct_categories",
                                        "expanded_uncertainty"}));
    EXPECT_EQ(json["format"], "hammerline-gauge-study");
    EXPECT_EQ(json["version"], 1);
    EXPECT_EQ(json["interaction_pooled"], true);
    EXPECT_EQ(keysOf(json["anova"][0]), (std::vector<std::string>{"source", "df", "ss", "ms", "f", "p"}));
    EXPECT_EQ(keysOf(json["anova"][4]), (std::vector<std::string>{"source", "df", "ss"}));
    EXPECT_EQ(json["anova"][3]["source"], "repeatability");
    for (const char *part : {"variance", "sd", "percent_of_total_sd"})
        EXPECT_EQ(keysOf(json[part]),
                  (std::vector<std::string>{"repeatability", "reproducibility", "gauge", "note", "total"}));
    EXPECT_EQ(json["percent_of_total_sd"]["total"], 100);
    EXPECT_EQ(json["distinct_categories"], 4);
}

TEST(GaugeStudyJson, LeavesOutWhatDoesNotApply)
{
    const auto json = study("1,X,1,1\n1,X,2,1\n2,X,1,1\n2,X,2,1\n1,Y,1,1\n1,Y,2,1\n2,Y,1,1\n2,Y,2,1\n");
    EXPECT_FALSE(json.contains("percent_of_total_sd") || json.contains("distinct_categories"));
    EXPECT_FALSE(json["anova"][0].contains("f") || json["anova"][0].contains("p"));
    EXPECT_EQ(json["expanded_uncertainty"], 0);
}

TEST(SpotCheckJson, HasEveryKeyOfTheContract)
{
    const auto json = Parsed::parse(spotCheckJson(analysis::spotCheck(88, 84, 0, "0.95").value()));
    EXPECT_EQ(keysOf(json), (std::vector<std::string>{"format", "version", "most_out", "sample_to_prove"}));
    EXPECT_EQ(json["format"], "hammerline-spot-check");
    EXPECT_EQ(json["most_out"], 0);
    EXPECT_EQ(json["sample_to_prove"][1], (Parsed{{"at_most_out", 1}, {"sample", 68}}));
    EXPECT_EQ(json["sample_to_prove"].size(), 5U);
}

TEST(SpotCheckJson, EndsWithANewline)
{
    EXPECT_EQ(spotCheckJson({}).back(), '\n');
}

} // namespace
} // namespace hammerline::exchange
