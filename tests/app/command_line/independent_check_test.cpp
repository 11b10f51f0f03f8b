// `check` on the sample readings beside a recomputation that shares nothing with the core: its own CSV, its own
// fractions (whole nanometres), its own interpolation,
// judging and evenness. Only the JSON library is the same.

#include "support/command_run.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <map>
#include <ostream>

namespace hammerline {
namespace {

using nlohmann::json;
using test_support::fileText;
using test_support::linesOf;
using test_support::runCommand;
using test_support::sampleData;

struct Sample {
    std::string file;
    std::string set;
    int first = 1;
    int last = 88;
};

void PrintTo(const Sample &sample, std::ostream *stream)
{
    *stream << sample.file;
}

std::vector<std::string> cellsOf(const std::string &line)
{
    std::vector<std::string> cells{""};
    bool inside = false;
    for (const char character : line) {
        if (character == '"')
            inside = !inside;
        else if (character == ',' && !inside)
            cells.emplace_back();
        else
            cells.back() += character;
    }
    return cells;
}

int noteNumber(const std::string &name)
{
    static const std::map<char, int> steps{{'C', 0}, {'D', 2}, {'E', 4}, {'F', 5}, {'G', 7}, {'A', 9}, {'B', 11}};
    const bool sharp = name[1] == '#';
    return steps.at(name[0]) + (sharp ? 1 : 0) + 12 * std::stoi(name.substr(sharp ? 2 : 1)) - 8;
}

bool isSharp(int note)
{
    const int step = ((note + 8) % 12 + 12) % 12;
    return step == 1 || step == 3 || step == 6 || step == 8 || step == 10;
}

long long decimalMillionths(const std::string &text)
{
    const auto mark = text.find('.');
    std::string digits = text.substr(0, mark);
    std::string rest = mark == std::string::npos ? "" : text.substr(mark + 1);
    rest.resize(6, '0');
    return std::stoll(digits + rest);
}

/// Nanometres or milligrams of what the sample files hold: decimals of mm, in or g, and fractions of 64ths at most.
long long baseUnits(const std::string &text, const std::string &unit)
{
    const auto slash = text.find('/');
    if (slash != std::string::npos) {
        const auto blank = text.find(' ');
        const long long whole = blank == std::string::npos ? 0 : std::stoll(text.substr(0, blank));
        const std::size_t begin = blank == std::string::npos ? 0 : blank + 1;
        const long long top = std::stoll(text.substr(begin, slash - begin));
        const long long bottom = std::stoll(text.substr(slash + 1));
        return (whole * bottom + top) * 25'400'000 / bottom;
    }
    const long long millionths = decimalMillionths(text);
    if (unit == "g")
        return millionths / 1000;
    return unit == "in" ? millionths * 254 / 10 : millionths;
}

using Takes = std::map<std::string, std::map<int, std::vector<long long>>>;

Takes readSample(const std::string &text)
{
    const auto lines = linesOf(text);
    const auto head = cellsOf(lines[0]);
    Takes takes;
    for (std::size_t row = 1; row < lines.size(); ++row) {
        const auto cells = cellsOf(lines[row]);
        const int note = noteNumber(cells[0]);
        if (head[1] == "quantity") {
            takes[cells[1]][note].push_back(baseUnits(cells[2], cells[3]));
            continue;
        }
        for (std::size_t column = 1; column < head.size(); ++column) {
            const auto bracket = head[column].find(" (");
            const std::string unit = head[column].substr(bracket + 2, head[column].size() - bracket - 3);
            if (!cells[column].empty())
                takes[head[column].substr(0, bracket)][note].push_back(baseUnits(cells[column], unit));
        }
    }
    return takes;
}

long long mean(const std::vector<long long> &values)
{
    long double sum = 0;
    for (const long long value : values)
        sum += static_cast<long double>(value);
    return std::llround(sum / static_cast<long double>(values.size()));
}

/// One of low, target, high at a note, in millimetres; absent where the points have none.
std::optional<double> at(const json &points, const std::string &key, int note)
{
    std::map<int, double> known;
    for (const json &point : points)
        if (point.contains(key + "_mm"))
            known[point["note"]] = point[key + "_mm"];
    if (known.empty())
        return std::nullopt;
    const auto above = known.lower_bound(note);
    if (above == known.end())
        return known.rbegin()->second;
    if (above == known.begin() || above->first == note)
        return above->second;
    const auto below = std::prev(above);
    const double along = static_cast<double>(note - below->first) / (above->first - below->first);
    return std::round((below->second + along * (above->second - below->second)) * 1e6) / 1e6;
}

struct Verdict {
    std::string status{};
    std::optional<double> value{};
    bool uneven = false;
};
using Verdicts = std::map<std::pair<std::string, int>, Verdict>;

bool isUneven(const json &entry, const std::string &quantity, const std::map<int, long long> &values, int note)
{
    if (!entry.contains("step_mm"))
        return false;
    const bool within = quantity == "dip" || quantity == "aftertouch" || quantity == "key_height";
    for (int below = note - 1; below >= note - 4; --below)
        if (values.contains(below) && (!within || isSharp(below) == isSharp(note)))
            return static_cast<double>(std::llabs(values.at(note) - values.at(below))) / 1e6 >
                   entry["step_mm"].get<double>() + 1e-9;
    return false;
}

std::string statusOf(double value, const json &points, int note)
{
    const auto low = at(points, "low", note);
    const auto high = at(points, "high", note);
    return (low && value < *low - 1e-7) || (high && value > *high + 1e-7) ? "out" : "in";
}

Verdicts recompute(const Sample &sample, const json &set)
{
    std::map<std::string, std::map<int, long long>> values;
    for (const auto &[quantity, notes] : readSample(fileText(sampleData("readings/" + sample.file))))
        for (const auto &[note, takes] : notes)
            values[quantity][note] = mean(takes);
    Verdicts verdicts;
    for (const auto &[quantity, notes] : values)
        for (const auto &[note, value] : notes)
            verdicts[{quantity, note}] = {
                .status = "unjudged", .value = static_cast<double>(value) / (quantity.ends_with("weight") ? 1e3 : 1e6)};
    for (const auto &[quantity, entry] : set["quantities"].items())
        for (int note = sample.first; note <= sample.last; ++note) {
            const std::string colour = isSharp(note) ? "sharps" : "naturals";
            if (!entry.contains("points") && !entry.contains(colour))
                continue;
            Verdict &verdict = verdicts[{quantity, note}];
            verdict.status = "missing";
            if (!verdict.value)
                continue;
            verdict.status =
                statusOf(*verdict.value, entry.contains("points") ? entry["points"] : entry[colour]["points"], note);
            verdict.uneven = isUneven(entry, quantity, values[quantity], note);
        }
    return verdicts;
}

class IndependentCheck : public ::testing::TestWithParam<Sample> {};

TEST_P(IndependentCheck, GivesTheSameVerdicts)
{
    const Sample &sample = GetParam();
    const auto ran =
        runCommand({"check", sampleData("readings/" + sample.file), "--tolerances", sample.set,
                    "--first=" + std::to_string(sample.first), "--last=" + std::to_string(sample.last), "--json"});
    ASSERT_NE(ran.status, 2) << ran.err;
    const auto set =
        json::parse(fileText(std::string(HAMMERLINE_SOURCE_DIR) + "/resources/tolerances/" + sample.set + ".json"));
    const auto expected = recompute(sample, set);
    const auto readings = json::parse(ran.out)["readings"];
    EXPECT_EQ(readings.size(), expected.size());
    bool failing = false;
    for (const json &reading : readings) {
        const auto place = std::pair(reading["quantity"].get<std::string>(), reading["note"].get<int>());
        ASSERT_TRUE(expected.contains(place)) << reading.dump();
        const Verdict &verdict = expected.at(place);
        EXPECT_EQ(reading["status"], verdict.status) << reading.dump();
        EXPECT_EQ(reading.value("uneven", false), verdict.uneven) << reading.dump();
        const std::string key = place.first.ends_with("weight") ? "value_g" : "value_mm";
        ASSERT_EQ(reading.contains(key), verdict.value.has_value()) << reading.dump();
        if (verdict.value) {
            EXPECT_NEAR(reading[key].get<double>(), *verdict.value, 1e-9) << reading.dump();
        }
        failing = failing || verdict.status == "out" || verdict.status == "missing";
    }
    EXPECT_EQ(ran.status, failing ? 1 : 0);
}

INSTANTIATE_TEST_SUITE_P(
    Samples, IndependentCheck,
    ::testing::Values(
        Sample{"quillerby-131-as-found.csv", "full-upright"}, Sample{"quillerby-131-as-left.csv", "full-upright"},
        Sample{"quillerby-131-recheck.csv", "full-upright"}, Sample{"tamsel-rook-118-as-found.csv", "full-upright"},
        Sample{"tamsel-rook-118-as-left.csv", "full-upright"},
        Sample{"brannagort-cottage-upright-as-found.csv", "full-upright", 1, 85},
        Sample{"ondelmark-108-as-left.csv", "console"}, Sample{"zirrow-188-as-found.csv", "grand-under-2m"},
        Sample{"zirrow-188-as-left.csv", "grand-under-2m"},
        Sample{"hethlyn-275-with-extended-bass-as-found.csv", "grand-over-2m", -8, 88},
        Sample{"hethlyn-275-with-extended-bass-as-left.csv", "grand-over-2m", -8, 88},
        Sample{"quillerby-152-as-found.csv", "grand-under-2m"}));

} // namespace
} // namespace hammerline
