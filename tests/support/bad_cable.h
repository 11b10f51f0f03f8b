#pragma once
// A pseudo-terminal that behaves as badly as a workshop's cable. Link with util.

#include <QByteArray>
#include <QFile>
#include <QString>

#include <gtest/gtest.h>
#include <pty.h>
#include <termios.h>
#include <unistd.h>

namespace hammerline::support {

/// A gauge behind a link, so that pulling it and putting it back gives the same device name another terminal.
class BadCable {
public:
    explicit BadCable(QString link) : m_link(std::move(link)) { plugIn(); }
    ~BadCable() { unplug(); }
    BadCable(const BadCable &) = delete;
    BadCable &operator=(const BadCable &) = delete;

    void plugIn()
    {
        char name[128] = {};
        termios raw{};
        cfmakeraw(&raw);
        ASSERT_EQ(openpty(&m_master, &m_slave, name, &raw, nullptr), 0);
        QFile::remove(m_link);
        QFile::link(QString::fromLocal8Bit(name), m_link);
    }
    void unplug()
    {
        if (m_master < 0)
            return;
        QFile::remove(m_link);
        ::close(m_slave);
        ::close(m_master);
        m_master = m_slave = -1;
    }
    void say(const QByteArray &bytes) const
    {
        ASSERT_EQ(::write(m_master, bytes.constData(), static_cast<size_t>(bytes.size())), bytes.size());
    }

private:
    QString m_link;
    int m_master = -1;
    int m_slave = -1;
};

} // namespace hammerline::support
