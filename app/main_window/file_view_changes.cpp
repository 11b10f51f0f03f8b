// Before and after in the file of an instrument: which two passes, and what they say.
#include "main_window/file_view.h"

#include <algorithm>

namespace hammerline::main_window {

namespace {

const readings::Pass *passIn(const std::vector<readings::Pass> &passes, readings::PassId id)
{
    const auto found = std::ranges::find(passes, id, &readings::Pass::id);
    return found == passes.end() ? nullptr : &*found;
}

} // namespace

void FileView::choosePair(readings::PassId before, readings::PassId after)
{
    m_pair = {id(), before, after};
    fillChanges();
}

void FileView::fillChanges()
{
    instrument_file::ChangePage::Content content;
    const auto *instrument = m_workshop.instrument();
    content.withheld = m_workshop.readsBlind();
    if (instrument == nullptr || content.withheld)
        return m_changes->show(std::move(content), m_form);
    const logbook::Logbook &book = m_workshop.book();
    content.passes = m_workshop.passesOf(instrument->id);
    std::erase_if(content.passes, [&](const readings::Pass &pass) { return book.readingCount(pass.id) == 0; });
    if (m_pair.instrument != instrument->id)
        m_pair = {};
    const auto usual = analysis::usualPair(content.passes);
    const auto *before = passIn(content.passes, m_pair.before), *after = passIn(content.passes, m_pair.after);
    before = before ? before : usual.before;
    after = after ? after : usual.after;
    if (before && after) {
        content.before = before->id;
        content.after = after->id;
        content.changes = analysis::beforeAndAfter({*before, book.values(before->id)}, {*after, book.values(after->id)},
                                                   m_workshop.set() ? &*m_workshop.set() : nullptr);
    }
    m_changes->show(std::move(content), m_form);
}

} // namespace hammerline::main_window
