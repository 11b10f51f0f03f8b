#include "core/logbook/logbook_fixture.h"
#include "logbook/inside/canonical_json.h"
#include "logbook/inside/deed_digest.h"

#include <nlohmann/json.hpp>

namespace hammerline::logbook::inside {
namespace {

std::string canonical(std::string_view text)
{
    std::string json;
    appendCanonical(json, text);
    return json;
}

// RFC 8785, 3.2.2.2 and the example in 3.2.2: what must be escaped and what must not.
TEST(CanonicalJson, TextsAreEscapedAsTheRfcSays)
{
    EXPECT_EQ(canonical("\xE2\x82\xAC$\x0F\x0A"
                        "A'B\"\\\\\"/"),
              "\"\xE2\x82\xAC$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"");
    EXPECT_EQ(canonical("\b\t\f\r\x1f\x7f"), "\"\\b\\t\\f\\r\\u001f\x7f\"");
    EXPECT_EQ(canonical(""), "\"\"");
}

TEST(CanonicalJson, NumbersArePlain)
{
    std::string json;
    appendCanonical(json, std::int64_t{-9'007'199'254'740'991});
    appendCanonical(json, std::int64_t{0});
    EXPECT_EQ(json, "-90071992547409910");
}

TEST(CanonicalJson, RowsHaveSortedMembersWithoutTheAbsentOnes)
{
    Row row{&readingTable(), {std::int64_t{1}, std::int64_t{4}, std::int64_t{-8}, std::int64_t{1}, std::int64_t{2}}};
    row.cells.resize(readingTable().columns().size());
    row.cells[5] = std::int64_t{3'175'000};
    row.cells[6] = std::string("1/8\"");
    std::string json;
    appendCanonical(json, row);
    EXPECT_EQ(json, R"({"note":-8,"pass":1,"quantity":4,"table":"reading","take":1,"typed":"1/8\"","value":3175000,)"
                    R"("version":2})");
}

// nlohmann::json keeps members sorted by bytes and writes no blanks: for our content that is the canonical form.
TEST(CanonicalJson, TheDigestIsOfTheDocumentTheHeaderShows)
{
    Row row{&passToleranceTable(), {std::int64_t{3}, std::int64_t{1}, std::string("shop"), std::string("{}\n")}};
    const Deed deed{.id = 7,
                    .stamp = {moment(0), "Ada \xC3\xA9"},
                    .name = "n",
                    .subject = "s",
                    .reason = "r",
                    .undoes = 2,
                    .instrument = 1,
                    .pass = 3};
    const nlohmann::json document{{"at", 1'770'000'000'000},
                                  {"deed", 7},
                                  {"instrument", 1},
                                  {"name", "n"},
                                  {"pass", 3},
                                  {"person", "Ada \xC3\xA9"},
                                  {"previous", std::string(64, '0')},
                                  {"reason", "r"},
                                  {"subject", "s"},
                                  {"undoes", 2},
                                  {"rows",
                                   {{{"pass", 3},
                                     {"table", "pass_tolerance"},
                                     {"tolerance_id", "shop"},
                                     {"tolerance_text", "{}\n"},
                                     {"version", 1}}}}};
    DeedDigest digest(deed, std::string(digestSize, '\0'));
    digest.add(row);
    Sha256 expected;
    expected.add(document.dump());
    EXPECT_EQ(hexOf(digest.finish().digest), hexOf(expected.finish()));
}

// FIPS 180-4 example: "abc".
TEST(Sha256, AgreesWithTheStandard)
{
    Sha256 digest;
    digest.add("a");
    digest.add("bc");
    EXPECT_EQ(hexOf(digest.finish()), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(hexOf(digest.finish()), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

} // namespace
} // namespace hammerline::logbook::inside
