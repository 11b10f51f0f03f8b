// What lies in sample-data/ is what the generator makes.

#include "demo_workshop/sample_files.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

namespace hammerline::demo_workshop {
namespace {

const std::filesystem::path sampleFolder = std::filesystem::path(HAMMERLINE_SOURCE_DIR) / "sample-data";

std::string textOf(const std::filesystem::path &path)
{
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

TEST(SampleData, ReadingFilesOnDiskAreTheGenerated)
{
    std::set<std::string> names;
    for (const SampleFile &file : readingFiles(makeWorkshop())) {
        EXPECT_TRUE(names.insert(file.name).second) << file.name << " is made twice";
        EXPECT_EQ(textOf(sampleFolder / file.name), file.text) << file.name << ": run make_sample_data";
    }
    std::size_t onDisk = 0;
    for ([[maybe_unused]] const auto &entry : std::filesystem::directory_iterator(sampleFolder / "readings"))
        ++onDisk;
    EXPECT_EQ(onDisk, names.size());
}

TEST(SampleData, TrialFileOnDiskIsTheGenerated)
{
    const SampleFile file = trialFile();
    EXPECT_EQ(textOf(sampleFolder / file.name), file.text) << "run make_sample_data";
}

TEST(SampleData, BothFormsAndBothUnitsAreThere)
{
    bool wide = false;
    bool longForm = false;
    bool inch = false;
    for (const SampleFile &file : readingFiles(makeWorkshop())) {
        const std::string head = file.text.substr(0, file.text.find('\n'));
        (head.starts_with("note,quantity,value") ? longForm : wide) = true;
        inch = inch || file.text.find("(in)") != std::string::npos;
    }
    EXPECT_TRUE(wide && longForm && inch);
}

} // namespace
} // namespace hammerline::demo_workshop
