#include "prompts/queued_prompts.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace hammerline::prompts {
namespace {

TEST(QueuedPromptsTest, AnswersInTheOrderGivenByLabelOrIndex)
{
    QueuedPrompts prompts;
    prompts.willChoose(QStringLiteral("Keep"));
    prompts.willChoose(0);
    const Question question{.title = "Pass", .text = "Delete it?", .choices = {"Delete", "Keep"}};
    EXPECT_EQ(prompts.ask(nullptr, question), 1);
    EXPECT_EQ(prompts.ask(nullptr, question), 0);
    EXPECT_TRUE(prompts.allUsed());
    EXPECT_EQ(prompts.questions().size(), 2U);
}

TEST(QueuedPromptsTest, WhatNobodyAnsweredThrows)
{
    QueuedPrompts prompts;
    const Question question{.text = "Delete it?", .choices = {"Delete", "Keep"}};
    EXPECT_THROW(static_cast<void>(prompts.ask(nullptr, question)), std::logic_error);
    EXPECT_THROW(static_cast<void>(prompts.chooseFile(nullptr, {})), std::logic_error);
    EXPECT_THROW(static_cast<void>(prompts.askText(nullptr, {})), std::logic_error);
}

TEST(QueuedPromptsTest, AChoiceThatIsNotOfferedThrows)
{
    QueuedPrompts prompts;
    prompts.willChoose(QStringLiteral("Burn"));
    EXPECT_THROW(static_cast<void>(prompts.ask(nullptr, {.text = "?", .choices = {"Keep"}})), std::logic_error);
}

TEST(QueuedPromptsTest, FilesAndTextsMayBeRefused)
{
    QueuedPrompts prompts;
    prompts.willPick(std::nullopt);
    prompts.willPick(QStringLiteral("/tmp/a.csv"));
    prompts.willType(QStringLiteral("loose key"));
    EXPECT_FALSE(prompts.chooseFile(nullptr, {}));
    EXPECT_FALSE(prompts.allUsed());
    EXPECT_EQ(prompts.chooseFile(nullptr, {.title = "Open"}), QStringLiteral("/tmp/a.csv"));
    EXPECT_EQ(prompts.askText(nullptr, {.label = "Remark"}), QStringLiteral("loose key"));
    EXPECT_EQ(prompts.fileWishes().back().title, "Open");
    EXPECT_EQ(prompts.textWishes().back().label, "Remark");
}

TEST(QueuedPromptsTest, NoticesAreKeptForReading)
{
    QueuedPrompts prompts;
    prompts.tell(nullptr, {.title = "Disk", .text = "The disk is full"});
    ASSERT_EQ(prompts.notices().size(), 1U);
    EXPECT_EQ(prompts.notices().front().text, "The disk is full");
}

} // namespace
} // namespace hammerline::prompts
