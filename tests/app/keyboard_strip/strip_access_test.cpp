#include "keyboard_strip/inside/strip_access.h"
#include "keyboard_strip/keyboard_strip.h"

#include "support/lively_pass.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QAccessibleActionInterface>
#include <QSignalSpy>

namespace hammerline::keyboard_strip {
namespace {

using keyboard::Note;

class AccessTest : public testing::Test {
protected:
    AccessTest()
    {
        StripSource source;
        source.now = &judgement;
        source.quantity = catalogue::Quantity::LetOff;
        source.form.locale = QLocale::c();
        strip.setModel(modelOf(source));
        strip.resize(1366, 200);
        access = QAccessible::queryAccessibleInterface(&strip);
    }

    tolerance::Judgement judgement = support::livelyJudgement(1);
    KeyboardStrip strip;
    QAccessibleInterface *access = nullptr;
};

TEST_F(AccessTest, TheStripIsAListWithOneChildPerKey)
{
    ASSERT_TRUE(access);
    EXPECT_EQ(access->role(), QAccessible::List);
    EXPECT_EQ(access->childCount(), 88);
    EXPECT_EQ(access->text(QAccessible::Name), "Keyboard");
    EXPECT_EQ(access->child(88), nullptr);
    EXPECT_EQ(access->child(-1), nullptr);
}

TEST_F(AccessTest, AChildHasTheNoteAsNameTheReadingAsValueAndTheVerdictAsDescription)
{
    QAccessibleInterface *key = access->child(1);
    ASSERT_TRUE(key);
    EXPECT_EQ(key->role(), QAccessible::ListItem);
    EXPECT_EQ(key->text(QAccessible::Name), QStringLiteral("A\u266f0"));
    EXPECT_EQ(key->text(QAccessible::Value), strip.model().keys[1].valueText);
    EXPECT_EQ(key->text(QAccessible::Description), strip.model().keys[1].story);
    EXPECT_EQ(access->child(6)->text(QAccessible::Value), "not read");
}

TEST_F(AccessTest, ParentIndexAndPlaceAgree)
{
    QAccessibleInterface *key = access->child(40);
    EXPECT_EQ(key->parent(), access);
    EXPECT_EQ(access->indexOfChild(key), 40);
    EXPECT_EQ(access->child(40), key);
    const QPoint middle = key->rect().center();
    EXPECT_EQ(access->childAt(middle.x(), middle.y()), key);
    EXPECT_EQ(access->childAt(-500, -500), nullptr);
}

TEST_F(AccessTest, TheSelectedKeyIsMarkedAndItsStoryIsTheValueOfTheStrip)
{
    strip.select(Note(49));
    EXPECT_TRUE(access->child(48)->state().selected);
    EXPECT_FALSE(access->child(47)->state().selected);
    EXPECT_EQ(access->text(QAccessible::Value), strip.model().find(Note(49))->story);
}

TEST_F(AccessTest, PressingAChildChoosesItsNote)
{
    const QSignalSpy chosen(&strip, &KeyboardStrip::noteChosen);
    auto *action =
        static_cast<QAccessibleActionInterface *>(access->child(59)->interface_cast(QAccessible::ActionInterface));
    ASSERT_TRUE(action);
    action->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_EQ(strip.selected(), Note(60));
    EXPECT_EQ(chosen.size(), 1);
}

TEST_F(AccessTest, AShorterKeyboardTakesItsLastKeysAway)
{
    QAccessibleInterface *last = access->child(87);
    EXPECT_TRUE(last->isValid());
    strip.setModel(emptyModel({Note(1), Note(85)}, {}));
    EXPECT_EQ(access->childCount(), 85);
    EXPECT_FALSE(last->isValid());
    EXPECT_TRUE(last->text(QAccessible::Name).isEmpty());
}

/// What a screen reader was told, as it is told while the test lives.
class News {
public:
    struct Item {
        QAccessible::Event kind;
        int child;
        QString value;
    };
    News()
    {
        told().clear();
        listenInstead([](QAccessibleEvent &event) {
            const bool value = event.type() == QAccessible::ValueChanged;
            told().push_back(
                {event.type(), event.child(),
                 value ? static_cast<QAccessibleValueChangeEvent &>(event).value().toString() : QString()});
        });
    }
    News(const News &) = delete;
    News &operator=(const News &) = delete;
    ~News() { listenInstead(nullptr); }
    static std::vector<Item> &told()
    {
        static std::vector<Item> items;
        return items;
    }
};

TEST_F(AccessTest, ACurrentKeyIsToldAsFocusOnlyWhereTheStripHasIt)
{
    const News news;
    strip.select(Note(40));
    ASSERT_EQ(News::told().size(), 1u);
    EXPECT_EQ(News::told().front().kind, QAccessible::Selection);
    EXPECT_EQ(News::told().front().child, 39);
    strip.show();
    strip.activateWindow();
    strip.setFocus();
    News::told().clear();
    strip.select(Note(41));
    ASSERT_FALSE(News::told().empty());
    EXPECT_EQ(News::told().back().kind, strip.hasFocus() ? QAccessible::Focus : QAccessible::Selection);
    EXPECT_EQ(News::told().back().child, 40);
}

TEST_F(AccessTest, AValueThatChangesIsToldWithItsKey)
{
    const News news;
    StripKey key = strip.model().keys[4];
    key.valueText = "3.20 mm";
    strip.setKey(key);
    ASSERT_EQ(News::told().size(), 1u);
    EXPECT_EQ(News::told().front().kind, QAccessible::ValueChanged);
    EXPECT_EQ(News::told().front().child, 4);
    EXPECT_EQ(News::told().front().value, "3.20 mm");
}

} // namespace
} // namespace hammerline::keyboard_strip
