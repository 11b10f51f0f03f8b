#pragma once
// What the menu of the bench does beside listening: its keys, and its sheet of paper. The sheet is printed in the order
// in which the pass asks for its notes, and that order is kept with the pass: who types the sheet in afterwards follows
// the boxes, in another week too.

#include "bench/bench.h"
#include "bench_sheet/bench_sheet.h"
#include "main_window/workshop.h"
#include "prompts/prompts.h"

#include <QMenu>
#include <QSettings>

namespace hammerline::main_window {

/// All of it outlives the menu's deeds.
struct BenchPlace {
    QWidget *window;
    QMenu *menu;
    bench::BenchView *bench;
    Workshop &workshop;
    prompts::Prompts &prompts;
    QSettings &settings;
};

class BenchMenu : public QObject {
    Q_OBJECT
public:
    explicit BenchMenu(const BenchPlace &place);

private:
    QAction *add(const QString &text, const char *name, void (BenchMenu::*deed)());
    void changeKeys();
    void printSheet();

    BenchPlace m_place;
};

/// The sheet of the chosen pass: one box a stop of the session's route.
[[nodiscard]] bench_sheet::BenchSheetInput benchSheetOf(const Workshop &workshop, const bench::EntrySession &session,
                                                        const route::Choice &choice);

} // namespace hammerline::main_window
