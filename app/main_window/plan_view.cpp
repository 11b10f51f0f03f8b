#include "main_window/plan_view.h"

#include "exchange/exchange.h"
#include "exchange/plan_inputs_json.h"
#include "main_window/action_setups.h"
#include "main_window/logbook_files.h"
#include "plan_sheet/setup_form.h"
#include "plan_sheet/work_clock.h"
#include "wording/wording.h"

#include <QBoxLayout>

#include <algorithm>

namespace hammerline::main_window {

namespace {

constexpr const char *orderSetting = "plan/order";

QString textOf(const std::vector<catalogue::Quantity> &order)
{
    QStringList names;
    for (const catalogue::Quantity quantity : order)
        names << wording::nameOf(quantity).toLower();
    return names.join(QStringLiteral(", "));
}

/// By name or by id; absent where one is neither.
std::optional<std::vector<catalogue::Quantity>> orderFrom(const QString &text)
{
    std::vector<catalogue::Quantity> order;
    for (const QString &part : text.split(',', Qt::SkipEmptyParts)) {
        const QString word = part.trimmed().toLower();
        const auto found = std::ranges::find_if(catalogue::all(), [&](const catalogue::QuantityInfo &info) {
            return word == QString::fromUtf8(info.id.data()) || word == wording::nameOf(info.quantity).toLower();
        });
        if (found == catalogue::all().end())
            return std::nullopt;
        order.push_back(found->quantity);
    }
    return order;
}

/// As it was logged: how many turns a screw was told may have been learned anew since.
std::string loggedItem(const std::vector<logbook::WorkDone> &work, const std::string &item)
{
    for (const logbook::WorkDone &done : work)
        if (action::workIn(done.item) == action::workIn(item))
            return done.item;
    return item;
}

} // namespace

PlanView::PlanView(Workshop &workshop, QWidget *parent)
    : QWidget(parent), m_workshop(workshop), m_sheet(new plan_sheet::PlanSheet)
{
    m_sheet->setObjectName("planSheet");
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_sheet);
    const auto follow = [this] {
        if (isVisible())
            makeAnew();
        else
            m_workshop.setPlanned({}); // made from what was read before
    };
    connect(&m_workshop, &Workshop::passChosen, this, follow);
    connect(&m_workshop, &Workshop::readingsChanged, this, follow);
    connect(m_sheet, &plan_sheet::PlanSheet::planned, this, &PlanView::showPlanned);
    connect(m_sheet, &plan_sheet::PlanSheet::workTicked, this, &PlanView::tick);
    connect(m_sheet, &plan_sheet::PlanSheet::setupWanted, this, &PlanView::editSetup);
    connect(m_sheet, &plan_sheet::PlanSheet::setupChosen, this, &PlanView::remember);
    connect(m_sheet, &plan_sheet::PlanSheet::noteChosen, this, &PlanView::noteChosen);
    connect(m_sheet, &plan_sheet::PlanSheet::keepWanted, this, &PlanView::keep);
    connect(m_sheet, &plan_sheet::PlanSheet::printWanted, this, &PlanView::print);
    connect(m_sheet, &plan_sheet::PlanSheet::fitWanted, this, &PlanView::fit);
    connect(m_sheet, &plan_sheet::PlanSheet::orderWanted, this, &PlanView::askOrder);
}

void PlanView::setSettings(QSettings *settings)
{
    m_settings = settings;
    if (const auto order = orderFrom(settings->value(orderSetting).toString()))
        m_sheet->setOrder(*order);
}

void PlanView::askOrder()
{
    if (!m_prompts || !m_settings)
        return;
    const auto text = m_prompts->askText(
        this, {tr("Order of the work"),
               tr("Quantities in the order of the work, with commas between; empty: as the trade has them"),
               textOf(m_sheet->order())});
    if (!text)
        return;
    const auto order = orderFrom(*text);
    if (!order)
        return m_prompts->tell(this, {tr("The order stays as it was"), tr("One of these is no quantity: %1").arg(*text),
                                      tr("Write for example: dip, let-off, checking")});
    m_settings->setValue(orderSetting, textOf(*order));
    m_sheet->setOrder(*order);
}

