#pragma once
// A text that comes in pieces, cut where a test wants it.

#include "exchange/exchange.h"

#include <algorithm>
#include <string>
#include <utility>

namespace hammerline::exchange {

/// `first` bytes, then `piece` at a time, however many are asked for. It breaks, where it is to, instead of ending.
class CutText : public TextSource {
public:
    CutText(std::string text, std::size_t first, std::size_t piece)
        : m_text(std::move(text)), m_first(first), m_piece(piece)
    {
    }
    void breakAtEnd(outcome::Fault fault) { m_fault = std::move(fault); }

    outcome::Outcome<std::size_t> read(std::span<char> into) override
    {
        if (m_at == m_text.size() && !m_fault.problem.empty())
            return m_fault;
        const std::size_t wanted = m_at < m_first ? m_first - m_at : m_piece;
        const std::size_t count = m_text.copy(into.data(), std::min(wanted, into.size()), m_at);
        m_at += count;
        return count;
    }
    void rewind() override { m_at = 0; }

private:
    std::string m_text;
    std::size_t m_first;
    std::size_t m_piece;
    std::size_t m_at = 0;
    outcome::Fault m_fault{};
};

} // namespace hammerline::exchange
