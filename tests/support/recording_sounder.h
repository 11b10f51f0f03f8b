#pragma once
// A sounder that makes no sound and remembers what it was asked for.

#include "sounding/sounding.h"

#include <QStringList>

#include <vector>

namespace hammerline::support {

class RecordingSounder final : public sounding::Sounder {
public:
    explicit RecordingSounder(sounding::Available available = {.tones = true, .speech = true}) : m_available(available)
    {
    }
    void tone(sounding::ToneKind kind) override { tones.push_back(kind); }
    void say(const QString &text) override { said << text; }
    [[nodiscard]] sounding::Available available() const override { return m_available; }

    std::vector<sounding::ToneKind> tones;
    QStringList said;

private:
    sounding::Available m_available;
};

} // namespace hammerline::support
