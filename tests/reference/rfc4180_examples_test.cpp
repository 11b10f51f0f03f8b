// RFC 4180, section 2, rules 1 to 7, on examples (data/rfc4180_csv.json names the rule of each).
#include "exchange/exchange.h"
#include "exchange/inside/csv_rows.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace hammerline::reference {
namespace {

TEST(Rfc4180, everyExampleIsReadIntoItsRows)
{
    const auto data = nlohmann::json::parse(
        exchange::readFile(HAMMERLINE_SOURCE_DIR "/tests/reference/data/rfc4180_csv.json").value());
    for (const auto &example : data["cases"]) {
        const std::string text = example["text"].get<std::string>();
        exchange::CsvRows rows(text);
        exchange::CsvRow row;
        nlohmann::json found = nlohmann::json::array();
        while (rows.next(row)) {
            EXPECT_TRUE(row.broken.empty()) << example["rule"];
            found.push_back(std::vector<std::string>(row.fields.begin(), row.fields.end()));
        }
        EXPECT_EQ(found, example["rows"]) << example["rule"];
    }
    EXPECT_EQ(data["cases"].size(), 8u);
}

} // namespace
} // namespace hammerline::reference
