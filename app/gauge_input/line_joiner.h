#pragma once
// Bytes from a cable, to whole lines. Frames arrive in pieces; a line ends with CR, LF or both.

#include <QByteArray>
#include <QList>

namespace hammerline::gauge_input {

class LineJoiner {
public:
    /// No gauge says more; a line that grows beyond is noise and is dropped up to its end.
    static constexpr qsizetype longestLine = 512;

    /// The lines that `bytes` complete, in order, without their ends; empty lines are none.
    [[nodiscard]] QList<QByteArray> take(const QByteArray &bytes);
    /// Forgets the unfinished line: the cable is out, its rest will never come.
    void cut();
    /// The next line may have begun before we listened: it is dropped, whatever it says.
    void distrustNextLine();
    [[nodiscard]] bool holdsUnfinishedLine() const { return !m_pending.isEmpty(); }

private:
    void finishLine(QList<QByteArray> &lines);

    QByteArray m_pending;
    bool m_dropping = false;
};

} // namespace hammerline::gauge_input
