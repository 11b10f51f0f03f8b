#include "readings/instant.h"

#include <algorithm>
#include <optional>

namespace hammerline::readings {

namespace {

using std::chrono::milliseconds;

std::string padded(long long number, std::size_t width)
{
    std::string digits = std::to_string(number);
    return digits.size() < width ? std::string(width - digits.size(), '0') + digits : digits;
}

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

/// Reads fixed-width fields from the left; once something does not fit, `ok` stays false.
struct Scanner {
    std::string_view rest;
    bool ok = true;

    int digits(std::size_t width)
    {
        int number = 0;
        for (std::size_t i = 0; i < width; ++i) {
            ok = ok && i < rest.size() && isDigit(rest[i]);
            number = ok ? number * 10 + (rest[i] - '0') : 0;
        }
        rest.remove_prefix(ok ? width : 0);
        return number;
    }
    void expect(std::string_view oneOf)
    {
        ok = ok && !rest.empty() && oneOf.find(rest.front()) != std::string_view::npos;
        rest.remove_prefix(ok ? 1 : 0);
    }
    bool next(char c) const { return ok && !rest.empty() && rest.front() == c; }
};

/// Further digits than three are cut off, so that a moment never slips into the next second.
milliseconds fractionIn(Scanner &scanner)
{
    if (!scanner.next('.'))
        return milliseconds{0};
    scanner.rest.remove_prefix(1);
    int thousandths = 0, weight = 100;
    scanner.ok = !scanner.rest.empty() && isDigit(scanner.rest.front());
    while (!scanner.rest.empty() && isDigit(scanner.rest.front())) {
        thousandths += weight * (scanner.rest.front() - '0');
        weight /= 10;
        scanner.rest.remove_prefix(1);
    }
    return milliseconds{thousandths};
}

std::chrono::minutes offsetIn(Scanner &scanner)
{
    if (scanner.next('Z') || scanner.next('z')) {
        scanner.rest.remove_prefix(1);
        return {};
    }
    const bool west = scanner.next('-');
    scanner.expect("+-");
    const int hours = scanner.digits(2);
    scanner.expect(":");
    const int minutes = scanner.digits(2);
    scanner.ok = scanner.ok && hours < 24 && minutes < 60;
    return std::chrono::minutes((west ? -1 : 1) * (hours * 60 + minutes));
}

std::optional<std::chrono::sys_days> dateIn(Scanner &scanner)
{
    const int year = scanner.digits(4);
    scanner.expect("-");
    const int month = scanner.digits(2);
    scanner.expect("-");
    const int day = scanner.digits(2);
    const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                                           std::chrono::day{static_cast<unsigned>(day)}};
    return scanner.ok && date.ok() ? std::optional(std::chrono::sys_days(date)) : std::nullopt;
}

struct ClockTime {
    std::chrono::seconds sinceMidnight{};
    bool leap = false; ///< second 60, held here as 59
};

std::optional<ClockTime> timeIn(Scanner &scanner)
{
    const int hour = scanner.digits(2);
    scanner.expect(":");
    const int minute = scanner.digits(2);
    scanner.expect(":");
    const int second = scanner.digits(2);
    if (!scanner.ok || hour > 23 || minute > 59 || second > 60)
        return std::nullopt;
    return ClockTime{std::chrono::seconds(hour * 3600 + minute * 60 + std::min(second, 59)), second == 60};
}

/// Leap seconds stand only at the end of a month in UTC (RFC 3339 §5.7).
bool mayBeLeap(Instant instant)
{
    const auto second = std::chrono::floor<std::chrono::seconds>(instant) + std::chrono::seconds{1};
    const auto day = std::chrono::floor<std::chrono::days>(second);
    return second == day && std::chrono::year_month_day(day).day() == std::chrono::day{1};
}

std::optional<Instant> instantIn(std::string_view text)
{
    Scanner scanner{text};
    const auto date = dateIn(scanner);
    scanner.expect("Tt");
    const auto time = timeIn(scanner);
    const auto fraction = fractionIn(scanner);
    const auto offset = offsetIn(scanner);
    if (!date || !time || !scanner.ok || !scanner.rest.empty())
        return std::nullopt;
    const Instant instant = *date + time->sinceMidnight - offset + fraction;
    return time->leap && !mayBeLeap(instant) ? std::nullopt : std::optional(instant);
}

} // namespace

std::string rfc3339(Instant instant)
{
    const auto day = std::chrono::floor<std::chrono::days>(instant);
    const std::chrono::hh_mm_ss time(instant - day);
    std::string text = isoDate(instant) + 'T' + padded(time.hours().count(), 2) + ':' +
                       padded(time.minutes().count(), 2) + ':' + padded(time.seconds().count(), 2);
    if (time.subseconds().count() != 0)
        text += '.' + padded(time.subseconds().count(), 3);
    return text + 'Z';
}

outcome::Outcome<Instant> parseRfc3339(std::string_view text)
{
    if (const auto instant = instantIn(text))
        return *instant;
    return outcome::Fault{.problem = "'" + std::string(text.substr(0, 40)) +
                                     "' is no moment; write it such as 2026-03-02T09:10:00Z"};
}

std::string isoDate(Instant instant)
{
    const std::chrono::year_month_day date(std::chrono::floor<std::chrono::days>(instant));
    return padded(static_cast<int>(date.year()), 4) + '-' + padded(static_cast<unsigned>(date.month()), 2) + '-' +
           padded(static_cast<unsigned>(date.day()), 2);
}

} // namespace hammerline::readings
