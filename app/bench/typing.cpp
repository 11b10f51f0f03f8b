#include "bench/typing.h"

#include <algorithm>
#include <array>
#include <sstream>
#include <utility>

namespace hammerline::bench {

namespace {

using Word = std::pair<Scale, std::string_view>;
constexpr std::array<Word, 6> words{{{Scale::Whole, "whole"},
                                     {Scale::Tenths, "10ths"},
                                     {Scale::Hundredths, "100ths"},
                                     {Scale::ThirtySeconds, "32nds"},
                                     {Scale::SixtyFourths, "64ths"},
                                     {Scale::ThousandthsInch, "mil"}}};

/// "31" with one place is "3.1", "5" with two is "0.05"; from 40 on they are "43.1" and "40.05".
std::string withMark(std::string_view digits, std::size_t places, int from)
{
    std::string text(digits);
    if (text.size() <= places)
        text.insert(0, places + 1 - text.size(), '0');
    const std::string whole = text.substr(0, text.size() - places);
    constexpr std::size_t farTooLong = 9; // refused by whoever reads it
    const bool added = from > 0 && whole.size() < farTooLong;
    return (added ? std::to_string(std::stol(whole) + from) : whole) + '.' + text.substr(whole.size());
}

} // namespace

bool isBareDigits(std::string_view typed)
{
    return !typed.empty() && std::ranges::all_of(typed, [](char c) { return c >= '0' && c <= '9'; });
}

std::string spelledOut(std::string_view typed, const Typing &typing)
{
    if (!isBareDigits(typed))
        return std::string(typed);
    switch (typing.scale) {
    case Scale::Whole:
        break;
    case Scale::Tenths:
        return withMark(typed, 1, typing.from) + "mm";
    case Scale::Hundredths:
        return withMark(typed, 2, typing.from) + "mm";
    case Scale::ThirtySeconds:
        return std::string(typed) + "/32in";
    case Scale::SixtyFourths:
        return std::string(typed) + "/64in";
    case Scale::ThousandthsInch:
        return std::string(typed) + "mil";
    }
    return std::string(typed);
}

std::string textOf(const Typings &typings)
{
    std::string text;
    for (const auto &[quantity, typing] : typings) {
        const auto word = std::ranges::find(words, typing.scale, &Word::first);
        text += (text.empty() ? "" : "; ") + std::string(catalogue::idOf(quantity)) + ' ' + std::string(word->second) +
                ' ' + std::to_string(typing.digits) + (typing.from > 0 ? ' ' + std::to_string(typing.from) : "");
    }
    return text;
}

Typings parseTypings(std::string_view text)
{
    Typings typings;
    std::istringstream all{std::string(text)};
    for (std::string part; std::getline(all, part, ';');) {
        std::istringstream fields(part);
        std::string id, scale;
        int digits = 0;
        fields >> id >> scale >> digits;
        const bool whole = !fields.fail();
        int from = 0;
        if (!(fields >> from))
            from = 0;
        const auto quantity = catalogue::findQuantity(id);
        const auto word = std::ranges::find(words, scale, &Word::second);
        if (!whole || !quantity || word == words.end() || digits < 0 || digits > mostDigits)
            continue;
        if (from == 0 || (mayBeginFrom(word->first) && from > 0 && from <= farthestFrom))
            typings[*quantity] = {word->first, digits, from};
    }
    return typings;
}

} // namespace hammerline::bench
