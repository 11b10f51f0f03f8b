#pragma once
// Keys that follow each other faster than fingers press them: a gauge that types like a keyboard.

#include <QElapsedTimer>
#include <QKeyEvent>

namespace hammerline::bench {

class KeyBurst {
public:
    /// Between two keys of one burst at most. Quick fingers need 60 ms, and gauges send a key every few.
    static constexpr quint64 apartMilliseconds = 30;
    /// Two fingers may fall on two keys together by chance; three do not.
    static constexpr int sure = 3;

    KeyBurst() { m_clock.start(); }
    void follow(const QKeyEvent &key)
    {
        // The moment of the press where the system tells it: keys that queued behind a slow disk are no burst.
        const quint64 at = key.timestamp() > 0 ? key.timestamp() : static_cast<quint64>(m_clock.elapsed());
        m_length = m_length > 0 && at - m_last <= apartMilliseconds ? m_length + 1 : 1;
        m_last = at;
    }
    /// Keys so far, the newest among them; 1: no burst.
    [[nodiscard]] int length() const { return m_length; }
    void end() { m_length = 0; }

private:
    QElapsedTimer m_clock;
    quint64 m_last = 0;
    int m_length = 0;
};

} // namespace hammerline::bench
