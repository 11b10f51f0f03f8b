#include "review/review.h"

#include <algorithm>
#include <iterator>
#include <tuple>

namespace hammerline::review {

namespace {

using decisions::findDecision;
using decisions::kindOf;
using tolerance::Verdict;

/// What the queue goes by, and where the item stands yet.
struct Rank {
    double worse;
    std::size_t from;
};

std::tuple<instrument::InstrumentId, catalogue::Quantity, keyboard::Note> pairOf(const Item &item)
{
    return {item.instrument, item.verdict.quantity, item.verdict.note};
}

template <typename Worse>
std::vector<Rank> ranksOf(const std::vector<Item> &items, Worse worse)
{
    std::vector<Rank> ranks;
    ranks.reserve(items.size());
    for (std::size_t from = 0; from < items.size(); ++from)
        ranks.push_back({worse(items[from]), from});
    std::ranges::sort(ranks, [&](const Rank &a, const Rank &b) {
        if (a.worse != b.worse)
            return a.worse > b.worse;
        const auto pairA = pairOf(items[a.from]), pairB = pairOf(items[b.from]);
        return pairA != pairB ? pairA < pairB : a.from < b.from;
    });
    return ranks;
}

/// Items are large: their order is worked out apart, and then each is moved once, round and round its cycle.
void putInOrder(std::vector<Item> &items, std::vector<Rank> ranks)
{
    for (std::size_t start = 0; start < items.size(); ++start) {
        if (ranks[start].from == start)
            continue;
        Item held = std::move(items[start]);
        std::size_t place = start;
        for (std::size_t from = ranks[place].from; from != start; from = ranks[place].from) {
            items[place] = std::move(items[from]);
            ranks[place].from = place;
            place = from;
        }
        items[place] = std::move(held);
        ranks[place].from = place;
    }
}

/// The readings of a pass by pair, for who read each last and when.
class Readers {
public:
    explicit Readers(const JudgedPass &pass) : m_pass(pass)
    {
        m_sorted.reserve(pass.readings.size());
        for (const readings::Reading &reading : pass.readings)
            m_sorted.push_back(&reading);
        std::ranges::stable_sort(m_sorted, {}, pairOf);
    }

    void name(Item &item) const
    {
        item.person = m_pass.person;
        item.at = m_pass.began;
        const std::pair pair(item.verdict.quantity, item.verdict.note);
        const auto first = std::ranges::lower_bound(m_sorted, pair, {}, pairOf);
        for (auto take = first; take != m_sorted.end() && pairOf(*take) == pair; ++take)
            if (take == first || (*take)->at >= item.at) {
                item.person = (*take)->person;
                item.at = (*take)->at;
            }
    }

private:
    static std::pair<catalogue::Quantity, keyboard::Note> pairOf(const readings::Reading *reading)
    {
        return {reading->place.quantity, reading->place.note};
    }

    const JudgedPass &m_pass;
    std::vector<const readings::Reading *> m_sorted{};
};

Item itemOf(const JudgedPass &pass, const Readers &readers, const Verdict &verdict, Kind kind)
{
    Item item{.instrument = pass.instrument,
              .pass = pass.pass,
              .verdict = verdict,
              .kind = kind,
              .halfWidths = verdict.halfWidths()};
    readers.name(item);
    if (const auto *back = findDecision(pass.decided.sentBack, verdict.quantity, verdict.note)) {
        item.sentBack = std::make_shared<const decisions::SentBack>(*back);
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
    const Readers readers(pass);
    for (const Verdict &verdict : pass.judgement.verdicts)
        if (const auto kind = kindOf(verdict); kind && concessionOf(pass, verdict, *kind) == nullptr)
            items.push_back(itemOf(pass, readers, verdict, *kind));
    return items;
}

std::vector<Item> queueOf(const std::vector<JudgedPass> &passes)
{
    std::vector<Item> queue;
    for (const JudgedPass &pass : passes)
        std::ranges::move(itemsOf(pass), std::back_inserter(queue));
    putWorstFirst(queue);
    return queue;
}

void putWorstFirst(std::vector<Item> &items)
{
    // A pair without a half-width sorts behind every pair with one.
    putInOrder(items, ranksOf(items, [](const Item &item) { return item.halfWidths.value_or(-1); }));
}

std::vector<Item> inDoubtOf(const JudgedPass &pass)
{
    std::vector<Item> items;
    std::optional<Readers> readers; // most passes need none
    for (const Verdict &verdict : pass.judgement.verdicts)
        if (verdict.status == tolerance::Status::In && verdict.withinDoubt())
            items.push_back(itemOf(pass, readers ? *readers : readers.emplace(pass), verdict, Kind::Marginal));
    return items;
}

void putLeastSureFirst(std::vector<Item> &items)
{
    putInOrder(items,
               ranksOf(items, [](const Item &item) { return -item.verdict.conformanceProbability.value_or(1); }));
}

std::vector<Settled> concededOf(const JudgedPass &pass)
{
    std::vector<Settled> settled;
    const Readers readers(pass);
    for (const Verdict &verdict : pass.judgement.verdicts)
        if (const auto kind = kindOf(verdict))
            if (const auto *concession = concessionOf(pass, verdict, *kind))
                settled.push_back({itemOf(pass, readers, verdict, *kind), *concession});
    return settled;
}

std::vector<Settled> mendedOf(const JudgedPass &pass)
{
    std::vector<Settled> settled;
    const Readers readers(pass);
    for (const Verdict &verdict : pass.judgement.verdicts) {
        const auto *back = findDecision(pass.decided.sentBack, verdict.quantity, verdict.note);
        if (back != nullptr && !kindOf(verdict))
            settled.push_back({itemOf(pass, readers, verdict, back->kind), *back});
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
