#include "plan_sheet/work_clock.h"

#include "wording/palette.h"
#include "wording/wrap_row.h"

#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>

namespace hammerline::plan_sheet {

namespace {

constexpr double mostMinutes = 999;

} // namespace

WorkClock::WorkClock(QWidget *parent)
    : QWidget(parent), m_button(new QPushButton), m_time(new QLabel), m_typed(new QDoubleSpinBox)
{
    m_own.start();
    m_ticks = [this] { return std::chrono::milliseconds(m_own.elapsed()); };
    m_button->setObjectName("planClock");
    m_button->setCheckable(true);
    m_time->setObjectName("planClockTime");
    m_typed->setObjectName("planTook");
    m_typed->setAccessibleName(tr("Minutes that the next tick took"));
    m_typed->setRange(0, mostMinutes);
    m_typed->setDecimals(1);
    m_typed->setSpecialValueText(tr("by the clock"));
    auto *label = new QLabel(tr("next tick &took (min)"));
    label->setBuddy(m_typed);
    auto *row = new wording::WrapRow(2 * wording::gridStep);
    setLayout(row);
    row->addWidget(m_button);
    row->addWidget(m_time);
    row->addWidget(label);
    row->addWidget(m_typed);
    connect(m_button, &QPushButton::toggled, this, &WorkClock::run);
    connect(&m_second, &QTimer::timeout, this, &WorkClock::tell);
    tell();
}

std::chrono::milliseconds WorkClock::elapsed() const
{
    return m_button->isChecked() ? m_before + m_ticks() - m_since : m_before;
}

void WorkClock::run(bool running)
{
    if (running) {
        m_since = m_ticks();
        m_second.start(std::chrono::seconds(1));
    } else {
        m_before += m_ticks() - m_since;
        m_second.stop();
    }
    tell();
}

std::chrono::seconds WorkClock::take()
{
    const auto run = std::chrono::round<std::chrono::seconds>(elapsed());
    const auto typed =
        std::chrono::round<std::chrono::seconds>(std::chrono::duration<double, std::ratio<60>>(m_typed->value()));
    m_before = {};
    m_since = m_ticks();
    m_typed->setValue(0);
    tell();
    return typed.count() > 0 ? typed : run;
}

void WorkClock::reset()
{
    m_button->setChecked(false);
    m_before = {};
    m_typed->setValue(0);
    tell();
}

void WorkClock::tell()
{
    m_button->setText(m_button->isChecked() ? tr("Stop the &clock") : tr("Start the &clock"));
    const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(elapsed()).count();
    m_time->setText(QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QChar('0')));
}

} // namespace hammerline::plan_sheet
