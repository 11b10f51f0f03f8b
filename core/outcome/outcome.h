#pragma once
// The two kinds of failure.
//
// Bad input (a mistyped length, a row of a file, a set whose limits cross) is expected: the verb returns an
// Outcome that holds either the value or every Fault that was found, each with its place and what would be right.
// A broken world (disk full, file locked, database damaged) is not: it is thrown as BrokenWorld, the one exception
// type of the house, and caught at the two tops (command line, main window) and nowhere else.

#include <cassert>
#include <cstddef>
#include <stdexcept>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace hammerline::outcome {

/// One thing that is wrong with what somebody gave us.
struct Fault {
    std::string file{};    ///< as the user named it; empty where the input is no file
    std::size_t line = 0;  ///< first physical line of the faulty row, counted from 1; 0 where lines mean nothing
    std::string problem{}; ///< what is wrong and what would be right, one line of plain English without a full stop

    /// `FILE:LINE: problem`, without the parts that are not known.
    [[nodiscard]] std::string text() const
    {
        if (file.empty())
            return problem;
        return line == 0 ? file + ": " + problem : file + ":" + std::to_string(line) + ": " + problem;
    }
    bool operator==(const Fault &) const = default;
};

/// Either a value or at least one Fault. Never both, never neither.
template <typename Value>
class [[nodiscard]] Outcome {
public:
    Outcome(Value value) : m_held(std::in_place_index<0>, std::move(value)) {}
    Outcome(Fault fault) : m_held(std::in_place_index<1>, std::vector<Fault>{std::move(fault)}) {}
    /// `faults` must not be empty.
    Outcome(std::vector<Fault> faults) : m_held(std::in_place_index<1>, std::move(faults))
    {
        assert(!std::get<1>(m_held).empty());
    }

    [[nodiscard]] bool ok() const { return m_held.index() == 0; }
    explicit operator bool() const { return ok(); }

    /// Asking for the value of a failed outcome is a mistake of the programmer (std::bad_variant_access).
    [[nodiscard]] const Value &value() const & { return std::get<0>(m_held); }
    [[nodiscard]] Value &value() & { return std::get<0>(m_held); }
    [[nodiscard]] Value &&value() && { return std::get<0>(std::move(m_held)); }

    [[nodiscard]] const std::vector<Fault> &faults() const { return std::get<1>(m_held); }
    [[nodiscard]] const Fault &fault() const { return faults().front(); }

private:
    std::variant<Value, std::vector<Fault>> m_held;
};

/// Disk, locked or damaged file: what went wrong, what is safe and what to do, in words fit for the user.
class BrokenWorld : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

} // namespace hammerline::outcome
