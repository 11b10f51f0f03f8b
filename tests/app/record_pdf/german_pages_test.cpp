// A German record is German throughout: nothing that the program says itself, and no word of the trade that it knows,
// is left in English. What people typed stands as they typed it.

#include "full_record.h"
#include "record_file.h"

#include "demo_workshop/demo_workshop.h"
#include "exchange/built_in.h"
#include "record_pdf/inside/trade_words.h"
#include "record_pdf/record_language.h"
#include "tolerance/found_uncertainty.h"
#include "translation_files.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <gmock/gmock.h>

#include <set>

namespace hammerline::record_pdf {
namespace {

/// The pieces of a text between its places that are long enough to be no accident.
QStringList piecesOf(const QString &source)
{
    static const QRegularExpression place(QStringLiteral("%[0-9n]|\\n"));
    QStringList pieces;
    for (const QString &piece : source.split(place))
        if (piece.simplified().size() >= 9 && piece.simplified().contains(' '))
            pieces << piece.simplified();
    return pieces;
}

class GermanPages : public RecordFile {
protected:
    GermanPages() { m_german.speakIn(m_options); }
    ~GermanPages() override { QCoreApplication::removeTranslator(m_options.words); }

    /// What of the program's English stands in the text.
    static QStringList englishIn(const QString &text)
    {
        QStringList found;
        const Words german = wordsOf(Language::German);
        for (const auto &[source, words] : german) {
            const QString english = source.mid(source.indexOf('|') + 1);
            for (const QString &piece : piecesOf(english))
                if (!words.contains(piece) && text.contains(piece))
                    found << piece;
        }
        return found;
    }

