#pragma once
// The lead reads a sample again: draws it, reads it at the bench, and is told what it proves about the rest and how far
// the two people agree (spot_check_page.h).
//
// The sample is drawn from the notes that the chosen pass has read, by a seed that is kept with it. At the bench the
// check is a pass of its own that asks for just these notes; it begins empty, so that nobody sees the former value. The
// finding shows itself when the last note of the sample is read; before that, only to who asks for it twice.

#include "main_window/views.h"
#include "main_window/workshop.h"
#include "prompts/prompts.h"

#include <QMenu>
#include <QPointer>

namespace hammerline::main_window {

class SpotCheckPage;

/// All of it outlives the menu's deeds.
struct SpotCheckPlace {
    QWidget *window;
    QMenu *menu;
    Workshop &workshop;
    Views &views;
    prompts::Prompts &prompts;
};

class SpotCheckMenu : public QObject {
    Q_OBJECT
public:
    explicit SpotCheckMenu(const SpotCheckPlace &place);

    static constexpr int usualSample = 20;

    /// Goes to a pass that shows what was read before, where whoever reads again wants it all the same.
    void leaveFor(readings::PassId pass);

signals:
    /// Somebody else is at the bench from now on.
    void readBy(const QString &person);

private:
    QAction *add(const QString &text, const char *name, void (SpotCheckMenu::*deed)());
    void enable();
    void draw();
    /// Absent: the lead thought better of it, or typed no number.
    [[nodiscard]] std::optional<int> askSize(int notes);
    void begin(const QString &person, int size, const std::vector<keyboard::Note> &notes);
    void tell();
    [[nodiscard]] bool wantsToSee(const QString &detail);
    void showPage();
    void followPass();
    void followReadings();

    SpotCheckPlace m_place;
    QAction *m_draw;
    QAction *m_tell;
    QPointer<SpotCheckPage> m_page;
    int m_unread = 0; ///< of the chosen check, as of the newest reading
};

} // namespace hammerline::main_window
