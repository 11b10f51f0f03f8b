#include "exchange/csv_text.h"
#include "shop/judge_shop.h"
#include "shop/shop.h"

#include <array>
#include <cstdio>
#include <string_view>

namespace hammerline::shop {

namespace {

/// Hours to the hundredth.
std::string hours(double minutes)
{
    std::array<char, 32> text{};
    const int size = std::snprintf(text.data(), text.size(), "%.2f", minutes / 60);
    return {text.data(), static_cast<std::size_t>(size)};
}

std::string share(const Share &share)
{
    return std::to_string(share.judged) + ',' + std::to_string(share.out);
}

constexpr const char *judgedHeads = ",now_in,now_marginal,now_out,now_missing,then_in,then_marginal,then_out,"
                                    "then_missing,more_out\r\n";

std::string counts(const tolerance::Tally &tally)
{
    std::string text;
    for (const auto status :
         {tolerance::Status::In, tolerance::Status::Marginal, tolerance::Status::Out, tolerance::Status::Missing})
        text += ',' + std::to_string(tally.of(status));
    return text;
}

std::string counts(const TwoSets &both)
{
    return counts(both.now) + counts(both.then) + ',' + (both.bothJudge() ? std::to_string(both.moreOut()) : "") +
           "\r\n";
}

} // namespace

std::string judgedCsv(const std::vector<JudgedRow<catalogue::Quantity>> &rows)
{
    std::string text = std::string("quantity") + judgedHeads;
    for (const auto &row : rows)
        text += std::string(catalogue::idOf(row.key)) + counts(row.counts);
    return text;
}

std::string judgedCsv(const std::vector<JudgedRow<instrument::InstrumentId>> &rows, const Names &names)
{
    std::string text = std::string("instrument,name") + judgedHeads;
    for (const auto &row : rows) {
        const auto name = names.find(row.key);
        text += std::to_string(row.key) + ',' + exchange::csvText(name == names.end() ? std::string() : name->second) +
                counts(row.counts);
    }
    return text;
}

std::string shopCsv(By by, const std::vector<Row> &rows)
{
    std::string text = std::string(idOf(by)) +
                       ",instruments,passes,readings,found_judged,found_out,left_judged,left_out,"
                       "hours_planned,hours_taken,untimed,hours_other\r\n";
    for (const Row &row : rows) {
        const Figures &figures = row.figures;
        text += exchange::csvText(row.key) + ',' + std::to_string(figures.instruments) + ',' +
                std::to_string(figures.passes) + ',';
        text += std::to_string(figures.readings) + ',' + share(figures.found) + ',' + share(figures.left) + ',';
        text += hours(figures.plannedMinutes) + ',' + hours(figures.takenMinutes) + ',';
        text += std::to_string(figures.untimed) + ',' + hours(figures.otherMinutes) + "\r\n";
    }
    return text;
}

} // namespace hammerline::shop
