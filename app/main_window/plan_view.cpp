#include "main_window/plan_view.h"

#include "analysis/analysis.h"
#include "exchange/exchange.h"
#include "exchange/plan_inputs_json.h"
#include "exchange/setup_json.h"
#include "exchange/tolerance_json.h"
#include "main_window/logbook_files.h"
#include "wording/wording.h"

#include <QBoxLayout>

#include <algorithm>
#include <chrono>
#include <cmath>

namespace hammerline::main_window {

namespace {

constexpr double tallConsole = 1200; // mm: below it a vertical is called a console here (facts of the trade vary)
constexpr double longGrand = 2000;   // mm

std::string usualSetup(const instrument::Instrument &instrument)
{
    const double size = instrument.size ? instrument.size->inMillimetres() : 0;
    if (instrument.action == catalogue::ActionKind::Vertical)
        return instrument.size && size < tallConsole ? "console" : "full-upright";
    return size > longGrand ? "grand-over-2m" : "grand-under-2m";
}

/// The built-in setups of the action, the usual one for its size first, and `own` where it is another.
std::vector<plan_sheet::NamedSetup> setupsFor(const instrument::Instrument &instrument,
                                              const std::optional<action::Setup> &own)
{
    std::vector<plan_sheet::NamedSetup> setups;
    for (const exchange::BuiltIn &each : exchange::builtInSetups()) {
        const auto setup = exchange::readSetup(each.text, each.id);
        if (!setup || setup.value().action != instrument.action)
            continue;
        const auto at = each.id == usualSetup(instrument) ? setups.begin() : setups.end();
        setups.insert(
            at, {QString::fromStdString(setup.value().name.empty() ? each.id : setup.value().name), setup.value()});
    }
    if (own && std::ranges::find(setups, *own, &plan_sheet::NamedSetup::setup) == setups.end())
        setups.insert(setups.begin(), {QObject::tr("As kept with the plan"), *own});
    return setups;
}

std::optional<action::PlanTask> keptTask(const logbook::Logbook &book, readings::PassId pass)
{
    const auto inputs = book.keptPlan(pass);
    if (!inputs)
        return std::nullopt;
    auto task = exchange::readPlanInputs(*inputs);
    return task ? std::optional(std::move(task).value()) : std::nullopt;
}

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
           task->sections == m_shown->sections;
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
    m_shownPass = task ? m_workshop.pass()->pass.id : 0;
    std::optional<action::Setup> own;
    if (task) {
        if (const auto kept = keptTask(m_workshop.book(), m_workshop.pass()->pass.id)) {
            own = kept->setup;
            task->setup = kept->setup;
            task->aim = kept->aim;
            task->forbidden = kept->forbidden;
        }
    }
    auto setups = task ? setupsFor(*m_workshop.instrument(), own) : std::vector<plan_sheet::NamedSetup>{};
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

void PlanView::tick(const QString &item, double minutes, bool done)
{
    const readings::PassId pass = m_workshop.pass()->pass.id;
    logbook::Logbook &book = m_workshop.book();
    if (done) {
        const std::string inputs = exchange::planInputsJson(*m_sheet->task());
        if (book.keptPlan(pass) != inputs) // work is logged against a plan that can be looked up
            book.keepPlan(pass, inputs, m_workshop.stamp());
        const std::chrono::seconds took(std::llround(minutes * 60));
        book.logWork(pass, item.toStdString(), took, m_workshop.stamp());
    } else {
        book.takeBackWork(pass, loggedItem(book.workDone(pass), item.toStdString()), m_workshop.stamp());
    }
    m_sheet->setDone(book.workDone(pass));
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
        .done = m_workshop.book().workDone(pass.pass.id),
        .form = m_form};
    const QByteArray pdf = plan_sheet::printPlan(input);
    const auto written = exchange::writeFile(
        path->toStdString(), {pdf.constData(), static_cast<std::size_t>(pdf.size())}, exchange::Overwrite::Yes);
    if (!written)
        m_prompts->tell(this, {tr("The plan was not printed"), wording::faultsText(written.faults()), {}});
}

QString PlanView::fitStory(const action::Fit &fit) const
{
    std::vector<double> ratios, old, fitted;
    int infeasible = 0;
    for (const action::FittedNote &note : fit.notes) {
        ratios.push_back(note.ratio);
        old.push_back(note.aftertouchOfOldTargets.inMillimetres());
        fitted.push_back(note.aftertouch.inMillimetres());
        infeasible += note.feasible ? 0 : 1;
    }
    const auto text = [this](const std::vector<double> &values) {
        const auto median = units::Length::millimetres(analysis::medianOf(values));
        return wording::amountText(median, m_form);
    };
    QString story = tr("This action's ratio is %1 (median). With the targets as they are, aftertouch comes out at %2. "
                       "Targets that fit together give an aftertouch of %3.")
                        .arg(wording::numberText(analysis::medianOf(ratios), 2, m_form), text(old), text(fitted));
    if (infeasible > 0)
        story += ' ' +
                 tr("On %n note(s) no targets inside the limits fit; the nearest ones are taken.", nullptr, infeasible);
    return story;
}

void PlanView::fit()
{
    const auto task = m_sheet->task();
    if (!m_prompts || !task)
        return;
    const auto fitted = action::fitTargets({task->values, task->set, task->compass, task->sections});
    if (!fitted)
        return m_prompts->tell(this, {tr("Targets can't be fitted"), wording::faultsText(fitted.faults()), {}});
    const int answer = m_prompts->ask(
        this, {tr("Fit targets to this action"),
               fitStory(fitted.value()),
               tr("Judging by fitted targets makes a new set of this instrument's own; its limits stay as they are."),
               {tr("Judge by these targets"), tr("Leave it")}});
    if (answer != 0)
        return;
    tolerance::ToleranceSet set = fitted.value().set;
    const std::string from = m_workshop.instrument()->toleranceId;
    set.name += " (fitted)";
    set.remark +=
        (set.remark.empty() ? "" : " ") +
        tr("Targets of blow, let-off, dip and aftertouch fitted on %1 to the readings of “%2”; before that: %3.")
            .arg(QString::fromStdString(readings::isoDate(m_workshop.stamp().at)),
                 QString::fromStdString(m_workshop.instrument()->name), QString::fromStdString(from))
            .toStdString();
    emit setWanted({set.name, exchange::writeToleranceSet(set), set});
}

} // namespace hammerline::main_window
