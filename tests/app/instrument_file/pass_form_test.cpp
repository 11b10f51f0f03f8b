#include "instrument_file/pass_form.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <gtest/gtest.h>

namespace hammerline::instrument_file {
namespace {

readings::Pass knownPass()
{
    readings::Pass pass;
    pass.id = 3;
    pass.uid = std::string(32, 'b');
    pass.instrument = 7;
    pass.purpose = readings::Purpose::Recheck;
    pass.person = "Ada";
    pass.climate = {20.5, 45.0};
    pass.gauge = {"depth gauge 2", units::Length::millimetres(0.05), units::Length::millimetres(0.12)};
    pass.dipDatum = readings::DipDatum::Back13mm;
    pass.dropDatum = readings::DropDatum::FromString;
    pass.unit = units::Unit::Inch;
    pass.remark = "after a week";
    return pass;
}

QLineEdit *line(const PassForm &form, const char *name)
{
    return form.findChild<QLineEdit *>(name);
}

TEST(PassForm, ShowsAndKeepsEverythingNotedOfAPass)
{
    const PassForm form(knownPass(), catalogue::ActionKind::Grand);
    const auto entered = form.entered();
    ASSERT_TRUE(entered);
    EXPECT_EQ(entered.value(), knownPass());
}

TEST(PassForm, NothingButThePurposeIsNeeded)
{
    const PassForm form({}, catalogue::ActionKind::Vertical);
    const auto entered = form.entered();
    ASSERT_TRUE(entered);
    EXPECT_EQ(entered.value(), readings::Pass{});
}

TEST(PassForm, AGaugeMayBeGivenInFractionsOfAnInch)
{
    const PassForm form({}, catalogue::ActionKind::Vertical);
    line(form, "passResolution")->setText("1/64");
    const auto entered = form.entered();
    ASSERT_TRUE(entered);
    EXPECT_EQ(entered.value().gauge.resolution, units::Length::nanometres(396875));
}

TEST(PassForm, WhatIsNoNumberIsToldByItsField)
{
    const PassForm form({}, catalogue::ActionKind::Vertical);
    line(form, "passCelsius")->setText("warm");
    line(form, "passHumidity")->setText("140");
    line(form, "passUncertainty")->setText("little");
    const auto entered = form.entered();
    ASSERT_FALSE(entered);
    EXPECT_EQ(entered.faults().size(), 3u);
}

TEST(PassForm, OnlyGrandsAreAskedFromWhereDropIsMeasured)
{
    PassForm vertical({}, catalogue::ActionKind::Vertical);
    vertical.show();
    EXPECT_FALSE(vertical.findChild<QComboBox *>("passDropDatum")->isVisible());
    vertical.setAttribute(Qt::WA_DeleteOnClose, false);
    PassForm grand({}, catalogue::ActionKind::Grand);
    grand.show();
    EXPECT_TRUE(grand.findChild<QComboBox *>("passDropDatum")->isVisible());
    grand.setAttribute(Qt::WA_DeleteOnClose, false);
}

std::vector<StudiedGauge> studied()
{
    return {{"rule 3", {}, units::Length::millimetres(0.21), "2026-11-25"},
            {"depth gauge 2", units::Length::millimetres(0.05), units::Length::millimetres(0.08), "2026-11-24"}};
}

TEST(PassForm, ANewPassTakesWhatTheStudyOfItsGaugeFound)
{
    readings::Pass last = knownPass();
    last.id = 0;
    PassForm form(last, catalogue::ActionKind::Grand);
    form.offer(studied());
    EXPECT_EQ(form.entered().value().gauge.expandedUncertainty, units::Length::millimetres(0.08));
    EXPECT_TRUE(form.findChild<QLabel *>("passStudied")->text().contains("2026-11-24"));
}

TEST(PassForm, NamingAStudiedGaugeFillsItsUncertaintyInAndAnotherNameTakesItOut)
{
    PassForm form({}, catalogue::ActionKind::Vertical);
    form.offer(studied());
    line(form, "passGauge")->setText("rule 3");
    EXPECT_EQ(form.entered().value().gauge.expandedUncertainty, units::Length::millimetres(0.21));
    line(form, "passGauge")->setText("rule 4");
    EXPECT_EQ(form.entered().value().gauge.expandedUncertainty, units::Length());
}

TEST(PassForm, WhatAPersonTypedIsNeverReplacedByAStudy)
{
    PassForm form({}, catalogue::ActionKind::Vertical);
    form.offer(studied());
    line(form, "passUncertainty")->setText("0.5");
    line(form, "passGauge")->setText("rule 3");
    EXPECT_EQ(form.entered().value().gauge.expandedUncertainty, units::Length::millimetres(0.5));
}

TEST(PassForm, APassThatIsThereKeepsItsUncertainty)
{
    PassForm form(knownPass(), catalogue::ActionKind::Grand);
    form.offer(studied());
    EXPECT_EQ(form.entered().value(), knownPass());
}

} // namespace
} // namespace hammerline::instrument_file
