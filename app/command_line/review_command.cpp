// hammerline review: what is out across the workshop, worst first. An instrument that was delivered stands there no
// longer; one without a tolerance set or without readings has nothing to be judged by. An item that was accepted is not
// listed while its value is the one accepted; one that was sent back is, until it is mended.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/plain_table.h"
#include "command_line/inside/verdict_words.h"

#include "exchange/answers_json.h"
#include "logbook/to_review.h"
#include "review/review.h"

#include <fmt/format.h>

#include <map>

namespace hammerline::command_line {
namespace {

outcome::Outcome<std::vector<review::JudgedPass>> judgedNow(const logbook::Logbook &book,
                                                            const instrument::Instrument &instrument)
{
    const auto set = chosenSet(instrument);
    if (!set)
        return set.faults();
    if (!set.value())
        return std::vector<review::JudgedPass>();
    return logbook::passesToReview(book, instrument, *set.value());
}

std::string howFar(const review::Item &item)
{
    return item.halfWidths ? fmt::format("{:.1f}", *item.halfWidths) : std::string("-");
}

std::string whatIsWrong(const review::Item &item)
{
    if (item.kind == review::Kind::Uneven && item.verdict.stepFromBelow)
        return benchText(item.verdict.stepFromBelow->magnitude()) + " from the note below";
    return sentenceOf(item.verdict);
}

std::string reviewText(const std::vector<review::Item> &items, const std::map<std::int64_t, std::string> &names)
{
    if (items.empty())
        return "Nothing is out, marginal, uneven or missing.\n";
    PlainTable table({{"half-widths", Align::Right}, {"kind"}, {"instrument"}, {"note"}, {"quantity"}, {"what"}});
    for (const review::Item &item : items)
        table.add({howFar(item), std::string(review::idOf(item.kind)), names.at(item.instrument),
                   item.verdict.note.name(), std::string(catalogue::idOf(item.verdict.quantity)), whatIsWrong(item)});
    return table.text();
}

class ReviewCommand : public Command {
public:
    std::string name() const override { return "review"; }
    std::string summary() const override { return "what is out across the workshop, worst first"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.flag("json", "Answer in JSON", m_json);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto book = openToRead(m_logbook);
        std::vector<review::JudgedPass> passes;
        std::map<std::int64_t, std::string> names;
        for (const logbook::InstrumentLine &line : book.instrumentLines()) {
            const auto instrument =
                line.state == instrument::State::Delivered ? std::nullopt : book.instrument(line.id);
            if (!instrument)
                continue;
            auto judged = judgedNow(book, *instrument);
            if (!judged)
                return judged.faults();
            names[line.id] = line.name;
            for (review::JudgedPass &pass : judged.value())
                passes.push_back(std::move(pass));
        }
        const auto items = review::queueOf(passes);
        return Answer{.text = m_json ? exchange::reviewJson(items) : reviewText(items, names)};
    }

private:
    std::string m_logbook;
    bool m_json = false;
};

} // namespace

std::unique_ptr<Command> makeReviewCommand()
{
    return std::make_unique<ReviewCommand>();
}

} // namespace hammerline::command_line
