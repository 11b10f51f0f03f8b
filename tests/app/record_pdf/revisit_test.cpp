// The record of a revisit: what moved since the instrument was left.

#include "full_record.h"
#include "record_file.h"

#include "record_pdf/record_language.h"
#include "support/json_schema.h"

#include <gmock/gmock.h>

namespace hammerline::record_pdf {
namespace {

/// A year after the instrument was left: another climate, and every let-off of the treble half a millimetre larger.
sale_record::RecordInput revisited()
{
    auto input = fullInput();
    auto recheck = input.passes.back();
    recheck.first.id += 365;
    recheck.first.purpose = readings::Purpose::Recheck;
    recheck.first.began += std::chrono::days(365);
    recheck.first.climate = {23.0, 31.0};
    for (readings::Reading &reading : recheck.second)
        if (reading.place.quantity == catalogue::Quantity::LetOff && reading.place.note >= keyboard::Note(53))
            reading.value = reading.value + units::Amount(units::Length::millimetres(0.5));
    input.passes.push_back(recheck);
    input.issued += std::chrono::days(365);
    return input;
}

class Revisit : public RecordFile {
protected:
    void makeRevisited(const RecordPdfOptions &options = {})
    {
        makeOf(sale_record::assemble(revisited()).value(), options);
    }
};

TEST_F(Revisit, TellsWhatMovedBesideTheClimateOfBothDays)
{
    makeRevisited();
    const QString all = text().simplified();
    for (const char *said :
         {"What moved since it was left", "3 March 2026: 20.5 °C, 48 % relative humidity.",
          "3 March 2027: 23.0 °C, 31 % relative humidity.", "has become larger", "no change told apart"})
        EXPECT_TRUE(all.contains(QString::fromUtf8(said))) << said;
    EXPECT_EQ(all.count(QStringLiteral("has become larger")), 2) << "the let-off as a whole and its treble";
}

TEST_F(Revisit, SaysNothingOfDriftWhereNothingWasRechecked)
{
    makeOf(sale_record::assemble(fullInput()).value(), {});
    EXPECT_FALSE(text().contains(QStringLiteral("What moved since")));
    EXPECT_EQ(fileInside(QStringLiteral("record.json")).find("\"since\""), std::string::npos);
}

TEST_F(Revisit, CarriesItsFiguresInTheDataByTheSchema)
{
    makeRevisited();
    const std::string json = fileInside(QStringLiteral("record.json"));
    EXPECT_THAT(support::JsonSchema("record").faultsOf(json), testing::IsEmpty());
    for (const char *key : {"\"since\"", "\"told_apart_mm\"", "\"way\": \"larger\"", "\"pairs_in_doubt\""})
        EXPECT_NE(json.find(key), std::string::npos) << key;
}

TEST_F(Revisit, IsToldInGermanToo)
{
    LanguageOfRecord german(Language::German);
    RecordPdfOptions options;
    german.speakIn(options);
    makeRevisited(options);
    const QString all = text().simplified();
    EXPECT_TRUE(all.contains(QStringLiteral("ist gr\u00f6\u00dfer geworden")));
    for (const char *english : {"larger", "gauges", "moved", "told apart", "doubt", "both days"})
        EXPECT_FALSE(all.contains(QLatin1String(english))) << english;
}

} // namespace
} // namespace hammerline::record_pdf
