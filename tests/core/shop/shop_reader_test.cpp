#include "shop/shop_reader.h"

#include "exchange/plan_inputs_json.h"
#include "exchange/tolerance_json.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>

namespace hammerline::shop {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::Purpose;
using units::Length;

const logbook::Stamp ada{readings::parseRfc3339("2026-03-02T09:00:00Z").value(), "Ada"};
const logbook::Stamp ben{readings::parseRfc3339("2026-04-02T09:00:00Z").value(), "Ben"};

/// Let-off 3.2 ± 0.5 mm.
tolerance::ToleranceSet set()
{
    tolerance::ToleranceSet made{.name = "Plain", .action = catalogue::ActionKind::Grand};
    made.entries[Quantity::LetOff].both = {{.note = Note(1),
                                            .low = Length::millimetres(2.7),
                                            .target = Length::millimetres(3.2),
                                            .high = Length::millimetres(3.7)}};
    return made;
}

class ShopReaderTest : public testing::Test {
protected:
    ShopReaderTest() : book(make())
    {
        instrument::Instrument grand{.name = "Grey grand", .action = catalogue::ActionKind::Grand};
        grand.toleranceId = "Plain";
        grand.toleranceText = exchange::writeToleranceSet(set());
        piano = book.addInstrument(grand, ada).value().id;
    }
    ~ShopReaderTest() override { std::filesystem::remove_all(folder); }

    logbook::Logbook make()
    {
        std::string name = (std::filesystem::temp_directory_path() / "shop-XXXXXX").string();
        folder = mkdtemp(name.data());
        return logbook::Logbook::create((folder / "shop.hammerline").string(), ada).value();
    }
    readings::Pass begin(Purpose purpose, const logbook::Stamp &stamp = ada)
    {
        return book.beginPass({.instrument = piano, .purpose = purpose, .began = stamp.at, .person = stamp.person},
                              stamp);
    }
    void put(const readings::Pass &pass, int note, double mm, const logbook::Stamp &stamp = ada, int take = 1)
    {
        const units::Amount value = Length::millimetres(mm);
        book.enter(pass.id, {.place = {Quantity::LetOff, Note(note), take}, .value = value, .typed = "x"}, stamp);
    }
    const Tallies &readAll()
    {
        reader.begin(book);
        steps = 0;
        while (reader.readNext(book))
            ++steps;
        return reader.tallies();
    }

    std::filesystem::path folder;
    logbook::Logbook book;
    instrument::InstrumentId piano = 0;
    ShopReader reader;
    int steps = 0;
};

TEST_F(ShopReaderTest, AReadingCountsForWhoTookItAndANoteForWhoTookItsLastTake)
{
    const auto pass = begin(Purpose::AsFound);
    put(pass, 1, 3.2);
    put(pass, 2, 4.4);
    put(pass, 2, 4.6, ben, 2); // mean 4.5: out, Ben's
    put(pass, 3, 9.9);
    put(pass, 3, 3.3, ben); // corrected: in, Ben's
    const auto rows = rowsOf(readAll(), By::Person, {});
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[0].figures.readings, 2);
    EXPECT_EQ(rows[0].figures.found, (Share{1, 0}));
    EXPECT_EQ(rows[1].key, "Ben");
    EXPECT_EQ(rows[1].figures.readings, 2);
    EXPECT_EQ(rows[1].figures.found, (Share{2, 1}));
}

TEST_F(ShopReaderTest, AWithdrawnReadingDoesNotCount)
{
    const auto pass = begin(Purpose::AsFound);
    put(pass, 1, 3.2);
    put(pass, 2, 3.2);
    book.withdraw(pass.id, {Quantity::LetOff, Note(2), 1}, ada, "a slip");
    EXPECT_EQ(totalOf(readAll(), {}).readings, 1);
}

