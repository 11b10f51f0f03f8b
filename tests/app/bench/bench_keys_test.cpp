#include "bench/bench_keys.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace hammerline::bench {
namespace {

QKeyEvent pressed(int key, const QString &text, Qt::KeyboardModifiers with = Qt::NoModifier)
{
    return {QEvent::KeyPress, key, with, text};
}

TEST(BenchKeys, TheNumberPadAndTheMainKeyboardMeanTheSame)
{
    const BenchKeys keys;
    EXPECT_EQ(keys.actOf(pressed(Qt::Key_Asterisk, "*", Qt::KeypadModifier)), BenchAct::Back);
    EXPECT_EQ(keys.actOf(pressed(Qt::Key_Asterisk, "*", Qt::ShiftModifier)), BenchAct::Back);
    EXPECT_EQ(keys.actOf(pressed(Qt::Key_Plus, "+", Qt::KeypadModifier)), BenchAct::StepUp);
    EXPECT_EQ(keys.actOf(pressed(Qt::Key_Minus, "-", Qt::KeypadModifier)), BenchAct::StepDown);
}

TEST(BenchKeys, DigitsAndMarksOfNumbersAreNoKeysOfTheBench)
{
    const BenchKeys keys;
    EXPECT_FALSE(keys.actOf(pressed(Qt::Key_3, "3")));
    EXPECT_FALSE(keys.actOf(pressed(Qt::Key_Period, ".")));
    EXPECT_FALSE(keys.actOf(pressed(Qt::Key_Comma, ",")));
}

TEST(BenchKeys, ControlTogetherWithAKeyIsAnotherKey)
{
    EXPECT_FALSE(BenchKeys().actOf(pressed(Qt::Key_Up, {}, Qt::ControlModifier)));
}

TEST(BenchKeys, ChangedKeysAreKept)
{
    const QTemporaryDir folder;
    QSettings settings(folder.filePath("keys.ini"), QSettings::IniFormat);
    BenchKeys keys;
    keys.set(BenchAct::Again, {QKeySequence(Qt::Key_F5)});
    keys.store(settings);
    const BenchKeys read = BenchKeys::from(settings);
    EXPECT_EQ(read.actOf(pressed(Qt::Key_F5, {})), BenchAct::Again);
    EXPECT_FALSE(read.actOf(pressed(Qt::Key_Slash, "/")));
    EXPECT_EQ(read.actOf(pressed(Qt::Key_Up, {})), BenchAct::Back);
    EXPECT_EQ(read.labelOf(BenchAct::Again), "F5");
}

} // namespace
} // namespace hammerline::bench
