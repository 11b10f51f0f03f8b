#include "analysis/spot_check.h"

#include <algorithm>
#include <optional>
#include <string>

#include <boost/multiprecision/cpp_int.hpp>

namespace hammerline::analysis {

namespace {

using Whole = boost::multiprecision::cpp_int;
using outcome::Fault;

constexpr int mostNotes = 10'000;

/// 1 - confidence, as a fraction.
struct Doubt {
    Whole numerator;
    Whole denominator;
};

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

/// "0.95", ".95" or "0,95".
std::optional<Doubt> doubtOf(std::string_view confidence)
{
    constexpr std::size_t longest = 50;
    if (confidence.starts_with('0'))
        confidence.remove_prefix(1);
    if (confidence.size() < 2 || confidence.size() > longest || (confidence[0] != '.' && confidence[0] != ','))
        return std::nullopt;
    const auto digits = confidence.substr(1);
    if (!std::all_of(digits.begin(), digits.end(), isDigit))
        return std::nullopt;
    Whole numerator = 0, denominator = 1;
    for (const char digit : digits) {
        numerator = numerator * 10 + (digit - '0');
        denominator *= 10;
    }
    return numerator == 0 ? std::nullopt : std::optional<Doubt>({denominator - numerator, denominator});
}

Whole choose(int from, int count)
{
    if (count < 0 || count > from)
        return 0;
    Whole ways = 1;
    for (int i = 1; i <= std::min(count, from - count); ++i)
        ways = ways * (from - i + 1) / i;
    return ways;
}

/// Ways to draw `sample` of `notes`, `out` of which are out, with at most `found` of these.
Whole waysToFindAtMost(int found, int notes, int out, int sample)
{
    const int fewest = std::max(0, sample - (notes - out)), most = std::min({found, out, sample});
    if (fewest > most)
        return 0;
    Whole term = choose(out, fewest) * choose(notes - out, sample - fewest), ways = term;
    for (int k = fewest; k < most; ++k) { // from one term to the next without a new binomial; each division is exact
        term *= (out - k) * (sample - k);
        term /= Whole(k + 1) * (notes - out - sample + k + 1);
        ways += term;
    }
    return ways;
}

/// The largest number in [low, high] for which `holds`, which is true up to somewhere and then false; true at low.
template <typename Predicate>
int lastWhere(int low, int high, Predicate holds)
{
    while (low < high) {
        const int middle = low + (high - low + 1) / 2;
        if (holds(middle))
            low = middle;
        else
            high = middle - 1;
    }
    return low;
}

int mostOut(int notes, int sample, int found, const Doubt &doubt)
{
    const Whole bound = doubt.numerator * choose(notes, sample);
    return lastWhere(found, notes,
                     [&](int out) { return waysToFindAtMost(found, notes, out, sample) * doubt.denominator > bound; });
}

/// P(none found | out) > doubt, with both sides of the fraction shortened to `out` factors.
bool mayFindNone(int notes, int out, int sample, const Doubt &doubt)
{
    Whole none = doubt.denominator, all = doubt.numerator;
    for (int i = 0; i < out; ++i) {
        none *= std::max(0, notes - sample - i);
        all *= notes - i;
    }
    return none > all;
}

SampleToProve sampleToProve(int atMost, int notes, const Doubt &doubt)
{
    if (notes <= atMost)
        return {atMost, 0};
    return {atMost, 1 + lastWhere(0, notes, [&](int sample) { return mayFindNone(notes, atMost + 1, sample, doubt); })};
}

std::vector<Fault> faultsOf(int notes, int sample, int found)
{
    std::vector<Fault> faults;
    if (notes < 1 || notes > mostNotes)
        faults.push_back({.problem = "notes must be 1 to " + std::to_string(mostNotes)});
    if (sample < 0 || sample > notes)
        faults.push_back({.problem = "the sample must be 0 to " + std::to_string(notes) + ", the number of notes"});
    if (found < 0 || found > sample)
        faults.push_back({.problem = "found out must be 0 to " + std::to_string(sample) + ", the size of the sample"});
    return faults;
}

} // namespace

outcome::Outcome<SpotCheck> spotCheck(int notes, int sample, int found, std::string_view confidence)
{
    auto faults = faultsOf(notes, sample, found);
    const auto doubt = doubtOf(confidence);
    if (!doubt)
        faults.push_back({.problem = "'" + std::string(confidence.substr(0, 40)) +
                                     "' is no confidence; write a decimal above 0 and below 1, such as 0.95"});
    if (!faults.empty())
        return faults;
    SpotCheck check;
    check.mostOut = mostOut(notes, sample, found, *doubt);
    for (const int atMost : {0, 1, 2, 4, 8})
        check.sampleToProve.push_back(sampleToProve(atMost, notes, *doubt));
    return check;
}

} // namespace hammerline::analysis
