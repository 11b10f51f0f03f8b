// The bench, continued: what a gauge on a cable says.
#include "bench/bench.h"
#include "bench/inside/asked_board.h"

#include <QApplication>
#include <QPushButton>

namespace hammerline::bench {

bool BenchView::fieldIsFree() const
{
    if (QApplication::activeModalWidget())
        return false;
    const QString text = typedText();
    return text.isEmpty() || (m_stepped && m_asked->holdsProposal()) || text == m_doubted || text == m_fromGauge;
}

void BenchView::setGaugeTypes(bool types)
{
    m_asked->setGaugeTypes(types);
}

void BenchView::takeFromGauge(const QString &typed)
{
    if (!m_session)
        return;
    if (!fieldIsFree() || !m_held.isEmpty()) {
        m_held << typed;
        m_heard.refused();
        return m_asked->remark(
            tr("The gauge says %1, which waits: Enter stores what stands here, Esc drops it.").arg(typed));
    }
    m_asked->begin(typed);
    m_fromGauge = typed;
    take(typed);
}

void BenchView::refuseFromGauge(const QString &why)
{
    if (!m_session)
        return;
    m_heard.refused();
    m_asked->remark(tr("From the gauge: %1").arg(why));
}

void BenchView::offerHeld()
{
    if (m_held.isEmpty() || !fieldIsFree() || !m_session || !m_session->asked())
        return;
    m_asked->propose(m_held.takeFirst());
    m_fromGauge.clear();
    m_stepped.reset();
    m_asked->remark(tr("The gauge said so meanwhile: Enter takes it for this note, typing replaces it."));
}

void BenchView::tellGauge(const QString &state, const QString &story, bool lost)
{
    m_gauge->setText(state);
    m_gauge->setToolTip(story);
    m_gauge->setAccessibleName(state);
    m_gauge->setAccessibleDescription(story);
    m_gauge->setVisible(!state.isEmpty());
    if (lost && m_session)
        m_heard.gaugeLost();
}

} // namespace hammerline::bench
