// A full disk, made by a limit on the size of files; with HAMMERLINE_SMALL_DISK=<folder on a small file system> by a
// disk that is full in truth.
#include "app/main_window/window_desk.h"
#include "logbook/verify_history.h"
#include "main_window/guarded_application.h"

#include <QFile>

#include <csignal>
#include <filesystem>
#include <sys/resource.h>

namespace hammerline::main_window {
namespace {

namespace fs = std::filesystem;

/// No file of this process grows beyond its size now, plus `more`, until it is lifted.
class FullDisk {
public:
    FullDisk(const std::string &file, std::uintmax_t more)
    {
        m_signal = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        std::uintmax_t largest = fs::file_size(file);
        if (fs::exists(file + "-wal"))
            largest = std::max(largest, fs::file_size(file + "-wal"));
        const rlimit limit{largest + more, m_before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    FullDisk(const FullDisk &) = delete;
    FullDisk &operator=(const FullDisk &) = delete;
    ~FullDisk() { lift(); }
    void lift()
    {
        setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_signal);
    }

private:
    rlimit m_before{};
    void (*m_signal)(int) = nullptr;
};

class FullDiskDesk : public WindowDesk {
protected:
    /// Types let-off until the bar of trouble shows; how many were stored.
    std::size_t typeUntilTrouble(MainWindow &window)
    {
        window.views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(1));
        for (int i = 0; i < 4'000 && !part(window, "troubleBar")->isVisible(); ++i)
            guarded(&window, [&window] { type(window, "3.1"); });
        return window.workshop().book().readings(window.workshop().pass()->pass.id).size();
    }
};

TEST_F(FullDiskDesk, TheWindowSaysSoAtOnceKeepsWhatIsTypedAndGoesOnWhenThereIsRoom)
{
    const auto window = openWindow();
    auto *field = part<QLineEdit>(*window, "entryField");
    FullDisk full(shop.path(), 8 * 1024);
    const std::size_t before = typeUntilTrouble(*window);
    ASSERT_TRUE(part(*window, "troubleBar")->isVisible());
    EXPECT_LT(before, 88u);
    EXPECT_TRUE(part<QLabel>(*window, "troubleText")->text().contains("disk"))
        << part<QLabel>(*window, "troubleText")->text().toStdString();
    EXPECT_EQ(field->text(), "3.1");
    const QString asked = askedNote(*window);
    EXPECT_EQ(asked.toStdString(), QString::fromStdString(keyboard::Note(static_cast<int>(before) + 1).name())
                                       .replace('#', QString::fromUtf8("♯"))
                                       .toStdString());
    guarded(field, [field] { QTest::keyClick(field, Qt::Key_Return); });
    EXPECT_EQ(field->text(), "3.1") << "still full: still kept";
    full.lift();
    QTest::mouseClick(part(*window, "troubleAgain"), Qt::LeftButton);
    EXPECT_FALSE(part(*window, "troubleBar")->isVisible());
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(stored(), before + 1);
    EXPECT_NE(askedNote(*window), asked);
    EXPECT_TRUE(logbook::verifyHistory(shop.path()).whole());
}

TEST_F(FullDiskDesk, ASmallFileSystemThatIsFullLosesNothingShown)
{
    const QString disk = qEnvironmentVariable("HAMMERLINE_SMALL_DISK", folder.path());
    const std::string path = (disk + "/small.hammerline").toStdString();
    ASSERT_TRUE(shop.book.copyTo(path));
    MainWindow window(surroundings());
    ASSERT_TRUE(window.openLogbook(QString::fromStdString(path)));
    window.show();
    std::optional<FullDisk> limited;
    if (disk == folder.path())
        limited.emplace(path, 32 * 1024);
    const std::size_t before = typeUntilTrouble(window);
    ASSERT_TRUE(part(window, "troubleBar")->isVisible());
    EXPECT_EQ(part<QLineEdit>(window, "entryField")->text(), "3.1");
    std::cout << before << " readings, then: " << part<QLabel>(window, "troubleText")->text().toStdString() << '\n';
    limited.reset();
    EXPECT_EQ(logbook::Logbook::open(path, logbook::Access::ReadOnly).readings(shop.pass.id).size(), before);
}

} // namespace
} // namespace hammerline::main_window
