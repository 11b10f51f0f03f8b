// The lead's desk with rows in each of its three lists; with HAMMERLINE_PICTURES=<folder> each is saved to be looked
// at.
#include "app/main_window/screens.h"
#include "app/main_window/window_desk.h"

#include <QComboBox>
#include <QTableView>

#include <cmath>

namespace hammerline::main_window {
namespace {

class DeskPictures : public WindowDesk, public ::testing::WithParamInterface<Screen> {
protected:
    const OnScreen screen{GetParam()};

    DeskPictures()
    {
        for (int note = 1; note <= 88; ++note)
            put(note, 3.3 + 0.9 * (((note * 37) % 23 - 11) / 11.0));
        decide();
    }
    void put(int note, double mm)
    {
        const double steps = std::round(mm * 20) / 20;
        shop.book.enter(shop.pass.id,
                        {.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1},
                         .value = units::Length::millimetres(steps),
                         .typed = std::to_string(steps),
                         .person = "Ada"},
                        shop.stamp());
    }
    /// Of what is out, a third is accepted, a third sent back and mended, and a third waits.
    void decide()
    {
        const logbook::Stamp lead{shop.stamp().at, "Lea"};
        std::vector<int> back;
        int turn = 0;
        for (const readings::Reading &reading : shop.book.readings(shop.pass.id)) {
            const double mm = reading.value.asLength().inMillimetres();
            if (mm >= 2.7 && mm <= 3.7)
                continue;
            decisions::Decision item{.quantity = catalogue::Quantity::LetOff, .note = reading.place.note};
            item.value = reading.value;
            if (++turn % 3 == 1) {
                item.words = "the button is at its end; the owner knows and wants it left as it is for this season";
                ASSERT_TRUE(shop.book.accept(shop.pass.id, {item}, lead));
            } else if (turn % 3 == 2) {
                item.words = "turn the button once more";
                ASSERT_TRUE(shop.book.sendBack(shop.pass.id, {item}, lead));
                back.push_back(reading.place.note.number());
            }
        }
        for (const int note : back)
            put(note, 3.2);
    }
};

TEST_P(DeskPictures, OfTheThreeListsWithRowsInThem)
{
    const auto window = openWindow();
    window->resize(GetParam().size);
    trigger(*window, "viewReview");
    auto *table = part<QTableView>(*window, "reviewTable");
    for (int list = 0; list < 3; ++list) {
        part<QComboBox>(*table->parentWidget(), "deskList")->setCurrentIndex(list);
        QCoreApplication::processEvents();
        EXPECT_GT(table->model()->rowCount(), 5) << list;
        EXPECT_LE(table->geometry().right(), table->parentWidget()->width());
        for (const char *name : {"deskList", "acceptChosen", "sendBackChosen", "filterAge", "showMissing"})
            for (const auto *part : table->parentWidget()->findChildren<QWidget *>(name)) {
                const int right = part->mapTo(table->parentWidget(), part->rect().topRight()).x();
                EXPECT_LE(right, table->parentWidget()->width()) << name << " is cut";
            }
        keepPicture(*window, QString("desk-%1").arg(list), GetParam());
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, DeskPictures, ::testing::ValuesIn(smallScreens()), nameOfScreen);

} // namespace
} // namespace hammerline::main_window
