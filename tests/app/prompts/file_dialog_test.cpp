// A file dialog lists the folder of the logbook that is open: it must not look into it.
#include "exchange/exchange.h"
#include "prompts/prompts.h"
#include "support/posix_locks.h"
#include "support/workshop_on_disk.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QFileDialog>
#include <QTest>
#include <QTimer>

namespace hammerline::prompts {
namespace {

/// Rows of the dialog's list, once they and their kinds have come.
QStringList rowsOf(QFileDialog &dialog)
{
    auto *list = dialog.findChild<QAbstractItemView *>("treeView");
    QStringList rows;
    static_cast<void>(QTest::qWaitFor([&] { return list->model()->rowCount(list->rootIndex()) > 0; }));
    QTest::qWait(300); // kinds and icons are gathered by a thread of their own
    for (int row = 0; row < list->model()->rowCount(list->rootIndex()); ++row)
        for (const int column : {0, 2})
            rows << list->model()->index(row, column, list->rootIndex()).data().toString();
    return rows;
}

TEST(FileDialog, ListsTheFolderOfTheOpenLogbookAndLeavesItsLocks)
{
    const support::WorkshopOnDisk shop;
    ASSERT_TRUE(support::isHeld(shop.path()));
    for (const auto use : {FileWish::Use::Open, FileWish::Use::Save}) {
        QStringList rows;
        QTimer::singleShot(0, [&rows] {
            auto *dialog = qobject_cast<QFileDialog *>(QApplication::activeModalWidget());
            ASSERT_TRUE(dialog);
            rows = rowsOf(*dialog);
            dialog->reject();
        });
        DialogPrompts prompts;
        const QString folder = QFileInfo(QString::fromStdString(shop.path())).path();
        EXPECT_FALSE(prompts.chooseFile(nullptr, {.use = use, .title = "Choose", .start = folder}));
        EXPECT_TRUE(rows.contains(QFileInfo(QString::fromStdString(shop.path())).fileName()))
            << rows.join("|").toStdString();
        EXPECT_TRUE(rows.contains("hammerline file")) << rows.join("|").toStdString();
        EXPECT_TRUE(support::isHeld(shop.path()));
    }
}

TEST(FileDialog, TheLogbookChosenByMistakeIsRefusedAndKeepsItsLocks)
{
    const support::WorkshopOnDisk shop;
    const auto read = exchange::readFile(shop.path());
    ASSERT_FALSE(read);
    EXPECT_NE(read.fault().problem.find("logbook"), std::string::npos) << read.fault().problem;
    EXPECT_TRUE(support::isHeld(shop.path()));
}

} // namespace
} // namespace hammerline::prompts
