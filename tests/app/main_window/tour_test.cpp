// A walk through the demonstration workshop, every view, page and dialog, on a small screen and on a large one, in both
// themes and up to twice the text size: every word is read whole. With HAMMERLINE_PICTURES=<folder> each is saved to be
// looked at.
#include "app/main_window/screens.h"
#include "app/main_window/what_is_cut.h"
#include "app/main_window/window_desk.h"
#include "support/command_run.h"

#include <QComboBox>
#include <QDialog>
#include <QPointer>
#include <QTabWidget>
#include <QTableView>
#include <QTreeWidget>

namespace hammerline::main_window {
namespace {

class Tour : public WindowDesk, public ::testing::WithParamInterface<Screen> {
protected:
    const OnScreen screen{GetParam()};

    Tour()
    {
        EXPECT_EQ(test_support::runCommand({"demo", demo().toStdString()}).status, 0);
        window = std::make_unique<MainWindow>(surroundings());
        window->resize(GetParam().size);
        window->show();
    }
    [[nodiscard]] QString demo() const { return folder.filePath("demo.hammerline"); }
    /// With the first instrument of the workshop and its newest pass.
    void openDemo() const
    {
        ASSERT_TRUE(window->openLogbook(demo()));
        auto *tree = part<QTreeWidget>(*window, "workshopTree");
        ASSERT_GT(tree->topLevelItemCount(), 0);
        tree->setCurrentItem(tree->topLevelItem(0));
        ASSERT_NE(window->workshop().pass(), nullptr);
    }
    static void look(QWidget &shown, const QString &what)
    {
        for (int turn = 0; turn < 8; ++turn) // columns and rows are fitted when their table has its width
            QCoreApplication::processEvents();
        keepPicture(shown, "tour-" + what, GetParam());
        const QStringList cut = whatIsCut(shown);
        EXPECT_TRUE(cut.isEmpty()) << what.toStdString() << ":\n" << cut.join('\n').toStdString();
    }
    [[nodiscard]] QPointer<QDialog> dialog() const
    {
        for (QDialog *each : window->findChildren<QDialog *>())
            if (each->isVisible())
                return each;
        return {};
    }

    std::unique_ptr<MainWindow> window;
};

TEST_P(Tour, OfEveryViewCutsNoWord)
{
    look(*window, "start");
    openDemo();
    for (const char *view :
         {"viewBench", "viewReadings", "viewWorst", "viewPlan", "viewReview", "viewStudies", "viewShop"}) {
        trigger(*window, view);
        look(*window, view);
    }
    trigger(*window, "viewReview");
    auto *lists = part<QComboBox>(*part<QTableView>(*window, "reviewTable")->parentWidget(), "deskList");
    for (int list = 0; list < lists->count(); ++list) {
        lists->setCurrentIndex(list);
        look(*window, QString("review-%1").arg(list));
    }
    trigger(*window, "viewStudies");
    for (const char *page : {"studyWords", "studyValues", "studyRanges", "studySources"}) {
        part<QAbstractButton>(*window, page)->click();
        look(*window, page);
    }
    trigger(*window, "viewShop");
    for (const char *question : {"shopHours", "shopRejudge"}) {
        part<QAbstractButton>(*window, question)->click();
        look(*window, question);
    }
    trigger(*window, "viewCharts");
    for (const char *question : {"chartAlong", "chartSpread", "chartMoved", "chartDrifted", "chartAgree"}) {
        part<QAbstractButton>(*window, question)->click();
        look(*window, question);
    }
    trigger(*window, "viewFile");
    auto *pages = part<QTabWidget>(*window, "filePages");
    for (int page = 0; page < pages->count(); ++page) {
        pages->setCurrentIndex(page);
        look(*window, QString("file-%1").arg(page));
    }
}

TEST_P(Tour, OfEveryDialogCutsNoWord)
{
    constexpr int titleBar = 40;
    openDemo();
    const QSize room = GetParam().size - QSize(0, titleBar);
    for (const char *action : {"takeIn", "changeInstrument", "chooseSet", "beginPass", "changePass", "benchKeys",
                               "chooseGauge", "trustedKeys"}) {
        trigger(*window, action);
        QCoreApplication::processEvents();
        const QPointer<QDialog> asked = dialog();
        ASSERT_NE(asked, nullptr) << action;
        EXPECT_LE(asked->minimumSizeHint().width(), room.width()) << action;
        EXPECT_LE(asked->minimumSizeHint().height(), room.height()) << action;
        asked->resize((QSize(1080, 700) * GetParam().textScale).boundedTo(room));
        look(*asked, action);
        delete asked;
    }
}

INSTANTIATE_TEST_SUITE_P(Screens, Tour, ::testing::ValuesIn(walkedScreens()), nameOfScreen);

} // namespace
} // namespace hammerline::main_window
