// What people see, answered as people do: by key and by click on the dialog that is up.
#include "prompts/prompts.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFileDialog>
#include <QInputDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

namespace hammerline::prompts {
namespace {

/// Runs `deed` on the modal dialog once it is up.
template <typename Dialog, typename Deed>
void whenUp(Deed deed)
{
    QTimer::singleShot(0, [deed] {
        auto *dialog = qobject_cast<Dialog *>(QApplication::activeModalWidget());
        ASSERT_TRUE(dialog);
        deed(*dialog);
    });
}

const Question deleteOrKeep{.title = "Pass",
                            .text = "Delete this pass?",
                            .detail = "Its 88 readings go with it.",
                            .choices = {"Delete", "Keep"},
                            .preferred = 1};

TEST(DialogPromptsTest, AClickedChoiceIsReturnedByItsIndex)
{
    DialogPrompts prompts;
    whenUp<QMessageBox>([](QMessageBox &box) {
        EXPECT_EQ(box.text(), "Delete this pass?");
        EXPECT_EQ(box.informativeText(), "Its 88 readings go with it.");
        for (auto *button : box.buttons())
            if (button->text() == "Delete")
                button->click();
    });
    EXPECT_EQ(prompts.ask(nullptr, deleteOrKeep), 0);
}

TEST(DialogPromptsTest, EnterTakesThePreferredChoice)
{
    DialogPrompts prompts;
    whenUp<QMessageBox>([](QMessageBox &box) { QTest::keyClick(&box, Qt::Key_Return); });
    EXPECT_EQ(prompts.ask(nullptr, deleteOrKeep), 1);
}

TEST(DialogPromptsTest, EscapeTakesTheLastChoiceUnlessToldOtherwise)
{
    DialogPrompts prompts;
    whenUp<QMessageBox>([](QMessageBox &box) { QTest::keyClick(&box, Qt::Key_Escape); });
    EXPECT_EQ(prompts.ask(nullptr, deleteOrKeep), 1);
    Question other = deleteOrKeep;
    other.whenClosed = 0;
    whenUp<QMessageBox>([](QMessageBox &box) { QTest::keyClick(&box, Qt::Key_Escape); });
    EXPECT_EQ(prompts.ask(nullptr, other), 0);
}

TEST(DialogPromptsTest, ANoticeShowsItsTextAsItIsAndCloses)
{
    DialogPrompts prompts;
    whenUp<QMessageBox>([](QMessageBox &box) {
        EXPECT_EQ(box.text(), "<b>disk</b> full");
        EXPECT_EQ(box.textFormat(), Qt::PlainText);
        QTest::keyClick(&box, Qt::Key_Escape);
    });
    prompts.tell(nullptr, {.title = "Disk", .text = "<b>disk</b> full"});
}

TEST(DialogPromptsTest, TypedTextIsReturnedAndEscapeMeansNone)
{
    DialogPrompts prompts;
    whenUp<QInputDialog>([](QInputDialog &dialog) {
        dialog.setTextValue("sticky key");
        dialog.accept();
    });
    EXPECT_EQ(prompts.askText(nullptr, {.title = "Remark", .label = "Remark"}), QStringLiteral("sticky key"));
    whenUp<QInputDialog>([](QInputDialog &dialog) { dialog.reject(); });
    EXPECT_FALSE(prompts.askText(nullptr, {.title = "Remark", .label = "Remark", .manyLines = true}));
}

TEST(DialogPromptsTest, ADialogIsWideEnoughForItsTitle)
{
    const QString title = "Not all of it was stored as it was decided by the lead";
    const auto isWideEnough = [&title](const QWidget &dialog) {
        QFont bold = dialog.font();
        bold.setBold(true);
        return dialog.width() > QFontMetrics(bold).horizontalAdvance(title) + 100;
    };
    DialogPrompts prompts;
    whenUp<QMessageBox>([&](QMessageBox &box) {
        EXPECT_TRUE(isWideEnough(box)) << box.width();
        QTest::keyClick(&box, Qt::Key_Escape);
    });
    prompts.tell(nullptr, {.title = title, .text = "No."});
    whenUp<QInputDialog>([&](QInputDialog &dialog) {
        EXPECT_TRUE(isWideEnough(dialog)) << dialog.width();
        dialog.reject();
    });
    EXPECT_FALSE(prompts.askText(nullptr, {.title = title, .label = "Why"}));
}

TEST(DialogPromptsTest, AFileSavedWithoutSuffixGetsTheDefaultOne)
{
    const QTemporaryDir folder;
    DialogPrompts prompts;
    whenUp<QFileDialog>([&](QFileDialog &dialog) {
        dialog.findChild<QLineEdit *>()->setText(folder.filePath("readings"));
        QMetaObject::invokeMethod(&dialog, "accept");
    });
    const auto file = prompts.chooseFile(nullptr, {.use = FileWish::Use::Save,
                                                   .title = "Export",
                                                   .filter = "Readings (*.csv)",
                                                   .start = folder.path(),
                                                   .defaultSuffix = "csv"});
    EXPECT_EQ(file, folder.filePath("readings.csv"));
}

TEST(DialogPromptsTest, ThinkingBetterOfItPicksNoFile)
{
    DialogPrompts prompts;
    whenUp<QFileDialog>([](QFileDialog &dialog) { dialog.reject(); });
    EXPECT_FALSE(prompts.chooseFile(nullptr, {.title = "Open"}));
}

} // namespace
} // namespace hammerline::prompts
