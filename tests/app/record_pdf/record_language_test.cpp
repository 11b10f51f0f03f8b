// A record in its own language: complete, with the number form that belongs to it, whatever the program speaks.

#include "record_pdf/record_language.h"

#include "record_file.h"
#include "translation_files.h"

#include "wording/wording.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <gmock/gmock.h>

#include <set>

namespace hammerline::record_pdf {
namespace {

using support::SampleWish;

/// Passes every question on to a language and keeps those that it has no answer to.
class Listener : public QTranslator {
public:
    explicit Listener(QTranslator *words) : m_words(words) {}
    QString translate(const char *context, const char *source, const char *remark, int n) const override
    {
        const QString answer = m_words->translate(context, source, remark, n);
        // Qt's own words and those of windows are none of the record's.
        static const std::set<QString> ours{"Record", "wording", "charts", "keyboard_strip"};
        if (answer.isEmpty() && ours.contains(QLatin1String(context)))
            m_unanswered.insert(QLatin1String(context) + '|' + QString::fromUtf8(source));
        return answer;
    }
    bool isEmpty() const override { return false; }
    [[nodiscard]] const std::set<QString> &unanswered() const { return m_unanswered; }

private:
    QTranslator *m_words;
    mutable std::set<QString> m_unanswered;
};

class RecordLanguage : public RecordFile {};

TEST_F(RecordLanguage, BothLanguagesSayTheSameThingsAndLeaveNothingOpen)
{
    const Words english = wordsOf(Language::English);
    const Words german = wordsOf(Language::German);
    EXPECT_GT(english.size(), 200u);
    for (const auto &[source, words] : english) {
        EXPECT_EQ(source.mid(source.indexOf('|') + 1), words);
        ASSERT_TRUE(german.contains(source)) << source.toStdString();
        EXPECT_FALSE(german.at(source).isEmpty()) << source.toStdString();
    }
    EXPECT_EQ(german.size(), english.size());
}

TEST_F(RecordLanguage, EveryPlaceOfATextIsFilledInEitherLanguage)
{
    for (const auto &[source, words] : wordsOf(Language::German))
        for (int place = 1; place <= 4; ++place)
            EXPECT_EQ(source.contains('%' + QString::number(place)), words.contains('%' + QString::number(place)))
                << source.toStdString();
}

TEST_F(RecordLanguage, EveryTextOfThePagesIsInTheFiles)
{
    const QString found = m_folder.filePath(QStringLiteral("found.ts"));
    (void)outputOf(QStringLiteral("/usr/lib/qt6/bin/lupdate"),
                   {QStringLiteral("-silent"), QStringLiteral(HAMMERLINE_SOURCE_DIR "/app/record_pdf"),
                    QStringLiteral(HAMMERLINE_SOURCE_DIR "/app/charts"), QStringLiteral("-ts"), found});
    const Words german = wordsOf(Language::German);
    const Words sources = messagesOf(found);
    EXPECT_GT(sources.size(), 150u);
    for (const auto &[source, unused] : sources) {
        // The charts that only the window shows say their words in contexts of their own.
        const bool onARecord =
            source.startsWith(QLatin1String("Record|")) || source.startsWith(QLatin1String("charts|"));
        EXPECT_TRUE(!onARecord || german.contains(source)) << source.toStdString();
    }
}

TEST_F(RecordLanguage, NothingIsAskedOnPaperThatGermanCannotAnswer)
{
    LanguageOfRecord german(Language::German);
    RecordPdfOptions options;
    german.speakIn(options);
    Listener listener(options.words);
    options.words = &listener;
    for (const auto action : {catalogue::ActionKind::Vertical, catalogue::ActionKind::Grand}) {
        SampleWish wish;
        wish.action = action;
        wish.guarded = action == catalogue::ActionKind::Grand;
        wish.spreadAsLeft = 0.9;
        make(wish, options);
        wish.withAsFound = false;
        make(wish, options);
    }
    EXPECT_THAT(listener.unanswered(), testing::IsEmpty());
}

TEST_F(RecordLanguage, EveryNameOfTheTradeIsKnownInGerman)
{
    LanguageOfRecord german(Language::German);
    RecordPdfOptions options;
    german.speakIn(options);
    Listener listener(options.words);
    QCoreApplication::installTranslator(&listener);
    for (const catalogue::QuantityInfo &info : catalogue::all()) {
        EXPECT_FALSE(wording::shortNameOf(info.quantity).isEmpty());
        EXPECT_FALSE(wording::definitionOf(info.quantity).isEmpty());
        for (const auto direction : {wording::Direction::TooSmall, wording::Direction::TooLarge})
            EXPECT_NE(wording::directionText(info.quantity, direction), wording::remedyText(info.quantity, direction));
    }
    for (const auto purpose : {readings::Purpose::AsFound, readings::Purpose::Setting, readings::Purpose::AsLeft,
                               readings::Purpose::Recheck})
        EXPECT_FALSE(wording::nameOf(purpose).isEmpty());
    QCoreApplication::removeTranslator(&listener);
    EXPECT_THAT(listener.unanswered(), testing::IsEmpty());
}

TEST_F(RecordLanguage, AGermanRecordSpeaksGermanWithGermanNumbers)
{
    LanguageOfRecord german(Language::German);
    RecordPdfOptions options;
    german.speakIn(options);
    make({}, options);
    const QString all = text().simplified();
    for (const char *said : {"Regulierungsbericht", "Jeder Messwert", "3. März 2026", "Seite 1 von", "20,5 °C",
                             "Entscheidungsregel", "Rechtsberatung", "Auslösung (mm)"})
        EXPECT_TRUE(all.contains(QString::fromUtf8(said))) << said;
    for (const char *unsaid : {"Regulation", "measured", "limits", "Issued", "reading ", "Page"})
        EXPECT_FALSE(all.contains(QLatin1String(unsaid))) << unsaid;
    EXPECT_TRUE(all.contains(QRegularExpression(QStringLiteral("\\b\\d\\d,\\d\\d\\b"))));
    EXPECT_TRUE(m_bytes.contains("/Lang (de)"));
}

TEST_F(RecordLanguage, AnEnglishRecordStaysEnglishInAGermanProgram)
{
    LanguageOfRecord german(Language::German);
    RecordPdfOptions ofProgram;
    german.speakIn(ofProgram);
    QCoreApplication::installTranslator(ofProgram.words);
    LanguageOfRecord english(Language::English);
    RecordPdfOptions options;
    english.speakIn(options);
    make({}, options);
    QCoreApplication::removeTranslator(ofProgram.words);
    const QString all = text().simplified();
    EXPECT_TRUE(all.contains(QStringLiteral("Regulation record")));
    EXPECT_FALSE(all.contains(QStringLiteral("Regulierungsbericht")));
}

TEST_F(RecordLanguage, LanguagesAreNamedByTheirIds)
{
    for (const Language language : languages())
        EXPECT_EQ(findLanguage(idOf(language)), language);
    EXPECT_FALSE(findLanguage("xx"));
    EXPECT_FALSE(findLanguage("DE"));
}

} // namespace
} // namespace hammerline::record_pdf
