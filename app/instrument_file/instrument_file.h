#pragma once
// Taking in an instrument: the form for what is known of it. A new instrument needs a name and a kind of action;
// everything else may be learnt later. The form stays open, with the reasons, until what is entered can stand.

#include "instrument/instrument.h"
#include "outcome/outcome.h"
#include "wording/entry_dialog.h"

class QComboBox;
class QFormLayout;
class QLineEdit;
class QPlainTextEdit;
class QVBoxLayout;

namespace hammerline::instrument_file {

class InstrumentForm : public wording::EntryDialog {
    Q_OBJECT
public:
    /// Starts from `known` (id, uid, state and tolerance set are handed through). id 0: a new instrument.
    explicit InstrumentForm(instrument::Instrument known, QWidget *parent = nullptr);

    /// What the fields say now.
    [[nodiscard]] outcome::Outcome<instrument::Instrument> entered() const;

signals:
    void ready(const hammerline::instrument::Instrument &instrument);

public slots:
    void accept() override;

private:
    void addIdentity(QFormLayout *form);
    void addBuild(QFormLayout *form);
    void addStory(QFormLayout *form);
    void fill();
    void readRanges(instrument::Instrument &made, std::vector<outcome::Fault> &faults) const;

    instrument::Instrument m_known;
    QLineEdit *m_name = nullptr, *m_first = nullptr, *m_last = nullptr, *m_sections = nullptr;
    QLineEdit *m_maker = nullptr, *m_model = nullptr, *m_serial = nullptr, *m_year = nullptr, *m_size = nullptr;
    QLineEdit *m_stringing = nullptr, *m_dampers = nullptr, *m_owner = nullptr;
    QComboBox *m_action = nullptr;
    QPlainTextEdit *m_condition = nullptr, *m_remark = nullptr;
};

} // namespace hammerline::instrument_file
