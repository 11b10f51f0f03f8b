#include "main_window/workshop_panel.h"

#include "app/main_window/window_desk.h"

#include <QTreeWidget>

namespace hammerline::main_window {
namespace {

class Panel : public WindowDesk {
protected:
    /// Delivered long ago, with a pass.
    instrument::InstrumentId deliver(const char *name)
    {
        auto gone = shop.grand;
        gone.uid.clear();
        gone.name = name;
        gone.state = instrument::State::Delivered;
        const auto id = shop.book.addInstrument(gone, shop.stamp()).value().id;
        static_cast<void>(shop.book.beginPass({.instrument = id, .began = shop.stamp().at}, shop.stamp()));
        return id;
    }
    static QTreeWidget *tree(const MainWindow &window) { return part<QTreeWidget>(window, "workshopTree"); }
};

TEST_F(Panel, WhatWasDeliveredIsFoldedAwayAndItsRowsAreMadeWhenSomebodyLooks)
{
    deliver("Fetched in spring");
    deliver("Fetched in autumn");
    const auto window = openWindow();
    ASSERT_EQ(tree(*window)->topLevelItemCount(), 2);
    QTreeWidgetItem *delivered = tree(*window)->topLevelItem(1);
    EXPECT_EQ(delivered->text(0), "Delivered (2)");
    EXPECT_EQ(delivered->childCount(), 0);
    delivered->setExpanded(true);
    ASSERT_EQ(delivered->childCount(), 2);
    EXPECT_EQ(delivered->child(0)->text(0), "Fetched in spring");
}

TEST_F(Panel, ADeliveredInstrumentOpensFromItsRow)
{
    const auto id = deliver("Fetched in spring");
    const auto window = openWindow();
    QTreeWidgetItem *delivered = tree(*window)->topLevelItem(1);
    delivered->setExpanded(true);
    tree(*window)->setCurrentItem(delivered->child(0));
    ASSERT_NE(window->workshop().instrument(), nullptr);
    EXPECT_EQ(window->workshop().instrument()->id, id);
    EXPECT_EQ(delivered->child(0)->childCount(), 1) << "its pass stands below it";
    EXPECT_EQ(tree(*window)->currentItem(), delivered->child(0)->child(0));
}

TEST_F(Panel, ChoosingADeliveredInstrumentElsewhereUnfoldsItsRow)
{
    const auto id = deliver("Fetched in spring");
    Workshop workshop([this] { return shop.stamp().at; });
    WorkshopPanel panel(workshop);
    workshop.use(logbook::Logbook::open(shop.path()));
    workshop.chooseInstrument(id);
    const auto *instruments = part<QTreeWidget>(panel, "workshopTree");
    EXPECT_TRUE(instruments->topLevelItem(1)->isExpanded());
    EXPECT_EQ(instruments->currentItem()->parent()->text(0), "Fetched in spring");
}

TEST_F(Panel, TheHeadingOfTheDeliveredChoosesNothing)
{
    deliver("Fetched in spring");
    const auto window = openWindow();
    tree(*window)->setCurrentItem(tree(*window)->topLevelItem(1));
    EXPECT_EQ(window->workshop().instrument()->id, shop.grand.id);
}

TEST_F(Panel, WithoutAnythingDeliveredThereIsNoHeading)
{
    const auto window = openWindow();
    EXPECT_EQ(tree(*window)->topLevelItemCount(), 1);
}

} // namespace
} // namespace hammerline::main_window
