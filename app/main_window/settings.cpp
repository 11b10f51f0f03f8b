#include "main_window/settings.h"

#include <QApplication>
#include <QFileInfo>
#include <QLocale>
#include <QStyle>

#include <algorithm>

namespace hammerline::main_window {

namespace {

constexpr const char *recentKey = "recent";
constexpr const char *personKey = "person";
constexpr const char *themeKey = "theme";
constexpr const char *unitKey = "shown-unit";
constexpr const char *textKey = "text-percent";
constexpr const char *recordLanguageKey = "record-language";
constexpr const char *recordPaperKey = "record-paper";
constexpr const char *recordWorkshopKey = "record-workshop";
constexpr const char *geometryKey = "geometry";

QString idOf(ThemeChoice choice)
{
    switch (choice) {
    case ThemeChoice::Light:
        return "light";
    case ThemeChoice::Dark:
        return "dark";
    case ThemeChoice::System:
        break;
    }
    return "system";
}

} // namespace

QStringList Settings::recent() const
{
    QStringList there;
    for (const QString &path : m_store.value(recentKey).toStringList())
        if (QFileInfo::exists(path))
            there << path;
    return there;
}

void Settings::remember(const QString &path)
{
    QStringList paths = m_store.value(recentKey).toStringList();
    const QString whole = QFileInfo(path).absoluteFilePath();
    paths.removeAll(whole);
    paths.prepend(whole);
    m_store.setValue(recentKey, paths.mid(0, mostRecent));
}

QString Settings::person() const
{
    return m_store.value(personKey).toString();
}

void Settings::setPerson(const QString &person)
{
    m_store.setValue(personKey, person);
}

ThemeChoice Settings::theme() const
{
    const QString stored = m_store.value(themeKey).toString();
    for (const ThemeChoice choice : {ThemeChoice::Light, ThemeChoice::Dark})
        if (stored == idOf(choice))
            return choice;
    return ThemeChoice::System;
}

void Settings::setTheme(ThemeChoice choice)
{
    m_store.setValue(themeKey, idOf(choice));
}

std::optional<units::Unit> Settings::shownUnit() const
{
    const QString stored = m_store.value(unitKey).toString();
    for (const units::Unit unit : {units::Unit::Millimetre, units::Unit::Inch})
        if (stored == units::symbolOf(unit))
            return unit;
    return std::nullopt;
}

void Settings::setShownUnit(std::optional<units::Unit> unit)
{
    m_store.setValue(unitKey, unit ? QString(units::symbolOf(*unit)) : QString());
}

int Settings::textPercent() const
{
    const int stored = m_store.value(textKey, textPercents.front()).toInt();
    return std::ranges::count(textPercents, stored) > 0 ? stored : textPercents.front();
}

void Settings::setTextPercent(int percent)
{
    m_store.setValue(textKey, percent);
}

RecordPreferences Settings::recordPreferences() const
{
    const QLocale system = QLocale::system();
    const auto usual =
        system.language() == QLocale::German ? record_pdf::Language::German : record_pdf::Language::English;
    const std::string language = m_store.value(recordLanguageKey).toString().toStdString();
    const bool letter = m_store.contains(recordPaperKey)
                            ? m_store.value(recordPaperKey).toString() == QLatin1String("letter")
                            : system.measurementSystem() == QLocale::ImperialUSSystem;
    return {record_pdf::findLanguage(language).value_or(usual),
            letter ? record_pdf::Paper::Letter : record_pdf::Paper::A4, m_store.value(recordWorkshopKey).toString()};
}

void Settings::setRecordPreferences(const RecordPreferences &preferences)
{
    const std::string_view language = record_pdf::idOf(preferences.language);
    m_store.setValue(recordLanguageKey, QLatin1String(language.data(), static_cast<qsizetype>(language.size())));
    m_store.setValue(recordPaperKey,
                     preferences.paper == record_pdf::Paper::Letter ? QStringLiteral("letter") : QStringLiteral("a4"));
    m_store.setValue(recordWorkshopKey, preferences.workshop);
}

QByteArray Settings::geometry() const
{
    return m_store.value(geometryKey).toByteArray();
}

void Settings::setGeometry(const QByteArray &geometry)
{
    m_store.setValue(geometryKey, geometry);
}

wording::Theme themeFor(ThemeChoice choice)
{
    static const wording::Theme ofSystem = wording::themeOf(QApplication::palette());
    switch (choice) {
    case ThemeChoice::Light:
        return wording::Theme::Light;
    case ThemeChoice::Dark:
        return wording::Theme::Dark;
    case ThemeChoice::System:
        break;
    }
    return ofSystem;
}

} // namespace hammerline::main_window
