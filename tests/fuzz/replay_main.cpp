// Drives a fuzz target without a fuzzer: every seed file, then seeded mutations of them. A broken property aborts.
// usage: fuzz_NAME FOLDER [PART PARTS]   where the inputs are shared out among several runs, PART counts from 0
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size);

namespace {

constexpr std::size_t mutations = 2400; ///< in all, evenly over the seeds

void run(const std::string &input)
{
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t *>(input.data()), input.size());
}

std::string contentOf(const std::filesystem::path &file)
{
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

std::string mutated(std::string text, std::mt19937 &dice)
{
    const auto upTo = [&](std::size_t bound) { return std::uniform_int_distribution<std::size_t>(0, bound)(dice); };
    for (std::size_t change = upTo(4) + 1; change > 0 && !text.empty(); --change) {
        const std::size_t at = upTo(text.size() - 1);
        switch (upTo(4)) {
        case 0:
            text[at] = static_cast<char>(upTo(255));
            break;
        case 1:
            text.erase(at, upTo(8) + 1);
            break;
        case 2:
            text.insert(at, text.substr(upTo(text.size() - 1), upTo(30)));
            break;
        case 3:
            text[at] = "\",;:{}[]-+.eE0\n\r\t"[upTo(16)];
            break;
        default:
            text.resize(at);
        }
    }
    return text;
}

} // namespace

int main(int argc, char **argv)
{
    if (argc != 2 && argc != 4)
        return 2;
    const std::size_t part = argc == 4 ? std::stoul(argv[2]) : 0;
    const std::size_t parts = argc == 4 ? std::stoul(argv[3]) : 1;
    std::vector<std::string> seeds;
    for (const auto &entry : std::filesystem::directory_iterator(argv[1]))
        seeds.push_back(contentOf(entry.path()));
    if (seeds.empty())
        return 2;
    std::sort(seeds.begin(), seeds.end());
    std::mt19937 dice(20260301); // NOLINT(bugprone-random-generator-seed): the same run every time is the point
    const std::size_t rounds = std::max<std::size_t>(mutations / seeds.size(), 1);
    run({});
    std::size_t inputs = 1;
    for (std::size_t index = 0; index < seeds.size(); ++index)
        for (std::size_t round = 0; round <= rounds; ++round) {
            const std::string input = round == 0 ? seeds[index] : mutated(seeds[index], dice);
            if (index % parts != part)
                continue;
            run(input);
            ++inputs;
        }
    std::printf("%zu seeds, %zu inputs\n", seeds.size(), inputs);
}
