#pragma once
// Was the open logbook edited by another program? Records and hand-overs ask that of their instrument when they are
// made; whoever works at the bench should hear of it before that, while the backup of the day is still near.
//
// Some seconds after a logbook was opened, and then whenever its files changed without a new deed, or after some
// minutes anyhow, a round is made: the chosen instrument first, then all that stand in the workshop, one at a time with
// a pause many times as long as the look took (some ten milliseconds), so that nobody who types notices. What this can
// see of an instrument is said in logbook/verify_instrument.h.
//
// A BrokenWorld leaves the timer's slot as it leaves any other (guarded_application.h); the watch then rests until
// `goOn`, or until another round would be due.

#include "logbook/logbook.h"
#include "main_window/workshop.h"

#include <QObject>
#include <QTimer>

#include <array>
#include <chrono>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace hammerline::main_window {

class EditedWatch : public QObject {
    Q_OBJECT
public:
    struct Pace {
        std::chrono::milliseconds first{3'000}; ///< after the opening
        std::chrono::milliseconds step{150};    ///< between two instruments of a round, at least
        std::chrono::milliseconds look{2'000};  ///< between two glances at the files
        std::chrono::minutes round{5};          ///< after this long a round is made anyhow
    };
    /// An instrument of which something was changed, added or removed.
    struct Edited {
        QString name{};
        std::size_t places = 0;
        bool operator==(const Edited &) const = default;
    };
    using Found = std::map<instrument::InstrumentId, Edited>;

    explicit EditedWatch(Workshop &workshop, QObject *parent = nullptr);

    /// What is known since the logbook was opened; an instrument that is whole again is no longer in it.
    [[nodiscard]] const Found &found() const { return m_found; }
    [[nodiscard]] const std::string &path() const { return m_path; }
    /// Rounds that went to their end since the logbook was opened.
    [[nodiscard]] int rounds() const { return m_rounds; }
    /// For tests; begins anew.
    void setPace(const Pace &pace);
    /// After a broken world, once its cause is mended.
    void goOn();

signals:
    void begun(); ///< another logbook, or the same opened anew, or none: nothing is found yet
    void changed();

private slots:
    void step();

private:
    /// Of the file and its write-ahead log: when changed last, and how large.
    using Stamp = std::array<std::int64_t, 4>;

    void follow();
    void begin();
    void gather();
    void checkNext();
    [[nodiscard]] bool changedOutside();
    [[nodiscard]] Stamp stamp() const;

    Workshop &m_workshop;
    Pace m_pace;
    QTimer m_timer;
    std::string m_path; ///< empty: no logbook is open
    Found m_found;
    std::vector<instrument::InstrumentId> m_waiting; ///< of the round that is being made, the next at the end
    int m_rounds = 0;
    Stamp m_stamp{};
    logbook::DeedId m_newest = 0;
    std::optional<std::chrono::steady_clock::time_point> m_roundEnded; ///< absent: none was begun
};

} // namespace hammerline::main_window
