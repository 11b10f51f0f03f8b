#pragma once
// The screens that pictures and walks are made on: a small and a large one, light and dark, at the usual text size and
// up to twice that.

#include "wording/palette.h"

#include <QApplication>
#include <QCoreApplication>
#include <QDir>
#include <QPixmap>
#include <QWidget>
#include <gtest/gtest.h>

#include <ostream>
#include <vector>

namespace hammerline::main_window {

struct Screen {
    QSize size;
    wording::Theme theme;
    double textScale;
    const char *name;
};

inline std::ostream &operator<<(std::ostream &out, const Screen &screen)
{
    return out << screen.name;
}

[[nodiscard]] inline std::vector<Screen> smallScreens()
{
    return {{{1366, 768}, wording::Theme::Light, 1, "1366-light"},
            {{1366, 768}, wording::Theme::Dark, 1, "1366-dark"},
            {{1366, 768}, wording::Theme::Light, 2, "1366-light-double"},
            {{1366, 768}, wording::Theme::Dark, 2, "1366-dark-double"}};
}

[[nodiscard]] inline std::vector<Screen> everyScreen()
{
    std::vector<Screen> screens = smallScreens();
    screens.push_back({{2560, 1440}, wording::Theme::Light, 1, "2560-light"});
    screens.push_back({{2560, 1440}, wording::Theme::Dark, 1, "2560-dark"});
    return screens;
}

/// With larger and twice as large text.
[[nodiscard]] inline std::vector<Screen> walkedScreens()
{
    return {{{1366, 768}, wording::Theme::Light, 1, "1366-light"},
            {{1366, 768}, wording::Theme::Dark, 1.5, "1366-dark-larger"},
            {{1366, 768}, wording::Theme::Light, 2, "1366-light-double"},
            {{1366, 768}, wording::Theme::Dark, 2, "1366-dark-double"},
            {{2560, 1440}, wording::Theme::Dark, 1, "2560-dark"},
            {{2560, 1440}, wording::Theme::Light, 2, "2560-light-double"}};
}

/// As the name of a test.
[[nodiscard]] inline std::string nameOfScreen(const ::testing::TestParamInfo<Screen> &chosen)
{
    return QString(chosen.param.name).replace('-', '_').toStdString();
}

/// The application in the look of a screen, and as it was at the end.
class OnScreen {
public:
    explicit OnScreen(const Screen &screen) { use(screen.textScale, screen.theme); }
    ~OnScreen() { use(1, wording::Theme::Light); }
    OnScreen(const OnScreen &) = delete;
    OnScreen &operator=(const OnScreen &) = delete;

private:
    static void use(double scale, wording::Theme theme)
    {
        wording::setTextScale(scale);
        wording::applyTheme(*qApp, theme);
    }
};

/// With HAMMERLINE_PICTURES=<folder> it is saved there, to be looked at.
inline void keepPicture(QWidget &shown, const QString &what, const Screen &screen)
{
    QCoreApplication::processEvents();
    const QString where = qEnvironmentVariable("HAMMERLINE_PICTURES");
    const QPixmap picture = shown.grab();
    EXPECT_FALSE(picture.isNull());
    if (!where.isEmpty())
        picture.save(QDir(where).filePath(QString("%1-%2.png").arg(what, screen.name)));
}

} // namespace hammerline::main_window
