#include "main_window/settings.h"

#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace hammerline::main_window {
namespace {

class Remembering : public ::testing::Test {
protected:
    [[nodiscard]] QString made(const QString &name) const
    {
        QFile file(folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        return folder.filePath(name);
    }
    QTemporaryDir folder;
    QSettings store{folder.filePath("settings.ini"), QSettings::IniFormat};
    Settings settings{store};
};

TEST_F(Remembering, RecentLogbooksNewestFirstAndNoneTwice)
{
    settings.remember(made("a"));
    settings.remember(made("b"));
    settings.remember(made("a"));
    EXPECT_EQ(settings.recent(), QStringList({folder.filePath("a"), folder.filePath("b")}));
}

TEST_F(Remembering, OnlySoManyRecentLogbooks)
{
    for (int i = 0; i < 12; ++i)
        settings.remember(made(QString::number(i)));
    EXPECT_EQ(settings.recent().size(), Settings::mostRecent);
}

TEST_F(Remembering, ALogbookThatIsGoneIsNotOffered)
{
    settings.remember(made("gone"));
    QFile::remove(folder.filePath("gone"));
    EXPECT_TRUE(settings.recent().isEmpty());
}

TEST_F(Remembering, UnitAndThemeGoBackToTheirUsual)
{
    EXPECT_FALSE(settings.shownUnit());
    settings.setShownUnit(units::Unit::Inch);
    EXPECT_EQ(settings.shownUnit(), units::Unit::Inch);
    settings.setShownUnit(std::nullopt);
    EXPECT_FALSE(settings.shownUnit());
    settings.setTheme(ThemeChoice::Dark);
    settings.setTheme(ThemeChoice::System);
    EXPECT_EQ(settings.theme(), ThemeChoice::System);
}

} // namespace
} // namespace hammerline::main_window
