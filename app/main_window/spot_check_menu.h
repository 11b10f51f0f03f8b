#pragma once
// The lead reads a sample again: draws it, opens the spot check at the bench, and is told what it proves about the rest
// and how far the two people agree.
//
// The sample is drawn from the notes that the chosen pass has read, by a seed that is kept with it. At the bench the
// check is a pass of its own that asks for just these notes; it begins empty, so that nobody sees the former value.

#include "analysis/analysis.h"
#include "analysis/spot_check.h"
#include "main_window/workshop.h"
#include "prompts/prompts.h"

#include <QMenu>

#include <map>

namespace hammerline::main_window {

/// What a spot check says about one quantity.
struct SpotCheckFinding {
    int readAgain = 0; ///< of the sample
    int out = 0;       ///< of these
    int notes = 0;     ///< read in the pass checked
    int mostOut = 0;   ///< of all notes, with 95 % confidence
    analysis::Comparison agreement{};
};

/// By quantity, those with at least one note of the sample read again.
[[nodiscard]] std::map<catalogue::Quantity, SpotCheckFinding>
findingsOf(const readings::ValueTable &checked, const readings::ValueTable &again, const decisions::SpotCheck &check,
           const tolerance::Judgement &judgementAgain);

/// All of it outlives the menu's deeds.
struct SpotCheckPlace {
    QWidget *window;
    QMenu *menu;
    Workshop &workshop;
    prompts::Prompts &prompts;
};

class SpotCheckMenu : public QObject {
    Q_OBJECT
public:
    explicit SpotCheckMenu(const SpotCheckPlace &place);

    static constexpr int usualSample = 20;

signals:
    void benchWanted();

private:
    QAction *add(const QString &text, const char *name, void (SpotCheckMenu::*deed)());
    void enable();
    void draw();
    void begin(int size, const std::vector<keyboard::Note> &notes, const std::vector<catalogue::Quantity> &quantities);
    void open();
    void tell();
    [[nodiscard]] std::optional<decisions::SpotCheck> chosenCheck() const;

    SpotCheckPlace m_place;
    QAction *m_draw;
    QAction *m_open;
    QAction *m_tell;
};

} // namespace hammerline::main_window
