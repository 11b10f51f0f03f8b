#pragma once
// One of the two tops at which a broken world is caught: whatever an event handler throws as BrokenWorld ends here and
// is told in the window it came from. The event counts as handled; what was typed stays where it was typed.

#include "outcome/outcome.h"

#include <QApplication>

#include <functional>

namespace hammerline::main_window {

/// Runs `work`; a BrokenWorld is told in the main window that owns `source` (else in any). False where one was thrown.
bool guarded(const QObject *source, const std::function<void()> &work);

class GuardedApplication : public QApplication {
    Q_OBJECT
public:
    using QApplication::QApplication;
    bool notify(QObject *receiver, QEvent *event) override;
};

} // namespace hammerline::main_window
