// The dialog of the way, by keyboard alone.
#include "app/bench/bench_desk.h"

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QDialogButtonBox>
#include <QDir>
#include <QPushButton>
#include <QSpinBox>

namespace hammerline::bench {
namespace {

using catalogue::Quantity;

class WayDesk : public BenchDesk {
protected:
    WayDesk()
    {
        QTest::keyClick(view.findChild<QPushButton *>("way"), Qt::Key_Space);
        dialog = view.findChild<QDialog *>("wayDialog");
    }
    template <typename Kind>
    Kind *part(const char *name)
    {
        return dialog->findChild<Kind *>(name);
    }
    /// Down until the box says so.
    void choose(const char *name, const QString &text)
    {
        auto *box = part<QComboBox>(name);
        box->setFocus();
        for (int i = 0; i < box->count() && box->currentText() != text; ++i)
            QTest::keyClick(box, Qt::Key_Down);
        ASSERT_EQ(box->currentText(), text);
    }
    void write(const char *name, const QString &text) { QTest::keyClicks(part<QLineEdit>(name), text); }
    void pressOk() { QTest::keyClick(part<QDialogButtonBox>("wayFoot")->button(QDialogButtonBox::Ok), Qt::Key_Space); }
    void keepPicture(const char *name)
    {
        if (const QString where = qEnvironmentVariable("HAMMERLINE_PICTURES"); !where.isEmpty())
            dialog->grab().save(QDir(where).filePath(name));
    }
    QDialog *dialog = nullptr;
};

TEST_F(WayDesk, OrderScaleDigitsAndWhatIsAddedAreChosenByKeys)
{
    choose("wayOrder", "naturals, then sharps");
    choose("wayScale", "tenths of a millimetre");
    auto *from = part<QSpinBox>("wayFrom");
    from->setFocus();
    QTest::keyClick(from, Qt::Key_Up);
    auto *digits = part<QSpinBox>("wayDigits");
    QTest::keyClick(digits, Qt::Key_Up);
    QTest::keyClick(digits, Qt::Key_Up);
    EXPECT_EQ(part<QLabel>("wayExample")->text(), "31 is read as 13.1 mm");
    keepPicture("way.png");
    pressOk();
    EXPECT_EQ(view.session()->typing(), (Typing{Scale::Tenths, 2, 10}));
    EXPECT_EQ(view.session()->chosen()->order, route::Order::NaturalsThenSharps);
    EXPECT_TRUE(field()->hasFocus() || view.focusWidget() == field());
}

TEST_F(WayDesk, NotesOfOnesOwnAreAskedForInTheirOrder)
{
    choose("wayOrder", "notes of my own");
    write("wayNotes", "C4..D4, A0");
    pressOk();
    for (const char *note : {"C4", "C#4", "D4", "A0"}) {
        EXPECT_EQ(askedNote(), note);
        type("3.1");
    }
}

TEST_F(WayDesk, AListThatCannotBeReadIsToldAndTheDialogStays)
{
    choose("wayOrder", "notes of my own");
    pressOk();
    EXPECT_FALSE(part<QLabel>("wayFault")->text().isEmpty());
    write("wayNotes", "H9");
    pressOk();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_FALSE(part<QLabel>("wayFault")->text().isEmpty());
    QTest::keyClick(dialog, Qt::Key_Escape);
    EXPECT_FALSE(view.session()->chosen());
}

TEST_F(WayDesk, WhatDoesNotMatterCannotBeReached)
{
    EXPECT_FALSE(part<QComboBox>("waySamples")->isEnabled());
    EXPECT_FALSE(part<QLineEdit>("wayNotes")->isEnabled());
    EXPECT_FALSE(part<QSpinBox>("wayFrom")->isEnabled());
    choose("wayScale", "64ths of an inch");
    EXPECT_FALSE(part<QSpinBox>("wayFrom")->isEnabled());
    choose("wayOrder", "samples of each section, then the rest");
    EXPECT_TRUE(part<QComboBox>("waySamples")->isEnabled());
}

} // namespace
} // namespace hammerline::bench
