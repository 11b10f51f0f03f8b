// The shop's view with a dozen instruments; with HAMMERLINE_PICTURES=<folder> each is saved to be looked at.
#include "app/main_window/window_desk.h"
#include "main_window/rejudge_page.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QRadioButton>

#include <cmath>

namespace hammerline::main_window {
namespace {

struct Screen {
    QSize size;
    wording::Theme theme;
    double textScale;
    const char *name;
};

class ShopPictures : public WindowDesk, public ::testing::WithParamInterface<Screen> {
protected:
    ShopPictures()
    {
        wording::setTextScale(GetParam().textScale);
        wording::applyTheme(*qApp, GetParam().theme);
        for (int number = 0; number < 12; ++number) {
            auto piano = shop.grand;
            piano.id = 0, piano.uid.clear(), piano.name = "Grand number " + std::to_string(number + 1);
            piano = shop.book.addInstrument(piano, shop.stamp()).value();
            static_cast<void>(shop.book.importPass({.instrument = piano.id, .began = shop.stamp().at, .person = "Ada"},
                                                   readings(number), shop.stamp()));
        }
    }
    ~ShopPictures() override
    {
        wording::setTextScale(1);
        wording::applyTheme(*qApp, wording::Theme::Light);
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
    static void save(QWidget &window, const char *what)
    {
        QCoreApplication::processEvents();
        const QString where = qEnvironmentVariable("HAMMERLINE_PICTURES");
        const QPixmap picture = window.grab();
        EXPECT_FALSE(picture.isNull());
        if (!where.isEmpty())
            picture.save(QDir(where).filePath(QString("%1-%2.png").arg(what, GetParam().name)));
    }
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

INSTANTIATE_TEST_SUITE_P(SizesAndThemes, ShopPictures,
                         ::testing::Values(Screen{{1366, 768}, wording::Theme::Light, 1, "1366-light"},
                                           Screen{{1366, 768}, wording::Theme::Dark, 1, "1366-dark"},
                                           Screen{{2560, 1440}, wording::Theme::Light, 1, "2560-light"},
                                           Screen{{2560, 1440}, wording::Theme::Dark, 1, "2560-dark"},
                                           Screen{{1366, 768}, wording::Theme::Light, 2, "1366-light-double"}),
                         [](const auto &chosen) { return QString(chosen.param.name).replace('-', '_').toStdString(); });

} // namespace
} // namespace hammerline::main_window
