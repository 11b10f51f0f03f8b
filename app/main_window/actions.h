#pragma once
// Every action of the window by name, and the menus that hold them. The window connects them; nothing here does work.

#include "main_window/settings.h"

#include <QAction>
#include <QMainWindow>

#include <array>

class QMenu;

namespace hammerline::main_window {

inline constexpr int viewCount = 9;

struct Actions {
    QAction *newLogbook, *openLogbook, *newWindow, *importReadings, *exportReadings, *makeRecord, *saveChart, *quit;
    QAction *handOver, *takeOver, *backUp, *checkRecord, *trustedKeys;
    QAction *undo, *redo, *person;
    QAction *takeIn, *changeInstrument, *chooseSet, *beginPass, *changePass;
    QAction *changeState, *signPass, *reopenPass, *acceptItem, *sendItemBack;
    std::array<QAction *, viewCount> views;
    QAction *unitOfPass, *unitMillimetre, *unitInch;
    QAction *themeSystem, *themeLight, *themeDark;
    std::array<QAction *, textPercents.size()> textSizes;
    QMenu *recent, *bench, *spotChecks;
};

/// Owned by `window`, put into its menu bar.
[[nodiscard]] Actions makeActions(QMainWindow *window);
/// Ticks what the settings say.
void tick(const Actions &actions, const Settings &settings);

} // namespace hammerline::main_window
