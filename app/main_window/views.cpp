#include "main_window/views.h"

#include "main_window/edited_bar.h"
#include "study_desk/study_desk.h"
#include "wording/counted.h"
#include "wording/name_bar.h"

#include <QBoxLayout>
#include <QScrollArea>
#include <QStackedWidget>

namespace hammerline::main_window {

Views::Views(Workshop &workshop, QWidget *parent)
    : QWidget(parent),
      m_workshop(workshop),
      m_watch(workshop, this),
      m_names(new wording::NameBar(wording::TextSize::Heading)),
      m_stack(new QStackedWidget),
      m_trouble(new TroubleBar),
      m_bench(new bench::BenchView),
      m_chart(new ChartView(workshop)),
      m_readings(new ReadingsView(workshop)),
      m_worst(new review_desk::ReviewDesk(review_desk::Scope::OnePass)),
      m_plan(new PlanView(workshop)),
      m_review(new review_desk::ReviewDesk(review_desk::Scope::Workshop)),
      m_file(new FileView(workshop)),
      m_studies(new study_desk::StudyDesk([&workshop] { return workshop.stamp().at; })),
      m_shop(new ShopView(workshop))
{
    m_names->setObjectName("viewNames");
    m_names->setAccessibleName(tr("Views"));
    m_bench->setObjectName("bench");
    add(m_bench, tr("Bench"));
    add(m_chart, tr("Charts"));
    add(m_readings, tr("Readings"));
    add(m_worst, tr("Out of tolerance"));
    add(m_plan, tr("Plan"));
    add(m_review, tr("Review"));
    add(m_file, tr("File"));
    add(m_studies, tr("Studies"));
    add(m_shop, tr("Shop"));
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_names);
    column->addWidget(m_trouble);
    column->addWidget(new EditedBar(m_watch));
    column->addWidget(m_stack, 1);
    connectViews();
}

void Views::add(QWidget *view, const QString &name)
{
    // At twice the text size a view may need more room than a small screen has.
    auto *area = new QScrollArea;
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidgetResizable(true);
    area->setWidget(view);
    m_stack->addWidget(area);
    m_names->addTab(name);
}

void Views::connectViews()
{
    connect(m_names, &QTabBar::currentChanged, this, [this](int index) {
        m_stack->setCurrentIndex(index);
        fillLists();
        emit blindChanged(current() == View::Studies && m_studies->blind());
        emit shown(static_cast<View>(index));
    });
    connect(m_trouble, &TroubleBar::tryAgain, &m_watch, &EditedWatch::goOn);
    connect(m_readings, &ReadingsView::pairChosen, this, &Views::pairChosen);
    connect(m_plan, &PlanView::noteChosen, this, &Views::pairChosen);
    connect(m_file, &FileView::noteChosen, this, &Views::pairChosen);
    connect(m_chart, &ChartView::noteChosen, this,
            [this](keyboard::Note note) { emit pairChosen(m_workshop.selection().quantity, note); });
    for (review_desk::ReviewDesk *desk : {m_worst, m_review}) {
        connect(desk, &review_desk::ReviewDesk::chosen, this, &Views::itemChosen);
        connect(desk, &review_desk::ReviewDesk::acceptWanted, this, &Views::acceptWanted);
        connect(desk, &review_desk::ReviewDesk::sendBackWanted, this, &Views::sendBackWanted);
    }
    connect(m_studies, &study_desk::StudyDesk::blindChanged, this, &Views::blindChanged);
    connect(m_studies, &study_desk::StudyDesk::pairChosen, this, &Views::pairChosen);
    connect(&m_workshop, &Workshop::passChosen, this, &Views::fillLists);
    connect(&m_workshop, &Workshop::readingsChanged, this, &Views::fillLists);
    connect(&m_workshop, &Workshop::instrumentsChanged, this, &Views::fillLists);
}

void Views::go(View view)
{
    m_names->setCurrentIndex(static_cast<int>(view));
    if (view == View::Studies)
        m_studies->focusFirst();
    if (view == View::Worst || view == View::Review)
        (view == View::Worst ? m_worst : m_review)->focusFirst();
}

View Views::current() const
{
    return static_cast<View>(m_names->currentIndex());
}

std::vector<review::Item> Views::chosenItems() const
{
    if (current() != View::Worst && current() != View::Review)
        return {};
    return (current() == View::Worst ? m_worst : m_review)->chosenItems();
}

void Views::setForm(const wording::NumberForm &form)
{
    m_form = form;
    m_bench->setForm(form);
    m_chart->setForm(form);
    m_readings->setForm(form);
    m_plan->setForm(form);
    m_file->setForm(form);
    fillLists();
}

void Views::fillStudies()
{
    study_desk::StudyPlace place;
    if (m_workshop.isOpen()) {
        constexpr std::int64_t seeds = 1'000'000; // few enough digits to write down
        const logbook::Stamp stamp = m_workshop.stamp();
        place.book = &m_workshop.book();
        place.proposal.seed = static_cast<std::uint32_t>(stamp.at.time_since_epoch().count() % seeds);
        if (!stamp.person.empty())
            place.proposal.people = {stamp.person};
    }
    if (const auto *instrument = m_workshop.instrument())
        place.proposal.instrument = *instrument;
    if (const PassInView *pass = m_workshop.pass()) {
        place.proposal.gauge = pass->pass.gauge;
        place.proposal.unit = pass->pass.unit;
        place.proposal.quantity = m_workshop.selection().quantity;
    }
    place.set = m_workshop.set() ? &*m_workshop.set() : nullptr;
    m_studies->show(place);
}

void Views::fillLists()
{
    if (current() == View::Studies)
        return fillStudies();
    if (current() != View::Worst && current() != View::Review)
        return;
    Workshop::Queue queue = current() == View::Worst ? m_workshop.queueOfPass() : m_workshop.queue();
    review_desk::Desk desk{.items = std::move(queue.items),
                           .conceded = std::move(queue.conceded),
                           .mended = std::move(queue.mended),
                           .inDoubt = std::move(queue.inDoubt)};
    int delivered = 0;
    for (const logbook::InstrumentLine &each : m_workshop.instruments())
        if (each.state == instrument::State::Delivered)
            ++delivered;
        else
            desk.names[each.id] = QString::fromStdString(each.name);
    if (const auto *chosen = m_workshop.instrument())
        desk.names[chosen->id] = QString::fromStdString(chosen->name);
    if (current() == View::Review && delivered > 0)
        desk.withheld = wording::counted(delivered, tr("One instrument is delivered and not listed."),
                                         tr("%1 instruments are delivered and not listed."));
    if (current() == View::Review && m_workshop.readsBlind())
        desk.withheld = (desk.withheld + ' ' +
                         tr("What waits on “%1” is not listed until the sample of its spot check is read.")
                             .arg(QString::fromStdString(m_workshop.instrument()->name)))
                            .trimmed();
    desk.now = m_workshop.isOpen() ? m_workshop.stamp().at : readings::Instant{};
    (current() == View::Worst ? m_worst : m_review)->show(std::move(desk), m_form, queue.judged);
}

} // namespace hammerline::main_window
