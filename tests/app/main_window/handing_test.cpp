// An instrument handed over and taken over by the window.
#include "app/main_window/window_desk.h"
#include "exchange/exchange.h"
#include "logbook/hand_over.h"

#include <QFile>

namespace hammerline::main_window {
namespace {

class HandingTest : public WindowDesk {
protected:
    HandingTest()
    {
        shop.book.noteSale(shop.grand.id, {"the parish hall", "3400", {}}, shop.stamp());
        prompts.willChoose("Hand over too");
        prompts.willPick(path);
    }
    [[nodiscard]] std::string text() const
    {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll().toStdString();
    }
    /// Hands the instrument over, alters the file and takes it over.
    void takeOver(MainWindow &window, const std::function<void(std::string &)> &change = {})
    {
        trigger(window, "handOver");
        if (change) {
            std::string changed = text();
            change(changed);
            EXPECT_TRUE(exchange::writeFile(path.toStdString(), changed, exchange::Overwrite::Yes));
        }
        prompts.willPick(path);
        trigger(window, "takeOver");
    }
    [[nodiscard]] QString digest() const
    {
        const QString all = QString::fromStdString(logbook::digestIn(text()));
        QStringList groups;
        for (int at = 0; at < all.size(); at += 4)
            groups << all.mid(at, 4);
        return groups.join(' ');
    }

    QString path = folder.filePath("grand.json");
};

TEST_F(HandingTest, TheSameDigestIsToldAtBothEnds)
{
    const auto window = openWindow();
    takeOver(*window);
    ASSERT_EQ(prompts.notices().size(), 2u);
    EXPECT_EQ(digest().size(), 64 + 15);
    for (const prompts::Notice &notice : prompts.notices())
        EXPECT_TRUE(notice.detail.endsWith(digest())) << notice.detail.toStdString();
    EXPECT_NE(text().find("the parish hall"), std::string::npos);
}

TEST_F(HandingTest, BuyerAndPriceStayBehindWhereTheyAreLeftOut)
{
    prompts::QueuedPrompts none;
    std::swap(prompts, none);
    prompts.willChoose("Leave out");
    prompts.willPick(path);
    const auto window = openWindow();
    takeOver(*window);
    EXPECT_EQ(text().find("the parish hall"), std::string::npos);
    EXPECT_TRUE(prompts.notices().front().detail.contains("without buyer and price"));
    EXPECT_TRUE(prompts.notices().back().detail.contains("were left out"));
}

TEST_F(HandingTest, NothingIsWrittenWhereTheUserThinksBetterOfIt)
{
    prompts::QueuedPrompts none;
    std::swap(prompts, none);
    prompts.willChoose("Cancel");
    const auto window = openWindow();
    trigger(*window, "handOver");
    EXPECT_FALSE(QFile::exists(path));
    EXPECT_TRUE(prompts.notices().empty());
}

TEST_F(HandingTest, AFileEditedByHandIsRefusedWithTheDeedNamed)
{
    const auto window = openWindow();
    const auto newest = shop.book.newestDeed();
    takeOver(*window, [](std::string &document) { document.replace(document.find("the parish hall"), 3, "one"); });
    ASSERT_EQ(prompts.notices().size(), 2u);
    EXPECT_EQ(prompts.notices().back().title, "Nothing was taken over");
    EXPECT_TRUE(prompts.notices().back().detail.contains("was altered after it was handed over"))
        << prompts.notices().back().detail.toStdString();
    EXPECT_EQ(shop.book.newestDeed(), newest);
}

} // namespace
} // namespace hammerline::main_window