    LanguageOfRecord m_german{Language::German};
    RecordPdfOptions m_options{};
};

std::vector<std::string> sourcesOf(const tolerance::Entry &entry)
{
    std::vector<std::string> sources{entry.source};
    for (const auto *points : {&entry.both, &entry.naturals, &entry.sharps})
        for (const tolerance::Point &point : *points)
            sources.push_back(point.source);
    return sources;
}

sale_record::RecordInput recheckOf(sale_record::RecordInput input)
{
    auto recheck = input.passes.back();
    recheck.first.id += 365;
    recheck.first.purpose = readings::Purpose::Recheck;
    recheck.first.began += std::chrono::days(365);
    input.passes.push_back(recheck);
    return input;
}

TEST_F(GermanPages, NothingThatTheProgramSaysIsLeftInEnglish)
{
    auto input = fullInput();
    input.tellSale = true;
    input.instrument.condition.clear(); // free words, in the typist's language
    input.felt[input.passes.back().first.id] = {{keyboard::Note(40), "blocking"}};
    const auto set = exchange::findToleranceSet("full-upright").value().set;
    input.set.name = set.name;
    input.set.source = set.source;
    input.set.remark = set.remark;
    for (const auto &each : {input, recheckOf(input)}) {
        makeOf(sale_record::assemble(each).value(), m_options);
        EXPECT_EQ(englishIn(text().simplified()).join(QStringLiteral(" | ")).toStdString(), "");
    }
}

TEST_F(GermanPages, TheTestSeesEnglishWhereItIs)
{
    makeOf(sale_record::assemble(fullInput()).value(), {});
    EXPECT_GT(englishIn(text().simplified()).size(), 30);
}

TEST_F(GermanPages, PartsSectionsAndFittingsAreSaidInGermanOnThePagesAndAsTypedInTheData)
{
    makeOf(sale_record::assemble(fullInput()).value(), m_options);
    const QString all = text().simplified();
    for (const char *said : {"Hämmer", "Bändchen", "Tastenbeläge", "Diskant", "Vorderansicht", "schlecht (2 von 5)"})
        EXPECT_TRUE(all.contains(QString::fromUtf8(said))) << said;
    const std::string json = fileInside(QStringLiteral("record.json"));
    EXPECT_NE(json.find("\"bridle straps\""), std::string::npos);
    EXPECT_EQ(json.find("Diskant"), std::string::npos);
}

TEST_F(GermanPages, BuiltInSetsAndTheWordsOfTheTradeAreKnown)
{
    QCoreApplication::installTranslator(m_options.words);
    const auto isKnown = [](const std::string &text) { return tradeWords(text).toStdString() != text; };
    for (const auto &builtIn : exchange::builtInToleranceSets()) {
        const auto set = exchange::findToleranceSet(std::string(builtIn.id)).value().set;
        for (const std::string &text : {set.name, set.source, set.remark})
            EXPECT_TRUE(text.empty() || isKnown(text)) << text;
    }
    for (const auto &made : demo_workshop::makeWorkshop().instruments) {
        for (const auto &section : made.instrument.sections)
            EXPECT_TRUE(isKnown(section.name) || section.name == "tenor") << section.name;
        for (const auto *fittings : {&made.instrument.stringing, &made.instrument.dampers})
            for (const auto &fitting : *fittings)
                EXPECT_TRUE(isKnown(fitting.kind)) << fitting.kind;
    }
}

/// What the built-in sets say of the source of a figure: known word for word, or a mere title with its author.
TEST_F(GermanPages, SourcesOfTheBuiltInSetsAreSaidInGermanAndTitlesStay)
{
    QCoreApplication::installTranslator(m_options.words);
    const std::set<std::string> titles{"88keys.sg, What is adjusted when an action is regulated (S17)",
                                       "howtotunepianos.com, How to Regulate a Piano (S28)"};
    const QRegularExpression label(QStringLiteral("(?:^|; )(?:low|target|high|step): "));
    int figures = 0;
    for (const auto &builtIn : exchange::builtInToleranceSets()) {
        const auto set = exchange::findToleranceSet(std::string(builtIn.id)).value().set;
        for (const auto &[quantity, entry] : set.entries)
            for (const std::string &source : sourcesOf(entry))
                for (const QString &figure : QString::fromStdString(source).split(label, Qt::SkipEmptyParts)) {
                    const std::string said = figure.toStdString();
                    EXPECT_TRUE(tradeWords(said) != figure || titles.contains(said)) << said;
                    ++figures;
                }
    }
    EXPECT_GT(figures, 100);
}

TEST_F(GermanPages, ASetThatCountsWithAStudySaysSoInGermanToo)
{
    QCoreApplication::installTranslator(m_options.words);
    sale_record::SaleRecord record;
    const auto upright = exchange::findToleranceSet("full-upright").value().set;
    const tolerance::FoundUncertainty found{catalogue::Quantity::LetOff, units::Length::millimetres(0.124), "rule 3",
                                            "2026-03-02"};
    record.set = tolerance::countingWith(upright, found, tolerance::Rule::Guarded).value();
    const auto told = inTradeWords(record).set;
    EXPECT_EQ(told.name, tradeWords(upright.name).toStdString() + " (rule 3)");
    EXPECT_THAT(told.source, testing::StartsWith(tradeWords(upright.source).toStdString() + "\n"));
    EXPECT_THAT(told.source, testing::HasSubstr("Unsicherheit 0.124 mm (k = 2), aus der Messmittelstudie"));
    record.set.source.clear();
    record.set = tolerance::countingWith(record.set, found, tolerance::Rule::Guarded).value();
    EXPECT_THAT(inTradeWords(record).set.source, testing::StartsWith("Grenzen und Zielwerte: ohne Quelle.\n"));
}

TEST_F(GermanPages, ANameOrASentenceThatNobodyKnowsStandsAsTyped)
{
    QCoreApplication::installTranslator(m_options.words);
    EXPECT_EQ(tradeWords("Grandmother's hammers").toStdString(), "Grandmother's hammers");
    EXPECT_EQ(tradeWords("Dip is meant at the front edge of the key. I say so.").toStdString(),
              "Dip is meant at the front edge of the key. I say so.");
    EXPECT_EQ(sourceWords("low: no source; target: The yellow: book (S1)").toStdString(),
              "kleinster: ohne Quelle; Sollwert: The yellow: book (S1)");
}

} // namespace
} // namespace hammerline::record_pdf
