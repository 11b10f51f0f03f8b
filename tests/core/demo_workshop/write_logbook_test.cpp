#include "demo_workshop/write_logbook.h"

#include "demo_workshop/sample_files.h"
#include "logbook/gauge_studies.h"
#include "logbook/logbook.h"
#include "logbook/verify_history.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace hammerline::demo_workshop {
namespace {

namespace fs = std::filesystem;

class WriteLogbook : public ::testing::Test {
protected:
    WriteLogbook()
    {
        std::string name = (fs::temp_directory_path() / "hammerline-XXXXXX").string();
        m_folder = mkdtemp(name.data());
    }
    ~WriteLogbook() override { fs::remove_all(m_folder); }

    LogbookTarget target(bool overwrite = false) const
    {
        return {.path = (m_folder / "shop.hammerline").string(),
                .overwrite = overwrite,
                .scratchPath = (m_folder / "scratch").string()};
    }
    std::ptrdiff_t filesThere() const
    {
        return std::distance(fs::directory_iterator(m_folder), fs::directory_iterator());
    }

    fs::path m_folder;
};

TEST_F(WriteLogbook, HoldsEveryInstrumentPassAndReading)
{
    const Workshop workshop = makeWorkshop();
    ASSERT_TRUE(writeLogbook(workshop, target()));
    const auto book = logbook::Logbook::open(target().path, logbook::Access::ReadOnly);
    const auto instruments = book.instruments();
    ASSERT_EQ(instruments.size(), workshop.instruments.size());
    for (std::size_t i = 0; i < instruments.size(); ++i) {
        const MadeInstrument &made = workshop.instruments[i];
        EXPECT_EQ(instruments[i].name, made.instrument.name);
        EXPECT_EQ(instruments[i].state, made.instrument.state);
        EXPECT_EQ(instruments[i].toleranceText, made.instrument.toleranceText);
        const auto passes = book.passes(instruments[i].id);
        ASSERT_EQ(passes.size(), made.passes.size());
        for (std::size_t k = 0; k < passes.size(); ++k)
            EXPECT_EQ(book.readings(passes[k].id), readingsNow(made.passes[k]));
    }
}

TEST_F(WriteLogbook, HoldsAFinishedStudyOfTheTrialsThatAreASampleFile)
{
    ASSERT_TRUE(writeLogbook(makeWorkshop(), target()));
    auto book = logbook::Logbook::open(target().path);
    const logbook::GaugeStudies studies(book);
    ASSERT_EQ(studies.all().size(), 1u);
    const auto kept = analysis::gaugeStudy(logbook::trialsOf(studies.trials(1)));
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept.value().expandedUncertainty, analysis::gaugeStudy(trials()).value().expandedUncertainty);
    EXPECT_TRUE(logbook::verifyHistory(target().path).whole());
}

TEST_F(WriteLogbook, LeavesOneFileAndNothingBeside)
{
    ASSERT_TRUE(writeLogbook(makeWorkshop(), target()));
    EXPECT_EQ(filesThere(), 1);
}

TEST_F(WriteLogbook, RefusesAFileThatIsThereAndLeavesItAlone)
{
    std::ofstream(target().path) << "mine";
    const auto refused = writeLogbook(makeWorkshop(), target());
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.fault().file, target().path);
    EXPECT_EQ(fs::file_size(target().path), 4u);
    EXPECT_EQ(filesThere(), 1);
}

TEST_F(WriteLogbook, OverwritesWhereToldAndTakesNoOldLogOver)
{
    std::ofstream(target().path) << "mine";
    std::ofstream(target().path + "-wal") << "an old log";
    ASSERT_TRUE(writeLogbook(makeWorkshop(), target(true)));
    EXPECT_EQ(filesThere(), 1);
    EXPECT_FALSE(logbook::Logbook::open(target().path, logbook::Access::ReadOnly).instruments().empty());
}

TEST_F(WriteLogbook, RefusesAFolder)
{
    fs::create_directory(target().path);
    EXPECT_FALSE(writeLogbook(makeWorkshop(), target(true)));
}

TEST_F(WriteLogbook, AFolderThatIsNotThereIsABrokenWorldOrARefusal)
{
    LogbookTarget nowhere = target();
    nowhere.path = (m_folder / "no" / "shop.hammerline").string();
    nowhere.scratchPath = nowhere.path + ".scratch";
    bool refused = false;
    try {
        refused = !writeLogbook(makeWorkshop(), nowhere);
    } catch (const outcome::BrokenWorld &) {
        refused = true;
    }
    EXPECT_TRUE(refused);
}

} // namespace
} // namespace hammerline::demo_workshop
