#include "instrument_file/instrument_file.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace hammerline::instrument_file {
namespace {

class TakingIn : public ::testing::Test {
protected:
    TakingIn() { form.setAttribute(Qt::WA_DeleteOnClose, false); }
    void write(const char *field, const QString &text)
    {
        auto *line = form.findChild<QLineEdit *>(field);
        ASSERT_NE(line, nullptr) << field;
        line->setText(text);
    }
    [[nodiscard]] QString faults() { return form.findChild<QLabel *>("formFaults")->text(); }

    InstrumentForm form{instrument::Instrument{}};
};

TEST_F(TakingIn, ANameSuffices)
{
    write("instrumentName", "  Blue upright ");
    const auto entered = form.entered();
    ASSERT_TRUE(entered);
    EXPECT_EQ(entered.value().name, "Blue upright");
    EXPECT_EQ(entered.value().action, catalogue::ActionKind::Vertical);
    EXPECT_EQ(entered.value().compass, keyboard::Compass{});
    EXPECT_FALSE(entered.value().year);
    EXPECT_FALSE(entered.value().size);
}

TEST_F(TakingIn, WithoutANameTheFormStaysAndSaysWhy)
{
    form.show();
    const QSignalSpy ready(&form, &InstrumentForm::ready);
    form.accept();
    EXPECT_TRUE(form.isVisible());
    EXPECT_FALSE(faults().isEmpty());
    EXPECT_EQ(ready.count(), 0);
}

TEST_F(TakingIn, EverythingEnteredIsKept)
{
    write("instrumentName", "Red grand");
    auto *action = form.findChild<QComboBox *>("instrumentAction");
    action->setCurrentIndex(1);
    write("instrumentMaker", "Ahrend & Tochter");
    write("instrumentSerial", "4711");
    write("instrumentYear", "1911");
    write("instrumentSize", "1880,5");
    write("instrumentLast", "85");
    write("instrumentSections", "bass A0 to E2; treble F2 to A7");
    write("instrumentDampers", "wedge A0 to B2");
    form.findChild<QPlainTextEdit *>("instrumentCondition")->setPlainText("moth in the treble");
    const auto entered = form.entered();
    ASSERT_TRUE(entered);
    const instrument::Instrument &made = entered.value();
    EXPECT_EQ(made.action, catalogue::ActionKind::Grand);
    EXPECT_EQ(made.year, 1911);
    EXPECT_EQ(made.size, units::Length::millimetres(1880.5));
    EXPECT_EQ(made.compass.last, keyboard::Note(85));
    EXPECT_EQ(made.sections.size(), 2u);
    EXPECT_EQ(made.dampers.front().kind, "wedge");
    EXPECT_EQ(made.condition, "moth in the treble");
}

TEST_F(TakingIn, EveryFaultIsToldAtOnce)
{
    write("instrumentName", "Red grand");
    write("instrumentYear", "19x1");
    write("instrumentSize", "-3");
    write("instrumentFirst", "H1");
    write("instrumentSections", "bass A0 E2");
    const auto entered = form.entered();
    ASSERT_FALSE(entered);
    EXPECT_EQ(entered.faults().size(), 4u);
}

TEST_F(TakingIn, ACompassUpsideDownIsAFault)
{
    write("instrumentName", "Red grand");
    write("instrumentFirst", "C8");
    write("instrumentLast", "A0");
    EXPECT_FALSE(form.entered());
}

TEST(ChangingAnInstrument, HandsThroughWhatTheFormDoesNotShow)
{
    instrument::Instrument known;
    known.id = 7;
    known.uid = std::string(32, 'a');
    known.name = "Blue upright";
    known.year = 1932;
    known.size = units::Length::millimetres(1310);
    known.state = instrument::State::InReview;
    known.toleranceId = "full-upright";
    known.toleranceText = "{}";
    known.sections = {{"bass", {keyboard::Note(1), keyboard::Note(26)}}};
    const InstrumentForm form(known);
    const auto entered = form.entered();
    ASSERT_TRUE(entered);
    EXPECT_EQ(entered.value(), known);
}

} // namespace
} // namespace hammerline::instrument_file
