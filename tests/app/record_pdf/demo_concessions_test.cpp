// What the lead of the invented workshop accepted in an earlier pass is told on the record of a later one: on the
// pages, in the data, in either language.

#include "demo_record.h"

#include "record_pdf/record_language.h"
#include "support/json_schema.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>

namespace hammerline::record_pdf {
namespace {

using sale_record::EarlierConcession;
using sale_record::Fate;

class DemoConcessions : public DemoRecord {
protected:
    static std::vector<EarlierConcession> withFate(const sale_record::SaleRecord &record, Fate fate)
    {
        std::vector<EarlierConcession> found;
        std::ranges::copy_if(record.earlierConcessions, std::back_inserter(found),
                             [fate](const EarlierConcession &one) { return one.fate == fate; });
        return found;
    }
};

TEST_F(DemoConcessions, OfAnEarlierPassThatStillStandAreToldWithPassDayPersonAndReason)
{
    const auto record = recordOf("Ondelmark 108");
    const auto standing = withFate(record, Fate::Stands);
    ASSERT_GT(standing.size(), 20u);
    EXPECT_TRUE(record.concessions.empty()) << "nobody has looked at the recheck yet";
    makeOf(record, {});
    const QString all = text().simplified();
    for (const char *said :
         {"Accepted in an earlier pass and not mended since", "As left, 18 September 2023", "20 September 2023",
          "Dora Specimen", "Within its limits, and the hand", "in an earlier pass."})
        EXPECT_TRUE(all.contains(QString::fromUtf8(said))) << said;
}

TEST_F(DemoConcessions, AnExceptionIsMarkedAsAcceptedWhereItsValueIsTheOneThatWas)
{
    const auto anew = recordOf("Ondelmark 108"); // the recheck read each of them anew, at another value
    auto same = anew;
    int marked = 0;
    for (EarlierConcession &one : same.earlierConcessions) {
        const auto isIt = [&](const tolerance::Verdict &verdict) {
            return verdict.value && verdict.quantity == one.made.quantity && verdict.note == one.made.note;
        };
        const auto exception = std::ranges::find_if(same.exceptions, isIt);
        if (one.fate != Fate::Stands || exception == same.exceptions.end() || marked == 3)
            continue;
        one.made.value = one.valueNow = exception->value;
        ++marked;
    }
    ASSERT_EQ(marked, 3);
    LanguageOfRecord german(Language::German);
    RecordPdfOptions inGerman;
    german.speakIn(inGerman);
    const auto count = [&](const sale_record::SaleRecord &record, const RecordPdfOptions &options, const char *word) {
        makeOf(record, options);
        return text().count(QLatin1String(word));
    };
    EXPECT_EQ(count(same, {}, "accepted") - count(anew, {}, "accepted"), 3);
    EXPECT_EQ(count(same, inGerman, "angenommen") - count(anew, inGerman, "angenommen"), 3);
}

TEST_F(DemoConcessions, EachOneOfTheInstrumentIsEitherStandingOrSettled)
{
    const auto record = recordOf("Quillerby 131");
    ASSERT_FALSE(record.concessions.empty());
    const auto mended = withFate(record, Fate::Mended);
    const auto again = withFate(record, Fate::AcceptedAgain);
    EXPECT_FALSE(mended.empty());
    EXPECT_FALSE(again.empty());
    EXPECT_EQ(mended.size() + again.size() + withFate(record, Fate::Stands).size(), record.earlierConcessions.size());
    for (const EarlierConcession &one : mended) {
        const auto *verdict = record.asLeft.judgement.find(one.made.quantity, one.made.note);
        ASSERT_NE(verdict, nullptr);
        EXPECT_EQ(verdict->status, tolerance::Status::In);
        EXPECT_FALSE(verdict->uneven);
    }
    makeOf(record, {});
    const QString all = text().simplified();
    for (const char *said : {"Accepted in an earlier pass and settled since", "mended since", "accepted again in a"})
        EXPECT_TRUE(all.contains(QString::fromUtf8(said))) << said;
}

TEST_F(DemoConcessions, StandInTheDataByTheSchema)
{
    for (const char *name : {"Ondelmark 108", "Quillerby 131"}) {
        const auto record = recordOf(name);
        makeOf(record, {});
        const std::string json = fileInside(QStringLiteral("record.json"));
        EXPECT_THAT(support::JsonSchema("record").faultsOf(json), testing::IsEmpty());
        const auto listed = nlohmann::json::parse(json)["earlier_concessions"];
        ASSERT_EQ(listed.size(), record.earlierConcessions.size());
        for (const auto &one : listed)
            EXPECT_TRUE(one.contains("reason") && one.contains("fate") && one.contains("pass_began"));
    }
}

TEST_F(DemoConcessions, AreToldInGerman)
{
    LanguageOfRecord german(Language::German);
    RecordPdfOptions options;
    german.speakIn(options);
    makeOf(recordOf("Ondelmark 108"), options);
    const QString all = text().simplified();
    for (const char *said :
         {"In einem früheren Durchgang angenommen und seither nicht behoben", "Abgegeben, 18. September 2023"})
        EXPECT_TRUE(all.contains(QString::fromUtf8(said))) << said;
}

} // namespace
} // namespace hammerline::record_pdf
