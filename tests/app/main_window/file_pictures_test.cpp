// The form of work, photographs added one by one as a person does, the page of another set, and the bar of an edited
// logbook; with HAMMERLINE_PICTURES=<folder> each is saved to be looked at.
#include "app/main_window/screens.h"
#include "app/main_window/window_desk.h"
#include "main_window/edited_watch.h"

#include <QComboBox>
#include <QDialog>
#include <QImage>
#include <QLinearGradient>
#include <QPainter>
#include <QPushButton>
#include <QRadioButton>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>

#include <cstdlib>

namespace hammerline::main_window {
namespace {

class FilePictures : public WindowDesk, public ::testing::WithParamInterface<Screen> {
protected:
    const OnScreen screen{GetParam()};

    FilePictures()
    {
        for (int note = 1; note <= 88; ++note)
            shop.book.enter(shop.pass.id,
                            {.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1},
                             .value = units::Length::millimetres(2.8 + note % 7 * 0.2),
                             .typed = "x"},
                            shop.stamp());
        window = openWindow();
        window->resize(GetParam().size);
    }
    static void save(QWidget &shown, const char *what)
    {
        QTest::qWait(60); // layouts within layouts settle one after the other
        EXPECT_LE(shown.width(), GetParam().size.width());
        EXPECT_LE(shown.height(), GetParam().size.height());
        keepPicture(shown, what, GetParam());
    }
    /// An invented keyboard, seen from the front, before or after.
    QString picture(const QString &name, QSize size, bool after)
    {
        QImage image(size, QImage::Format_RGB32);
        QPainter painter(&image);
        QLinearGradient wood(0, 0, 0, size.height());
        wood.setColorAt(0, after ? QColor(90, 50, 30) : QColor(70, 60, 50));
        wood.setColorAt(1, after ? QColor(40, 20, 10) : QColor(50, 45, 40));
        painter.fillRect(image.rect(), wood);
        const double wide = size.width() / 30.0;
        for (int key = 2; key < 28; ++key)
            painter.fillRect(QRectF(key * wide, size.height() * (after || key % 5 != 0 ? 0.5 : 0.53), wide * 0.94,
                                    size.height() * 0.3),
                             after ? QColor(245, 243, 235) : QColor(215, 200, 160));
        painter.end();
        const QString path = folder.filePath(name);
        EXPECT_TRUE(image.save(path));
        return path;
    }
    void addPhotograph(const QString &path, dossier::Moment moment, const QString &view, const char *pictured = nullptr)
    {
        prompts.willPick(path);
        part<QPushButton>(*window, "photographAdd")->click();
        auto *form = part<QDialog>(*window, "photographForm");
        auto *when = part<QComboBox>(*form, "photographMoment");
        when->setCurrentIndex(when->findData(static_cast<int>(moment)));
        part<QComboBox>(*form, "photographView")->setCurrentText(view);
        part<QLineEdit>(*form, "photographCaption")->setText("by daylight");
        if (pictured != nullptr)
            save(*form, pictured);
        form->accept();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }

    std::unique_ptr<MainWindow> window;
};

TEST_P(FilePictures, OfTheFormOfWork)
{
    trigger(*window, "viewFile");
    part<QPushButton>(*window, "workAdd")->click();
    auto *form = part<QDialog>(*window, "workForm");
    save(*form, "work-form");
    part<QLineEdit>(*form, "workDay")->setText("yesterday");
    form->accept();
    QTest::qWait(20);
    save(*form, "work-form-refused");
    form->reject();
}

TEST_P(FilePictures, OfPhotographsAddedOneByOne)
{
    trigger(*window, "viewFile");
    part<QTabWidget>(*window, "filePages")->setCurrentIndex(2);
    addPhotograph(picture("a.jpg", {3000, 2000}, false), dossier::Moment::AsReceived, "front", "photograph-form");
    addPhotograph(picture("b.png", {2000, 3000}, true), dossier::Moment::AsItLeaves, "front");
    addPhotograph(picture("c.jpg", {4000, 1000}, true), dossier::Moment::AsItLeaves, "keys");
    const auto *table = part<QTableWidget>(*window, "photographTable");
    EXPECT_EQ(table->rowCount(), 2) << "the two of one view stand side by side";
    EXPECT_FALSE(table->item(0, 0)->icon().isNull());
    EXPECT_FALSE(table->item(0, 1)->icon().isNull());
    EXPECT_EQ(table->item(1, 0)->text(), "none of this view");
    save(*window, "photographs");
    const auto *add = part<QPushButton>(*window, "photographAdd");
    EXPECT_EQ(add->visibleRegion().boundingRect(), add->rect()) << "below what the screen shows";
}

TEST_P(FilePictures, OfThePageOfAnotherSet)
{
    trigger(*window, "viewShop");
    part<QRadioButton>(*window, "shopRejudge")->click();
    save(*window, "another-set-none");
    auto *set = part<QComboBox>(*window, "rejudgeSet");
    set->setCurrentIndex(set->count() - 2);
    emit set->activated(set->currentIndex());
    const auto *table = part<QTableView>(*window, "rejudgeTable");
    QTRY_VERIFY_WITH_TIMEOUT(table->isVisible(), 20'000);
    save(*window, "another-set");
}

TEST_P(FilePictures, OfAnEditedLogbook)
{
    ASSERT_EQ(
        std::system(("sqlite3 '" + shop.path() + "' 'UPDATE reading SET value = value + 1 WHERE note < 9'").c_str()),
        0);
    window->views().watch().setPace({std::chrono::milliseconds(1), std::chrono::milliseconds(1),
                                     std::chrono::milliseconds(50), std::chrono::minutes(60)});
    const auto *bar = part(*window, "editedBar");
    QTRY_VERIFY(bar->isVisible());
    save(*window, "edited");
    const auto *help = part<QLabel>(*window, "editedHelp");
    EXPECT_NE(help->isVisible(), part(*window, "editedMore")->isVisible());
    if (!help->isVisible())
        part<QPushButton>(*window, "editedMore")->click();
    QTest::qWait(60);
    if (GetParam().textScale < 2) {
        EXPECT_GE(help->height(), help->heightForWidth(help->width())) << "no line of it is cut";
    }
    EXPECT_GT(help->visibleRegion().boundingRect().height(), 0);
    save(*window, "edited-helped");
    window->tellTrouble("The disk is full.");
    save(*window, "edited-and-trouble");
}

INSTANTIATE_TEST_SUITE_P(Looks, FilePictures, ::testing::ValuesIn(everyScreen()), nameOfScreen);

} // namespace
} // namespace hammerline::main_window
