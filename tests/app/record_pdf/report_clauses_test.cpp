// What a calibration report must hold, clause by clause: ISO/IEC 17025:2017, 7.8. The clauses are cited by number and
// in our own words. The pages are read as another program finds them.

#include "full_record.h"
#include "record_file.h"

#include "support/json_schema.h"

#include <QRegularExpression>

#include <gmock/gmock.h>

#include <algorithm>

namespace hammerline::record_pdf {
namespace {

struct Clause {
    const char *number;
    const char *asks;
    std::vector<const char *> said; ///< every one of these stands on the pages
};

const std::vector<Clause> clauses{
    {"7.8.2.1 a", "a title", {"Regulation record"}},
    {"7.8.2.1 b",
     "who issues it, and where that is",
     {"by Invented Workshop with Hammerline", "Workshop: Invented Lane 1"}},
    {"7.8.2.1 c", "where it was measured", {"It was measured there, unless a remark"}},
    {"7.8.2.1 d", "that every page is known as a part, and the end is", {"page 1 of", "number 20260304-"}},
    {"7.8.2.1 e", "for whom, where that is asked for", {"Owner: Invented Hall"}},
    {"7.8.2.1 f", "the method", {"How it was measured", "how it is measured", "dip measured at"}},
    {"7.8.2.1 g", "the item and its state", {"Schoolhouse upright", "31 207", "Hammers grooved"}},
    {"7.8.2.1 h", "when it came", {"As found, 12 February 2026"}},
    {"7.8.2.1 i", "the days of the work", {"2026-02-12 09:00 UTC", "2026-03-03 09:00 UTC"}},
    {"7.8.2.1 j", "the day of issue", {"Issued 4 March 2026"}},
    {"7.8.2.1 k", "how a sample was drawn", {"Lead One read 3 notes again", "drawn at random (seed 11)", "C4, E4"}},
    {"7.8.2.1 l", "that it speaks of what was measured alone", {"of no other day", "speaks of the day"}},
    {"7.8.2.1 m", "results with their units", {"Let-off (mm)", "Every reading"}},
    {"7.8.2.1 n", "departures and exclusions", {"acrylic laid over", "What was not measured", "Accepted as they are"}},
    {"7.8.2.1 o", "who authorises it", {"Signed by Lead One on 4 March 2026"}},
    {"7.8.2.1 p", "whose work is another's", {"by whom, time", "Technician One", "measured by"}},
    {"7.8.2.2", "what was told by others", {"or told by its owner"}},
    {"7.8.4.1 a", "uncertainty, in the unit of the reading", {"its expanded uncertainty", "0.100 mm"}},
    {"7.8.4.1 b", "conditions that sway the results", {"20.5 °C, 48 % relative humidity"}},
    {"7.8.4.1 c", "with what it was measured", {"Depth gauge, dial", "resolution of the gauge"}},
    {"7.8.4.1 d", "results before and after adjustment", {"as found", "as left", "What changed"}},
    {"7.8.4.1 c", "what is known of the gauge's calibration", {"it claims no calibration of theirs"}},
    {"7.8.6.1", "the decision rule and its risk", {"Decision rule", "share that risk"}},
    {"7.8.6.2", "which results, against what, by which rule", {"Tolerance set:", "out of limits"}},
    {"7.8.8.2", "which report an amended one replaces", {"It takes the place of revision 1", "dddd dddd"}},
    {"7.8.8.1", "why it was changed", {"let-off read again"}},
    {"7.8.7 / JCGM 106", "in, but within the doubt of the measuring", {"than the doubt of the measuring"}}};

/// Everything asked for that else stays out.
sale_record::SaleRecord wholeRecord()
{
    auto input = fullInput();
    input.tellSale = true;
    input.workshop = "Invented Lane 1, Sampleton";
    input.instrument.owner = "Invented Hall";
    const auto &[pass, readings] = input.passes.back();
    sale_record::SpotCheckPass again{.pass = pass, .readings = {}, .check = {.checked = pass.id, .seed = 11}};
    again.pass.person = "Lead One";
    again.check.notes = {keyboard::Note(40), keyboard::Note(44), keyboard::Note(60)};
    again.check.quantities = {catalogue::Quantity::LetOff, catalogue::Quantity::Blow};
    std::ranges::copy_if(readings, std::back_inserter(again.readings), [&](const readings::Reading &reading) {
        return std::ranges::count(again.check.notes, reading.place.note) > 0;
    });
    input.spotChecks = {again};
    return sale_record::assemble(input).value();
}

class ReportClauses : public RecordFile {};

TEST_F(ReportClauses, EachIsAnsweredOnThePages)
{
    makeOf(wholeRecord(), {});
    const QString all = text().simplified();
    for (const Clause &clause : clauses)
        for (const char *said : clause.said)
            EXPECT_TRUE(all.contains(QString::fromUtf8(said), Qt::CaseInsensitive))
                << clause.number << ", " << clause.asks << ": " << said;
}

TEST_F(ReportClauses, WhatASecondPersonReadStandsInTheDataByTheSchema)
{
    makeOf(wholeRecord(), {});
    const std::string json = fileInside(QStringLiteral("record.json"));
    EXPECT_THAT(support::JsonSchema("record").faultsOf(json), testing::IsEmpty());
    for (const char *key : {"\"spot_checks\"", "\"most_out\"", "\"workshop\": \"Invented Lane 1", "\"owner\""})
        EXPECT_NE(json.find(key), std::string::npos) << key;
}

/// 7.8.2.1 d: no page can be taken away unseen, nor one of another record put in.
TEST_F(ReportClauses, EveryPageSaysWhichOfHowManyItIsAndOfWhichRecord)
{
    auto input = fullInput();
    input.instrument.uid = "b53b7f5fac602f897a87d95ff0086120";
    makeOf(sale_record::assemble(input).value(), {});
    const QString number = QStringLiteral("number b53b7f5f-20260304-");
    const QStringList pages = text().split(QLatin1Char('\f'), Qt::SkipEmptyParts);
    ASSERT_GT(pages.size(), 5);
    for (int page = 1; page <= pages.size(); ++page)
        EXPECT_TRUE(pages[page - 1].contains(QStringLiteral("page %1 of %2").arg(page).arg(pages.size())) &&
                    pages[page - 1].contains(number))
            << page;
}

/// 7.8.2.1 d and g: a page on its own says of which instrument it is.
TEST_F(ReportClauses, EveryPageNamesTheInstrument)
{
    makeOf(sale_record::assemble(fullInput()).value(), {});
    for (const QString &page : text().split(QLatin1Char('\f'), Qt::SkipEmptyParts))
        EXPECT_TRUE(page.contains(QStringLiteral("Schoolhouse upright"))) << page.left(200).toStdString();
}

} // namespace
} // namespace hammerline::record_pdf
