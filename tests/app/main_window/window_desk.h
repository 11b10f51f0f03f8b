#pragma once
// A main window with settings, answers and a clock of its own.

#include "bench/big_text.h"
#include "main_window/main_window.h"
#include "prompts/queued_prompts.h"
#include "support/recording_sounder.h"
#include "support/workshop_on_disk.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <gtest/gtest.h>

namespace hammerline::main_window {

class WindowDesk : public ::testing::Test {
protected:
    WindowDesk() : settings(folder.filePath("settings.ini"), QSettings::IniFormat) {}

    [[nodiscard]] Surroundings surroundings()
    {
        return {prompts, settings, [this] { return shop.stamp().at; }, folder.filePath("keys/key.p12").toStdString(),
                &sounder};
    }
    [[nodiscard]] std::unique_ptr<MainWindow> openWindow()
    {
        auto window = std::make_unique<MainWindow>(surroundings());
        EXPECT_TRUE(window->openLogbook(QString::fromStdString(shop.path())));
        window->show();
        return window;
    }

    template <typename Kind = QWidget>
    [[nodiscard]] static Kind *part(const QObject &window, const char *name)
    {
        auto *found = window.findChild<Kind *>(name);
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    static void type(const MainWindow &window, const QString &text)
    {
        QTest::keyClicks(part<QLineEdit>(window, "entryField"), text);
        QTest::keyClick(part<QLineEdit>(window, "entryField"), Qt::Key_Return);
    }
    static QString askedNote(const MainWindow &window)
    {
        return part<bench::BigText>(window, "askedNote")->text();
    }
    static void trigger(const MainWindow &window, const char *action) { part<QAction>(window, action)->trigger(); }
    [[nodiscard]] std::size_t stored() const { return shop.book.readings(shop.pass.id).size(); }

    QTemporaryDir folder;
    QSettings settings;
    prompts::QueuedPrompts prompts;
    support::RecordingSounder sounder;
    support::WorkshopOnDisk shop;
};

} // namespace hammerline::main_window
