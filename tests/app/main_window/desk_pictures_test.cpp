// The lead's desk with rows in each of its three lists; with HAMMERLINE_PICTURES=<folder> each is saved to be looked
// at.
#include "app/main_window/window_desk.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QTableView>

#include <cmath>

namespace hammerline::main_window {
namespace {

struct Screen {
    QSize size;
    wording::Theme theme;
    double textScale;
    const char *name;
};

class DeskPictures : public WindowDesk, public ::testing::WithParamInterface<Screen> {
protected:
    DeskPictures()
    {
        wording::setTextScale(GetParam().textScale);
        wording::applyTheme(*qApp, GetParam().theme);
        for (int note = 1; note <= 88; ++note)
            put(note, 3.3 + 0.9 * (((note * 37) % 23 - 11) / 11.0));
        decide();
    }
    ~DeskPictures() override
    {
        wording::setTextScale(1);
        wording::applyTheme(*qApp, wording::Theme::Light);
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
        const QString where = qEnvironmentVariable("HAMMERLINE_PICTURES");
        if (!where.isEmpty())
            window->grab().save(QDir(where).filePath(QString("desk-%1-%2.png").arg(list).arg(GetParam().name)));
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, DeskPictures,
                         ::testing::Values(Screen{{1366, 768}, wording::Theme::Light, 1, "1366-light"},
                                           Screen{{1366, 768}, wording::Theme::Dark, 1, "1366-dark"},
                                           Screen{{1366, 768}, wording::Theme::Light, 2, "1366-light-double"}),
                         [](const auto &chosen) { return QString(chosen.param.name).replace('-', '_').toStdString(); });

} // namespace
} // namespace hammerline::main_window
