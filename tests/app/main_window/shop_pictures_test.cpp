// The shop's view with a dozen instruments; with HAMMERLINE_PICTURES=<folder> each is saved to be looked at.
#include "app/main_window/screens.h"
#include "app/main_window/window_desk.h"
#include "main_window/rejudge_page.h"

#include <QComboBox>
#include <QRadioButton>

#include <cmath>

namespace hammerline::main_window {
namespace {

class ShopPictures : public WindowDesk, public ::testing::WithParamInterface<Screen> {
protected:
    const OnScreen screen{GetParam()};

    ShopPictures()
    {
        for (int number = 0; number < 12; ++number) {
            auto piano = shop.grand;
            piano.id = 0, piano.uid.clear(), piano.name = "Grand number " + std::to_string(number + 1);
            piano = shop.book.addInstrument(piano, shop.stamp()).value();
            static_cast<void>(shop.book.importPass({.instrument = piano.id, .began = shop.stamp().at, .person = "Ada"},
                                                   readings(number), shop.stamp()));
        }
    }
    static std::vector<readings::Reading> readings(int number)
    {
        std::vector<readings::Reading> many;
        for (const auto &[quantity, middle] : {std::pair(catalogue::Quantity::Blow, 45.6),
                                               {catalogue::Quantity::LetOff, 2.6},
                                               {catalogue::Quantity::Drop, 1.8},
                                               {catalogue::Quantity::Dip, 10.1}})
            for (int note = 1; note <= 88; ++note) {
                const double off = (0.4 + 0.1 * number) * (((note * (29 + number)) % 19 - 9) / 9.0);
                const units::Amount value = units::Length::millimetres(std::round((middle + off) * 20) / 20);
                many.push_back({.place = {quantity, keyboard::Note(note), 1}, .value = value, .typed = "x"});
            }
        return many;
    }
    static void save(QWidget &shown, const char *what) { keepPicture(shown, what, GetParam()); }
};

TEST_P(ShopPictures, OfItsFiguresAndOfWhatAnotherSetWouldSay)
{
    const auto window = openWindow();
    window->resize(GetParam().size);
    trigger(*window, "viewShop");
    const ShopView &view = *window->views().shop();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !view.isReading(); }, 20'000));
    EXPECT_LE(window->minimumSizeHint().width(), 1366);
    EXPECT_LE(window->minimumSizeHint().height(), 768);
    save(*window, "shop");
    part<QRadioButton>(*window, "shopRejudge")->click();
    save(*window, "shop-no-set");
    auto *box = part<QComboBox>(*window, "rejudgeSet");
    const int row =
        1 + int(std::ranges::find(exchange::builtInToleranceSets(), "grand-under-2m", &exchange::BuiltIn::id) -
                exchange::builtInToleranceSets().begin());
    box->setCurrentIndex(row);
    emit box->activated(row);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !view.rejudge().isJudging(); }, 20'000));
    EXPECT_LE(window->minimumSizeHint().width(), 1366);
    save(*window, "shop-another-set");
    part<QComboBox>(*window, "rejudgeBy")->setCurrentIndex(1);
    save(*window, "shop-another-set-by-instrument");
}

INSTANTIATE_TEST_SUITE_P(SizesAndThemes, ShopPictures, ::testing::ValuesIn(everyScreen()), nameOfScreen);

} // namespace
} // namespace hammerline::main_window
