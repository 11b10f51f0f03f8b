#include "sale_record/accepted.h"

#include <algorithm>
#include <tuple>

namespace hammerline::sale_record {

namespace {

using tolerance::Verdict;

bool holdsIn(const tolerance::Judgement &judgement, const decisions::Concession &concession)
{
    const Verdict *now = judgement.find(concession.quantity, concession.note);
    const auto kind = now == nullptr ? std::nullopt : decisions::kindOf(*now);
    return kind && concession.holds(now->value, *kind);
}

Concession told(const decisions::Concession &made)
{
    return {made.quantity, made.note, made.value, made.words, made.person, made.at};
}

/// What the newest of the passes that read the pair says of it; null: none did.
const Verdict *newestReading(std::span<const DecidedPass> since, const decisions::Concession &made)
{
    const Verdict *newest = nullptr;
    for (const DecidedPass &pass : since)
        if (const Verdict *read = pass.judgement.find(made.quantity, made.note); read != nullptr && read->value)
            newest = read;
    return newest;
}

/// A value without limits is neither in nor out: nothing says that it was mended.
bool isMended(const Verdict &verdict)
{
    return verdict.status != tolerance::Status::Unjudged && !decisions::kindOf(verdict);
}

bool isAcceptedIn(std::span<const DecidedPass> later, const decisions::Concession &made)
{
    return std::ranges::any_of(later, [&](const DecidedPass &pass) {
        return decisions::findDecision(pass.decided.concessions, made.quantity, made.note) != nullptr;
    });
}

/// `from`: the pass in which it was accepted, and all after it.
EarlierConcession followed(const decisions::Concession &made, std::span<const DecidedPass> from)
{
    const bool untouched = holdsIn(from.front().judgement, made);
    const Verdict *now = newestReading(untouched ? from.subspan(1) : from, made);
    EarlierConcession earlier{told(made), from.front().pass, Fate::Stands, now ? now->value : std::nullopt};
    if (isAcceptedIn(from.subspan(1), made))
        earlier.fate = Fate::AcceptedAgain;
    else if (now != nullptr && isMended(*now))
        earlier.fate = Fate::Mended;
    return earlier;
}

} // namespace

std::string_view idOf(Fate fate)
{
    switch (fate) {
    case Fate::Stands:
        return "stands";
    case Fate::AcceptedAgain:
        return "accepted-again";
    case Fate::Mended:
        break;
    }
    return "mended";
}

std::vector<Concession> concessionsOf(const tolerance::Judgement &judgement, const decisions::PassDecisions &decided)
{
    std::vector<Concession> concessions;
    for (const decisions::Concession &made : decided.concessions)
        if (holdsIn(judgement, made))
            concessions.push_back(told(made));
    return concessions;
}

std::vector<EarlierConcession> earlierConcessionsOf(std::span<const DecidedPass> passes)
{
    std::vector<EarlierConcession> earlier;
    for (std::size_t at = 0; at < passes.size(); ++at)
        for (const decisions::Concession &made : passes[at].decided.concessions)
            if (at + 1 < passes.size() || !holdsIn(passes[at].judgement, made))
                earlier.push_back(followed(made, passes.subspan(at)));
    std::ranges::stable_sort(earlier, {}, [](const EarlierConcession &one) {
        return std::tuple(one.fate, one.made.quantity, one.made.note);
    });
    return earlier;
}

} // namespace hammerline::sale_record
