// The file of an instrument in the window, by the keys and answers of a person.

#include "app/main_window/window_desk.h"

#include "instrument_file/work_form.h"

#include <QImage>
#include <QPushButton>
#include <QTabWidget>
#include <QTableWidget>

namespace hammerline::main_window {
namespace {

class FileViewTest : public WindowDesk {
protected:
    FileViewTest() { trigger(*window, "viewFile"); }

    [[nodiscard]] dossier::Dossier kept() const { return shop.book.dossier(shop.grand.id); }
    void page(int index) { part<QTabWidget>(*window, "filePages")->setCurrentIndex(index); }
    void click(const char *name) { part<QPushButton>(*window, name)->click(); }
    void writeDownHammers()
    {
        click("workAdd");
        part<QLineEdit>(*window, "workWhat")->setText("hammers");
        part<instrument_file::WorkForm>(*window, "workForm")->accept();
    }
    QString photograph()
    {
        const QString path = folder.filePath("front.png");
        QImage image(40, 30, QImage::Format_RGB32);
        image.fill(Qt::darkCyan);
        EXPECT_TRUE(image.save(path));
        return path;
    }

    std::unique_ptr<MainWindow> window = openWindow();
};

TEST_F(FileViewTest, WorkIsWrittenDownAndUndone)
{
    writeDownHammers();
    ASSERT_EQ(kept().work.size(), 1u);
    EXPECT_EQ(part<QTableWidget>(*window, "workTable")->rowCount(), 1);
    EXPECT_TRUE(part<QAction>(*window, "undo")->text().contains("hammers"));
    trigger(*window, "undo");
    EXPECT_TRUE(kept().work.empty());
    EXPECT_EQ(part<QTableWidget>(*window, "workTable")->rowCount(), 0);
}

TEST_F(FileViewTest, WorkIsStruckOutWithAReason)
{
    writeDownHammers();
    prompts.willType("another piano");
    click("workStrike");
    EXPECT_TRUE(kept().work.empty());
    EXPECT_EQ(shop.book.deed(shop.book.newestDeed())->reason, "another piano");
}

TEST_F(FileViewTest, AConditionIsStoredWhenItsFieldIsLeft)
{
    page(1);
    auto *words = part<QLineEdit>(*window, "words-case-as-received");
    QTest::keyClicks(words, "sun on one side");
    QTest::keyClick(words, Qt::Key_Return);
    const auto conditions = kept().conditions;
    ASSERT_EQ(conditions.size(), 1u);
    EXPECT_EQ(conditions.begin()->second.words, "sun on one side");
}

TEST_F(FileViewTest, APhotographIsKeptAndTakenOut)
{
    page(2);
    prompts.willPick(photograph());
    click("photographAdd");
    part<QDialog>(*window, "photographForm")->accept();
    ASSERT_EQ(kept().photographs.size(), 1u);
    EXPECT_EQ(kept().photographs[0].width, 40);
    part<QTableWidget>(*window, "photographTable")->setCurrentCell(0, 0);
    click("photographRemove");
    EXPECT_TRUE(kept().photographs.empty());
}

TEST_F(FileViewTest, BuyerAndPriceAreKeptApart)
{
    page(4);
    auto *buyer = part<QLineEdit>(*window, "saleBuyer");
    QTest::keyClicks(buyer, "the parish hall");
    QTest::keyClick(buyer, Qt::Key_Return);
    EXPECT_EQ(kept().sale.buyer, "the parish hall");
}

} // namespace
} // namespace hammerline::main_window
