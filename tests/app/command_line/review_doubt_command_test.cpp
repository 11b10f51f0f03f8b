// What `review` calls in, but within the gauge's doubt, held against what `check` says of the same readings.

#include "exchange/tolerance_json.h"
#include "logbook/logbook.h"
#include "support/command_run.h"
#include "support/json_schema.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <random>
#include <set>

namespace hammerline {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using nlohmann::json;
using test_support::runCommand;
using test_support::ScratchFolder;
using testing::HasSubstr;
using units::Length;

using Pairs = std::set<std::pair<std::string, int>>;

/// Simple rule, so that its uncertainty of 0.2 mm (k = 2) tells of doubt and leaves every verdict alone; a step so
/// small that most notes are uneven.
tolerance::ToleranceSet steppedSet()
{
    tolerance::ToleranceSet set{.name = "stepped", .action = catalogue::ActionKind::Vertical};
    for (const Quantity quantity : {Quantity::LetOff, Quantity::Checking}) {
        auto &entry = set.entries[quantity];
        entry.both = {{.note = Note(1),
                       .low = Length::millimetres(10.0),
                       .target = Length::millimetres(12.0),
                       .high = Length::millimetres(14.0)}};
        entry.expandedUncertainty = Length::millimetres(0.2);
        entry.step = Length::millimetres(0.3);
    }
    return set;
}

/// Seeded; so many digits that reading off adds nothing to the doubt.
std::string readingsText()
{
    std::string text = "note,let_off (mm),checking (mm)\n";
    std::mt19937 random(88);
    const auto typed = [&] {
        return fmt::format("{:.6f}", 9.9 + 0.000001 * static_cast<double>(random() % 4'200'000));
    };
    for (int note = 1; note <= 88; ++note)
        text += fmt::format("{},{},{}\n", note, typed(), typed());
    return text;
}

class ReviewDoubtCommand : public ::testing::Test {
protected:
    ReviewDoubtCommand()
    {
        const logbook::Stamp stamp{readings::parseRfc3339("2026-03-02T09:00:00Z").value(), "Ada"};
        auto book = logbook::Logbook::create(m_book, stamp).value();
        instrument::Instrument upright;
        upright.name = "Upright by the door";
        upright.toleranceId = "stepped";
        upright.toleranceText = exchange::writeToleranceSet(steppedSet());
        m_set = m_folder.write("set.json", upright.toleranceText);
        EXPECT_TRUE(book.addInstrument(upright, stamp).ok());
    }
    void import()
    {
        const auto ran = runCommand({"import", m_book, "--instrument", "1", "--purpose", "recheck", m_readings});
        ASSERT_EQ(ran.status, 0) << ran.err;
    }
    [[nodiscard]] json reviewed() const
    {
        const auto ran = runCommand({"review", m_book, "--json"});
        EXPECT_THAT(support::JsonSchema("review").faultsOf(ran.out), testing::IsEmpty());
        return json::parse(ran.out);
    }
    [[nodiscard]] json checked() const
    {
        return json::parse(runCommand({"check", m_readings, "--tolerances", m_set, "--json"}).out);
    }

    ScratchFolder m_folder;
    std::string m_book = m_folder.file("shop.hammerline");
    std::string m_readings = m_folder.write("readings.csv", readingsText());
    std::string m_set;
};

Pairs pairsIn(const json &list)
{
    Pairs pairs;
    for (const json &item : list)
        pairs.emplace(item["quantity"], item["note"]);
    return pairs;
}

TEST_F(ReviewDoubtCommand, CountsWhatCheckFindsInAndLessProbableThanTwoStandardDeviationsAllow)
{
    import();
    constexpr double twoDeviations = 0.977249868; // of a normal distribution, below its mean and two deviations
    Pairs expected, unevenToo;
    const json found = checked();
    for (const json &reading : found["readings"])
        if (reading["status"] == "in" && reading["conformance_probability"] < twoDeviations) {
            expected.emplace(reading["quantity"], reading["note"]);
            if (reading["uneven"].get<bool>())
                unevenToo.emplace(reading["quantity"], reading["note"]);
        }
    ASSERT_GT(unevenToo.size(), 5u);
    ASSERT_GT(expected.size(), unevenToo.size());
    const json answer = reviewed();
    EXPECT_EQ(pairsIn(answer["in_doubt"]), expected);
    EXPECT_EQ(answer["in_doubt"].size(), expected.size()) << "each once";
    Pairs marked;
    for (const json &item : answer["in_doubt"])
        if (item["uneven"].get<bool>())
            marked.emplace(item["quantity"], item["note"]);
    EXPECT_EQ(marked, unevenToo);
}

TEST_F(ReviewDoubtCommand, AnUnevenPairStaysOneItemOfTheQueue)
{
    import();
    const json answer = reviewed();
    EXPECT_EQ(pairsIn(answer["items"]).size(), answer["items"].size()) << "each once";
    Pairs uneven;
    for (const json &item : answer["items"])
        if (item["kind"] == "uneven")
            uneven.emplace(item["quantity"], item["note"]);
    for (const json &item : answer["in_doubt"])
        EXPECT_EQ(uneven.contains({item["quantity"], item["note"]}), item["uneven"]) << item;
}

TEST_F(ReviewDoubtCommand, TheTextMarksWhatIsUnevenToo)
{
    import();
    const std::string text = runCommand({"review", m_book}).out;
    const auto below = text.substr(text.find("In, but within the gauge's doubt of a limit"));
    std::ptrdiff_t marked = 0, uneven = 0;
    for (const std::string &line : test_support::linesOf(below))
        marked += line.find("; uneven too, ") != std::string::npos ? 1 : 0;
    const json answer = reviewed();
    for (const json &item : answer["in_doubt"])
        uneven += item["uneven"].get<bool>() ? 1 : 0;
    EXPECT_EQ(marked, uneven);
    EXPECT_THAT(below, HasSubstr(" mm from the note below"));
}

} // namespace
} // namespace hammerline
