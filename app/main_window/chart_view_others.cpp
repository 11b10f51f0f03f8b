// What the charts hold the chosen pass against: another pass, or all of the instrument's.
#include "analysis/drift.h"
#include "analysis/drift_stretch.h"
#include "main_window/chart_view.h"
#include "wording/wording.h"

#include <QComboBox>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <tuple>

namespace hammerline::main_window {

namespace {

using readings::Pass;

QString nameOfPass(const Pass &pass, bool isSpotCheck)
{
    const QString name = isSpotCheck ? ChartView::tr("Spot check") : wording::nameOf(pass.purpose);
    return QStringLiteral("%1, %2, %3")
        .arg(name, QString::fromStdString(readings::isoDate(pass.began)), QString::fromStdString(pass.person));
}

} // namespace

tolerance::Judgement ChartView::judged(const readings::ValueTable &values) const
{
    const auto *instrument = m_workshop.instrument();
    tolerance::ToleranceSet none;
    none.action = instrument->action;
    return tolerance::judge(values, m_workshop.set().value_or(none), instrument->compass, instrument->sections);
}

void ChartView::fillAgainst()
{
    const auto chosen = m_against->currentData().toLongLong();
    m_against->clear();
    m_others.clear();
    if (m_workshop.pass() == nullptr || m_workshop.readsBlind())
        return;
    const auto instrument = m_workshop.pass()->pass.instrument;
    const logbook::Logbook &book = m_workshop.book();
    m_others = m_workshop.passesOf(instrument);
    const auto checks = book.spotChecks(instrument);
    m_others.insert(m_others.end(), checks.begin(), checks.end());
    std::erase_if(m_others, [&](const Pass &pass) {
        return pass.id == m_workshop.pass()->pass.id || book.readingCount(pass.id) == 0;
    });
    std::ranges::sort(m_others, std::greater(), [](const Pass &pass) { return std::tuple(pass.began, pass.id); });
    if (m_others.empty())
        return;
    m_against->addItem(tr("what answers best"), qlonglong{0});
    for (const Pass &pass : m_others)
        m_against->addItem(nameOfPass(pass, std::ranges::find(checks, pass.id, &Pass::id) != checks.end()),
                           static_cast<qlonglong>(pass.id));
    m_against->setCurrentIndex(std::max(0, m_against->findData(chosen)));
}

/// Has it read the quantity shown on a note that the chosen pass read too?
bool ChartView::sharesNotes(const Pass &other) const
{
    const auto quantity = m_workshop.selection().quantity;
    const auto there = m_workshop.book().values(other.id);
    const auto &here = m_workshop.pass()->values.column(quantity);
    return std::ranges::any_of(there.column(quantity), [&](const auto &read) { return here.contains(read.first); });
}

/// Of other people's passes with notes in common, a spot check beside the pass that it checked, else the nearest in
/// time: what drifts between two readings is no disagreement of two people. Where none has notes in common, the newest
/// of another person.
const Pass *ChartView::whoToAgreeWith() const
{
    const Pass &now = m_workshop.pass()->pass;
    const logbook::Logbook &book = m_workshop.book();
    const auto checks = [&](const Pass &check, const Pass &checked) {
        const auto of = book.spotCheck(check.id);
        return of && of->checked == checked.id;
    };
    const Pass *best = nullptr;
    auto least = std::tuple(true, true, readings::Instant::duration::max());
    for (const Pass &pass : m_others) {
        if (pass.person == now.person)
            continue;
        const bool shares = sharesNotes(pass);
        const auto apart = shares ? std::chrono::abs(pass.began - now.began) : readings::Instant::duration{};
        const auto rank = std::tuple(!shares, !(shares && (checks(pass, now) || checks(now, pass))), apart);
        if (best == nullptr || rank < least) {
            best = &pass;
            least = rank;
        }
    }
    return best;
}

/// For moving, the first as found, else the one before; one without notes in common only where no other has any.
const Pass *ChartView::usualAgainst() const
{
    if (question() == charts::Question::DoTheyAgree)
        return whoToAgreeWith();
    const Pass &now = m_workshop.pass()->pass;
    const PassInView *found = m_workshop.before();
    const auto shares = [this](const Pass &pass) { return sharesNotes(pass); };
    if (found != nullptr && shares(found->pass))
        return &found->pass;
    const auto earlier =
        std::ranges::find_if(m_others, [&](const Pass &pass) { return pass.began <= now.began && shares(pass); });
    if (earlier != m_others.end())
        return &*earlier;
    const auto any = std::ranges::find_if(m_others, shares);
    if (any != m_others.end())
        return &*any;
    return found != nullptr ? &found->pass : m_others.empty() ? nullptr : &m_others.front();
}

std::optional<Pass> ChartView::against() const
{
    const auto chosen = std::ranges::find(m_others, m_against->currentData().toLongLong(), &Pass::id);
    if (chosen != m_others.end())
        return *chosen;
    const Pass *usual = usualAgainst();
    return usual ? std::optional(*usual) : std::nullopt;
}

/// The later of the two is "now".
void ChartView::addOther(charts::ChartData &data) const
{
    const auto other = m_workshop.readsBlind() ? std::nullopt : against();
    if (!other)
        return;
    const Pass &here = m_workshop.pass()->pass;
    const auto *set = m_workshop.set() ? &*m_workshop.set() : nullptr;
    const auto first = analysis::uncertaintyOf(data.quantity, here.gauge, set);
    const auto second = analysis::uncertaintyOf(data.quantity, other->gauge, set);
    if (first && second)
        data.toldApart = std::hypot(*first, *second);
    data.before = judged(m_workshop.book().values(other->id));
    data.beforeName = wording::nameOf(other->purpose);
    data.beforePerson = QString::fromStdString(other->person);
    data.nowBegan = here.began;
    data.beforeBegan = other->began;
    if (std::tuple(here.began, here.id) > std::tuple(other->began, other->id))
        return;
    std::swap(data.now, *data.before);
    std::swap(data.nowName, data.beforeName);
    std::swap(data.nowPerson, data.beforePerson);
    std::swap(data.nowBegan, data.beforeBegan);
}

void ChartView::addTrends(charts::ChartData &data) const
{
    if (m_workshop.readsBlind() || m_workshop.pass()->check) // a sample is no pass of a drift
        return;
    std::vector<analysis::MeasuredPass> passes;
    const Pass &chosen = m_workshop.pass()->pass;
    for (const Pass &pass : analysis::driftStretch(m_workshop.passesOf(chosen.instrument), chosen)) {
        const auto all = m_workshop.book().values(pass.id);
        readings::ValueTable only; // of one quantity: the others are not drawn
        for (const auto &[note, value] : all.column(data.quantity))
            only.set(data.quantity, note, value);
        passes.push_back({pass, std::move(only)});
    }
    data.trends = analysis::trendsOf(std::move(passes), data.sections, m_workshop.set() ? &*m_workshop.set() : nullptr);
}

} // namespace hammerline::main_window
