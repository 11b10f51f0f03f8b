// A walk through the demonstration workshop, every view, page and dialog, on a small screen, on a large dark one and at
// twice the text size: every word is read whole, and each control says what it is. With HAMMERLINE_PICTURES=<folder>
// each is saved to be looked at.
#include "app/main_window/what_is_cut.h"
#include "app/main_window/window_desk.h"
#include "support/command_run.h"

#include <QApplication>
#include <QDialog>
#include <QDir>
#include <QTabWidget>
#include <QTreeWidget>

namespace hammerline::main_window {
namespace {

struct Screen {
    QSize size;
    wording::Theme theme;
    double textScale;
    const char *name;
};

class Tour : public WindowDesk, public ::testing::WithParamInterface<Screen> {
protected:
    Tour()
    {
        wording::setTextScale(GetParam().textScale);
        wording::applyTheme(*qApp, GetParam().theme);
        EXPECT_EQ(test_support::runCommand({"demo", demo().toStdString()}).status, 0);
        window = std::make_unique<MainWindow>(surroundings());
        window->resize(GetParam().size);
        window->show();
    }
    ~Tour() override
    {
        window.reset();
        wording::setTextScale(1);
        wording::applyTheme(*qApp, wording::Theme::Light);
    }
    [[nodiscard]] QString demo() const { return folder.filePath("demo.hammerline"); }
    void openDemo() { ASSERT_TRUE(window->openLogbook(demo())); }
    void look(QWidget &shown, const QString &what)
    {
        QCoreApplication::processEvents();
        QCoreApplication::processEvents();
        const QString where = qEnvironmentVariable("HAMMERLINE_PICTURES");
        if (!where.isEmpty())
            shown.grab().save(QDir(where).filePath(QString("tour-%1-%2.png").arg(what, GetParam().name)));
        const QStringList cut = whatIsCut(shown);
        EXPECT_TRUE(cut.isEmpty()) << what.toStdString() << ":\n" << cut.join('\n').toStdString();
    }
    void choose(const QString &instrument, int pass)
    {
        auto *tree = part<QTreeWidget>(*window, "workshopTree");
        for (const logbook::InstrumentLine &each : window->workshop().instruments())
            if (QString::fromStdString(each.name) == instrument) {
                auto &workshop = const_cast<Workshop &>(window->workshop());
                const auto passes = workshop.passesOf(each.id);
                workshop.choosePass(passes.at(static_cast<std::size_t>(pass)).id);
            }
        EXPECT_NE(tree->currentItem(), nullptr);
    }

    std::unique_ptr<MainWindow> window;
};

TEST_P(Tour, OfEveryView)
{
    look(*window, "start");
    openDemo();
    for (const char *view :
         {"viewBench", "viewReadings", "viewWorst", "viewPlan", "viewReview", "viewStudies", "viewShop"}) {
        trigger(*window, view);
        look(*window, view);
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

TEST_P(Tour, OfEveryDialog)
{
    openDemo();
    for (const char *action : {"takeIn", "changeInstrument", "chooseSet", "beginPass", "changePass", "benchKeys",
                               "chooseGauge", "trustedKeys"}) {
        trigger(*window, action);
        QCoreApplication::processEvents();
        QWidget *dialog = QApplication::activeModalWidget();
        if (dialog == nullptr)
            for (QDialog *each : window->findChildren<QDialog *>())
                if (each->isVisible())
                    dialog = each;
        ASSERT_NE(dialog, nullptr) << action;
        look(*dialog, action);
        EXPECT_LE(dialog->width(), GetParam().size.width()) << action;
        EXPECT_LE(dialog->height(), GetParam().size.height()) << action;
        delete dialog;
    }
}

INSTANTIATE_TEST_SUITE_P(Screens, Tour,
                         ::testing::Values(Screen{{1366, 768}, wording::Theme::Light, 1, "1366-light"},
                                           Screen{{2560, 1440}, wording::Theme::Dark, 1, "2560-dark"},
                                           Screen{{1366, 768}, wording::Theme::Light, 2, "1366-light-double"}),
                         [](const auto &chosen) { return QString(chosen.param.name).replace('-', '_').toStdString(); });

} // namespace
} // namespace hammerline::main_window
