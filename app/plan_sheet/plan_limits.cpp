// Limits and targets that are tried on the plan sheet: how the best plan would be if they were others. A set of which a
// limit would cross its target cannot be planned with; the sheet says so and keeps to the last one that could stand.
#include "plan_sheet/plan_sheet.h"

#include "wording/palette.h"
#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>

namespace hammerline::plan_sheet {

namespace {

constexpr double widestShift = 5; // mm or g, either way

void dressShift(QDoubleSpinBox &box, const char *name, const QString &accessible)
{
    box.setObjectName(name);
    box.setAccessibleName(accessible);
    box.setRange(-widestShift, widestShift);
    box.setSingleStep(0.05);
    box.setDecimals(2);
    box.setKeyboardTracking(false);
}

void shiftPoints(tolerance::Points &points, units::Amount low, units::Amount target, units::Amount high)
{
    for (tolerance::Point &point : points) {
        point.target = point.target + target;
        if (point.low)
            point.low = *point.low + low;
        if (point.high)
            point.high = *point.high + high;
    }
}

} // namespace

QLayout *PlanSheet::makeLimits()
{
    m_limitOf->setObjectName("planLimitOf");
    m_limitOf->setAccessibleName(tr("Quantity whose limits are tried"));
    dressShift(*m_lower, "planLower", tr("Move the lower limit by"));
    dressShift(*m_target, "planTarget", tr("Move the target by"));
    dressShift(*m_upper, "planUpper", tr("Move the upper limit by"));
    m_limitWords->setObjectName("planLimitWords");
    m_limitWords->setWordWrap(true);
    auto *row = new wording::WrapRow(2 * wording::gridStep);
    const auto add = [row](const QString &text, QWidget *field) { row->addPair(new QLabel(text), field); };
    add(tr("Try other li&mits:"), m_limitOf);
    add(tr("lower by"), m_lower);
    add(tr("target by"), m_target);
    add(tr("upper by"), m_upper);
    auto *both = new QVBoxLayout;
    both->setSpacing(wording::gridStep);
    both->addLayout(row);
    both->addWidget(m_limitWords);
    return both;
}

void PlanSheet::fillLimits()
{
    m_limitOf->clear();
    if (!m_task)
        return;
    for (const auto &[quantity, entry] : m_task->set.entries)
        m_limitOf->addItem(wording::nameOf(quantity), static_cast<int>(quantity));
    showShift();
}

void PlanSheet::showShift()
{
    if (!m_task || m_limitOf->currentIndex() < 0)
        return;
    m_filling = true;
    const auto found = m_shifts.find(static_cast<catalogue::Quantity>(m_limitOf->currentData().toInt()));
    const Shift shift = found == m_shifts.end() ? Shift{} : found->second;
    m_lower->setValue(shift.low.inDisplay());
    m_target->setValue(shift.target.inDisplay());
    m_upper->setValue(shift.high.inDisplay());
    m_filling = false;
    tellLimits({});
}

void PlanSheet::takeShift()
{
    if (m_filling || !m_task || m_limitOf->currentIndex() < 0)
        return;
    const auto quantity = static_cast<catalogue::Quantity>(m_limitOf->currentData().toInt());
    const auto amount = [dimension = catalogue::infoOf(quantity).dimension](const QDoubleSpinBox &box) {
        return units::Amount::fromDisplay(dimension, box.value());
    };
    Shifts shifts = m_shifts;
    shifts[quantity] = {amount(*m_lower), amount(*m_target), amount(*m_upper)};
    if (!tolerance::faultsOf(shifted(shifts)).empty())
        return tellLimits(tr("The target has to stay between its limits; planned with what stood before."));
    m_shifts = std::move(shifts);
    replan();
    tellLimits({});
}

/// What the quantity is judged by now, at the lowest and the highest note where they differ.
void PlanSheet::tellLimits(const QString &problem)
{
    if (!problem.isEmpty())
        return m_limitWords->setText(problem);
    const auto quantity = static_cast<catalogue::Quantity>(m_limitOf->currentData().toInt());
    const tolerance::ToleranceSet set = shifted(m_shifts);
    const auto low = tolerance::limitsAt(set, quantity, m_task->compass.first);
    const auto high = tolerance::limitsAt(set, quantity, m_task->compass.last);
    QString text = low ? wording::limitsText(*low, m_form) : QString();
    if (low && high && *low != *high)
        text = tr("%1 in the bass, %2 in the treble").arg(text, wording::limitsText(*high, m_form));
    m_limitWords->setText(text);
}

tolerance::ToleranceSet PlanSheet::shifted(const Shifts &shifts) const
{
    tolerance::ToleranceSet set = m_task->set;
    for (const auto &[quantity, shift] : shifts) {
        tolerance::Entry &entry = set.entries[quantity];
        for (tolerance::Points *points : {&entry.both, &entry.naturals, &entry.sharps})
            shiftPoints(*points, shift.low, shift.target, shift.high);
    }
    return set;
}

} // namespace hammerline::plan_sheet
