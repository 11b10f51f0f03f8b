#include "wording/wording.h"

#include <gtest/gtest.h>

#include <QSet>

namespace hammerline::wording {
namespace {

TEST(Names, EveryQuantityHasANameAShortNameAndOneLineOfDefinition)
{
    QSet<QString> names;
    for (const auto &info : catalogue::all()) {
        names.insert(nameOf(info.quantity));
        EXPECT_FALSE(shortNameOf(info.quantity).isEmpty());
        EXPECT_LE(shortNameOf(info.quantity).size(), 9) << shortNameOf(info.quantity).toStdString();
        const QString definition = definitionOf(info.quantity);
        EXPECT_TRUE(definition.endsWith(u'.')) << definition.toStdString();
        EXPECT_FALSE(definition.contains(u'\n'));
    }
    EXPECT_EQ(names.size(), catalogue::quantityCount);
}

TEST(Names, LetOffIsDefinedFromTheStringAndDropFromLetOff)
{
    EXPECT_TRUE(definitionOf(catalogue::Quantity::LetOff).contains("string"));
    EXPECT_TRUE(definitionOf(catalogue::Quantity::Drop).contains("below the let-off point"));
}

TEST(Names, WordsStandInTheOrderOfTheirEnums)
{
    EXPECT_EQ(nameOf(catalogue::ActionKind::Grand), "Grand");
    EXPECT_EQ(nameOf(readings::Purpose::AsLeft), "As left");
    EXPECT_EQ(nameOf(instrument::State::InReview), "In review");
    EXPECT_EQ(nameOf(tolerance::Status::Missing), "Not read");
    EXPECT_EQ(nameOf(readings::DipDatum::OverFrontPin), "Over the front pin");
    EXPECT_EQ(nameOf(readings::DropDatum::FromString), "From the string");
    EXPECT_NE(nameOf(tolerance::Rule::Simple), nameOf(tolerance::Rule::Guarded));
}

TEST(Names, ANoteIsWrittenWithTheSignOfTheMusician)
{
    EXPECT_EQ(nameOf(keyboard::Note(53)), QStringLiteral("C\u266f5"));
    EXPECT_EQ(nameOf(keyboard::Note(49)), "A4");
}

TEST(Names, EveryDirectionOfEveryQuantityHasItsOwnWords)
{
    for (const auto &info : catalogue::all()) {
        EXPECT_NE(directionText(info.quantity, Direction::TooSmall), directionText(info.quantity, Direction::TooLarge));
        EXPECT_NE(remedyText(info.quantity, Direction::TooSmall), remedyText(info.quantity, Direction::TooLarge));
        EXPECT_TRUE(remedyText(info.quantity, Direction::OnTarget).isEmpty());
    }
}

TEST(Names, AFaultSaysFileAndLineWhereTheyAreKnown)
{
    EXPECT_EQ(faultText({"a.csv", 12, "no such note"}), "a.csv, line 12: no such note");
    EXPECT_EQ(faultText({"a.csv", 0, "is empty"}), "a.csv: is empty");
    EXPECT_EQ(faultText({"", 0, "too long"}), "too long");
}

TEST(Names, AFileNameWithAPercentSignStaysAsItIs)
{
    EXPECT_EQ(faultText({"100%2.csv", 3, "50%1"}), "100%2.csv, line 3: 50%1");
}

TEST(Names, ManyFaultsAreCountedBeyondTheFirst)
{
    const std::vector<outcome::Fault> faults(5, {"", 0, "bad"});
    EXPECT_EQ(faultsText(faults, 2), "bad\nbad\nand 3 more");
    EXPECT_EQ(faultsText(faults, 5), "bad\nbad\nbad\nbad\nbad");
}

} // namespace
} // namespace hammerline::wording
