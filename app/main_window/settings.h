#pragma once
// What the program remembers between runs: recent logbooks, who is measuring, window geometry, theme, unit shown.
// The QSettings is handed in, so that a test has its own.

#include "record_pdf/record_language.h"
#include "units/units.h"
#include "wording/palette.h"

#include <QByteArray>
#include <QSettings>
#include <QStringList>

#include <array>
#include <optional>

namespace hammerline::main_window {

inline constexpr std::array textPercents{100, 125, 150, 200};

enum class ThemeChoice { System, Light, Dark };

/// How the records of this workshop are made.
struct RecordPreferences {
    record_pdf::Language language = record_pdf::Language::English;
    record_pdf::Paper paper = record_pdf::Paper::A4;
    QString workshop{}; ///< name and place; empty: not stated
};

class Settings {
public:
    static constexpr int mostRecent = 8;

    explicit Settings(QSettings &store) : m_store(store) {}
    [[nodiscard]] QSettings &store() { return m_store; }

    /// Newest first; files that are gone are left out.
    [[nodiscard]] QStringList recent() const;
    void remember(const QString &path);
    [[nodiscard]] QString person() const;
    void setPerson(const QString &person);
    [[nodiscard]] ThemeChoice theme() const;
    void setTheme(ThemeChoice choice);
    /// Absent: the unit of the pass.
    [[nodiscard]] std::optional<units::Unit> shownUnit() const;
    void setShownUnit(std::optional<units::Unit> unit);
    /// Percent, one of textPercents.
    [[nodiscard]] int textPercent() const;
    void setTextPercent(int percent);
    /// Never chosen: in German where the system speaks it, on Letter where its paper is that.
    [[nodiscard]] RecordPreferences recordPreferences() const;
    void setRecordPreferences(const RecordPreferences &preferences);
    [[nodiscard]] QByteArray geometry() const;
    void setGeometry(const QByteArray &geometry);

private:
    QSettings &m_store;
};

/// What `choice` means here and now. The system's own palette is looked at once, before any theme is applied.
[[nodiscard]] wording::Theme themeFor(ThemeChoice choice);

} // namespace hammerline::main_window