void PlanView::setForm(const wording::NumberForm &form)
{
    m_form = form;
    m_shown.reset();
    if (isVisible())
        makeAnew();
}

void PlanView::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    makeAnew();
    m_sheet->setFocus();
}

std::optional<action::PlanTask> PlanView::freshTask(QString &why) const
{
    const auto *instrument = m_workshop.instrument();
    const PassInView *pass = m_workshop.pass();
    if (!instrument || !pass || pass->values.empty()) {
        why = tr("Read some notes first; then the least work that brings them in stands here.");
        return std::nullopt;
    }
    if (!m_workshop.set()) {
        why = tr("Choose what the instrument is judged by; then the least work stands here.");
        return std::nullopt;
    }
    action::PlanTask task;
    task.values = pass->values;
    task.set = *m_workshop.set();
    task.compass = instrument->compass;
    task.sections = instrument->sections;
    return task;
}

bool PlanView::isShown(const std::optional<action::PlanTask> &task) const
{
    return task && m_shown && m_sheet->plan() && m_shownPass == m_workshop.pass()->pass.id &&
           task->values == m_shown->values && task->set == m_shown->set && task->compass == m_shown->compass &&
           task->sections == m_shown->sections &&
           m_workshop.book().actionSetup(m_workshop.instrument()->id) == m_shownSetup;
}

void PlanView::makeAnew()
{
    QString why;
    auto task = freshTask(why);
    if (isShown(task)) { // what was ruled out or tried on the sheet stays
        m_sheet->setDone(m_workshop.book().workDone(m_shownPass));
        return showPlanned();
    }
    m_shown = task;
    if (!task || m_shownPass != m_workshop.pass()->pass.id)
        m_sheet->clock().reset();
    m_shownPass = task ? m_workshop.pass()->pass.id : 0;
    std::vector<plan_sheet::NamedSetup> setups;
    if (task) {
        setups = startFrom(m_workshop.book(), *m_workshop.instrument(), m_shownPass, *task);
        m_shownSetup = m_workshop.book().actionSetup(m_workshop.instrument()->id);
    }
    m_sheet->show(std::move(task), std::move(setups), m_form, why);
    if (!m_shown || !m_sheet->plan())
        return;
    auto findings = plan_sheet::findingsOf(m_shown->values, m_shown->set, m_shown->compass, m_shown->sections,
                                           m_workshop.pass()->pass.gauge.expandedUncertainty);
    findings.learned = learnedBefore();
    m_sheet->setFindings(std::move(findings));
    m_sheet->setDone(m_workshop.book().workDone(m_shownPass));
}

/// From the newest earlier pass with a plan of which work was ticked off, and what this pass then read.
std::vector<action::Learned> PlanView::learnedBefore() const
{
    if (m_workshop.readsBlind())
        return {};
    const logbook::Logbook &book = m_workshop.book();
    std::vector<readings::Pass> passes = m_workshop.passesOf(m_workshop.instrument()->id);
    for (auto earlier = passes.rbegin(); earlier != passes.rend(); ++earlier) {
        if (earlier->began >= m_workshop.pass()->pass.began || earlier->id == m_shownPass)
            continue;
        std::vector<std::string> items;
        for (const logbook::WorkDone &done : book.workDone(earlier->id))
            items.push_back(done.item);
        const auto task = items.empty() ? std::nullopt : keptTask(book, earlier->id);
        if (task)
            return action::learn(action::trialsOf(action::workFrom(items, *task), *task, m_shown->values),
                                 m_shown->sections);
    }
    return {};
}

void PlanView::showPlanned()
{
    std::map<keyboard_strip::PairOf, units::Amount> planned;
    if (m_sheet->plan())
        for (const action::Pair &pair : m_sheet->plan()->pairs)
            planned[{pair.quantity, pair.note}] =
                units::Amount::fromDisplay(catalogue::infoOf(pair.quantity).dimension, pair.after);
    m_workshop.setPlanned(std::move(planned));
}

