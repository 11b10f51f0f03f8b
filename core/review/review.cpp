#include "review/review.h"

#include <algorithm>
#include <tuple>

namespace hammerline::review {

namespace {

/// Uneven comes last: a reading that is out or marginal besides is named by the graver of the two.
std::optional<Kind> kindOf(const tolerance::Verdict &verdict)
{
    switch (verdict.status) {
    case tolerance::Status::Out:
        return Kind::Out;
    case tolerance::Status::Marginal:
        return Kind::Marginal;
    case tolerance::Status::Missing:
        return Kind::Missing;
    case tolerance::Status::In:
    case tolerance::Status::Unjudged:
        break;
    }
    return verdict.uneven ? std::optional(Kind::Uneven) : std::nullopt;
}

bool comesBefore(const Item &a, const Item &b)
{
    // A pair without a half-width sorts behind every pair with one.
    const double worseA = a.halfWidths.value_or(-1);
    const double worseB = b.halfWidths.value_or(-1);
    if (worseA != worseB)
        return worseA > worseB;
    return std::tuple(a.instrument, a.verdict.quantity, a.verdict.note) <
           std::tuple(b.instrument, b.verdict.quantity, b.verdict.note);
}

} // namespace

std::string_view idOf(Kind kind)
{
    switch (kind) {
    case Kind::Out:
        return "out";
    case Kind::Marginal:
        return "marginal";
    case Kind::Uneven:
        return "uneven";
    case Kind::Missing:
        break;
    }
    return "missing";
}

std::vector<Item> itemsOf(const JudgedPass &pass)
{
    std::vector<Item> items;
    for (const tolerance::Verdict &verdict : pass.judgement.verdicts)
        if (const auto kind = kindOf(verdict))
            items.push_back({pass.instrument, pass.pass, verdict, *kind, verdict.halfWidths()});
    return items;
}

std::vector<Item> queueOf(const std::vector<JudgedPass> &passes)
{
    std::vector<Item> queue;
    for (const JudgedPass &pass : passes) {
        const auto items = itemsOf(pass);
        queue.insert(queue.end(), items.begin(), items.end());
    }
    std::stable_sort(queue.begin(), queue.end(), comesBefore);
    return queue;
}

} // namespace hammerline::review
