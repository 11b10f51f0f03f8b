#pragma once
// Undo and redo of any depth, from the history alone: deeds are fed in their order, and what can be taken back or done
// again falls out. A deed that takes nothing back is fresh and ends every redo.

#include "logbook/logbook.h"

#include <optional>
#include <vector>

namespace hammerline::logbook::inside {

class UndoWalk {
public:
    void feed(DeedId deed, std::optional<DeedId> undoes);
    /// A deed that is not undone and before which nothing is: a signature.
    void bar();

    /// A deed as first done, and the newest deed that did it (again) or took it back.
    struct Step {
        DeedId first = 0;
        DeedId newest = 0;
    };
    /// Newest first to be taken back is last.
    [[nodiscard]] const std::vector<Step> &done() const { return m_done; }
    [[nodiscard]] const std::vector<Step> &undone() const { return m_undone; }

private:
    std::vector<Step> m_done;
    std::vector<Step> m_undone;
};

} // namespace hammerline::logbook::inside
