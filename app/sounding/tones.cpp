#include "sounding/tones.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace hammerline::sounding {

namespace {

// Equal temperament on A4 = 440 Hz (ISO 16:1975).
constexpr double fSharp4 = 369.994;
constexpr double g4 = 391.995;
constexpr double a4 = 440;
constexpr double b4 = 493.883;
constexpr double d5 = 587.330;
constexpr double fSharp5 = 739.989;
constexpr double a5 = 880;

constexpr int noteLength = 85;
constexpr int lastLength = 130; ///< the last note of a tone rings a little
constexpr double attackSeconds = 0.010;
constexpr double releaseSeconds = 0.020;
constexpr double decaySeconds = 0.070;

/// Strength of fundamental, second and third partial: round, not shrill.
constexpr std::array partials{1.0, 0.22, 0.06};
constexpr double strongest = partials[0] + partials[1] + partials[2];

std::size_t samplesIn(int milliseconds, int sampleRate)
{
    return static_cast<std::size_t>(milliseconds) * static_cast<std::size_t>(sampleRate) / 1000;
}

/// Half a cosine from 0 to 1: neither end has a corner.
double swell(double part)
{
    return 0.5 - 0.5 * std::cos(std::numbers::pi * std::clamp(part, 0.0, 1.0));
}

double envelopeAt(double seconds, double duration)
{
    const double decay = std::exp(-std::max(0.0, seconds - attackSeconds) / decaySeconds);
    return swell(seconds / attackSeconds) * decay * swell((duration - seconds) / releaseSeconds);
}

double sampleAt(double seconds, double hertz)
{
    double sum = 0;
    for (std::size_t i = 0; i < partials.size(); ++i)
        sum += partials[i] * std::sin(2 * std::numbers::pi * hertz * static_cast<double>(i + 1) * seconds);
    return sum / strongest;
}

void append(std::vector<float> &wave, const Beep &beep, int sampleRate)
{
    const std::size_t count = samplesIn(beep.milliseconds, sampleRate);
    const double duration = static_cast<double>(count - 1) / sampleRate;
    for (std::size_t i = 0; i < count; ++i) {
        const double seconds = static_cast<double>(i) / sampleRate;
        const double level = peakLevel * beep.level * envelopeAt(seconds, duration);
        wave.push_back(static_cast<float>(level * sampleAt(seconds, beep.hertz)));
    }
}

} // namespace

std::vector<Beep> scoreOf(ToneKind kind)
{
    switch (kind) {
    case ToneKind::Taken:
        return {{a4, noteLength, 0.6}};
    case ToneKind::In:
        return {{d5, lastLength, 0.8}};
    case ToneKind::Marginal:
        return {{d5, noteLength}, {d5, lastLength}};
    case ToneKind::MarginalLow:
        return {{d5, noteLength}, {b4, lastLength}};
    case ToneKind::MarginalHigh:
        return {{d5, noteLength}, {fSharp5, lastLength}};
    case ToneKind::OutLow:
        return {{d5, noteLength}, {b4, noteLength}, {fSharp4, lastLength}};
    case ToneKind::OutHigh:
        return {{d5, noteLength}, {fSharp5, noteLength}, {a5, lastLength}};
    case ToneKind::Doubt:
        return {{g4, lastLength}, {d5, noteLength}, {g4, lastLength}};
    }
    return {};
}

std::vector<float> waveOf(ToneKind kind, int sampleRate)
{
    std::vector<float> wave;
    for (const Beep &beep : scoreOf(kind)) {
        if (!wave.empty())
            wave.resize(wave.size() + samplesIn(gapMilliseconds, sampleRate));
        append(wave, beep, sampleRate);
    }
    return wave;
}

QByteArray pcmOf(ToneKind kind, int sampleRate, int channels)
{
    constexpr float fullScale = 32767;
    std::vector<std::int16_t> samples;
    for (const float value : waveOf(kind, sampleRate))
        samples.insert(samples.end(), static_cast<std::size_t>(channels),
                       static_cast<std::int16_t>(std::lround(value * fullScale)));
    return {reinterpret_cast<const char *>(samples.data()),
            static_cast<qsizetype>(samples.size() * sizeof(std::int16_t))};
}

} // namespace hammerline::sounding
