#include "sounding/inside/hush_remarks.h"
#include "sounding/inside/tone_player.h"
#include "sounding/tones.h"

#include <QAudioDevice>
#include <QAudioSink>
#include <QBuffer>
#include <QMediaDevices>

namespace hammerline::sounding {

namespace {

QAudioFormat formatOf(int sampleRate, int channels)
{
    QAudioFormat format;
    format.setSampleRate(sampleRate);
    format.setChannelCount(channels);
    format.setSampleFormat(QAudioFormat::Int16);
    return format;
}

/// The first that the device takes; invalid where it takes none.
QAudioFormat formatFor(const QAudioDevice &device)
{
    for (const int sampleRate : {48000, 44100})
        for (const int channels : {1, 2})
            if (const QAudioFormat format = formatOf(sampleRate, channels); device.isFormatSupported(format))
                return format;
    return {};
}

/// Tried against PulseAudio: with 40 ms it ran dry and broke tones off, with 100 ms all were whole.
constexpr qint64 bufferMicroseconds = 100'000;

/// A sink a tone, so that headphones plugged in meanwhile are found and a dead sink is not kept.
class AudioTones final : public TonePlayer {
public:
    void play(ToneKind kind) override
    {
        const HushRemarks hush;
        const QAudioDevice device = QMediaDevices::defaultAudioOutput();
        const QAudioFormat format = device.isNull() ? QAudioFormat() : formatFor(device);
        m_sink.reset();
        m_wave.close();
        if (!format.isValid())
            return;
        m_wave.setData(pcmOf(kind, format.sampleRate(), format.channelCount()));
        m_wave.open(QIODevice::ReadOnly);
        m_sink = std::make_unique<QAudioSink>(device, format);
        m_sink->setBufferSize(format.bytesForDuration(bufferMicroseconds));
        m_sink->start(&m_wave);
    }
    [[nodiscard]] bool canPlay() const override
    {
        const HushRemarks hush;
        return !QMediaDevices::defaultAudioOutput().isNull();
    }

private:
    QBuffer m_wave;
    std::unique_ptr<QAudioSink> m_sink; ///< after m_wave: it reads from it until it ends
};

} // namespace

std::unique_ptr<TonePlayer> makeTonePlayer()
{
    return std::make_unique<AudioTones>();
}

} // namespace hammerline::sounding
