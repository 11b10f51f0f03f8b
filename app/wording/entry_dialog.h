#pragma once
// A form to fill in that stays open, with the reasons, until what is entered can stand. What is entered is read by the
// form itself; this is only how it ends.

#include "outcome/outcome.h"

#include <QDialog>

#include <vector>

class QLabel;

namespace hammerline::wording {

class EntryDialog : public QDialog {
public:
    using QDialog::QDialog;

protected:
    /// Hands what was entered to `ready` and closes; or tells what is wrong with it and stays.
    template <typename Made, typename Ready>
    void finish(const outcome::Outcome<Made> &made, Ready ready)
    {
        if (!made)
            return tell(made.faults());
        ready(made.value());
        QDialog::accept();
    }
    void tell(const std::vector<outcome::Fault> &faults);

    QLabel *m_faults = nullptr; ///< where the form wants them told; made by the form
};

} // namespace hammerline::wording
