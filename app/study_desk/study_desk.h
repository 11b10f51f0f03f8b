#pragma once
// The gauge studies of a logbook: a list at the left, beside it the study that is chosen: being taken while trials are
// missing, what it says once all are there.

#include "prompts/prompts.h"
#include "study_desk/findings_page.h"
#include "study_desk/plan_form.h"
#include "study_desk/taking_page.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QStackedWidget;
class QBoxLayout;
class QTableWidget;

namespace hammerline::study_desk {

/// What the desk works on.
struct StudyPlace {
    logbook::Logbook *book = nullptr; ///< null: none is open
    PlanProposal proposal{};
    const tolerance::ToleranceSet *set = nullptr; ///< that the notes of the chosen instrument are judged by
};

class StudyDesk : public QWidget {
    Q_OBJECT
public:
    explicit StudyDesk(Clock clock, QWidget *parent = nullptr);
    /// Who answers its questions; outlives it. Without one, nothing that asks is done.
    void setPrompts(prompts::Prompts *prompts) { m_prompts = prompts; }
    /// Called whenever something may have changed. Typing is not disturbed. The logbook and the set outlive the call
    /// until the next one.
    void show(const StudyPlace &place);
    using QWidget::show;
    /// A study is being taken: nobody is to see what was read of its notes before.
    [[nodiscard]] bool blind() const;
    void focusFirst();
    /// List and page side by side, or one below the other where the window is too narrow.
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// What a gauge on its cable says, with its unit; why nothing was taken from a line. False where no study is being
    /// taken before everybody's eyes: it is somebody else's then.
    bool takeFromGauge(const QString &typed);
    bool refuseFromGauge(const QString &why);

signals:
    void blindChanged(bool blind);
    /// What a gauge is to say here from now on; absent: nothing.
    void asksFor(const std::optional<hammerline::catalogue::Quantity> &quantity);
    /// A note of a study that was read on the chosen instrument: go there.
    void pairChosen(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note);
    /// The logbook has a new deed.
    void written();

protected:
    void resizeEvent(QResizeEvent *event) override;
    void showEvent(QShowEvent *event) override;
    void hideEvent(QHideEvent *event) override;

private:
    [[nodiscard]] bool takesReadings() const { return blind() && isVisible(); }
    void tellWhatIsAsked();
    void arrange();
    void makeList();
    void fillList();
    void fitList();
    void showChosen();
    void plan();
    void strike();
    void saveChart();
    void saveTrials();
    [[nodiscard]] QString proposedName(const QString &what, const QString &ending) const;
    [[nodiscard]] QString proposedChartName() const;
    void tell(const QString &title, const std::vector<outcome::Fault> &faults);
    [[nodiscard]] std::optional<logbook::PlannedStudy> chosen() const;
    [[nodiscard]] QStringList textsOf(const logbook::PlannedStudy &study) const;

    Clock m_clock;
    prompts::Prompts *m_prompts = nullptr;
    StudyPlace m_place;
    std::vector<logbook::PlannedStudy> m_studies; ///< newest first
    logbook::StudyId m_chosen = 0;
    QBoxLayout *m_row;
    QWidget *m_left; ///< the list and what is done with it
    QTableWidget *m_list;
    QPushButton *m_plan, *m_strike;
    QStackedWidget *m_pages;
    QLabel *m_empty;
    TakingPage *m_taking;
    FindingsPage *m_findings;
};

} // namespace hammerline::study_desk