TEST_F(ShopReaderTest, AnImportedPassIsOfThePersonItNames)
{
    static_cast<void>(book.importPass(
        {.instrument = piano, .purpose = Purpose::AsLeft, .began = ada.at, .person = "Cleo"},
        {{.place = {Quantity::LetOff, Note(1), 1}, .value = units::Amount(Length::millimetres(3)), .typed = "3"}},
        ben));
    const auto rows = rowsOf(readAll(), By::Person, {});
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_EQ(rows[0].key, "Cleo");
    EXPECT_EQ(rows[0].figures.left, (Share{1, 0}));
}

TEST_F(ShopReaderTest, OnlyInstrumentsThatWereTouchedAreReadAgain)
{
    const auto other = book.addInstrument({.name = "Brown upright"}, ada).value().id;
    put(begin(Purpose::AsFound), 1, 3.2);
    readAll();
    EXPECT_EQ(steps, 2);
    readAll();
    EXPECT_EQ(steps, 0);
    const auto pass = book.beginPass({.instrument = other, .began = ada.at, .person = "Ada"}, ada);
    put(pass, 1, 3.2);
    EXPECT_EQ(totalOf(readAll(), {}).readings, 2);
    EXPECT_EQ(steps, 1);
}

TEST_F(ShopReaderTest, WorkCountsForWhoDidItWhenItWasDone)
{
    const auto pass = begin(Purpose::AsFound);
    book.logWork(pass.id, "let_off 1 by -0.6 mm", std::chrono::seconds(90), ben);
    book.logWork(pass.id, "rail rest_rail by 1.5 mm", std::chrono::seconds(0), ben);
    EXPECT_TRUE(book.addWork(piano, {.what = "hammers", .person = "Ada", .took = std::chrono::minutes(30)}, ada));
    const auto rows = rowsOf(readAll(), By::Quantity, {});
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[0].figures.untimed, 1);
    EXPECT_EQ(rows[0].figures.otherMinutes, 30);
    EXPECT_EQ(rows[1].key, "let_off");
    EXPECT_EQ(rows[1].figures.takenMinutes, 1.5);
    EXPECT_EQ(rowsOf(reader.tallies(), By::Month, {})[1].key, "2026-04");
}

TEST_F(ShopReaderTest, PlannedMinutesAreThoseOfTheKeptPlanMadeAnew)
{
    const auto pass = begin(Purpose::AsFound);
    put(pass, 1, 4.0);
    put(pass, 2, 3.2);
    action::PlanTask task{.values = book.values(pass.id), .set = set()};
    task.setup.action = catalogue::ActionKind::Grand;
    task.setup.adjustments[Quantity::LetOff] = {
        .step = Length::millimetres(0.1), .most = Length::millimetres(2), .minutes = 1.5};
    ASSERT_EQ(action::bestPlan(task).minutes, 1.5);
    book.keepPlan(pass.id, exchange::planInputsJson(task), ada);
    EXPECT_EQ(totalOf(readAll(), {}).plannedMinutes, 1.5);
    EXPECT_EQ(steps, 2);
    EXPECT_EQ(rowsOf(reader.tallies(), By::Quantity, {}).back().figures.plannedMinutes, 1.5);
    EXPECT_EQ(totalOf(reader.tallies(), {}).unreckoned, 0);
    book.keepPlan(pass.id, "no longer to be read", ada);
    EXPECT_EQ(totalOf(readAll(), {}).plannedMinutes, 0);
    EXPECT_EQ(totalOf(reader.tallies(), {}).unreckoned, 1);
    EXPECT_EQ(totalOf(reader.tallies(), {}).untimed, 0);
}

TEST_F(ShopReaderTest, WithoutASetReadingsCountUnjudged)
{
    auto changed = book.instrument(piano).value();
    changed.toleranceText.clear();
    ASSERT_TRUE(book.changeInstrument(changed, ada, {}));
    put(begin(Purpose::AsFound), 1, 9);
    EXPECT_EQ(totalOf(readAll(), {}).found, Share());
    EXPECT_EQ(totalOf(readAll(), {}).readings, 1);
}

} // namespace
} // namespace hammerline::shop
