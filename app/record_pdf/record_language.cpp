#include "record_pdf/record_language.h"

#include "outcome/outcome.h"

#include <array>

namespace hammerline::record_pdf {

namespace {

constexpr std::array all{Language::English, Language::German};

QLocale localeOf(Language language)
{
    return language == Language::German ? QLocale(QLocale::German, QLocale::Germany)
                                        : QLocale(QLocale::English, QLocale::UnitedKingdom);
}

QString fileOf(Language language)
{
    const std::string_view id = idOf(language);
    return QStringLiteral(":/record/record_%1.qm").arg(QLatin1String(id.data(), static_cast<qsizetype>(id.size())));
}

} // namespace

std::span<const Language> languages()
{
    return all;
}

std::string_view idOf(Language language)
{
    return language == Language::German ? "de" : "en";
}

std::optional<Language> findLanguage(std::string_view id)
{
    for (const Language language : all)
        if (idOf(language) == id)
            return language;
    return std::nullopt;
}

QString nameOf(Language language)
{
    return language == Language::German ? QStringLiteral("Deutsch") : QStringLiteral("English");
}

LanguageOfRecord::LanguageOfRecord(Language language) : m_language(language)
{
    if (!m_words.load(fileOf(language)))
        throw outcome::BrokenWorld("The words of the record are not in this program. Nothing was written; install it "
                                   "anew.");
}

void LanguageOfRecord::speakIn(RecordPdfOptions &options)
{
    options.locale = localeOf(m_language);
    options.words = &m_words;
}

} // namespace hammerline::record_pdf
