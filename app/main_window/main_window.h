#pragma once
// The window: the workshop at the left, a view in the centre, the strip across the foot. It connects the rooms and does
// little itself; what can be tested without a window lives in workshop.h and logbook_files.h.
//
// A window has a logbook of its own. Several windows may be open on one file; each looks twice a second for what the
// others have done. A BrokenWorld ends in `tellTrouble` (see guarded_application.h).

#include "main_window/actions.h"
#include "main_window/backup_keeper.h"
#include "main_window/settings.h"
#include "main_window/views.h"
#include "main_window/workshop.h"
#include "prompts/prompts.h"
#include "sounding/sounding.h"

#include <QMainWindow>
#include <QTimer>

#include <memory>
#include <optional>

class QApplication;
class QStackedWidget;

namespace hammerline::instrument_file {
class PassForm;
}

namespace hammerline::main_window {

class StartPage;
class LogbookPage;

/// What a window needs from outside; outlives it.
struct Surroundings {
    prompts::Prompts &prompts;
    QSettings &settings;
    Clock clock;
    std::string keyFile{}; ///< where the workshop's key lies, or is to lie; empty: no place is known
    sounding::Sounder *sounder = nullptr;
};

class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    static constexpr int pollMilliseconds = 500;

    explicit MainWindow(const Surroundings &surroundings, QWidget *parent = nullptr);
    ~MainWindow() override;

    /// False where the file is none of ours or broken; the trouble bar says why.
    bool openLogbook(const QString &path);
    /// For a window not yet shown: it is painted first, saying what it opens, then opens it.
    void openOncePainted(const QString &path);
    bool createLogbook(const QString &path);
    void tellTrouble(const QString &what);
    [[nodiscard]] const Workshop &workshop() const { return *m_workshop; }
    /// Made where they are not there yet.
    [[nodiscard]] Views &views();

protected:
    void closeEvent(QCloseEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    // main_window.cpp: how the parts hang together
    /// Made when a logbook is opened or the start page has been painted, whichever comes first.
    LogbookPage &work();
    void addMenus();
    void connectStart();
    void connectParts();
    void connectActions();
    void showState();
    void tellFirstStep();
    void nameUndo();
    void followPass();
    void followForm();
    void goTo(catalogue::Quantity quantity, keyboard::Note note);
    void goToPair(readings::PassId pass, const Selection &selection);
    void goToItem(const review::Item &item);
    void poll();

    // main_window_opening.cpp: how a logbook comes into it
    void afterFirstPaint();

    // main_window_settings.cpp: what it remembers for the person
    void fillRecent();
    void setTheme(ThemeChoice choice);
    void setUnit(std::optional<units::Unit> unit);
    void setTextPercent(int percent);

    // main_window_desk.cpp: what the lead decides
    void acceptItem();
    void sendItemBack();
    void acceptItems(const std::vector<review::Item> &items);
    void sendItemsBack(const std::vector<review::Item> &items);
    void changeState();
    void signPass();
    /// Open items as a list to go through, anything else as a notice.
    void tellUnsigned(const std::vector<outcome::Fault> &faults);
    void reopenPass();
    /// The rows chosen in a list of items, else the pair that all views speak of as an item; told where it is none.
    [[nodiscard]] std::vector<review::Item> chosenItem(const QString &title);
    /// Asks for the words and decides about all of them, one deed a pass.
    using Deciding = outcome::Outcome<logbook::DeedId> (logbook::Logbook::*)(readings::PassId,
                                                                             const std::vector<decisions::Decision> &,
                                                                             const logbook::Stamp &);
    void decide(const std::vector<review::Item> &items, const QString &title, const QString &label, Deciding how);

    // main_window_deeds.cpp: what the menus do
    void askNewLogbook();
    void askOpenLogbook();
    MainWindow *openAnotherWindow();
    void takeIn();
    void changeInstrument();
    void storeInstrument(const instrument::Instrument &instrument);
    void chooseSet();
    void judgeBy(const exchange::NamedSet &set);
    void beginPass();
    void changePass();
    void beginWith(const readings::Pass &pass, const std::vector<readings::Reading> &imported);
    [[nodiscard]] readings::Pass proposedPass() const;
    /// With what the studies of gauges found.
    [[nodiscard]] instrument_file::PassForm *formFor(const readings::Pass &pass);
    void firstStep();
    void importReadings();
    void exportReadings();
    void saveChart();
    void makeRecord();
    // main_window_handing.cpp: out of the logbook and into it, whole
    void handOver();
    void takeOver();
    void backUp();
    void undo();
    void redo();
    void retrace(const std::optional<logbook::Deed> &deed, bool back);
    bool askPerson(); ///< false where the person thought better of it
    void tellFaults(const QString &title, const std::vector<outcome::Fault> &faults);
    [[nodiscard]] std::optional<QString> askSave(const QString &title, const QString &filter, const QString &suffix,
                                                 const QString &name);

    prompts::Prompts &m_prompts;
    Settings m_settings;
    Clock m_clock;
    std::string m_keyFile;
    sounding::Sounder *m_sounder;
    BackupKeeper m_backups;
    std::unique_ptr<Workshop> m_workshop;
    Actions m_actions;
    QStackedWidget *m_pages;
    StartPage *m_start;
    LogbookPage *m_work = nullptr;
    std::optional<QString> m_awaited; ///< opened after the first paint
    QTimer m_timer;
};

/// Theme, window and event loop of the desktop; `logbook` is opened first. The exit status. The application should be
/// a GuardedApplication, and its name and version set.
[[nodiscard]] int runDesktop(QApplication &application, const std::optional<QString> &logbook,
                             const std::string &keyFile);

} // namespace hammerline::main_window
