#pragma once
// The shop over all its instruments: a table and a chart by person, quantity or month, for the months and states asked
// for. The logbook is read in slices of a few milliseconds while the view is shown, so that the window answers however
// many instruments there are; what is read already shows meanwhile. What was read stays until somebody touches it.

#include "main_window/shop_words.h"
#include "main_window/workshop.h"
#include "prompts/prompts.h"
#include "shop/shop_reader.h"

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>

class QButtonGroup;
class QComboBox;
class QLabel;
class QLayout;
class QPushButton;
class QStackedWidget;
class QTableWidget;

namespace hammerline::main_window {

class RejudgePage;

class ShopView : public QWidget {
    Q_OBJECT
public:
    explicit ShopView(Workshop &workshop, QWidget *parent = nullptr);
    /// Who answers its questions; outlives it.
    void setPrompts(prompts::Prompts *prompts);
    [[nodiscard]] bool isReading() const { return m_timer.isActive(); }
    [[nodiscard]] const std::vector<shop::Row> &rows() const { return m_rows; }
    [[nodiscard]] const RejudgePage &rejudge() const { return *m_rejudge; }

    /// How long the window may stand still for a slice.
    static constexpr qint64 sliceMilliseconds = 8;

protected:
    void showEvent(QShowEvent *event) override;
    void hideEvent(QHideEvent *event) override;

private:
    QWidget *makeFigures();
    QLayout *makeFilters();
    QLayout *makeQuestions();
    void beginIfSeen();
    void readSlice();
    void tellProgress();
    void fillMonths();
    void fill();
    void fillTable();
    void followRows();
    void exportTable();
    void saveChart();
    [[nodiscard]] std::optional<QString> askSave(const QString &title, const QString &filter, const QString &suffix);
    void tell(const QString &title, const std::vector<outcome::Fault> &faults);
    [[nodiscard]] shop::By by() const;
    [[nodiscard]] shop::Filter filter() const;
    [[nodiscard]] ShopQuestion question() const;
    [[nodiscard]] bool asksAboutSets() const;

    Workshop &m_workshop;
    prompts::Prompts *m_prompts = nullptr;
    shop::ShopReader m_reader;
    std::string m_path; ///< of the logbook that was read
    QTimer m_timer;
    QElapsedTimer m_sinceFilled;
    std::vector<shop::Row> m_rows;
    QComboBox *m_by;
    QComboBox *m_from;
    QComboBox *m_to;
    QComboBox *m_state;
    QLabel *m_progress;
    QLabel *m_total;
    QTableWidget *m_table;
    QButtonGroup *m_question;
    QPushButton *m_export;
    QPushButton *m_save;
    charts::BarsPane *m_bars;
    QStackedWidget *m_pages; ///< the figures; what another set would say
    RejudgePage *m_rejudge;
};

} // namespace hammerline::main_window