void PlanView::logTicked(const std::vector<plan_sheet::TickedWork> &work)
{
    const readings::PassId pass = m_workshop.pass()->pass.id;
    logbook::Logbook &book = m_workshop.book();
    const std::string inputs = exchange::planInputsJson(*m_sheet->task());
    if (book.keptPlan(pass) != inputs) // work is logged against a plan that can be looked up
        book.keepPlan(pass, inputs, m_workshop.stamp());
    for (const plan_sheet::TickedWork &ticked : work)
        book.logWork(pass, ticked.item, ticked.took, m_workshop.stamp());
}

void PlanView::tick(const std::vector<plan_sheet::TickedWork> &work, bool done)
{
    const readings::PassId pass = m_workshop.pass()->pass.id;
    logbook::Logbook &book = m_workshop.book();
    if (done)
        logTicked(work);
    else
        for (const plan_sheet::TickedWork &ticked : work)
            book.takeBackWork(pass, loggedItem(book.workDone(pass), ticked.item), m_workshop.stamp());
    m_sheet->setDone(book.workDone(pass));
    m_workshop.passTouched();
}

void PlanView::editSetup()
{
    const auto task = m_sheet->task();
    if (!m_prompts || !task)
        return;
    auto *form = new plan_sheet::SetupForm(task->setup, m_form, *m_prompts, this);
    connect(form, &plan_sheet::SetupForm::ready, this, [this](const action::Setup &setup) {
        m_sheet->chooseSetup({tr("Own setup of this instrument"), setup});
    });
    form->open();
}

void PlanView::remember()
{
    const auto task = m_sheet->task();
    if (!task)
        return;
    rememberSetup(m_workshop.book(), m_workshop.pass()->pass, *task, m_workshop.stamp());
    m_shownSetup = m_workshop.book().actionSetup(m_workshop.instrument()->id);
    m_workshop.passTouched();
}

void PlanView::keep()
{
    const auto task = m_sheet->task();
    if (!task)
        return;
    m_workshop.book().keepPlan(m_workshop.pass()->pass.id, exchange::planInputsJson(*task), m_workshop.stamp());
    m_workshop.passTouched();
}

paper::Size PlanView::askPaper()
{
    const bool american = m_form.locale.measurementSystem() == QLocale::ImperialUSSystem;
    const int answer = m_prompts->ask(this, {.title = tr("Print the plan"),
                                             .text = tr("On which paper?"),
                                             .choices = {tr("A4"), tr("Letter")},
                                             .preferred = american ? 1 : 0,
                                             .whenClosed = american ? 1 : 0});
    return answer == 1 ? paper::Size::Letter : paper::Size::A4;
}

void PlanView::print()
{
    if (!m_prompts || !m_sheet->plan())
        return;
    const instrument::Instrument &instrument = *m_workshop.instrument();
    const auto path =
        m_prompts->chooseFile(this, {prompts::FileWish::Use::Save, tr("Print the plan"), tr("Pages (*.pdf)"),
                                     proposedName(instrument, tr("plan")) + ".pdf", "pdf"});
    if (!path)
        return;
    const PassInView &pass = *m_workshop.pass();
    const plan_sheet::PrintInput input{
        .instrument = QString::fromStdString(instrument.name),
        .pass = wording::nameOf(pass.pass.purpose) + ' ' + QString::fromStdString(readings::isoDate(pass.pass.began)),
        .issued = tr("Planned %1").arg(QString::fromStdString(readings::isoDate(m_workshop.stamp().at))),
        .plan = *m_sheet->plan(),
        .sections = instrument.sections,
        .done = m_workshop.book().workDone(pass.pass.id),
        .form = m_form,
        .size = askPaper()};
    const QByteArray pdf = plan_sheet::printPlan(input);
    const auto written = exchange::writeFile(
        path->toStdString(), {pdf.constData(), static_cast<std::size_t>(pdf.size())}, exchange::Overwrite::Yes);
    if (!written)
        m_prompts->tell(this, {tr("The plan was not printed"), wording::faultsText(written.faults()), {}});
}

} // namespace hammerline::main_window
