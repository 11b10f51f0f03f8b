#pragma once
// The file of the chosen instrument: hands its pages what the logbook holds, and does what they ask for.

#include "instrument_file/change_page.h"
#include "instrument_file/condition_page.h"
#include "instrument_file/drift_page.h"
#include "instrument_file/photograph_page.h"
#include "instrument_file/sale_page.h"
#include "instrument_file/work_page.h"
#include "main_window/workshop.h"
#include "prompts/prompts.h"

#include <QWidget>

class QTabWidget;

namespace hammerline::main_window {

class FileView : public QWidget {
    Q_OBJECT
public:
    explicit FileView(Workshop &workshop, QWidget *parent = nullptr);
    /// Who answers its questions; outlives it. Without one, nothing that asks is done.
    void setPrompts(prompts::Prompts *prompts) { m_prompts = prompts; }
    void setForm(const wording::NumberForm &form);
    [[nodiscard]] QTabWidget *pages() const { return m_pages; }

signals:
    void noteChosen(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note);

protected:
    void showEvent(QShowEvent *event) override;

private:
    void connectPages();
    void fill();
    void fillIfSeen();
    void fillDrift();
    void fillChanges();
    void choosePair(readings::PassId before, readings::PassId after);
    void written();
    void editWork(const dossier::WorkEntry &entry);
    void changeWork(const QString &uid);
    void strikeWork(const QString &uid);
    void addPhotograph();
    void changePhotograph(const QString &uid);
    void editPhotograph(const dossier::Photograph &photograph, const QByteArray &jpeg);
    void tell(const std::vector<outcome::Fault> &faults);
    [[nodiscard]] QByteArray picture(const std::string &digest) const;
    [[nodiscard]] instrument::InstrumentId id() const { return m_workshop.instrument()->id; }

    Workshop &m_workshop;
    prompts::Prompts *m_prompts = nullptr;
    wording::NumberForm m_form;
    dossier::Dossier m_dossier;
    QTabWidget *m_pages;
    instrument_file::WorkPage *m_work;
    instrument_file::ConditionPage *m_condition;
    instrument_file::PhotographPage *m_photographs;
    instrument_file::DriftPage *m_drift;
    instrument_file::SalePage *m_sale;
    instrument_file::ChangePage *m_changes;
    /// What was chosen on the page of changes, and for which instrument; 0: nothing, the usual two.
    struct ChosenPair {
        instrument::InstrumentId instrument = 0;
        readings::PassId before = 0;
        readings::PassId after = 0;
    };
    ChosenPair m_pair;
};

} // namespace hammerline::main_window
