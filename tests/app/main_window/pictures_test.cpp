// The window in two sizes and two themes: nothing is cut, and with HAMMERLINE_PICTURES=<folder> each is saved to be
// looked at.
#include "app/main_window/screens.h"
#include "app/main_window/spot_check_desk.h"

#include "plan_sheet/setup_form.h"

#include <QBuffer>
#include <QCheckBox>
#include <QDialog>
#include <QDoubleSpinBox>
#include <QImage>
#include <QTabWidget>
#include <QTableView>

#include <cmath>

namespace hammerline::main_window {
namespace {

class Pictures : public SpotCheckDesk, public ::testing::WithParamInterface<Screen> {
protected:
    const OnScreen screen{GetParam()};

    /// Two passes as a workshop has them: let-off and blow as found, let-off as left half done.
    void fillShop()
    {
        for (int n = 1; n <= 88; ++n) {
            const double wave = ((n * 37) % 23 - 11) / 11.0;
            if (n % 17 != 0)
                put(shop.pass, catalogue::Quantity::LetOff, n, 3.3 + 0.9 * wave);
            put(shop.pass, catalogue::Quantity::Blow, n, 46.2 + 1.4 * wave);
        }
        const readings::Pass left = shop.begin(readings::Purpose::AsLeft);
        for (int n = 1; n <= 40; ++n)
            put(left, catalogue::Quantity::LetOff, n, 3.2 + 0.3 * (((n * 29) % 19 - 9) / 9.0) + (n == 40 ? 0.9 : 0));
    }
    using SpotCheckDesk::put;
    void put(const readings::Pass &pass, catalogue::Quantity quantity, int note, double mm)
    {
        readings::Reading reading;
        reading.place = {quantity, keyboard::Note(note), 1};
        reading.value = units::Length::millimetres(std::round(mm * 20) / 20);
        reading.typed = std::to_string(mm);
        shop.book.enter(pass.id, reading, shop.stamp());
    }
    [[nodiscard]] static std::string picture()
    {
        QImage drawn(320, 240, QImage::Format_RGB32);
        drawn.fill(Qt::darkCyan);
        QByteArray jpeg;
        QBuffer buffer(&jpeg);
        EXPECT_TRUE(drawn.save(&buffer, "JPG"));
        return jpeg.toStdString();
    }
    /// Something on each page of the file.
    void fillFile()
    {
        const auto add = [this](dossier::WorkEntry entry) {
            EXPECT_TRUE(shop.book.addWork(shop.grand.id, std::move(entry), shop.stamp()));
        };
        using namespace std::chrono_literals;
        add({.what = "hammers", .material = "felt", .person = "Ada", .day = 2026y / 2 / 20, .took = 540min});
        add({.kind = dossier::WorkKind::Recovered,
             .what = "key tops",
             .material = "a plastic",
             .person = "Ben",
             .day = 2026y / 2 / 24,
             .took = 300min,
             .departure = true,
             .why = "the old covering was cracked on most keys"});
        shop.book.sayCondition(shop.grand.id, {dossier::Moment::AsReceived, dossier::Area::Keys},
                               {dossier::Grade::Poor, "cracked, three missing"}, shop.stamp());
        shop.book.sayCondition(shop.grand.id, {dossier::Moment::AsItLeaves, dossier::Area::Keys},
                               {dossier::Grade::Good, "recovered and levelled"}, shop.stamp());
        for (const auto moment : {dossier::Moment::AsReceived, dossier::Moment::AsItLeaves})
            EXPECT_TRUE(shop.book.addPhotograph(shop.grand.id,
                                                {.moment = moment, .view = "front", .caption = "from the left"},
                                                picture(), shop.stamp()));
    }
    static void save(QWidget &shown, const char *what) { keepPicture(shown, what, GetParam()); }
};

TEST_P(Pictures, OfEveryView)
{
    fillShop();
    const auto window = openWindow();
    window->resize(GetParam().size);
    type(*window, "3.85");
    QTest::keyClicks(part<QLineEdit>(*window, "entryField"), "3.2");
    EXPECT_LE(window->minimumSizeHint().width(), 1366);
    EXPECT_LE(window->minimumSizeHint().height(), 768);
    save(*window, "bench");
    QTest::keyClicks(part<QLineEdit>(*window, "entryField"), "x");
    QTest::keyClick(part<QLineEdit>(*window, "entryField"), Qt::Key_Return);
    save(*window, "refused");
    for (const char *view : {"viewCharts", "viewReadings", "viewWorst", "viewReview"}) {
        trigger(*window, view);
        save(*window, view);
    }
    fillFile();
    trigger(*window, "viewFile");
    auto *pages = part<QTabWidget>(*window, "filePages");
    for (int page = 0; page < pages->count(); ++page) {
        pages->setCurrentIndex(page);
        save(*window, QStringLiteral("file-%1").arg(page).toUtf8().constData());
    }
    window->tellTrouble("The disk is full: the last reading could not be stored.");
    trigger(*window, "viewBench");
    save(*window, "trouble");
}

TEST_P(Pictures, OfThePlanItsSetupAndWhatWillBeAfterIt)
{
    fillShop();
    const auto window = openWindow();
    window->resize(GetParam().size);
    window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(60));
    for (int note = 60; note < 80; ++note)
        type(*window, note % 3 == 0 ? "3.85" : "2.55");
    trigger(*window, "viewPlan");
    EXPECT_LE(window->minimumSizeHint().width(), 1366);
    save(*window, "plan");
    QTest::mouseClick(part(*window, "planEditSetup"), Qt::LeftButton);
    auto *form = window->findChild<plan_sheet::SetupForm *>();
    part<QLineEdit>(*form, "trialTurned")->setText("1/4");
    part<QLineEdit>(*form, "trialBefore")->setText("3.8");
    part<QLineEdit>(*form, "trialAfter")->setText("3.2");
    QTest::mouseClick(part(*form, "trialTake"), Qt::LeftButton);
    EXPECT_LE(form->minimumSizeHint().height(), 768);
    save(*form, "setup");
    form->accept();
    auto *table = part<QTableView>(*window, "planTable");
    table->setCurrentIndex(table->model()->index(0, plan_sheet::PlanModel::Done));
    part<QDoubleSpinBox>(*window, "planTook")->setValue(12);
    QTest::keyClick(table, Qt::Key_Space);
    save(*window, "plan-ticked");
    trigger(*window, "viewCharts");
    part<QCheckBox>(*window, "chartPlan")->setChecked(true);
    save(*window, "after-plan");
}

TEST_P(Pictures, OfASpotCheckAndWhatItShows)
{
    fillFirstPass();
    const auto window = openWindow();
    window->resize(GetParam().size);
    draw(*window, "Lea", "30");
    readAgain(*window, 20);
    save(*window, "spot-check-bench");
    readAgain(*window);
    auto *page = part<QDialog>(*window, "spotCheckPage");
    EXPECT_LE(page->minimumSizeHint().width(), 1366);
    EXPECT_LE(page->minimumSizeHint().height(), 768);
    page->resize(std::min(page->width(), GetParam().size.width()), std::min(page->height(), GetParam().size.height()));
    if (GetParam().size.width() > 2000)
        page->resize(2000, 1100);
    save(*page, "spot-check");
}

TEST_P(Pictures, OfEmptyStartAndForms)
{
    MainWindow window(surroundings());
    window.resize(GetParam().size);
    window.show();
    save(window, "start");
    ASSERT_TRUE(window.createLogbook(folder.filePath("empty.hammerline")));
    save(window, "empty");
    trigger(window, "takeIn");
    save(*part<QDialog>(window, "instrumentForm"), "take-in");
    QTest::keyClicks(part<QLineEdit>(window, "instrumentName"), "Blue upright");
    QTest::mouseClick(part(*part<QDialog>(window, "instrumentForm"), "formAccept"), Qt::LeftButton);
    save(*part<QDialog>(window, "toleranceChooser"), "tolerances");
    part<QDialog>(window, "toleranceChooser")->accept();
    trigger(window, "beginPass");
    save(*part<QDialog>(window, "passForm"), "begin-pass");
}

INSTANTIATE_TEST_SUITE_P(SizesAndThemes, Pictures, ::testing::ValuesIn(everyScreen()), nameOfScreen);

} // namespace
} // namespace hammerline::main_window
