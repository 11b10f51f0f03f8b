#pragma once
// One entry of the log of work. It needs to say what was done; a departure from the original build needs its reason
// too. The form stays open, with the reasons, until what is entered can stand.

#include "dossier/dossier.h"
#include "outcome/outcome.h"
#include "wording/entry_dialog.h"

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLineEdit;

namespace hammerline::instrument_file {

class WorkForm : public wording::EntryDialog {
    Q_OBJECT
public:
    /// Starts from `known`; without a uid: a new entry.
    WorkForm(dossier::WorkEntry known, const keyboard::Compass &compass, QWidget *parent = nullptr);

    /// What the fields say now.
    [[nodiscard]] outcome::Outcome<dossier::WorkEntry> entered() const;

signals:
    void ready(const hammerline::dossier::WorkEntry &entry);

public slots:
    void accept() override;

private:
    void addFields(QFormLayout *form);
    void fill();
    void readNotes(dossier::WorkEntry &made, std::vector<outcome::Fault> &faults) const;

    dossier::WorkEntry m_known;
    keyboard::Compass m_compass;
    QComboBox *m_kind = nullptr;
    QLineEdit *m_what = nullptr, *m_first = nullptr, *m_last = nullptr, *m_material = nullptr, *m_person = nullptr;
    QLineEdit *m_day = nullptr, *m_hours = nullptr, *m_why = nullptr, *m_remark = nullptr;
    QCheckBox *m_departure = nullptr;
};

} // namespace hammerline::instrument_file
