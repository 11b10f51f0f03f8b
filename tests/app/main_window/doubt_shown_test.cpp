// Where the gauge of a pass leaves a verdict in doubt, the window says so: in the lead's queue and above the strip.
#include "main_window/strip_area.h"
#include "main_window/workshop.h"
#include "support/workshop_on_disk.h"

#include <QCoreApplication>
#include <QLabel>
#include <gtest/gtest.h>

#include <algorithm>

namespace hammerline::main_window {
namespace {

using catalogue::Quantity;
using keyboard::Note;

/// Let-off within 3.2 ± 0.5 mm, read with a gauge that may be off by 0.2 mm.
class DoubtShown : public ::testing::Test {
protected:
    DoubtShown()
    {
        auto pass = shop.pass;
        pass.gauge = {.name = "rule", .expandedUncertainty = units::Length::millimetres(0.2)};
        shop.book.changePass(pass, shop.stamp(), "the gauge is known now");
        for (const auto &[note, typed] : {std::pair(40, "3.6"), {41, "3.2"}, {42, "3.8"}})
            enter(note, typed);
        workshop.use(logbook::Logbook::open(shop.path()));
    }
    void enter(int note, const std::string &typed)
    {
        readings::Reading reading;
        reading.place = {Quantity::LetOff, Note(note), 1};
        reading.value = units::Length::millimetres(std::stod(typed));
        reading.typed = typed;
        shop.book.enter(shop.pass.id, reading, shop.stamp());
    }
    support::WorkshopOnDisk shop;
    Workshop workshop{[this] { return shop.stamp().at; }};
};

TEST_F(DoubtShown, TheQueueOfTheShopKnowsTheGaugeOfEachPass)
{
    for (const auto &queue : {workshop.queue(), workshop.queueOfPass()}) {
        ASSERT_EQ(queue.inDoubt.size(), 1u);
        EXPECT_EQ(queue.inDoubt.front().verdict.note, Note(40));
        EXPECT_NEAR(queue.inDoubt.front().verdict.conformanceProbability.value(), 0.83, 0.03);
        const auto out = std::ranges::find(queue.items, review::Kind::Out, &review::Item::kind);
        ASSERT_NE(out, queue.items.end());
        EXPECT_EQ(out->verdict.note, Note(42));
        EXPECT_TRUE(out->verdict.withinDoubt());
    }
}

TEST_F(DoubtShown, TheStoryAboveTheStripGoesOnInASecondLineBeforeItsDoubtIsCut)
{
    StripArea area(workshop);
    area.resize(1366, 200);
    area.show();
    QCoreApplication::processEvents();
    workshop.select({Quantity::LetOff, Note(40)});
    const auto *story = area.findChild<QLabel *>("stripStory");
    EXPECT_EQ(QString(story->text()).replace('\n', ' '), story->toolTip());
    EXPECT_TRUE(story->text().contains("of its variance"));
    EXPECT_LE(story->text().count('\n'), 1);
}

} // namespace
} // namespace hammerline::main_window
