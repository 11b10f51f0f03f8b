#include "shop/shop.h"

#include <algorithm>
#include <array>

namespace hammerline::shop {

namespace {

using readings::Purpose;

/// Where a piece goes in a view: what it is sorted by, and its name.
struct Key {
    int order = 0;
    std::string name{};
    auto operator<=>(const Key &) const = default;
};

Key keyOf(const std::optional<catalogue::Quantity> &quantity)
{
    return quantity ? Key{1 + static_cast<int>(*quantity), std::string(catalogue::idOf(*quantity))} : Key{};
}

Key keyOf(const std::optional<YearMonth> &month)
{
    return month ? Key{0, textOf(*month)} : Key{};
}

/// Figures of a row while it is summed: instruments and passes come one after the other, so that the last one counted
/// is enough to count each once.
struct Sum {
    Figures figures{};
    instrument::InstrumentId lastInstrument = 0;
    readings::PassId lastPass = 0;
};

class Summing {
public:
    Summing(By by, const Filter &filter) : m_by(by), m_filter(filter) {}

    void add(instrument::InstrumentId id, const InstrumentTally &instrument)
    {
        if (!m_filter.states.empty() && !m_filter.states.contains(instrument.state))
            return;
        m_instrument = id;
        for (const PassTally &pass : instrument.passes) {
            if (isInside(pass.month))
                for (const ReadPiece &piece : pass.read)
                    add(pass, piece);
            for (const WorkPiece &piece : pass.work)
                add(piece);
        }
        for (const WorkPiece &piece : instrument.other)
            add(piece);
    }

    std::map<Key, Sum> sums{};
    Sum total{};

private:
    [[nodiscard]] bool isInside(const std::optional<YearMonth> &month) const
    {
        if (!month)
            return !m_filter.from && !m_filter.to;
        return (!m_filter.from || *m_filter.from <= *month) && (!m_filter.to || *month <= *m_filter.to);
    }

    [[nodiscard]] Key keyFor(const std::string &person, const std::optional<catalogue::Quantity> &quantity,
                             const std::optional<YearMonth> &month) const
    {
        switch (m_by) {
        case By::Person:
            break;
        case By::Quantity:
            return keyOf(quantity);
        case By::Month:
            return keyOf(month);
        }
        return {0, person};
    }

    void count(Sum &sum) const
    {
        sum.figures.instruments += sum.lastInstrument != m_instrument ? 1 : 0;
        sum.lastInstrument = m_instrument;
    }

    void add(const PassTally &pass, const ReadPiece &piece)
    {
        for (Sum *sum : {&sums[keyFor(piece.person, piece.quantity, pass.month)], &total}) {
            count(*sum);
            sum->figures.passes += sum->lastPass != pass.pass ? 1 : 0;
            sum->lastPass = pass.pass;
            sum->figures.readings += piece.readings;
            if (pass.purpose == Purpose::AsFound || pass.purpose == Purpose::AsLeft) {
                Share &share = pass.purpose == Purpose::AsFound ? sum->figures.found : sum->figures.left;
                share.judged += piece.judged;
                share.out += piece.out;
            }
        }
    }

    void add(const WorkPiece &piece)
    {
        if (!isInside(piece.month))
            return;
        for (Sum *sum : {&sums[keyFor(piece.person, piece.quantity, piece.month)], &total}) {
            count(*sum);
            Figures &figures = sum->figures;
            (piece.kind == WorkPiece::Kind::Planned ? figures.plannedMinutes
             : piece.kind == WorkPiece::Kind::Taken ? figures.takenMinutes
                                                    : figures.otherMinutes) += piece.minutes;
            (piece.kind == WorkPiece::Kind::Planned ? figures.unreckoned : figures.untimed) += piece.untimed;
        }
    }

    By m_by;
    const Filter &m_filter;
    instrument::InstrumentId m_instrument = 0;
};

Summing summed(const Tallies &tallies, By by, const Filter &filter)
{
    Summing summing(by, filter);
    for (const auto &[id, instrument] : tallies)
        summing.add(id, instrument);
    return summing;
}

} // namespace

YearMonth monthOf(readings::Instant at)
{
    const std::chrono::year_month_day day(std::chrono::floor<std::chrono::days>(at));
    return day.year() / day.month();
}

std::string textOf(YearMonth month)
{
    const unsigned number = static_cast<unsigned>(month.month());
    return std::to_string(static_cast<int>(month.year())) + (number < 10 ? "-0" : "-") + std::to_string(number);
}

std::optional<double> Share::part() const
{
    return judged > 0 ? std::optional(static_cast<double>(out) / static_cast<double>(judged)) : std::nullopt;
}

std::string_view idOf(By by)
{
    static constexpr std::array<std::string_view, 3> ids{"person", "quantity", "month"};
    return ids[static_cast<std::size_t>(by)];
}

std::vector<Row> rowsOf(const Tallies &tallies, By by, const Filter &filter)
{
    std::vector<Row> rows;
    for (auto &[key, sum] : summed(tallies, by, filter).sums)
        rows.push_back({key.name, sum.figures});
    return rows;
}

Figures totalOf(const Tallies &tallies, const Filter &filter)
{
    return summed(tallies, By::Month, filter).total.figures;
}

std::vector<YearMonth> monthsOf(const Tallies &tallies)
{
    std::set<YearMonth> months;
    const auto take = [&](const std::vector<WorkPiece> &work) {
        for (const WorkPiece &piece : work)
            if (piece.month)
                months.insert(*piece.month);
    };
    for (const auto &[id, instrument] : tallies) {
        take(instrument.other);
        for (const PassTally &pass : instrument.passes) {
            months.insert(pass.month);
            take(pass.work);
        }
    }
    return {months.begin(), months.end()};
}

} // namespace hammerline::shop
