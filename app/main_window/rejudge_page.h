#pragma once
// What if the shop were judged by another set? A set is chosen (built in, one that the logbook judges by, a file), and
// beside what stands the page shows what would: by quantity, or by instrument with the worst change first.
//
// The judging has threads of its own (rejudge_run.h); the window answers meanwhile and sees how far it has come. What
// was judged stays until somebody touches it.

#include "charts/bars.h"
#include "exchange/built_in.h"
#include "main_window/rejudge_run.h"
#include "main_window/workshop.h"
#include "prompts/prompts.h"

#include <QTimer>
#include <QWidget>

#include <vector>

class QComboBox;
class QLayout;
class QLabel;
class QTableView;

namespace hammerline::main_window {

class RejudgeModel;

class RejudgePage : public QWidget {
    Q_OBJECT
public:
    explicit RejudgePage(Workshop &workshop, QWidget *parent = nullptr);
    /// Who answers its questions; outlives it.
    void setPrompts(prompts::Prompts *prompts) { m_prompts = prompts; }

    /// Of the passes and instruments that the filter leaves in.
    void ask(const shop::Filter &filter);
    [[nodiscard]] bool isJudging() const { return m_run.isRunning(); }
    [[nodiscard]] const shop::ShopJudged &judged() const { return m_judged; }
    [[nodiscard]] const charts::BarsData &bars() const { return m_bars->data(); }
    [[nodiscard]] std::string csv() const;

signals:
    void filled(); ///< there is something to save, or no longer

protected:
    void showEvent(QShowEvent *event) override;

private:
    QLayout *makeChoices();
    void offerSets();
    void offer(exchange::NamedSet set, const QString &pattern);
    void chooseSet(int row);
    void openFile();
    void followLogbook();
    void judgeAnew();
    void judgeTouched();
    void begin(std::optional<shop::Instruments> only);
    void look();
    void takeIn(shop::ShopJudged judged);
    void fill();
    [[nodiscard]] const exchange::NamedSet *chosen() const;
    [[nodiscard]] bool byInstrument() const;
    [[nodiscard]] shop::Names names() const;
    [[nodiscard]] QString answerText() const;
    [[nodiscard]] QString leftOutText() const;

    Workshop &m_workshop;
    prompts::Prompts *m_prompts = nullptr;
    shop::Filter m_filter;
    std::vector<exchange::NamedSet> m_sets;  ///< by row of the box, after the first
    std::string m_path;                      ///< of the logbook that was judged
    logbook::DeedId m_seen = 0;              ///< what was done since is not in `m_judged`
    logbook::DeedId m_seenByRun = 0;         ///< of the run under way
    std::optional<shop::Instruments> m_only; ///< what the run under way judges anew; absent: all
    shop::ShopJudged m_judged;
    RejudgeRun m_run;
    QTimer m_timer;
    QComboBox *m_set;
    QComboBox *m_which;
    QComboBox *m_by;
    QLabel *m_answer;
    QTableView *m_table;
    RejudgeModel *m_model;
    charts::BarsPane *m_bars;
};

} // namespace hammerline::main_window
