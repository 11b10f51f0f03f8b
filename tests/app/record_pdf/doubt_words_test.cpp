// What the record says of the doubt of the measuring, held against figures worked by hand after JCGM 100:2008.

#include "record_file.h"

#include "record_pdf/record_language.h"

#include <QCoreApplication>

#include <gtest/gtest.h>

namespace hammerline::record_pdf {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using units::Length;

struct Typed {
    const char *text;
    double millimetres;
};

/// Let-off of a few notes from C4 up, between 2.7 mm and 3.7 mm.
sale_record::SaleRecord recordOf(const std::vector<Typed> &readings, Length expandedUncertainty)
{
    auto input = support::sampleInput({.withAsFound = false});
    const int first = 40;
    input.instrument.compass = {Note(first), Note(first + static_cast<int>(readings.size()) - 1)};
    input.instrument.sections.clear();
    tolerance::Point point;
    point.note = Note(first);
    point.low = Length::millimetres(2.7);
    point.target = Length::millimetres(3.2);
    point.high = Length::millimetres(3.7);
    tolerance::Entry entry;
    entry.both = {point};
    input.set.entries = {{Quantity::LetOff, entry}};
    auto &[pass, taken] = input.passes.back();
    pass.gauge = {"Rule", {}, expandedUncertainty};
    taken.clear();
    for (std::size_t i = 0; i < readings.size(); ++i) {
        readings::Reading reading;
        reading.place = {Quantity::LetOff, Note(first + static_cast<int>(i)), 1};
        reading.value = Length::millimetres(readings[i].millimetres);
        reading.typed = readings[i].text;
        taken.push_back(reading);
    }
    return sale_record::assemble(input).value();
}

class DoubtWords : public RecordFile {
protected:
    QString said(const sale_record::SaleRecord &record, Language language = Language::English)
    {
        LanguageOfRecord words(language);
        RecordPdfOptions options;
        words.speakIn(options);
        makeOf(record, options);
        QCoreApplication::removeTranslator(options.words);
        return text().simplified();
    }
};

/// JCGM 100:2008. The gauge: U = 0.2 mm, k = 2, so u = 0.1 mm (4.3.3). What was typed to a tenth lies within a = 0.05
/// mm of it, all places alike, so u = a / sqrt(3) = 0.0289 mm (4.3.7). Together u = sqrt(0.01 + 0.000833) = 0.1041 mm
/// (5.1.2), U = 0.2082 mm. The share of the reading off is 0.000833 / 0.010833 = 7.7 % of the variance.
/// 3.6 lies 0.1 mm from its limit and 2.9 lies 0.2 mm from it: both nearer than 0.2082 mm, the second by the reading
/// off alone. 3.2 and 3.0 are farther away; 3.8 is out.
TEST_F(DoubtWords, CountWhatIsInByItsGraceAndShowTheShareOfReadingOff)
{
    const auto record =
        recordOf({{"3.2", 3.2}, {"3.6", 3.6}, {"2.9", 2.9}, {"3.0", 3.0}, {"3.8", 3.8}}, Length::millimetres(0.2));
    EXPECT_EQ(sale_record::pairsInDoubtOf(record.asLeft), 2);
    const QString english = said(record);
    EXPECT_TRUE(english.contains("Readings that are inside their limits, but nearer to one than the doubt of the "
                                 "measuring (gauge, people, reading off): 2."))
        << english.toStdString();
    EXPECT_TRUE(
        english.contains("How finely they were read off makes up 8 % of that doubt (of its variance, the median "
                         "of the readings); the rest is gauge and people."));
    const QString german = said(record, Language::German);
    EXPECT_TRUE(
        german.contains("einer Grenze aber näher sind als der Messzweifel (Messmittel, Personen, Ablesung): 2."))
        << german.toStdString();
    EXPECT_TRUE(
        german.contains("Wie fein sie abgelesen sind, macht 8 % dieses Messzweifels aus (seiner Varianz, Median "
                        "der Messwerte); das Übrige sind Messmittel und Personen."));
}

/// 1/64 in read off a rule: a = 1/128 in = 0.1984 mm, u = a / sqrt(3) = 0.1146 mm, U = 0.2291 mm. 9/64 in = 3.5719 mm
/// lies 0.1281 mm from its limit.
TEST_F(DoubtWords, OfAReadingToASixtyFourthAreTheReadingOffAlone)
{
    const auto record = recordOf({{"9/64", 3.571875}}, {});
    const auto &doubt = record.asLeft.judgement.verdicts.front().doubt;
    ASSERT_TRUE(doubt);
    EXPECT_NEAR(doubt->expanded(), 0.2291, 0.00005);
    const QString english = said(record);
    EXPECT_TRUE(english.contains("the doubt of the measuring (gauge, people, reading off): 1."));
    EXPECT_TRUE(english.contains("so that only how finely the readings were read off is counted."));
    EXPECT_TRUE(said(record, Language::German).contains("sodass nur zählt, wie fein die Messwerte abgelesen sind."));
}

/// Nothing lies within U = 0.2082 mm of a limit.
TEST_F(DoubtWords, SayThatNothingIsNearALimitWhereNothingIs)
{
    const auto record = recordOf({{"3.2", 3.2}, {"3.0", 3.0}, {"3.4", 3.4}}, Length::millimetres(0.2));
    const char *english =
        "No reading that is inside its limits lies so near to one that the doubt of the measuring could "
        "put it outside.";
    EXPECT_TRUE(said(record).contains(english));
    EXPECT_TRUE(said(record, Language::German).contains("Kein Messwert, der innerhalb seiner Grenzen liegt"));
}

/// Each finer figure typed makes the share smaller: to a hundredth, a = 0.005 mm, u = 0.00289 mm, share 0.08 %.
TEST_F(DoubtWords, ShowTheShareOfWhatWasTyped)
{
    EXPECT_TRUE(said(recordOf({{"3.20", 3.2}}, Length::millimetres(0.2))).contains("makes up 0 % of that doubt"));
    EXPECT_TRUE(said(recordOf({{"3", 3}}, Length::millimetres(0.2))).contains("makes up 89 % of that doubt"))
        << "a = 0.5 mm, u = 0.2887 mm: 0.08333 of 0.09333";
}

} // namespace
} // namespace hammerline::record_pdf
