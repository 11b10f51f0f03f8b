#pragma once
// The bench: a whole pass, key by key, without looking away from the action.
//
// Above, what is asked for and the field; below, the last verdict, both readable from two metres. Enter stores and goes
// on; the keys of BenchKeys do the rest. Wrong input stays in the field with the reason under it. The view owns the
// entry session it is given; the logbook behind it outlives the session. BrokenWorld passes through to the top.

#include "bench/bench_keys.h"
#include "bench/entry_session.h"
#include "bench/fault_words.h"
#include "bench/heard.h"
#include "wording/number_form.h"

#include <QStringList>
#include <QWidget>

#include <memory>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QStackedLayout;

namespace hammerline::bench {

class AskedBoard;
class VerdictBoard;

class BenchView : public QWidget {
    Q_OBJECT
public:
    explicit BenchView(QWidget *parent = nullptr);
    ~BenchView() override;

    void setKeys(const BenchKeys &keys);
    void setFaultWords(const std::vector<FaultWord> &words);
    void setForm(const wording::NumberForm &form);
    /// Outlives the view; null: silence.
    void setSounder(sounding::Sounder *sounder) { m_heard.setSounder(sounder); }
    /// A gauge that sends no Enter types into the field: what arrives faster than fingers type is taken when it ends.
    void setGaugeTypes(bool types);
    void setHeard(const HeardChoice &choice) { m_heard.setChoice(choice); }
    /// Null: no pass is chosen; the view says what to do first. `quantity`: where to begin.
    void work(std::unique_ptr<EntrySession> session, catalogue::Quantity quantity);
    [[nodiscard]] const EntrySession *session() const { return m_session.get(); }

    /// What the view says while there is no session, and the one button that leads on (empty: none).
    void sayFirst(const QString &heading, const QString &detail, const QString &button);
    /// Asks for that note; the route changes where it does not lead there.
    void ask(catalogue::Quantity quantity, keyboard::Note note);
    /// Another window or another part of this one has done something.
    void refresh();
    void undo();
    void redo();
    /// The way that is walked now; there must be a session.
    [[nodiscard]] route::Choice choice() const;
    /// Keeps it with the pass, so that it is resumed whenever the pass is, and returns it.
    route::Choice keepChoice();
    void focusField();
    /// A key pressed elsewhere that begins a value.
    void takeKey(QKeyEvent &key);
    /// What a gauge has measured, with its unit: entered as if it had been typed with Enter behind it. Where somebody is
    /// in the middle of typing, or a dialog is open, it waits and is proposed as soon as the field is free.
    void takeFromGauge(const QString &typed);
    /// A gauge sent something that is no reading: said, nothing taken.
    void refuseFromGauge(const QString &why);
    /// How the gauge is, in a word or two and in a sentence; empty: no gauge, nothing shown. `lost`: that it has just gone
    /// is to be heard.
    void tellGauge(const QString &state, const QString &story, bool lost);
    [[nodiscard]] QString typedText() const;

signals:
    /// The pass has changed.
    void stored();
    void askedFor(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note);
    /// The button of the empty view.
    void firstStepWanted();
    /// What tells about the gauge was pressed.
    void gaugeWanted();

private:
    // In the chooser, where a quantity is not negative.
    static constexpr int noteByNoteChoice = -1; ///< all quantities of a note before the next
    static constexpr int allInTurnChoice = -2;  ///< one quantity along all notes, then the next

    [[nodiscard]] QWidget *makeEmptyPage();
    [[nodiscard]] QWidget *makeWorkPage();
    void showPage(int shown);
    [[nodiscard]] std::vector<catalogue::Quantity> quantities() const;
    void fillChooser(catalogue::Quantity quantity);
    void followChoice();
    void followKept();
    [[nodiscard]] int choiceOf(const route::Choice &choice) const;
    void chooseWay();
    void step(int steps);
    void feel(const QString &fault, bool marked);
    void tellDoubt(const QString &text, const slips::Slip &slip);
    void take(const QString &text);
    void act(BenchAct act);
    void refuse(const QString &reason);
    [[nodiscard]] bool fieldIsFree() const;
    void offerHeld();
    void showAsked();
    void showProgress();
    void goOnToNextQuantity();
    void tellDeed(const QString &what, const std::optional<TakenBack> &taken);

    std::unique_ptr<EntrySession> m_session;
    wording::NumberForm m_form;
    BenchKeys m_keys;
    Heard m_heard;
    QString m_doubted; ///< asked about; entered once more it is confirmed
    std::optional<units::Amount> m_stepped;
    QString m_fromGauge;   ///< stands in the field, refused or doubted
    QStringList m_held;    ///< readings of the gauge that wait for the field
    QStackedLayout *m_pages;
    QComboBox *m_chooser;
    QPushButton *m_way;
    QLabel *m_progressText;
    QProgressBar *m_progress;
    AskedBoard *m_asked;
    VerdictBoard *m_verdict;
    QLabel *m_help;
    QPushButton *m_gauge;
    QLabel *m_emptyHeading;
    QLabel *m_emptyDetail;
    QPushButton *m_firstStep;
};

} // namespace hammerline::bench
