// hammerline review: what is out across the workshop, worst first. An instrument that was delivered stands there no
// longer; one without a tolerance set or without readings has nothing to be judged by. An item that was accepted is not
// listed while its value is the one accepted; one that was sent back is, until it is mended. Standard error tells of
// instruments that another program edited, for what is listed of them, and what is not, says nothing; and of those
// whose set cannot be read, which are not judged. What is in, but lies within the doubt of its reading (the gauge of
// its pass or the set's uncertainty, and the digits written down), stands in a list of its own, uneven or not.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/plain_table.h"
#include "command_line/inside/verdict_words.h"

#include "exchange/answers_json.h"
#include "logbook/to_review.h"
#include "logbook/verify_instrument.h"
#include "review/review.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <optional>
#include <set>

namespace hammerline::command_line {
namespace {

/// The sets met so far by their texts: a shop judges by a few. Absent: no set.
using Judges = std::map<std::string, std::optional<tolerance::Judge>>;

outcome::Outcome<const tolerance::Judge *> judgeFor(const instrument::Instrument &instrument, Judges &judges)
{
    auto known = judges.find(instrument.toleranceText);
    if (known == judges.end()) {
        const auto set = chosenSet(instrument);
        if (!set)
            return set.faults();
        known = judges.emplace(instrument.toleranceText, std::nullopt).first;
        if (set.value())
            known->second.emplace(*set.value());
    }
    return known->second ? &*known->second : nullptr;
}

struct Waiting {
    std::vector<review::Item> items{};
    std::vector<review::Item> inDoubt{};
};

/// What waits in one instrument is put to the rest; its passes are let go again. Faults: of its set.
std::vector<outcome::Fault> addWaiting(const logbook::Logbook &book, const instrument::Instrument &instrument,
                                       Judges &judges, Waiting &waiting)
{
    const auto judge = judgeFor(instrument, judges);
    if (!judge)
        return judge.faults();
    if (judge.value() != nullptr)
        for (const review::JudgedPass &pass : logbook::passesToReview(book, instrument, *judge.value())) {
            std::ranges::move(review::itemsOf(pass), std::back_inserter(waiting.items));
            std::ranges::move(review::inDoubtOf(pass), std::back_inserter(waiting.inDoubt));
        }
    return {};
}

std::string howFar(const review::Item &item)
{
    return item.halfWidths ? fmt::format("{:.1f}", *item.halfWidths) : std::string("-");
}

/// "64 %"; empty where no doubt was weighed.
std::string howSure(const tolerance::Verdict &verdict)
{
    constexpr double least = 0.01; // never a plain 0 or 100, which no normal distribution gives
    if (!verdict.doubt || !verdict.conformanceProbability)
        return {};
    const double inside = *verdict.conformanceProbability;
    if (inside < least || inside > 1 - least)
        return inside < least ? "< 1 %" : "> 99 %";
    return fmt::format("{:.0f} %", 100 * inside);
}

std::string whatIsWrong(const review::Item &item)
{
    if (item.kind == review::Kind::Uneven && item.verdict.stepFromBelow)
        return benchText(item.verdict.stepFromBelow->magnitude()) + " from the note below";
    const bool doubtful = item.kind == review::Kind::Out && item.verdict.withinDoubt();
    return sentenceOf(item.verdict) + (doubtful ? "; out, but within the gauge's doubt" : "");
}

using InstrumentNames = std::map<std::int64_t, std::string>;

std::string itemsText(const std::vector<review::Item> &items, const InstrumentNames &names)
{
    if (items.empty())
        return "Nothing is out, marginal, uneven or missing.\n";
    PlainTable table({{"half-widths", Align::Right},
                      {"kind"},
                      {"instrument"},
                      {"note"},
                      {"quantity"},
                      {"sure inside", Align::Right},
                      {"what"}});
    for (const review::Item &item : items)
        table.add({howFar(item), std::string(review::idOf(item.kind)), elided(names.at(item.instrument)),
                   item.verdict.note.name(), std::string(catalogue::idOf(item.verdict.quantity)), howSure(item.verdict),
                   whatIsWrong(item)});
    return table.text();
}

std::string whatIsDoubtful(const tolerance::Verdict &verdict)
{
    const auto &step = verdict.stepFromBelow;
    return sentenceOf(verdict) +
           (verdict.uneven && step ? "; uneven too, " + benchText(step->magnitude()) + " from the note below" : "");
}

std::string inDoubtText(const std::vector<review::Item> &items, const InstrumentNames &names)
{
    if (items.empty())
        return {};
    PlainTable table({{"sure inside", Align::Right}, {"instrument"}, {"note"}, {"quantity"}, {"what"}});
    for (const review::Item &item : items)
        table.add({howSure(item.verdict), names.at(item.instrument), item.verdict.note.name(),
                   std::string(catalogue::idOf(item.verdict.quantity)), whatIsDoubtful(item.verdict)});
    return "\nIn, but within the gauge's doubt of a limit, least sure first\n" + table.text();
}

std::string deliveredText(int delivered)
{
    if (delivered == 0)
        return {};
    return counted(delivered, "instrument is", "instruments are") + " delivered and not listed.\n";
}

/// Milliseconds each; a shop of thousands is checked by `verify`.
constexpr std::size_t mostVerified = 100;

/// Those that have the worst items first, then those without.
std::vector<instrument::InstrumentId> worstFirst(const std::vector<review::Item> &items, const InstrumentNames &names)
{
    std::vector<instrument::InstrumentId> order;
    std::set<instrument::InstrumentId> taken;
    const auto take = [&](instrument::InstrumentId id) {
        if (taken.insert(id).second)
            order.push_back(id);
    };
    for (const review::Item &item : items)
        take(item.instrument);
    for (const auto &[id, name] : names)
        take(id);
    return order;
}

/// Who of the instruments was edited by another program.
std::vector<outcome::Fault> editedOnes(const std::string &path, std::vector<instrument::InstrumentId> instruments,
                                       const InstrumentNames &names)
{
    std::vector<outcome::Fault> warnings;
    const std::size_t left = instruments.size() - std::min(instruments.size(), mostVerified);
    instruments.resize(instruments.size() - left);
    const auto checks = logbook::verifyInstruments(path, instruments);
    for (std::size_t index = 0; index < checks.size(); ++index)
        if (!checks[index].whole())
            warnings.push_back({.file = path,
                                .problem = fmt::format("instrument {}, \"{}\", {}; hammerline verify tells all of it",
                                                       instruments[index], names.at(instruments[index]),
                                                       logbook::editedWords(checks[index]))});
    if (left > 0)
        warnings.push_back({.file = path,
                            .problem = fmt::format("whether another program edited the other {} instruments was not "
                                                   "looked at; hammerline verify does",
                                                   left)});
    return warnings;
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
        Waiting waiting;
        Judges judges;
        InstrumentNames names;
        std::vector<outcome::Fault> unjudged;
        int delivered = 0;
        for (const logbook::InstrumentLine &line : book.instrumentLines()) {
            const bool gone = line.state == instrument::State::Delivered;
            delivered += gone ? 1 : 0;
            const auto instrument = gone ? std::nullopt : book.instrument(line.id);
            if (!instrument)
                continue;
            const auto faults = addWaiting(book, *instrument, judges, waiting);
            std::ranges::copy(faults, std::back_inserter(unjudged));
            if (faults.empty()) // else a set that came from elsewhere and cannot be read: the others wait no less
                names[line.id] = line.name;
        }
        review::putWorstFirst(waiting.items);
        review::putLeastSureFirst(waiting.inDoubt);
        auto warnings = editedOnes(m_logbook, worstFirst(waiting.items, names), names);
        std::ranges::move(unjudged, std::back_inserter(warnings));
        return Answer{.text = m_json ? exchange::reviewJson(waiting.items, waiting.inDoubt)
                                     : itemsText(waiting.items, names) + inDoubtText(waiting.inDoubt, names) +
                                           deliveredText(delivered),
                      .warnings = std::move(warnings)};
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
