// Which of the words that people write reach a buyer: what is meant for the record stands on its pages, and nothing
// stands in the files inside that the pages keep back.

#include "full_record.h"
#include "record_file.h"

#include <gtest/gtest.h>

namespace hammerline::record_pdf {
namespace {

using decisions::StandingChange;

/// Words that stay in the workshop, each with its own mark.
const std::vector<const char *> kept{"KEPTINSTRUMENT", "KEPTSENTBACK", "KEPTSIGNATURE", "KEPTOWNER", "KEPTSALE"};

/// Words that the record prints.
const std::vector<const char *> told{"TOLDCONCESSION", "TOLDREOPENED", "TOLDPASS",
                                     "TOLDREADING",    "TOLDWORK",     "TOLDAGAIN"};

sale_record::RecordInput inputWithWords()
{
    auto input = fullInput();
    auto &[pass, readings] = input.passes.back();
    const auto day = input.issued;
    input.instrument.remark = "KEPTINSTRUMENT";
    input.instrument.owner = "KEPTOWNER";
    input.dossier.sale.remark = "KEPTSALE";
    input.dossier.work.front().remark = "TOLDWORK";
    input.concessions.front().reason = "TOLDCONCESSION";
    pass.remark = "TOLDPASS";
    readings.front().remark = "TOLDREADING";
    const readings::Reading &read = readings.front();
    input.decided[pass.id].sentBack = {
        {read.place.quantity, read.place.note, decisions::Kind::Out, read.value, "KEPTSENTBACK", "Lead One", day}};
    input.decided[pass.id].standing = {{StandingChange::Change::Signed, 1, "Lead One", day, "KEPTSIGNATURE"},
                                       {StandingChange::Change::Reopened, 2, "Lead One", day, "TOLDREOPENED"},
                                       {StandingChange::Change::Signed, 2, "Lead One", day, "KEPTSIGNATURE"}};
    sale_record::SpotCheckPass again{.pass = pass, .readings = {read}, .check = {.checked = pass.id, .seed = 11}};
    again.pass.remark = "TOLDAGAIN";
    again.check.notes = {read.place.note};
    again.check.quantities = {read.place.quantity};
    input.spotChecks = {again};
    return input;
}

class KeptBack : public RecordFile {
protected:
    /// Everything that the file holds in words.
    [[nodiscard]] QString files() const
    {
        std::string all;
        for (const char *name : {"record.json", "readings.csv", "readings-as-found.csv"})
            all += fileInside(name);
        return QString::fromStdString(all);
    }
};

TEST_F(KeptBack, WordsForTheWorkshopReachNeitherThePagesNorTheFilesInside)
{
    makeOf(sale_record::assemble(inputWithWords()).value(), {});
    for (const char *words : kept) {
        EXPECT_FALSE(text().contains(words)) << words;
        EXPECT_FALSE(files().contains(words)) << words;
    }
}

TEST_F(KeptBack, WordsForTheBuyerStandOnThePagesAndInTheFilesInside)
{
    makeOf(sale_record::assemble(inputWithWords()).value(), {});
    for (const char *words : told) {
        EXPECT_TRUE(text().contains(words)) << words;
        EXPECT_TRUE(files().contains(words)) << words;
    }
}

TEST_F(KeptBack, ARecheckTellsWhatWasRemarkedOnTheDayItIsHeldAgainst)
{
    auto input = inputWithWords();
    auto recheck = input.passes.back();
    recheck.first.id += 365;
    recheck.first.purpose = readings::Purpose::Recheck;
    recheck.first.began += std::chrono::days(365);
    recheck.first.remark.clear();
    recheck.second.front().remark.clear();
    input.passes.push_back(recheck);
    makeOf(sale_record::assemble(input).value(), {});
    EXPECT_TRUE(text().simplified().contains("Remark on the readings of 3 March 2026: TOLDPASS"));
}

} // namespace
} // namespace hammerline::record_pdf
