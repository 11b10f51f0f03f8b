#pragma once
// The tones themselves, computed: a few notes each, every one a fundamental with two soft partials that swells for some
// milliseconds and dies away, so that nothing clicks and a day of them does not tire. All within two octaves around
// D5, where a small loudspeaker still speaks and a workshop is least loud.

#include "sounding/sounding.h"

#include <QByteArray>

#include <vector>

namespace hammerline::sounding {

struct Beep {
    double hertz = 0;
    int milliseconds = 0;
    double level = 1; ///< 0 to 1 of the loudest
};
/// The notes of a tone, one after the other.
[[nodiscard]] std::vector<Beep> scoreOf(ToneKind kind);

/// Between two notes of a score.
inline constexpr int gapMilliseconds = 18;
/// The loudest sample of any tone stays below.
inline constexpr double peakLevel = 0.6;

/// One channel, -1 to 1. Starts and ends at 0. sampleRate in samples a second, 8000 at least.
[[nodiscard]] std::vector<float> waveOf(ToneKind kind, int sampleRate);
/// The same as signed 16-bit samples in the machine's byte order, every sample repeated on each channel.
[[nodiscard]] QByteArray pcmOf(ToneKind kind, int sampleRate, int channels);

} // namespace hammerline::sounding
