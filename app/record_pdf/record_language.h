#pragma once
// The languages that a record can be written in, apart from the program's own. Their words are Qt translations
// (resources/translations/record_*.ts), compiled in; English has one too, so that an English record stays English in a
// program that speaks something else.

#include "record_pdf/record_pdf.h"

#include <QTranslator>

#include <memory>
#include <optional>
#include <span>
#include <string_view>

namespace hammerline::record_pdf {

enum class Language { English, German };

[[nodiscard]] std::span<const Language> languages();
[[nodiscard]] std::string_view idOf(Language language); ///< "en", "de"
[[nodiscard]] std::optional<Language> findLanguage(std::string_view id);
/// In the language itself: "Deutsch".
[[nodiscard]] QString nameOf(Language language);

/// Words and number form of a language, for as long as it lives.
class LanguageOfRecord {
public:
    explicit LanguageOfRecord(Language language);
    /// Puts both into the options, which must not outlive this.
    void speakIn(RecordPdfOptions &options);

private:
    Language m_language;
    QTranslator m_words;
};

} // namespace hammerline::record_pdf
