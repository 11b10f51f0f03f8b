#pragma once
// Takes the values of a row one after the other, in the order of the table's columns; throws where the row holds what
// no logbook of ours does.

#include "logbook/inside/version_table.h"
#include "logbook/logbook.h"

#include <optional>
#include <span>
#include <string>

namespace hammerline::logbook::inside {

class Taker {
public:
    /// `row` and `path`, which is for the message, outlive the taker.
    Taker(const Row &row, const std::string &path);

    std::string text(); ///< absent: empty
    std::optional<std::int64_t> maybeNumber();
    std::int64_t number() { return known(maybeNumber()); }
    std::optional<double> thousandths();
    keyboard::Note note();
    std::optional<keyboard::Note> maybeNote();
    units::Length length();
    keyboard::Sections runs();
    std::vector<instrument::Fitting> fittings();

    /// The value of an id, or of what else must be there.
    template <typename Value>
    Value known(const std::optional<Value> &found)
    {
        if (!found)
            throwUnknown();
        return *found;
    }

private:
    [[noreturn]] void throwUnknown() const;

    const Row *m_row;
    std::span<const Cell> m_values;
    const std::string *m_path;
    std::size_t m_next = 0;
};

} // namespace hammerline::logbook::inside
