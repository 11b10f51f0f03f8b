#include "wording/entry_dialog.h"

#include "wording/wording.h"

#include <QLabel>

namespace hammerline::wording {

void EntryDialog::tell(const std::vector<outcome::Fault> &faults)
{
    m_faults->setText(faultsText(faults));
}

} // namespace hammerline::wording
