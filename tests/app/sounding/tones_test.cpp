#include "sounding/tones.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <numbers>
#include <set>
#include <span>

namespace hammerline::sounding {
namespace {

constexpr int sampleRate = 48000;

std::vector<ToneKind> allKinds()
{
    std::vector<ToneKind> kinds;
    for (int i = 0; i < toneKindCount; ++i)
        kinds.push_back(static_cast<ToneKind>(i));
    return kinds;
}

std::size_t samplesIn(int milliseconds)
{
    return static_cast<std::size_t>(milliseconds) * sampleRate / 1000;
}

/// The samples of each note of a tone, gaps left out.
std::vector<std::span<const float>> notesIn(const std::vector<float> &wave, ToneKind kind)
{
    std::vector<std::span<const float>> notes;
    std::size_t at = 0;
    for (const Beep &beep : scoreOf(kind)) {
        notes.push_back(std::span(wave).subspan(at, samplesIn(beep.milliseconds)));
        at += samplesIn(beep.milliseconds) + samplesIn(gapMilliseconds);
    }
    return notes;
}

/// Strength of one frequency (Goertzel's algorithm).
double strengthOf(std::span<const float> samples, double hertz)
{
    const double twoCos = 2 * std::cos(2 * std::numbers::pi * hertz / sampleRate);
    double one = 0;
    double two = 0;
    for (const float sample : samples) {
        const double next = static_cast<double>(sample) + twoCos * one - two;
        two = one;
        one = next;
    }
    return std::sqrt(std::max(0.0, one * one + two * two - twoCos * one * two));
}

/// The strongest of all frequencies from 200 to 2000 Hz.
double loudestFrequency(std::span<const float> samples)
{
    double loudest = 0;
    double strength = -1;
    for (double hertz = 200; hertz <= 2000; hertz += 1)
        if (const double here = strengthOf(samples, hertz); here > strength) {
            strength = here;
            loudest = hertz;
        }
    return loudest;
}

std::vector<double> melodyOf(ToneKind kind)
{
    const auto wave = waveOf(kind, sampleRate);
    std::vector<double> melody;
    for (const auto note : notesIn(wave, kind))
        melody.push_back(loudestFrequency(note));
    return melody;
}

TEST(Tones, LastAsLongAsTheirScoreAndNoneLongerThanFourTenthsOfASecond)
{
    for (const ToneKind kind : allKinds()) {
        std::size_t expected = 0;
        for (const Beep &beep : scoreOf(kind))
            expected += samplesIn(beep.milliseconds) + (expected > 0 ? samplesIn(gapMilliseconds) : 0);
        EXPECT_EQ(waveOf(kind, sampleRate).size(), expected);
        EXPECT_LT(expected, samplesIn(400));
        EXPECT_GT(expected, samplesIn(60));
    }
}

TEST(Tones, StartAndEndAtNothingAndStayBelowTheirPeak)
{
    for (const ToneKind kind : allKinds()) {
        const auto wave = waveOf(kind, sampleRate);
        EXPECT_FLOAT_EQ(wave.front(), 0);
        EXPECT_NEAR(wave.back(), 0, 1e-6);
        const auto [least, most] = std::ranges::minmax(wave);
        EXPECT_LT(std::max(-least, most), peakLevel);
        EXPECT_GT(std::max(-least, most), 0.15) << "audible";
    }
}

TEST(Tones, DoNotClickWithinOrBetweenTheirNotes)
{
    // A sine of the highest partial that matters, at full level, is the steepest that a tone may be.
    const double steepest = 2 * std::numbers::pi * 880 * 2 / sampleRate * peakLevel;
    for (const ToneKind kind : allKinds()) {
        const auto wave = waveOf(kind, sampleRate);
        for (std::size_t i = 1; i < wave.size(); ++i)
            ASSERT_LT(std::abs(wave[i] - wave[i - 1]), steepest);
        for (const auto note : notesIn(wave, kind)) {
            EXPECT_NEAR(note.front(), 0, 1e-6);
            EXPECT_NEAR(note.back(), 0, 1e-6);
            EXPECT_LT(std::abs(note[samplesIn(1)]), 0.05) << "swells softly";
        }
    }
}

TEST(Tones, SoundAtTheFrequenciesOfTheirScore)
{
    for (const ToneKind kind : allKinds()) {
        const auto melody = melodyOf(kind);
        const auto score = scoreOf(kind);
        ASSERT_EQ(melody.size(), score.size());
        for (std::size_t i = 0; i < score.size(); ++i)
            EXPECT_NEAR(melody[i], score[i].hertz, 6) << "less than half a semitone at any of the pitches";
    }
}

TEST(Tones, CountOneForInTwoForMarginalThreeForOut)
{
    EXPECT_EQ(scoreOf(ToneKind::In).size(), 1U);
    for (const ToneKind kind : {ToneKind::Marginal, ToneKind::MarginalLow, ToneKind::MarginalHigh})
        EXPECT_EQ(scoreOf(kind).size(), 2U);
    for (const ToneKind kind : {ToneKind::OutLow, ToneKind::OutHigh})
        EXPECT_EQ(scoreOf(kind).size(), 3U);
}

TEST(Tones, RiseForTooLargeAndFallForTooSmall)
{
    for (const ToneKind kind : {ToneKind::MarginalHigh, ToneKind::OutHigh})
        EXPECT_TRUE(std::ranges::is_sorted(melodyOf(kind), std::less_equal<>()));
    for (const ToneKind kind : {ToneKind::MarginalLow, ToneKind::OutLow})
        EXPECT_TRUE(std::ranges::is_sorted(melodyOf(kind), std::greater_equal<>()));
}

TEST(Tones, DifferFromEachOther)
{
    std::set<std::vector<float>> waves;
    for (const ToneKind kind : allKinds())
        waves.insert(waveOf(kind, sampleRate));
    EXPECT_EQ(waves.size(), static_cast<std::size_t>(toneKindCount));
}

TEST(Tones, AreHandedToTheDeviceOnEveryChannel)
{
    const auto wave = waveOf(ToneKind::OutHigh, 44100);
    const QByteArray pcm = pcmOf(ToneKind::OutHigh, 44100, 2);
    ASSERT_EQ(static_cast<std::size_t>(pcm.size()), wave.size() * 2 * sizeof(std::int16_t));
    std::vector<std::int16_t> samples(wave.size() * 2);
    std::memcpy(samples.data(), pcm.constData(), static_cast<std::size_t>(pcm.size()));
    for (std::size_t i = 0; i < wave.size(); ++i) {
        ASSERT_EQ(samples[2 * i], samples[2 * i + 1]);
        ASSERT_NEAR(samples[2 * i], wave[i] * 32767, 0.51);
    }
}

} // namespace
} // namespace hammerline::sounding
