// Every deliberately broken file is refused with status 2, one line a fault, and nothing on standard output.

#include "support/command_run.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <ostream>
#include <set>

namespace hammerline {
namespace {

using test_support::linesOf;
using test_support::runCommand;
using test_support::sampleData;

struct Expected {
    std::string name;       ///< broken-<name>
    std::vector<int> lines; ///< of the file, in the order of the messages; empty: one message that names no line
    std::string says;       ///< part of the first message
};

void PrintTo(const Expected &expected, std::ostream *stream)
{
    *stream << expected.name;
}

const std::vector<Expected> brokenReadings{
    {"column-twice.csv", {1}, "column 'let_off' stands twice"},
    {"digit-grouping.csv", {2}, "let_off '1.003,1'"},
    {"doubtful-mil.csv", {2}, "doubtful with mil"},
    {"empty-file.csv", {1}, "the file is empty"},
    {"exponent.csv", {2}, "let_off '3e0'"},
    {"fraction-over-zero.csv", {2}, "divides by 0"},
    {"header-only.csv", {1}, "no reading"},
    {"mass-for-a-length.csv", {2}, "g is no unit of this quantity"},
    {"mass-unit-on-length.csv", {1}, "let_off is a length"},
    {"negative-length.csv", {2}, "no sign may stand here"},
    {"no-note-column.csv", {1}, "no column 'note'"},
    {"no-readings.csv", {1}, "no reading"},
    {"not-a-length.csv", {3}, "let_off 'about 3'"},
    {"not-utf-8.csv", {3}, "not UTF-8"},
    {"note-outside.csv", {3}, "note 89 (C#8) is not on the instrument"},
    {"note-twice.csv", {4}, "note C#4 stands here again, after line 2"},
    {"over-a-metre.csv", {2}, "more than 1 m"},
    {"quantity-of-the-other-action.csv", {1}, "a vertical action has no drop"},
    {"quote-not-closed.csv", {3}, "never closed"},
    {"row-too-long.csv", {2}, "4 fields where the header has 3"},
    {"take-no-number.csv", {2}, "take 'first' is no number"},
    {"take-twice.csv", {4}, "let_off of note A0, take 2 stands here again, after line 3"},
    {"take-zero.csv", {2}, "take '0'"},
    {"text-after-quote.csv", {2}, "text follows a closing quotation mark"},
    {"three-faults.csv", {4, 5, 8}, "'X1' is no note"},
    {"unknown-column-unit.csv", {1}, "'cm' is no unit"},
    {"unknown-note.csv", {3}, "'H4' is no note"},
    {"unknown-quantity.csv", {1}, "'let_of'"},
    {"unknown-row-quantity.csv", {2}, "'escape' is no quantity"},
    {"unknown-row-unit.csv", {2}, "'furlong' is no unit"},
    {"value-without-note.csv", {2}, "'' is no note"},
};

const std::vector<Expected> brokenDocuments{
    {"set-coverage-factor-zero.json", {}, "quantities.let_off: the coverage factor"},
    {"set-limits-cross.json", {}, "quantities.let_off, note 1: the low limit lies above the target"},
    {"set-low-at-some-points.json", {}, "low limit stands at some points only"},
    {"set-mass-for-a-length.json", {}, "quantities.let_off.points[0].target_mm"},
    {"set-negative-step.json", {}, "quantities.let_off: the step is negative"},
    {"set-negative-uncertainty.json", {}, "quantities.let_off: the expanded uncertainty is negative"},
    {"set-newer-version.json", {}, "version: is 2"},
    {"set-no-points.json", {}, "quantities.let_off.points"},
    {"set-not-json.json", {2}, "not valid JSON"},
    {"set-note-by-name.json", {}, "quantities.let_off.points[0].note"},
    {"set-note-twice.json", {}, "note 1: the note has two points"},
    {"set-other-format.json", {}, "format: is \"hammerline-action-setup\""},
    {"set-points-and-colours.json", {}, "quantities.dip.points"},
    {"set-quantity-of-the-other-action.json", {}, "quantities.drop: a vertical action has no such quantity"},
    {"set-unknown-action.json", {}, "action: is \"square\""},
    {"set-unknown-key.json", {}, "quantities.let_off.colour"},
    {"set-unknown-quantity.json", {}, "quantities.escape"},
    {"set-unknown-rule.json", {}, "quantities.let_off.rule"},
    {"set-without-action.json", {}, "action: is missing"},
    {"set-without-target.json", {}, "quantities.let_off.points[0].target_mm: is missing"},
    {"setup-aftertouch-adjustable.json", {}, "adjustments.aftertouch"},
    {"setup-blow-rail-on-a-grand.json", {}, "rails.rest_rail: a grand"},
    {"setup-blow-screw-on-a-vertical.json", {}, "adjustments.blow: a vertical"},
    {"setup-lever-ratio-zero.json", {}, "lever_ratio"},
    {"setup-linear-rail-of-one-note.json", {}, "rails.rest_rail.notes"},
    {"setup-newer-version.json", {}, "version: is 2"},
    {"setup-rail-of-a-quantity-without-rails.json", {}, "rails.dip_rail.quantity"},
    {"setup-step-zero.json", {}, "adjustments.let_off.step_mm"},
    {"setup-unknown-key.json", {}, "adjustments.let_off.turns"},
};

std::string pathOf(const Expected &expected)
{
    return sampleData("broken/broken-" + expected.name);
}

class BrokenReadings : public ::testing::TestWithParam<Expected> {};

TEST_P(BrokenReadings, AreRefusedWithALineForEachFault)
{
    const Expected &expected = GetParam();
    const auto ran = runCommand({"check", pathOf(expected), "--tolerances", "full-upright"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    const auto lines = linesOf(ran.err);
    ASSERT_EQ(lines.size(), expected.lines.size()) << ran.err;
    for (std::size_t i = 0; i < lines.size(); ++i)
        EXPECT_TRUE(lines[i].starts_with(pathOf(expected) + ":" + std::to_string(expected.lines[i]) + ": "))
            << lines[i];
    EXPECT_NE(lines.front().find(expected.says), std::string::npos) << lines.front();
}

INSTANTIATE_TEST_SUITE_P(Files, BrokenReadings, ::testing::ValuesIn(brokenReadings));

class BrokenDocuments : public ::testing::TestWithParam<Expected> {};

TEST_P(BrokenDocuments, AreRefusedWithTheFilesNameAndThePlace)
{
    const Expected &expected = GetParam();
    const std::string command = expected.name.starts_with("setup-") ? "setups" : "tolerances";
    const auto ran = runCommand({command, pathOf(expected)});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    const std::string line = expected.lines.empty() ? "" : std::to_string(expected.lines.front()) + ":";
    EXPECT_TRUE(ran.err.starts_with(pathOf(expected) + ":" + line + " ")) << ran.err;
    EXPECT_NE(linesOf(ran.err).front().find(expected.says), std::string::npos) << ran.err;
}

TEST_P(BrokenDocuments, AreNoSetToCheckBy)
{
    const auto ran = runCommand(
        {"check", sampleData("readings/ondelmark-108-as-left.csv"), "--tolerances", pathOf(GetParam()), "--json"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
}

INSTANTIATE_TEST_SUITE_P(Files, BrokenDocuments, ::testing::ValuesIn(brokenDocuments));

TEST(BrokenFiles, EachHasItsExpectation)
{
    std::set<std::string> expected;
    for (const auto *list : {&brokenReadings, &brokenDocuments})
        for (const Expected &one : *list)
            expected.insert("broken-" + one.name);
    std::set<std::string> there;
    for (const auto &entry : std::filesystem::directory_iterator(sampleData("broken")))
        there.insert(entry.path().filename().string());
    EXPECT_EQ(there, expected);
}

} // namespace
} // namespace hammerline
