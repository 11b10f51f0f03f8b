#pragma once
// The centre: one view at a time, named above, and the bars of trouble over them.

#include "bench/bench.h"
#include "main_window/chart_view.h"
#include "main_window/edited_watch.h"
#include "main_window/file_view.h"
#include "main_window/plan_view.h"
#include "main_window/readings_view.h"
#include "main_window/shop_view.h"
#include "main_window/trouble_bar.h"
#include "main_window/workshop.h"
#include "review_desk/review_desk.h"

#include <QWidget>

class QStackedWidget;

namespace hammerline::wording {
class NameBar;
}
namespace hammerline::study_desk {
class StudyDesk;
}

namespace hammerline::main_window {

enum class View { Bench, Charts, Readings, Worst, Plan, Review, File, Studies, Shop };

class Views : public QWidget {
    Q_OBJECT
public:
    explicit Views(Workshop &workshop, QWidget *parent = nullptr);

    void go(View view);
    [[nodiscard]] View current() const;
    /// Rows chosen in the list of items that is shown; empty: none, or another view is shown.
    [[nodiscard]] std::vector<review::Item> chosenItems() const;
    void setForm(const wording::NumberForm &form);
    [[nodiscard]] const wording::NumberForm &form() const { return m_form; }

    [[nodiscard]] bench::BenchView *bench() const { return m_bench; }
    [[nodiscard]] ChartView *chart() const { return m_chart; }
    [[nodiscard]] PlanView *plan() const { return m_plan; }
    [[nodiscard]] FileView *file() const { return m_file; }
    [[nodiscard]] study_desk::StudyDesk *studies() const { return m_studies; }
    [[nodiscard]] ShopView *shop() const { return m_shop; }
    [[nodiscard]] TroubleBar *trouble() const { return m_trouble; }
    [[nodiscard]] EditedWatch &watch() { return m_watch; }

signals:
    /// A gauge study is being taken: nothing that was read before may be seen.
    void blindChanged(bool blind);
    void shown(hammerline::main_window::View view);
    void pairChosen(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note);
    /// An item of any instrument: go there.
    void itemChosen(const hammerline::review::Item &item);
    /// Items of any instruments, at least one: decide about them.
    void acceptWanted(const std::vector<hammerline::review::Item> &items);
    void sendBackWanted(const std::vector<hammerline::review::Item> &items);

private:
    void add(QWidget *view, const QString &name);
    void connectViews();
    void fillLists();
    void fillStudies();

    Workshop &m_workshop;
    EditedWatch m_watch;
    wording::NumberForm m_form;
    wording::NameBar *m_names;
    QStackedWidget *m_stack;
    TroubleBar *m_trouble;
    bench::BenchView *m_bench;
    ChartView *m_chart;
    ReadingsView *m_readings;
    review_desk::ReviewDesk *m_worst;
    PlanView *m_plan;
    review_desk::ReviewDesk *m_review;
    FileView *m_file;
    study_desk::StudyDesk *m_studies;
    ShopView *m_shop;
};

} // namespace hammerline::main_window
