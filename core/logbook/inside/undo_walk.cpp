#include "logbook/inside/undo_walk.h"

#include <algorithm>

namespace hammerline::logbook::inside {

namespace {

/// Moves the step whose newest deed is `undoes` over; it was done or undone by `deed` now.
bool move(std::vector<UndoWalk::Step> &from, std::vector<UndoWalk::Step> &to, DeedId undoes, DeedId deed)
{
    // Nearly always the last: search from the end.
    const auto found =
        std::find_if(from.rbegin(), from.rend(), [&](const auto &step) { return step.newest == undoes; });
    if (found == from.rend())
        return false;
    to.push_back({found->first, deed});
    from.erase(std::next(found).base());
    return true;
}

} // namespace

void UndoWalk::feed(DeedId deed, std::optional<DeedId> undoes)
{
    if (undoes) {
        if (!move(m_done, m_undone, *undoes, deed))
            move(m_undone, m_done, *undoes, deed);
        return;
    }
    m_done.push_back({deed, deed});
    m_undone.clear();
}

void UndoWalk::bar()
{
    m_done.clear();
    m_undone.clear();
}

} // namespace hammerline::logbook::inside
