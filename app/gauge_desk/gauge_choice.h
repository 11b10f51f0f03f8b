#pragma once
// Which gauge is used, how its line is set and how what it says is read; kept in the settings.

#include "gauge_input/gauge_input.h"

#include <QList>
#include <QSettings>
#include <QString>
#include <QStringList>

namespace hammerline::gauge_desk {

struct GaugeChoice {
    QString device{}; ///< "ttyUSB0" or a path; empty: no gauge was ever chosen
    int baud = 9600;
    QString frame = QStringLiteral("8N1"); ///< data bits, parity, stop bits: one of knownFrames()
    gauge_input::LinePattern pattern{};
    bool wanted = false; ///< false: chosen, but switched off

    [[nodiscard]] gauge_input::LineSettings line() const;
    /// What the settings hold under `gauge/…`; the usual where they hold nothing or nonsense.
    [[nodiscard]] static GaugeChoice from(const QSettings &settings);
    void store(QSettings &settings) const;
};

[[nodiscard]] const QStringList &knownFrames();
[[nodiscard]] const QList<int> &knownSpeeds();
/// Units a line may leave out.
[[nodiscard]] const QList<units::Unit> &knownUnits();

struct Port {
    QString device{}; ///< a path that stays the same over replugging, where the system offers one
    QString label{};
};
/// What is plugged in now.
[[nodiscard]] QList<Port> portsNow();

/// For the preview: what a line means whatever note is asked for, or why it means nothing.
struct Understood {
    bool read = false;
    QString text{};
};
[[nodiscard]] Understood understand(const QByteArray &line, const gauge_input::LinePattern &pattern);

} // namespace hammerline::gauge_desk
