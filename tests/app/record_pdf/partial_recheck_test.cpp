// A record issued again after a recheck of a few notes: found and left stay, the recheck is told beside them. And what
// page one counts by the rule used.

#include "full_record.h"
#include "record_file.h"

#include "exchange/record_check.h"
#include "record_pdf/record_language.h"
#include "support/json_schema.h"

#include <QCoreApplication>

#include <gmock/gmock.h>

namespace hammerline::record_pdf {
namespace {

/// Six let-offs of the tenor read again a year later, one of them 2 mm larger.
sale_record::SaleRecord recheckedInPart()
{
    auto input = fullInput();
    auto [pass, readings] = input.passes.back();
    pass.id += 365;
    pass.purpose = readings::Purpose::Recheck;
    pass.began += std::chrono::days(365);
    std::erase_if(readings, [](const readings::Reading &reading) {
        return reading.place.quantity != catalogue::Quantity::LetOff || reading.place.note < keyboard::Note(41) ||
               reading.place.note > keyboard::Note(46);
    });
    readings.front().value = readings.front().value + units::Amount(units::Length::millimetres(2));
    input.passes.emplace_back(pass, readings);
    return sale_record::assemble(input).value();
}

class RecheckInPart : public RecordFile {};

TEST_F(RecheckInPart, KeepsWhatWasFoundAndLeftAndTellsWhatWasReadAgain)
{
    const auto record = recheckedInPart();
    ASSERT_TRUE(record.recheck);
    const auto read = record.recheck->readings.size();
    makeOf(record, {});
    const QString all = text().simplified();
    const QString sentence =
        QStringLiteral("Read again on 3 March 2027: %1 of the measures. Of these %2 are where they "
                       "should be.")
            .arg(read)
            .arg(read - 1);
    EXPECT_EQ(all.count(sentence), 2) << "on page one and beside what moved";
    for (const char *said : {"As found, 12 February 2026", "As left, 3 March 2026", "What moved since it was left"})
        EXPECT_TRUE(all.contains(said)) << said;
    const QString page = text().section(QLatin1Char('\f'), 0, 0);
    EXPECT_TRUE(page.contains(QStringLiteral("%1 of %2").arg(sale_record::pairsInOf(record.asLeft)).arg(704)))
        << page.toStdString();
}

TEST_F(RecheckInPart, CarriesAllThreePassesInsideAndTheyFollowFromTheirReadings)
{
    makeOf(recheckedInPart(), {});
    const std::string json = fileInside(QStringLiteral("record.json"));
    EXPECT_THAT(support::JsonSchema("record").faultsOf(json), testing::IsEmpty());
    const std::string left = fileInside(QStringLiteral("readings.csv"));
    const std::string found = fileInside(QStringLiteral("readings-as-found.csv"));
    const std::string again = fileInside(QStringLiteral("readings-recheck.csv"));
    const auto check =
        exchange::checkRecord({.recordJson = json, .readingsCsv = left, .asFoundCsv = found, .recheckCsv = again});
    ASSERT_TRUE(check.ok());
    EXPECT_THAT(check.value().disagreements, testing::IsEmpty());
    const auto swapped =
        exchange::checkRecord({.recordJson = json, .readingsCsv = left, .asFoundCsv = found, .recheckCsv = left});
    EXPECT_THAT(swapped.value().disagreements, testing::SizeIs(1)) << "the recheck's readings are held against it";
}

TEST_F(RecheckInPart, IsToldInGermanToo)
{
    LanguageOfRecord german(Language::German);
    RecordPdfOptions options;
    german.speakIn(options);
    makeOf(recheckedInPart(), options);
    QCoreApplication::removeTranslator(options.words);
    EXPECT_TRUE(text().simplified().contains("Nachgemessen am 3. März 2027: "));
}

/// By a guarded rule a value near its limit is not in: the count on page one must not call it so.
TEST_F(RecheckInPart, PageOneCountsByTheRuleThatTheSetUses)
{
    const auto record = support::sampleRecord({.guarded = true, .spreadAsLeft = 0.6});
    const int inside = record.pairsInside();
    const int in = sale_record::pairsInOf(record.asLeft);
    ASSERT_LT(in, inside);
    makeOf(record, {});
    const QString page = text().section(QLatin1Char('\f'), 0, 0).simplified();
    EXPECT_TRUE(page.contains(QStringLiteral("%1 of %2").arg(in).arg(record.judgedPairs()))) << page.toStdString();
    EXPECT_TRUE(page.contains(
        QStringLiteral("Inside, but too close to a limit to be called in by the rule used: %1.").arg(inside - in)))
        << page.toStdString();
}

} // namespace
} // namespace hammerline::record_pdf
