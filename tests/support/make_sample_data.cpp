// Writes the generated files of sample-data/ again: make_sample_data FOLDER. The tests hold what is there against this.

#include "demo_workshop/sample_files.h"

#include <filesystem>
#include <fstream>
#include <iostream>

namespace {

using hammerline::demo_workshop::SampleFile;

bool writeBelow(const std::filesystem::path &folder, const SampleFile &file)
{
    const std::filesystem::path path = folder / file.name;
    std::filesystem::create_directories(path.parent_path());
    std::ofstream stream(path, std::ios::binary);
    stream << file.text << std::flush;
    return stream.good();
}

} // namespace

int main(int argc, char **argv)
{
    if (argc != 2) {
        std::cerr << "make_sample_data FOLDER\n";
        return 2;
    }
    auto files = hammerline::demo_workshop::readingFiles(hammerline::demo_workshop::makeWorkshop());
    files.push_back(hammerline::demo_workshop::trialFile());
    for (const SampleFile &file : files)
        if (!writeBelow(argv[1], file)) {
            std::cerr << file.name << " could not be written\n";
            return 1;
        }
    return 0;
}
