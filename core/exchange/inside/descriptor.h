#pragma once
// A file descriptor that is closed when it is let go of.

#include <unistd.h>

#include <utility>

namespace hammerline::exchange {

/// -1 holds nothing.
class Descriptor {
public:
    explicit Descriptor(int number) : m_number(number) {}
    Descriptor(Descriptor &&other) noexcept : m_number(std::exchange(other.m_number, -1)) {}
    Descriptor(const Descriptor &) = delete;
    Descriptor &operator=(const Descriptor &) = delete;
    ~Descriptor()
    {
        if (m_number >= 0)
            ::close(m_number);
    }
    [[nodiscard]] int number() const { return m_number; }
    [[nodiscard]] bool open() const { return m_number >= 0; }
    /// Open as long as the process.
    void neverClose() { m_number = -1; }

private:
    int m_number;
};

} // namespace hammerline::exchange
