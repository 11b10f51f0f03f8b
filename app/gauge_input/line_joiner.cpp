#include "gauge_input/line_joiner.h"

namespace hammerline::gauge_input {

QList<QByteArray> LineJoiner::take(const QByteArray &bytes)
{
    QList<QByteArray> lines;
    for (const char byte : bytes) {
        if (byte == '\n' || byte == '\r') {
            finishLine(lines);
            continue;
        }
        if (m_pending.size() == longestLine)
            m_dropping = true;
        else
            m_pending += byte;
    }
    return lines;
}

void LineJoiner::finishLine(QList<QByteArray> &lines)
{
    if (m_pending.isEmpty())
        return; // the LF behind a CR, or an empty line: neither ends a line that was distrusted
    if (!m_dropping)
        lines += m_pending;
    cut();
}

void LineJoiner::cut()
{
    m_pending.clear();
    m_dropping = false;
}

void LineJoiner::distrustNextLine()
{
    cut();
    m_dropping = true;
}

} // namespace hammerline::gauge_input
