#include "review/review.h"

#include <algorithm>
#include <tuple>

namespace hammerline::review {

namespace {

using decisions::findDecision;
using decisions::kindOf;
using tolerance::Verdict;

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

/// Who read the pair last, and when.
void nameReader(Item &item, const JudgedPass &pass)
{
    item.person = pass.person;
    item.at = pass.began;
    bool found = false;
    for (const readings::Reading &reading : pass.readings) {
        const bool isIt = reading.place.quantity == item.verdict.quantity && reading.place.note == item.verdict.note;
        if (!isIt || (found && reading.at < item.at))
            continue;
        found = true;
        item.person = reading.person;
        item.at = reading.at;
    }
}

Item itemOf(const JudgedPass &pass, const Verdict &verdict, Kind kind)
{
    Item item{.instrument = pass.instrument,
              .pass = pass.pass,
              .verdict = verdict,
              .kind = kind,
              .halfWidths = verdict.halfWidths()};
    nameReader(item, pass);
    if (const auto *back = findDecision(pass.decided.sentBack, verdict.quantity, verdict.note)) {
        item.sentBack = *back;
        const bool since = readSince(*back, verdict.value, pass.readings);
        item.course = since ? Course::ReadAgain : Course::SentBack;
    }
    return item;
}

const decisions::Concession *concessionOf(const JudgedPass &pass, const Verdict &verdict, Kind kind)
{
    const auto *found = findDecision(pass.decided.concessions, verdict.quantity, verdict.note);
    return found != nullptr && found->holds(verdict.value, kind) ? found : nullptr;
}

bool isReadIn(const JudgedPass &pass, const Verdict &verdict)
{
    const Verdict *now = pass.judgement.find(verdict.quantity, verdict.note);
    return now != nullptr && now->value && now->status != tolerance::Status::Unjudged;
}

} // namespace

bool readSince(const decisions::SentBack &sentBack, const std::optional<units::Amount> &valueNow,
               const std::vector<readings::Reading> &among)
{
    if (valueNow != sentBack.value)
        return true;
    return std::ranges::any_of(among, [&](const readings::Reading &reading) {
        return sentBack.isOf(reading.place.quantity, reading.place.note) && reading.at > sentBack.at;
    });
}

std::vector<Item> itemsOf(const JudgedPass &pass)
{
    std::vector<Item> items;
    for (const Verdict &verdict : pass.judgement.verdicts)
        if (const auto kind = kindOf(verdict); kind && concessionOf(pass, verdict, *kind) == nullptr)
            items.push_back(itemOf(pass, verdict, *kind));
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

std::vector<Settled> concededOf(const JudgedPass &pass)
{
    std::vector<Settled> settled;
    for (const Verdict &verdict : pass.judgement.verdicts)
        if (const auto kind = kindOf(verdict))
            if (const auto *concession = concessionOf(pass, verdict, *kind))
                settled.push_back({itemOf(pass, verdict, *kind), *concession});
    return settled;
}

std::vector<Settled> mendedOf(const JudgedPass &pass)
{
    std::vector<Settled> settled;
    for (const Verdict &verdict : pass.judgement.verdicts) {
        const auto *back = findDecision(pass.decided.sentBack, verdict.quantity, verdict.note);
        if (back != nullptr && !kindOf(verdict))
            settled.push_back({itemOf(pass, verdict, back->kind), *back});
    }
    return settled;
}

JudgedPass leftBehind(JudgedPass older, const std::vector<JudgedPass> &newer)
{
    std::erase_if(older.judgement.verdicts, [&](const Verdict &verdict) {
        const bool wasSentBack = findDecision(older.decided.sentBack, verdict.quantity, verdict.note) != nullptr;
        return !wasSentBack || std::ranges::any_of(newer, [&](const auto &pass) { return isReadIn(pass, verdict); });
    });
    return older;
}

void takeWordsAlong(const JudgedPass &older, JudgedPass &newer)
{
    auto &words = newer.decided.sentBack;
    for (const decisions::SentBack &word : older.decided.sentBack) {
        const Verdict *now = newer.judgement.find(word.quantity, word.note);
        if (now != nullptr && isReadIn(newer, *now) && findDecision(words, word.quantity, word.note) == nullptr)
            words.push_back(word);
    }
    std::ranges::stable_sort(words, {},
                             [](const decisions::SentBack &word) { return std::tuple(word.quantity, word.note); });
}

void leaveMissingTo(const JudgedPass &older, std::vector<JudgedPass> &newer)
{
    for (JudgedPass &pass : newer)
        std::erase_if(pass.judgement.verdicts, [&](const Verdict &verdict) {
            return !verdict.value && older.judgement.find(verdict.quantity, verdict.note) != nullptr;
        });
}

} // namespace hammerline::review
