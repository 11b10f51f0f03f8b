// Before and after, the charts of several passes, and the shop, in two sizes and two themes; with
// HAMMERLINE_PICTURES=<folder> each is saved to be looked at.
#include "app/main_window/screens.h"
#include "app/main_window/window_desk.h"

#include "exchange/plan_inputs_json.h"

#include <QComboBox>
#include <QRadioButton>
#include <QTabWidget>

#include <cmath>

namespace hammerline::main_window {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::Purpose;

class ComparingPictures : public WindowDesk, public ::testing::WithParamInterface<Screen> {
protected:
    const OnScreen screen{GetParam()};

    /// A pass of every note: around the targets by so much, and all of it larger by `more`.
    void read(instrument::InstrumentId id, Purpose purpose, int month, const std::string &person, double wild,
              double more)
    {
        readings::Pass pass{.instrument = id, .purpose = purpose, .person = person};
        pass.began = shop.stamp().at + std::chrono::hours(24 * 30 * month);
        pass.climate = {20.0 + month % 3, 42.0 + 5 * ((month * 7) % 5)};
        pass.gauge = {"dial", units::Length::millimetres(0.05), units::Length::millimetres(0.06)};
        std::vector<readings::Reading> many;
        const auto put = [&](Quantity quantity, int note, double mm) {
            const units::Amount value = units::Length::millimetres(std::round(mm * 20) / 20);
            many.push_back({.place = {quantity, Note(note), 1}, .value = value, .typed = units::exactDecimal(value)});
        };
        for (int note = 1; note <= 88; ++note) {
            const double wave = std::sin(note * 0.35) * 0.6 + std::sin(note * 1.7 + month) * 0.4;
            put(Quantity::LetOff, note, 3.2 + more + 0.9 * wave * wild + (note == 40 && month == 1 ? 1.5 : 0));
            put(Quantity::Drop, note, 2.0 + more / 2 + 0.7 * wave * wild);
            put(Quantity::Blow, note, 46 + 2 * more + 1.6 * wave * wild);
        }
        static_cast<void>(shop.book.importPass(pass, many, shop.stamp()));
    }
    void fillShop()
    {
        read(shop.grand.id, Purpose::AsFound, 0, "Ada", 1, 0.25);
        read(shop.grand.id, Purpose::AsLeft, 1, "Ada", 0.35, 0);
        read(shop.grand.id, Purpose::Recheck, 8, "Ben", 0.36, 0.1);
        read(shop.grand.id, Purpose::Recheck, 14, "Ada", 0.37, 0.22);
        for (int number = 1; number <= 6; ++number) {
            instrument::Instrument more = shop.grand;
            more.id = 0;
            more.uid.clear();
            more.name = "Piano " + std::to_string(number);
            const auto id = shop.book.addInstrument(more, shop.stamp()).value().id;
            const char *const person = number % 3 == 0 ? "Cleo" : number % 3 == 1 ? "Ada" : "Ben";
            read(id, Purpose::AsFound, number, person, 0.8 + 0.1 * number, 0.3);
            read(id, Purpose::AsLeft, number + 1, person, 0.3 + 0.06 * number, 0);
        }
        plan();
    }
    void plan()
    {
        action::PlanTask task{.values = shop.book.values(shop.pass.id + 1), .set = support::plainSet()};
        task.setup.action = catalogue::ActionKind::Grand;
        task.setup.adjustments[Quantity::LetOff] = {
            .step = units::Length::millimetres(0.05), .most = units::Length::millimetres(3), .minutes = 1.5};
        shop.book.keepPlan(shop.pass.id + 1, exchange::planInputsJson(task), shop.stamp());
        for (int note = 1; note < 30; ++note)
            shop.book.logWork(shop.pass.id + 1, "let_off " + std::to_string(note) + " by -0.1 mm",
                              std::chrono::seconds(70 + note), shop.stamp());
    }
    static void save(QWidget &shown, const char *what) { keepPicture(shown, what, GetParam()); }
};

TEST_P(ComparingPictures, OfPassesHeldAgainstEachOtherAndOfTheShop)
{
    fillShop();
    const auto window = openWindow();
    window->resize(GetParam().size);
    emit window->views().pairChosen(Quantity::LetOff, Note(40));
    trigger(*window, "viewFile");
    part<QTabWidget>(*window, "filePages")->setCurrentIndex(5);
    save(*window, "before-after");
    trigger(*window, "viewCharts");
    for (const char *question : {"chartMoved", "chartDrifted", "chartAgree"}) {
        part<QRadioButton>(*window, question)->click();
        save(*window, question);
    }
    trigger(*window, "viewShop");
    EXPECT_TRUE(QTest::qWaitFor([&] { return !window->views().shop()->isReading(); }, 20'000));
    save(*window, "shop-person");
    part<QComboBox>(*window, "shopBy")->setCurrentIndex(2);
    save(*window, "shop-month");
    part<QComboBox>(*window, "shopBy")->setCurrentIndex(1);
    part<QRadioButton>(*window, "shopHours")->click();
    save(*window, "shop-hours");
    EXPECT_LE(window->minimumSizeHint().width(), 1366);
    EXPECT_LE(window->minimumSizeHint().height(), 768);
}

INSTANTIATE_TEST_SUITE_P(SizesAndThemes, ComparingPictures, ::testing::ValuesIn(everyScreen()), nameOfScreen);

} // namespace
} // namespace hammerline::main_window
