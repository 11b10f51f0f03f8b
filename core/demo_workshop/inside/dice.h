#pragma once
// Randomness that is the same everywhere: one independent stream a label, so that adding a piano or a pass does not
// change the others.

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <boost/random/uniform_int_distribution.hpp>

#include <cstdint>
#include <string>
#include <string_view>

namespace hammerline::demo_workshop {

class Dice {
public:
    Dice(std::uint64_t seed, std::string_view label) : m_engine(mixed(seed, label)) {}

    double normal(double sd) { return sd * m_normal(m_engine); }
    bool chance(double probability) { return m_uniform(m_engine) < probability; }
    int between(int low, int high) { return boost::random::uniform_int_distribution<int>(low, high)(m_engine); }
    std::string hexDigits(int count)
    {
        std::string text;
        while (count-- > 0)
            text += "0123456789abcdef"[between(0, 15)];
        return text;
    }

private:
    /// FNV-1a (64 bits) over the label, begun with the seed.
    static std::uint64_t mixed(std::uint64_t seed, std::string_view label)
    {
        std::uint64_t hash = 14695981039346656037ULL ^ seed;
        for (const char character : label)
            hash = (hash ^ static_cast<unsigned char>(character)) * 1099511628211ULL;
        return hash;
    }

    boost::random::mt19937_64 m_engine;
    boost::random::normal_distribution<double> m_normal;
    boost::random::uniform_01<double> m_uniform;
};

} // namespace hammerline::demo_workshop
